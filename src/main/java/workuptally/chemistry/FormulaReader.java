package workuptally.chemistry;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one molecular formula from text; used once. */
final class FormulaReader {
    private static final int MOST_CHARACTERS = 200;
    private static final int MOST_DEPTH = 20;
    private static final double MOST_ATOMS = 100_000;

    private static final Set<String> ELEMENTS = Set.of(
            ("H He Li Be B C N O F Ne Na Mg Al Si P S Cl Ar K Ca Sc Ti V Cr Mn Fe Co Ni Cu Zn Ga Ge As Se Br Kr Rb Sr"
                            + " Y Zr Nb Mo Tc Ru Rh Pd Ag Cd In Sn Sb Te I Xe Cs Ba La Ce Pr Nd Pm Sm Eu Gd Tb Dy Ho Er Tm Yb Lu"
                            + " Hf Ta W Re Os Ir Pt Au Hg Tl Pb Bi Po At Rn Fr Ra Ac Th Pa U Np Pu Am Cm Bk Cf Es Fm Md No Lr Rf"
                            + " Db Sg Bh Hs Mt Ds Rg Cn Nh Fl Mc Lv Ts Og D")
                    .split(" "));

    /** Symbols chemists use for groups, with what to write; common practice. Longer ones first, so that TBDPS is not read as TB. */
    private static final List<Map.Entry<String, String>> GROUPS = List.of(
            Map.entry("TBDPS", "C16H19Si"),
            Map.entry("TBDMS", "C6H15Si"),
            Map.entry("TIPS", "C9H21Si"),
            Map.entry("Fmoc", "C15H11O2"),
            Map.entry("Troc", "C3H2Cl3O2"),
            Map.entry("Boc", "C5H9O2"),
            Map.entry("Cbz", "C8H7O2"),
            Map.entry("Piv", "C5H9O"),
            Map.entry("Mes", "C9H11"),
            Map.entry("PMB", "C8H9O"),
            Map.entry("MOM", "C2H5O"),
            Map.entry("THP", "C5H9O"),
            Map.entry("TBS", "C6H15Si"),
            Map.entry("TES", "C6H15Si"),
            Map.entry("TMS", "C3H9Si"),
            Map.entry("Me", "CH3"),
            Map.entry("Et", "C2H5"),
            Map.entry("Pr", "C3H7"),
            Map.entry("Bu", "C4H9"),
            Map.entry("Ph", "C6H5"),
            Map.entry("Bn", "C7H7"),
            Map.entry("Bz", "C7H5O"),
            Map.entry("Ac", "C2H3O"),
            Map.entry("Ts", "C7H7SO2"),
            Map.entry("Ms", "CH3SO2"),
            Map.entry("Ns", "C6H4NO4S"),
            Map.entry("Tf", "CF3SO2"),
            Map.entry("Tr", "C19H15"),
            Map.entry("Cy", "C6H11"),
            Map.entry("Cp", "C5H5"),
            Map.entry("Py", "C5H5N"),
            Map.entry("Ar", "the aryl group in full"),
            Map.entry("R", "the group in full"),
            Map.entry("X", "the halogen or leaving group in full"));

    /** Reagent abbreviations that would pass for a formula; common practice. */
    private static final Map<String, String> REAGENTS = Map.ofEntries(
            Map.entry("DBU", "C9H16N2"),
            Map.entry("DBN", "C7H12N2"),
            Map.entry("DCC", "C13H22N2"),
            Map.entry("DIC", "C7H14N2"),
            Map.entry("CDI", "C7H6N4O"),
            Map.entry("DHP", "C5H8O"),
            Map.entry("NBS", "C4H4BrNO2"),
            Map.entry("NCS", "C4H4ClNO2"),
            Map.entry("NIS", "C4H4INO2"),
            Map.entry("PCC", "C5H6ClCrNO3"),
            Map.entry("HFIP", "C3H2F6O"),
            Map.entry("DCN", "C8H4N2"));

    private static final Pattern CHARGE = Pattern.compile("^(.+?)(?:(\\^|\\s+|\\()(\\d*)([+-]+)\\)?|([+-]+))$");
    private static final Pattern SINGLE_ION = Pattern.compile("^[A-Z][a-z]?(\\d)$");
    private static final Pattern NUCLIDE = Pattern.compile("\\[(\\d+)([A-Z][a-z]?)(\\d*)]");
    private static final Pattern BRACKETED_ELEMENT = Pattern.compile("\\[([A-Z][a-z]?)]");
    private static final Pattern COEFFICIENT = Pattern.compile("(\\d+(?:\\.\\d+)?)(?=[A-Z(\\[{])");
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final Pattern WATER_NOT_COUNTED = Pattern.compile("[xn]H2O|\\(H2O\\)[xn]");

