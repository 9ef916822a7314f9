package workuptally.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.chemistry.Formula;
import workuptally.material.PartMaker.Around;
import workuptally.material.Strength.Kind;
import workuptally.reference.Reference;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.Solvent.Miscibility;

/** Puts together the parts of a solution or of one liquid in another: what is dissolved, at which strength, and what it is dissolved in. */
final class SolutionParts {
    /** Per cent of a solvent that mixes with water from which the rest is its grade, not added water (common practice). */
    private static final double LEAST_PURE_PERCENT = 98;

    /** Per cent up to which a solvent behind another one and a plus is a modifier of it (common practice: 1 to 20 %). */
    private static final double MOST_MODIFIER_PERCENT = 20;

    private final Reference reference;
    private final SubstanceIndex index;
    private final PartMaker maker;

    SolutionParts(Reference reference, SubstanceIndex index, PartMaker maker) {
        this.reference = reference;
        this.index = index;
        this.maker = maker;
    }

    /** A solution that has a name of its own: what is dissolved, at the strength of the row, in water. */
    Optional<List<Part>> ofWash(Qualifiers q, Wash wash) {
        Optional<Substance> solute = wash.solute()
                .or(() -> Optional.of(wash.formula()))
                .flatMap(name -> index.find(name).only());
        Optional<Substance> water = index.find("water").only();
        boolean strengthWritten =
                q.strength().filter(s -> s.value().isPresent()).isPresent();
        if (solute.isEmpty() || water.isEmpty()) {
            return Optional.empty();
        }
        Optional<Wash> atStrength = strengthWritten
                ? maker.solution(solute.get(), q.strength())
                : q.strength().filter(s -> s.kind() == Kind.HALF_SATURATED).isPresent()
                        ? reference.solutions().halved(wash)
                        : Optional.of(wash);
        return Optional.of(List.of(
                maker.listed(q.rest(), solute.get(), Around.of(q, true), atStrength),
                maker.listed("water", water.get(), Around.CARRIER)));
    }

    /** A solvent that mixes with water, at a strength by volume: the rest is water, unless it is its grade. */
    Optional<List<Part>> withWater(Qualifiers q, Substance substance) {
        double value = q.strength().map(Strength::value).orElseThrow().orElse(0);
        boolean miscible = substance
                .solvent()
                .filter(s -> !substance.isWater() && s.waterMixing().miscible() == Miscibility.YES)
                .isPresent();
        Optional<Substance> water = index.find("water").only();
        if (!miscible || value <= 0 || value >= LEAST_PURE_PERCENT || water.isEmpty()) {
            return Optional.empty();
        }
        Part first = maker.listed(q.rest(), substance, Around.NOTHING);
        Part rest = maker.listed("water", water.get(), Around.NOTHING);
        return Optional.of(
                List.of(PartMaker.inMixture(first, value / 100), PartMaker.inMixture(rest, (100 - value) / 100)));
    }

    /** The parts of a liquid as a carrier, without shares of their own. */
    List<Part> asCarrier(List<Part> parts) {
        return parts.stream()
                .map(p -> maker.listed(p.written(), p.substance().orElseThrow(), Around.CARRIER))
                .toList();
    }

    /**
     * A material in a liquid.
     *
     * @param name how it is written, where nothing of it is understood
     * @param left what is dissolved, as far as it is understood
     * @param right the liquid
     */
    Optional<List<Part>> dissolved(
            String name, Optional<Parsed> left, Parsed right, Optional<Formula> given, Around around) {
        List<Part> carrier = asCarrier(right.parts());
        if (left.isEmpty() || left.get().parts().get(0).substance().isEmpty()) {
            List<Part> parts = new ArrayList<>();
            parts.add(maker.unlisted(
                    left.map(l -> l.parts().get(0).written()).orElse(name),
                    given,
                    left.map(l -> l.parts().get(0).choices()).orElse(List.of()),
                    around));
            parts.addAll(carrier);
            return Optional.of(parts);
        }
        Part solute = left.get().parts().get(0);
        Substance substance = solute.substance().orElseThrow();
        boolean percent = around.strength()
                .filter(s -> s.kind() == Kind.MASS_PERCENT || s.kind() == Kind.VOLUME_PERCENT)
                .filter(s -> s.value().isPresent())
                .isPresent();
        if (percent && substance.solvent().isPresent() && carrier.size() == 1) {
            double share = around.strength().orElseThrow().value().getAsDouble() / 100;
            if (share > 0 && share < 1) {
                return Optional.of(List.of(
                        PartMaker.inMixture(maker.listed(solute.written(), substance, Around.NOTHING), share),
                        PartMaker.inMixture(
                                maker.listed(
                                        carrier.get(0).written(),
                                        carrier.get(0).substance().orElseThrow(),
                                        Around.NOTHING),
                                1 - share)));
            }
        }
        boolean water = carrier.size() == 1 && isWater(carrier.get(0));
        List<Part> parts = new ArrayList<>();
        parts.add(maker.listed(
                solute.written(),
                withRowOfItsOwn(substance, carrier),
                new Around(around.strength(), around.form().or(solute::form), water, false)));
        parts.addAll(carrier);
        return Optional.of(parts);
    }

    /** A solvent with a few per cent of another, {@code DCM + 5 % MeOH}: the rest is the first, not water. */
    Optional<List<Part>> modified(List<Parsed> pieces) {
        Parsed first = pieces.get(0);
        Part modifier = pieces.get(1).parts().get(0);
        double percent = pieces.get(1)
                .strength()
                .filter(s -> s.kind() == Kind.MASS_PERCENT || s.kind() == Kind.VOLUME_PERCENT)
                .map(Strength::value)
                .orElse(OptionalDouble.empty())
                .orElse(0);
        boolean solvents = first.parts().size() == 1
                && first.strength().isEmpty()
                && first.parts().get(0).substance().flatMap(Substance::solvent).isPresent()
                && modifier.substance().flatMap(Substance::solvent).isPresent();
        if (!solvents || percent <= 0 || percent > MOST_MODIFIER_PERCENT) {
            return Optional.empty();
        }
        Part second = maker.listed(modifier.written(), modifier.substance().orElseThrow(), Around.NOTHING);
        return Optional.of(List.of(
                PartMaker.inMixture(first.parts().get(0), 1 - percent / 100),
                PartMaker.inMixture(second, percent / 100)));
    }

    /** The solution of a substance in one liquid where that has a row of its own, else the substance. */
    Substance withRowOfItsOwn(Substance solute, List<Part> carrier) {
        return carrier.size() == 1
                ? index.solution(solute, carrier.get(0).substance().orElseThrow())
                        .orElse(solute)
                : solute;
    }

    /** True for a part that is water. */
    static boolean isWater(Part part) {
        return part.substance().filter(Substance::isWater).isPresent();
    }
}
