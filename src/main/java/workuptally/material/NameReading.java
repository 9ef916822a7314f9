package workuptally.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import workuptally.chemistry.Formula;
import workuptally.material.PartMaker.Around;
import workuptally.material.Strength.Kind;
import workuptally.reference.Reference;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.NameWord;

/** Reads one written name into its parts. */
final class NameReading {
    private static final int DEEPEST = 3;
    private static final String IN = " in ";
    private static final Pattern JOINTS_OF_A_RATIO = Pattern.compile("\\s+-\\s+|\\s*[\u2013\u2014]\\s*|-");
    private static final List<Pattern> JOINTS =
            List.of(Pattern.compile("\\s*[/:+&]\\s*|\\s+and\\s+|\\s+und\\s+"), JOINTS_OF_A_RATIO);

    private final Reference reference;
    private final SubstanceIndex index;
    private final NameWordSearch words;
    private final PartMaker maker;
    private final Adducts adducts;
    private final OneSubstance oneSubstance;
    private final SolutionParts solutions;

    NameReading(Reference reference, SubstanceIndex index) {
        this.reference = reference;
        this.index = index;
        this.words = new NameWordSearch(reference.nameWords());
        this.oneSubstance = new OneSubstance(index, words);
        this.maker = new PartMaker(reference);
        this.solutions = new SolutionParts(reference, index, maker);
        this.adducts = new Adducts(reference.nameWords().stream()
                .filter(word -> word.meaning() == NameWord.Meaning.SALT)
                .flatMap(word -> word.value().flatMap(SubstanceIndex::formula).stream())
                .distinct()
                .toList());
    }

    /** True where a note beside a name says that the material was used before. */
    boolean saysRecovered(String note) {
        return words.sayRecovered(note);
    }

    /** A text of which nothing is understood but its words. */
    Parsed unlisted(String text, Optional<Formula> given) {
        return new Parsed(List.of(maker.unlisted(text, given, List.of(), Around.NOTHING)), Optional.empty(), false);
    }

    /** The parts of a text, as far as they are understood; empty where not even one of them is. */
    Optional<Parsed> read(String text, Optional<Formula> given) {
        return read(RepeatedName.once(text, index), given, 0);
    }

    /** One of several materials in a row, each with its share by mass. */
    Optional<Parsed> readShare(String text) {
        Optional<PlacedStrength> share = PlacedStrength.trailing(text).filter(f -> f.from() > 0);
        String name = share.map(f -> text.substring(0, f.from()).strip()).orElse(TrailingAmount.without(text));
        Optional<Parsed> parsed = read(name, Optional.empty(), 1);
        if (share.isEmpty() || parsed.isEmpty() || parsed.get().parts().size() > 1) {
            return parsed;
        }
        Part part = parsed.get().parts().get(0);
        Around around = new Around(share.map(PlacedStrength::strength), part.form(), false, false);
        return Optional.of(new Parsed(
                List.of(part.substance()
                        .map(s -> maker.listed(part.written(), s, around))
                        .orElseGet(() -> maker.unlisted(part.written(), part.formula(), part.choices(), around))),
                share.map(PlacedStrength::strength),
                parsed.get().recovered()));
    }

    private Optional<Parsed> read(String text, Optional<Formula> given, int depth) {
        Qualifiers q = new Qualifiers(text, words);
        do {
            Optional<List<Part>> parts = named(q, given, depth);
            if (parts.isPresent()) {
                return parsed(parts.get(), q);
            }
        } while (q.peel());
        if (depth >= DEEPEST) {
            return Optional.empty();
        }
        Optional<List<Part>> parts = carried(q, given, depth)
                .or(() -> mixed(q, depth))
                .or(() -> adduct(q, given, depth))
                .or(() -> byFormula(q, given));
        return parts.flatMap(found -> parsed(found, q));
    }