    private static final String OPENING = "([{";
    private static final String CLOSING = ")]}";

    private final String typed;
    private final Deque<Map<String, Double>> open = new ArrayDeque<>();
    private final Deque<Character> brackets = new ArrayDeque<>();
    private String text = "";
    private int at;

    FormulaReader(String typed) {
        this.typed = typed;
    }

    Formula read() {
        if (typed.isBlank()) {
            throw refused("it is blank");
        }
        if (typed.length() > MOST_CHARACTERS) {
            throw new IllegalFormulaException("a formula of more than " + MOST_CHARACTERS + " characters is not read");
        }
        String plain = FormulaText.plain(typed.strip());
        if (REAGENTS.containsKey(plain)) {
            throw refused("it is an abbreviation; write the formula, " + REAGENTS.get(plain));
        }
        int charge = takeCharge(FormulaText.tidied(plain));
        FormulaText.doubt(text).ifPresent(why -> {
            throw refused(why);
        });
        Map<String, Double> total = new HashMap<>();
        List<String> parts = parts(SPACES.matcher(text).replaceAll(""));
        if (parts.size() == 1 && COEFFICIENT.matcher(parts.get(0)).lookingAt()) {
            throw refused(
                    "a number stands before it; a label is written [13C], a number of molecules is a coefficient");
        }
        for (String part : parts) {
            add(total, readPart(part), 1);
        }
        double atoms = total.values().stream().mapToDouble(Double::doubleValue).sum();
        if (atoms > MOST_ATOMS) {
            throw refused("it has more than " + (int) MOST_ATOMS + " atoms");
        }
        return new Formula(total, charge);
    }

    private IllegalFormulaException refused(String why) {
        return new IllegalFormulaException("'" + typed + "' is not a formula that can be read: " + why);
    }

    private int takeCharge(String plain) {
        Matcher matcher = CHARGE.matcher(plain);
        if (!matcher.matches()) {
            text = plain;
            return 0;
        }
        text = matcher.group(1).strip();
        String signs = matcher.group(4) == null ? matcher.group(5) : matcher.group(4);
        if (signs.contains("+") && signs.contains("-")) {
            throw refused("the charge has both signs");
        }
        int size = signs.length();
        if (matcher.group(4) != null && !matcher.group(3).isEmpty()) {
            if (size > 1 || matcher.group(3).length() > 2) {
                throw refused("the charge is written as a number and one sign, for example 2-");
            }
            size = Integer.parseInt(matcher.group(3));
        } else if (matcher.group(4) == null && size == 1) {
            size = chargeDigit();
        }
        return signs.startsWith("+") ? size : -size;
    }

    /** {@code Ca2+} means a charge of two; {@code NH4+} a charge of one; {@code SO42-} could mean either. */
    private int chargeDigit() {
        Matcher single = SINGLE_ION.matcher(text);
        if (single.matches()) {
            int size = Integer.parseInt(single.group(1));
            text = text.substring(0, text.length() - 1);
            return size;
        }
        int length = text.length();
        if (length > 1 && Character.isDigit(text.charAt(length - 1)) && Character.isDigit(text.charAt(length - 2))) {
            throw refused(
                    "the digits before the sign can be read in two ways; write the charge after ^, for example SO4^2-");
        }
        return 1;
    }

    /** Splits at {@code *} and at full stops that are not the decimal point of a leading number. */
    private List<String> parts(String formula) {
        List<String> found = new java.util.ArrayList<>();
        int start = 0;
        int i = 0;
        boolean leading = true;
        while (i < formula.length()) {
            char c = formula.charAt(i);
            boolean decimalPoint = c == '.'
                    && leading
                    && i > start
                    && i + 1 < formula.length()
                    && Character.isDigit(formula.charAt(i + 1));
            if ((c == '*' || c == '.') && !decimalPoint) {
                found.add(formula.substring(start, i));
                start = i + 1;
                leading = true;
            } else if (!Character.isDigit(c) && c != '.') {
                leading = false;
            }
            i++;
        }
        found.add(formula.substring(start));
        return found;
    }

    private Map<String, Double> readPart(String part) {
        text = part;
        at = 0;
        if (part.isEmpty()) {
            throw refused("a part before or after the dot is missing");
        }
        if (WATER_NOT_COUNTED.matcher(part).matches()) {
            throw refused("the number of water molecules is not given");
        }
        double coefficient = 1;
        Matcher number = COEFFICIENT.matcher(part);
        if (number.lookingAt()) {
            coefficient = Double.parseDouble(number.group(1));
            at = number.end();
        }
        if (!(coefficient > 0 && coefficient <= MOST_ATOMS)) {
            throw refused("the number " + coefficient + " before a part is out of range");
        }
        open.push(new HashMap<>());
        while (at < text.length()) {
            step();
        }
        if (!brackets.isEmpty()) {
            throw refused("a bracket is not closed");
        }
        Map<String, Double> counts = new HashMap<>();
        add(counts, open.pop(), coefficient);
        return counts;
    }

