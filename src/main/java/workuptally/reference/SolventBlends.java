package workuptally.reference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads a mixture of listed solvents as written on a bench: {@code hexane/EtOAc 4:1}, {@code 5 % MeOH in DCM}, {@code 95 % ethanol}.
 *
 * <p>Ratios and per cent are by volume, as eluents and aqueous alcohol are made up (common practice). A mixture without a ratio is not
 * guessed at.
 */
final class SolventBlends {
    private static final String NUMBER = "\\d{1,4}(?:[.,]\\d{1,3})?";
    private static final String RATIO = "(" + NUMBER + "(?:\\s*[:/]\\s*" + NUMBER + ")+)";
    private static final String BY_VOLUME = "(?:\\s*\\(?(?:v/v(?:/v)*|by volume|vol\\.?)\\)?)?";
    private static final Pattern RATIO_LAST =
            Pattern.compile("^(.+?)[\\s,(=]+" + RATIO + BY_VOLUME + "\\s*\\)?\\s*$", Pattern.CASE_INSENSITIVE);
    private static final Pattern RATIO_FIRST =
            Pattern.compile("^" + RATIO + BY_VOLUME + "\\s+(.+)$", Pattern.CASE_INSENSITIVE);
    private static final Pattern PERCENT_IN = Pattern.compile(
            "^(" + NUMBER + ")\\s*(?:vol\\.?\\s*)?%" + BY_VOLUME + "\\s*(?:of\\s+)?(.+?)\\s+in\\s+(.+)$",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern PERCENT_FIRST = Pattern.compile(
            "^(" + NUMBER + ")\\s*(?:vol\\.?\\s*)?%" + BY_VOLUME + "\\s*(?:aq\\.?|aqueous)?\\s*(.+)$",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern PERCENT_LAST = Pattern.compile(
            "^(.+?)[\\s,(]+(" + NUMBER + ")\\s*(?:vol\\.?\\s*)?%" + BY_VOLUME + "\\s*\\)?\\s*$",
            Pattern.CASE_INSENSITIVE);
    private static final List<Pattern> JOINTS = List.of(
            Pattern.compile("\\s*[/:+]\\s*|\\s+and\\s+"), Pattern.compile("\\s+-\\s+|\\s*[\u2013\u2014]\\s*|-"));
    private static final int LONGEST_NAME = 120;

    private final Function<String, Optional<Solvent>> solvents;

    SolventBlends(Function<String, Optional<Solvent>> solvents) {
        this.solvents = solvents;
    }

    /** The solvents of a mixture with their shares, which sum to 1; empty for anything else, a single solvent included. */
    List<SolventShare> find(String typed) {
        if (typed.length() > LONGEST_NAME) {
            return List.of();
        }
        return Stream.<Function<String, List<SolventShare>>>of(this::byRatio, this::byPercentIn, this::aqueous)
                .map(reading -> reading.apply(typed.strip()))
                .filter(shares -> !shares.isEmpty())
                .findFirst()
                .orElse(List.of());
    }

    private List<SolventShare> byRatio(String typed) {
        Matcher last = RATIO_LAST.matcher(typed);
        if (last.matches()) {
            return shares(last.group(1), last.group(2));
        }
        Matcher first = RATIO_FIRST.matcher(typed);
        return first.matches() ? shares(first.group(2), first.group(1)) : List.of();
    }

    private List<SolventShare> shares(String names, String ratio) {
        List<Double> parts =
                Arrays.stream(ratio.split("[:/]")).map(SolventBlends::number).toList();
        for (Pattern joint : JOINTS) {
            String[] each = joint.split(names);
            if (each.length == parts.size()) {
                List<SolventShare> shares = of(List.of(each), parts);
                if (!shares.isEmpty()) {
                    return shares;
                }
            }
        }
        return List.of();
    }

    private List<SolventShare> byPercentIn(String typed) {
        Matcher match = PERCENT_IN.matcher(typed);
        return match.matches() ? ofTwo(match.group(2), match.group(3), number(match.group(1))) : List.of();
    }

    /** A solvent that mixes with water, at a strength: the rest is water. */
    private List<SolventShare> aqueous(String typed) {
        Matcher first = PERCENT_FIRST.matcher(typed);
        Matcher last = PERCENT_LAST.matcher(typed);
        boolean front = first.matches();
        if (!front && !last.matches()) {
            return List.of();
        }
        String name = front ? first.group(2) : last.group(1);
        boolean miscible = solvents.apply(name)
                .filter(s -> s.waterMixing().miscible() == Solvent.Miscibility.YES)
                .isPresent();
        return miscible ? ofTwo(name, "water", number(front ? first.group(1) : last.group(2))) : List.of();
    }

    private List<SolventShare> ofTwo(String first, String second, double percent) {
        return percent > 0 && percent < 100 ? of(List.of(first, second), List.of(percent, 100 - percent)) : List.of();
    }

    private List<SolventShare> of(List<String> names, List<Double> parts) {
        double sum = parts.stream().mapToDouble(Double::doubleValue).sum();
        List<SolventShare> shares = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            Optional<Solvent> solvent = solvents.apply(names.get(i).strip());
            if (solvent.isEmpty() || sum == 0) {
                return List.of();
            }
            if (parts.get(i) > 0) {
                shares.add(new SolventShare(solvent.get(), parts.get(i) / sum));
            }
        }
        return List.copyOf(shares);
    }

    private static double number(String text) {
        return Double.parseDouble(text.strip().replace(',', '.'));
    }
}