    private static Optional<Parsed> parsed(List<Part> parts, Qualifiers q) {
        return Optional.of(new Parsed(parts, q.strength(), q.isRecovered()));
    }

    private Optional<List<Part>> named(Qualifiers q, Optional<Formula> given, int depth) {
        Optional<Wash> named = depth == 0 ? ownName(q.rest()) : Optional.empty();
        if (named.isPresent()) {
            Optional<List<Part>> parts = solutions.ofWash(q, named.get());
            if (parts.isPresent()) {
                return parts;
            }
        }
        SubstanceIndex.Answer answer = index.find(q.rest());
        Optional<Substance> only = oneSubstance.of(q, answer, given);
        if (only.isPresent()) {
            return Optional.of(of(q, only.get(), depth));
        }
        if (answer.isAmbiguous()) {
            return Optional.of(List.of(maker.unlisted(q.rest(), given, answer.substances(), Around.of(q, false))));
        }
        return reference.solutions().named(q.rest()).flatMap(wash -> solutions.ofWash(q, wash));
    }

    /** A solution whose name is not that of its solute: brine, but not bicarbonate. */
    private Optional<Wash> ownName(String name) {
        return reference
                .solutions()
                .named(name)
                .filter(wash -> wash.solute().isPresent())
                .filter(wash -> index.find(name)
                        .only()
                        .filter(s -> s.solute().isEmpty()
                                || !s.solute().get().name().equals(wash.solute().orElse("")))
                        .isEmpty())
                .filter(wash -> index.find(name).substances().isEmpty());
    }

    private List<Part> of(Qualifiers q, Substance substance, int depth) {
        List<Part> carrier = q.carrier().map(text -> carrier(text, depth)).orElse(List.of());
        boolean percent = q.strength()
                .filter(s -> s.kind() == Kind.MASS_PERCENT || s.kind() == Kind.VOLUME_PERCENT)
                .isPresent();
        if (carrier.isEmpty() && percent && !q.isAqueous() && substance.solute().isEmpty()) {
            Optional<List<Part>> withWater = solutions.withWater(q, substance);
            if (withWater.isPresent()) {
                return withWater.get();
            }
            if (isGrade(q.strength())) {
                return List.of(maker.listed(q.rest(), substance, new Around(Optional.empty(), q.form(), false, false)));
            }
        }
        boolean water = carrier.isEmpty()
                ? q.isAqueous() || isSolutionOfSolute(q, substance)
                : carrier.size() == 1 && SolutionParts.isWater(carrier.get(0));
        if (water
                && percent
                && !q.isAqueous()
                && maker.solution(substance, q.strength()).isEmpty()) {
            // Beyond what dissolves: the assay of a solid, as of potassium hydroxide at 85 %.
            water = false;
        }
        List<Part> parts = new ArrayList<>();
        parts.add(maker.listed(q.rest(), solutions.withRowOfItsOwn(substance, carrier), Around.of(q, water)));
        if (water && carrier.isEmpty() && !substance.isWater()) {
            index.find("water").only().ifPresent(w -> parts.add(maker.listed("water", w, Around.CARRIER)));
        }
        parts.addAll(carrier);
        return parts;
    }

    private static boolean isGrade(Optional<Strength> strength) {
        return strength.map(Strength::value).orElseThrow().orElse(0) >= Qualifiers.LEAST_GRADE_PERCENT;
    }

    /** A strength beside a solute of the washes is one in water, unless the form is a solid one. */
    private static boolean isSolutionOfSolute(Qualifiers q, Substance substance) {
        boolean solid = q.form()
                .filter(f -> f.kind() == Form.Kind.SUPPORTED || f.kind() == Form.Kind.DISPERSION)
                .isPresent();
        return substance.solute().isPresent() && q.strength().isPresent() && !solid;
    }