    private void step() {
        char c = text.charAt(at);
        if (c == '[' && nuclide()) {
            return;
        }
        if (OPENING.indexOf(c) >= 0) {
            openBracket(c);
        } else if (CLOSING.indexOf(c) >= 0) {
            closeBracket(c);
        } else {
            element();
        }
    }

    private boolean nuclide() {
        Matcher matcher = NUCLIDE.matcher(text).region(at, text.length());
        if (matcher.lookingAt()) {
            String nuclide = matcher.group(1) + matcher.group(2);
            if (!AtomicWeights.knowsNuclide(nuclide)) {
                throw refused("the nuclide " + nuclide + " is not known; enter the molar mass");
            }
            at = matcher.end();
            double inside = matcher.group(3).isEmpty() ? 1 : count(matcher.group(3));
            open.peek().merge(nuclide.equals("2H") ? "D" : nuclide, inside * subscript(), Double::sum);
            return true;
        }
        Matcher element = BRACKETED_ELEMENT.matcher(text).region(at, text.length());
        if (element.lookingAt() && ELEMENTS.contains(element.group(1))) {
            at = element.end();
            open.peek().merge(element.group(1), subscript(), Double::sum);
            return true;
        }
        return false;
    }

    private void openBracket(char bracket) {
        if (brackets.size() == MOST_DEPTH) {
            throw refused("brackets are nested more than " + MOST_DEPTH + " deep");
        }
        brackets.push(bracket);
        open.push(new HashMap<>());
        at++;
    }

    private void closeBracket(char bracket) {
        if (brackets.isEmpty() || OPENING.indexOf(brackets.peek()) != CLOSING.indexOf(bracket)) {
            throw refused("the bracket " + bracket + " closes nothing");
        }
        brackets.pop();
        at++;
        Map<String, Double> inside = open.pop();
        if (inside.isEmpty()) {
            throw refused("a pair of brackets is empty");
        }
        add(open.peek(), inside, subscript());
    }

    private void element() {
        refuseGroups();
        char c = text.charAt(at);
        if (!(c >= 'A' && c <= 'Z')) {
            throw refused("'" + c + "' stands where an element symbol is expected; symbols begin with a capital");
        }
        boolean two = at + 1 < text.length() && text.charAt(at + 1) >= 'a' && text.charAt(at + 1) <= 'z';
        String symbol = text.substring(at, two ? at + 2 : at + 1);
        if (!ELEMENTS.contains(symbol)) {
            String letter = symbol.substring(0, 1);
            boolean groupFollows = two && startsWithGroup(at + 2) && ELEMENTS.contains(letter);
            if (!groupFollows) {
                throw refused(symbol + " is not an element");
            }
            // The small letter belongs to a group such as tBu; the next step names it.
            symbol = letter;
        }
        at += symbol.length();
        open.peek().merge(symbol, subscript(), Double::sum);
    }

    private boolean startsWithGroup(int position) {
        return GROUPS.stream().anyMatch(group -> text.startsWith(group.getKey(), position));
    }

    private void refuseGroups() {
        int position = "nist".indexOf(text.charAt(at)) >= 0 ? at + 1 : at;
        for (Map.Entry<String, String> group : GROUPS) {
            String symbol = group.getKey();
            if (text.startsWith(symbol, position) && !continuesAsElement(symbol, position)) {
                String element = ELEMENTS.contains(symbol) ? ", or [" + symbol + "] for the element" : "";
                throw refused(text.substring(at, position + symbol.length()) + " is an abbreviation of a group; write "
                        + group.getValue() + element);
            }
        }
    }

    /** {@code R} and {@code X} are groups only where no small letter makes them an element, as in Rb or Xe. */
    private boolean continuesAsElement(String symbol, int position) {
        int next = position + symbol.length();
        return symbol.length() == 1 && next < text.length() && ELEMENTS.contains(symbol + text.charAt(next));
    }

    private double subscript() {
        int start = at;
        while (at < text.length() && Character.isDigit(text.charAt(at))) {
            at++;
        }
        return start == at ? 1 : count(text.substring(start, at));
    }

    private double count(String digits) {
        double value = digits.length() > 6 ? MOST_ATOMS + 1 : Integer.parseInt(digits);
        if (value == 0 || value > MOST_ATOMS) {
            throw refused("the subscript " + digits + " is out of range");
        }
        return value;
    }

    private static void add(Map<String, Double> to, Map<String, Double> counts, double times) {
        counts.forEach((symbol, count) -> to.merge(symbol, count * times, Double::sum));
    }
}
