package workuptally.report.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.model.Assay;
import workuptally.model.Field.Qualifier;
import workuptally.model.Layer;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.layers.LayerTally;

/** Layers: mass by difference, density, and what they hold by their assays. */
final class ExplainedLayers {
    private final Numbers numbers;

    ExplainedLayers(Numbers numbers) {
        this.numbers = numbers;
    }

    List<Explanation> of(RunTally tally) {
        List<Explanation> all = new ArrayList<>();
        for (LayerTally layer : tally.layers()) {
            layer.massGrams().ifPresent(mass -> all.add(mass(layer, mass)));
            layer.densityGramsPerMillilitre().ifPresent(density -> all.add(density(layer, density)));
            layer.contents().forEach(content -> all.add(content(tally, layer, content)));
        }
        return all;
    }

    private Explanation mass(LayerTally layer, MeasuredValue mass) {
        String entries = layer.entry()
                .flatMap(e -> Weighings.of(
                        e.weighing().grossGrams(),
                        e.weighing().tareGrams(),
                        e.weighing().netGrams(),
                        numbers))
                .orElse("?");
        return new Draft(FigureKind.LAYERS, "Mass of layer " + layer.label())
                .equation("m = gross − tare, or the net mass as entered")
                .equation("m = " + entries)
                .result(mass, "g", numbers);
    }

    private Explanation density(LayerTally layer, MeasuredValue density) {
        return new Draft(FigureKind.LAYERS, "Density of layer " + layer.label())
                .equation("ρ = m/V")
                .equation("ρ = " + numbers.plain(layer.massGrams()) + " g / " + volume(layer))
                .result(density, "g/mL", numbers);
    }

    private String volume(LayerTally layer) {
        return layer.entry()
                .map(Layer::volumeMillilitres)
                .flatMap(v -> numbers.entry(v, "mL"))
                .orElse("?");
    }

    private Explanation content(RunTally tally, LayerTally layer, Content content) {
        String title = content.substance() + " in layer " + layer.label();
        Draft draft = new Draft(FigureKind.LAYERS, title);
        List<Assay> rows = tally.run().assays().stream()
                .filter(a -> a.sample().equals(layer.label()) && a.isOf(content.substance()))
                .toList();
        Optional<Assay> assay = rows.size() == 1 ? Optional.of(rows.get(0)) : Optional.empty();
        boolean byOwnAssay = assay.isPresent()
                && (content.kind() == Content.Kind.MEASURED
                        || content.massGrams().isPresent());
        if (byOwnAssay) {
            equations(draft, layer, content, assay.get());
        } else {
            draft.equation(content.kind().word() + ": " + content.evidence());
        }
        content.amountMillimoles().ifPresent(n -> draft.note("As amount: " + numbers.plain(n) + " mmol."));
        content.percentOf()
                .ifPresent(p -> draft.note(numbers.decimals(p, 1)
                        + (isWanted(tally, content) ? " % of theory." : " % of the amount charged.")));
        content.upperBoundGrams()
                .ifPresent(b -> draft.note("One-sided 95 % upper bound: " + numbers.plain(b) + " g"
                        + content.massGrams()
                                .filter(m -> content.kind() == Content.Kind.MEASURED && m.oneSidedUpperBound() == b)
                                .map(ExplainedLayers::reach)
                                .orElse(".")));
        if (content.kind() == Content.Kind.BOUND && content.massGrams().isPresent()) {
            draft.note(
                    "A result below a limit counts as half the limit in a balance, and as the limit where a bound is asked for.");
        }
        return content.massGrams().isPresent()
                ? draft.result(content.massGrams().get(), "g", numbers)
                : draft.result(content.upperBoundGrams().isPresent() ? "only a bound is known" : "not known");
    }

    /** The factor of a bound: that of the normal distribution, or a wider one where few repeats stand behind u. */
    private static String reach(MeasuredValue mass) {
        double degrees = mass.effectiveDegreesOfFreedom();
        return String.format(Locale.ROOT, " = m + %.3f·u", mass.coverageFactor(MeasuredValue.ONE_SIDED_95))
                + (Double.isInfinite(degrees)
                        ? "."
                        : String.format(
                                Locale.ROOT,
                                ", Student's factor for %.0f effective degrees of freedom.",
                                Math.max(1, Math.floor(degrees))));
    }

    private static boolean isWanted(RunTally tally, Content content) {
        return tally.run().product(content.substance()).filter(p -> p.wanted()).isPresent();
    }

    /** The limit that a plain figure below it was taken at, in the unit of the result; empty where the figure itself was. */
    private static Optional<Double> belowMethodLimit(LayerTally layer, Content content, Assay assay) {
        boolean plain = assay.result()
                .entered()
                .filter(e -> e.qualifier() == Qualifier.EXACT || e.qualifier() == Qualifier.ABOUT)
                .isPresent();
        if (content.kind() != Content.Kind.BOUND || !plain) {
            return Optional.empty();
        }
        Optional<MeasuredValue> portion =
                assay.unit().filter(u -> u == Assay.Unit.MASS_PERCENT).isPresent()
                        ? layer.massGrams().map(m -> m.over(100))
                        : assay.unit()
                                .filter(u -> u == Assay.Unit.MILLIGRAMS_PER_MILLILITRE)
                                .flatMap(u -> layer.volumeMillilitres().map(v -> v.over(1000)));
        return content.massGrams().flatMap(m -> portion.map(p -> 2 * m.value() / p.value()));
    }

    private void equations(Draft draft, LayerTally layer, Content content, Assay assay) {
        String unit = assay.unit().map(Assay.Unit::word).orElse("");
        String result = belowMethodLimit(layer, content, assay)
                .map(limit -> numbers.plain(limit) + " " + unit + " [limit of the method, above the figure typed]")
                .orElseGet(() -> numbers.entry(assay.result(), unit).orElse(content.evidence()));
        String half = content.kind() == Content.Kind.BOUND ? " / 2" : "";
        String mass = numbers.plain(layer.massGrams()) + " g";
        switch (assay.unit().orElse(Assay.Unit.GRAMS)) {
            case MILLIGRAMS_PER_MILLILITRE ->
                draft.equation("m = V·c/1000").equation("m = " + volume(layer) + " × " + result + half + " / 1000");
            case MASS_PERCENT ->
                draft.equation("m = m(layer)·w/100").equation("m = " + mass + " × " + result + half + " / 100");
            case MOLES_PER_LITRE ->
                draft.equation("m = V·c·M/1000")
                        .equation("m = " + volume(layer) + " × " + result + half + " × " + molarMass(content)
                                + " / 1000");
            case MILLIMOLES ->
                draft.equation("m = n·M/1000")
                        .equation("m = " + result + half + " × " + molarMass(content) + " / 1000");
            default -> draft.equation("m as entered").equation("m = " + result + half);
        }
    }

    /** The molar mass that links mass and amount of a content. */
    private String molarMass(Content content) {
        return content.massGrams()
                .flatMap(m -> content.amountMillimoles()
                        .filter(n -> n.value() > 0)
                        .map(n -> numbers.molarMass(1000 * m.value() / n.value()) + " g/mol"))
                .orElse("M");
    }
}