    private List<Part> carrier(String text, int depth) {
        return depth >= DEEPEST
                ? List.of()
                : read(text, Optional.empty(), depth + 1)
                        .filter(Parsed::isLiquid)
                        .map(parsed -> solutions.asCarrier(parsed.parts()))
                        .orElse(List.of());
    }

    /** What stands before the last "in" is dissolved in what stands behind it; so is what stands before a comma and a solvent. */
    private Optional<List<Part>> carried(Qualifiers q, Optional<Formula> given, int depth) {
        int in = q.rest().lastIndexOf(IN);
        if (in <= 0) {
            return besideComma(q, given, depth);
        }
        String liquid = q.rest().substring(in + IN.length());
        Optional<Parsed> right = read(liquid, Optional.empty(), depth + 1).filter(Parsed::isLiquid);
        String name = q.rest().substring(0, in).strip();
        Optional<Parsed> left = read(name, given, depth + 1);
        if (right.isEmpty()) {
            return left.flatMap(known -> inUnlisted(known, q, liquid.strip()));
        }
        Optional<Strength> strength = q.strength()
                .or(() -> left.flatMap(Parsed::strength))
                .or(() -> right.get().strength());
        return solutions.dissolved(name, left, right.get(), given, new Around(strength, q.form(), false, false));
    }

    /** A listed material in something that no table has: what it is stands, the rest is asked about. */
    private Optional<List<Part>> inUnlisted(Parsed known, Qualifiers q, String liquid) {
        Part main = known.parts().get(0);
        return main.substance().filter(s -> known.parts().size() == 1).map(substance -> {
            Around around =
                    new Around(q.strength().or(known::strength), q.form().or(main::form), false, false);
            return List.of(
                    maker.listed(main.written(), substance, around),
                    maker.unlisted(liquid, Optional.empty(), List.of(), Around.CARRIER));
        });
    }

    /** {@code nBuLi, hexanes}: a listed reagent that is no liquid by itself, a comma, and its solvent. */
    private Optional<List<Part>> besideComma(Qualifiers q, Optional<Formula> given, int depth) {
        int comma = q.rest().lastIndexOf(", ");
        if (comma <= 0) {
            return Optional.empty();
        }
        String name = q.rest().substring(0, comma).strip();
        Optional<Parsed> left = read(name, given, depth + 1)
                .filter(Parsed::isListed)
                .filter(parsed -> parsed.parts().size() == 1 && !parsed.isLiquid());
        Optional<Parsed> right = left.isEmpty()
                ? Optional.empty()
                : read(q.rest().substring(comma + 1).strip(), Optional.empty(), depth + 1)
                        .filter(Parsed::isLiquid);
        return right.flatMap(liquid -> solutions.dissolved(
                name, left, liquid, given, new Around(q.strength().or(left.get()::strength), q.form(), false, false)));
    }

    /** Several materials: a mixture of solvents with its ratio, a solute and its solvent, or things put together. */
    private Optional<List<Part>> mixed(Qualifiers q, int depth) {
        for (Pattern joint : JOINTS) {
            if (joint != JOINTS_OF_A_RATIO || !q.ratio().isEmpty()) {
                List<Parsed> pieces = pieces(joint.split(q.rest()), depth);
                if (pieces.size() > 1 && (q.ratio().isEmpty() || q.ratio().size() == pieces.size())) {
                    return Optional.of(mixture(q, pieces));
                }
            }
        }
        return Optional.empty();
    }

    private List<Parsed> pieces(String[] texts, int depth) {
        List<Parsed> pieces = new ArrayList<>();
        for (String text : texts) {
            Optional<Parsed> piece = text.isBlank()
                    ? Optional.empty()
                    : read(text.strip(), Optional.empty(), depth + 1).filter(Parsed::isListed);
            if (piece.isEmpty()) {
                return List.of();
            }
            pieces.add(piece.get());
        }
        return pieces;
    }

    private List<Part> mixture(Qualifiers q, List<Parsed> pieces) {
        boolean two = pieces.size() == 2;
        boolean intoSolvent = two && pieces.get(1).isLiquid() && q.ratio().isEmpty();
        if (intoSolvent && (!pieces.get(0).isLiquid() || q.strength().isPresent())) {
            return solutions
                    .dissolved(
                            pieces.get(0).parts().get(0).written(),
                            Optional.of(pieces.get(0)),
                            pieces.get(1),
                            Optional.empty(),
                            new Around(q.strength().or(() -> pieces.get(0).strength()), q.form(), false, false))
                    .orElseThrow();
        }
        Optional<List<Part>> modified = two && q.ratio().isEmpty() ? solutions.modified(pieces) : Optional.empty();
        if (modified.isPresent()) {
            return modified.get();
        }
        double sum = q.ratio().stream().mapToDouble(Double::doubleValue).sum();
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            List<Part> piece = pieces.get(i).parts();
            if (sum > 0 && piece.size() == 1) {
                parts.add(PartMaker.inMixture(piece.get(0), q.ratio().get(i) / sum));
            } else {
                parts.addAll(piece);
            }
        }
        return parts;
    }

    /** A hydrate or salt written with a dot, {@code CuSO4.5H2O}. */
    private Optional<List<Part>> adduct(Qualifiers q, Optional<Formula> given, int depth) {
        int dot = q.rest().lastIndexOf('.');
        if (dot <= 0 || dot == q.rest().length() - 1) {
            return Optional.empty();
        }
        Optional<Form> form = adducts.form(q.rest().substring(dot + 1))
                .filter(f -> f.kind() != Form.Kind.ADDUCT || !actsItself(f.of()));
        Optional<Substance> core = form.flatMap(f -> read(q.rest().substring(0, dot), Optional.empty(), depth + 1))
                .map(parsed -> parsed.parts().get(0))
                .flatMap(Part::substance);
        if (core.isEmpty()) {
            return Optional.empty();
        }
        boolean water = q.isAqueous() || isSolutionOfSolute(q, core.get());
        List<Part> parts = new ArrayList<>();
        parts.add(maker.listed(q.rest(), core.get(), new Around(q.strength(), form, water, false)));
        if (water) {
            index.find("water").only().ifPresent(w -> parts.add(maker.listed("water", w, Around.CARRIER)));
        }
        return Optional.of(parts);
    }

    /** Hydrogen peroxide, hydrogen fluoride or borane on a carrier is no form of the carrier; a solvent of crystallisation is. */
    private boolean actsItself(String partner) {
        return index.find(partner)
                .only()
                .filter(s -> s.solvent().isEmpty() && s.liquid().isEmpty())
                .flatMap(Substance::row)
                .flatMap(row -> row.behaviour().quenchTest())
                .isPresent();
    }

    /** A name that is a formula of its own, or a formula given beside it. */
    private Optional<List<Part>> byFormula(Qualifiers q, Optional<Formula> given) {
        Optional<Formula> own = index.formulaOfName(q.rest());
        Optional<Formula> formula = given.or(() -> own);
        List<Substance> same =
                formula.map(f -> List.copyOf(index.ofComposition(f))).orElse(List.of());
        if (same.size() == 1) {
            return Optional.of(of(q, same.get(0), DEEPEST));
        }
        boolean solution =
                q.isAqueous() || q.strength().isPresent() || q.carrier().isPresent();
        if (formula.isEmpty() && !solution) {
            return Optional.empty();
        }
        List<Part> parts = new ArrayList<>();
        parts.add(maker.unlisted(q.rest(), formula, same, Around.of(q, q.isAqueous())));
        parts.addAll(q.carrier().map(text -> carrier(text, 0)).orElse(List.of()));
        if (parts.size() == 1 && q.isAqueous()) {
            index.find("water").only().ifPresent(w -> parts.add(maker.listed("water", w, Around.CARRIER)));
        }
        return Optional.of(parts);
    }
}
