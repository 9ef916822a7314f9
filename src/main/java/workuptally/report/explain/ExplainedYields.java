package workuptally.report.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Theory;
import workuptally.tally.balance.Closure;
import workuptally.tally.layers.LayerTally;

/** Yields, and beside them the figures with conversion and with aliquots put back. */
final class ExplainedYields {
    private final Numbers numbers;

    ExplainedYields(Numbers numbers) {
        this.numbers = numbers;
    }

    List<Explanation> of(RunTally tally) {
        List<Explanation> all = new ArrayList<>();
        for (ProductYield yield : tally.yields()) {
            all.add(plain(tally, yield));
            yield.conversionAdjustedPercent().ifPresent(adjusted -> all.add(adjusted(tally, yield, adjusted)));
            yield.aliquotCorrectedPercent().ifPresent(corrected -> all.add(corrected(tally, yield, corrected)));
        }
        return all;
    }

    private static String title(ProductYield yield) {
        return yield.product().name() + (yield.stage() == ProductYield.Stage.PURIFIED ? ", purified" : "");
    }

    private Explanation plain(RunTally tally, ProductYield yield) {
        boolean ofCharged = yield.percentOf() == ProductYield.PercentOf.CHARGED;
        Optional<MeasuredValue> theory = tally.theory().stream()
                .flatMap(t -> t.products().stream())
                .filter(p -> p.product().name().equals(yield.product().name()))
                .map(Theory.ProductTheory::massGrams)
                .findFirst();
        Draft draft = new Draft(FigureKind.YIELDS, (ofCharged ? "Recovery of " : "Yield of ") + title(yield))
                .equation("Y = 100·Σ(m·w)/m(" + (ofCharged ? "charged" : "theory") + ")")
                .equation("Y = 100 × " + numbers.plain(yield.massGrams()) + " g / " + numbers.plain(theory) + " g")
                .headings("Lot", "m (g)", "w (g/g)", "m·w (g)", "w rests on");
        for (LotTally lot : tally.lots()) {
            if (yield.lots().contains(lot.lot().label())
                    && lot.isOf(yield.product().name())) {
                draft.row(
                        lot.lot().label(),
                        numbers.plain(lot.netGrams()),
                        numbers.plain(lot.productFraction()),
                        numbers.plain(lot.pureGrams()),
                        lot.basis().word());
                otherForm(lot).ifPresent(draft::note);
            }
        }
        if (yield.basis().isUpperBound()) {
            draft.note("An upper bound: " + yield.basis().word() + ".");
        }
        if (!yield.endsWorkup()) {
            draft.note("Stands beside the yield of the workup and is never added to it.");
        }
        return draft.result(yield.percent(), "%", numbers);
    }

    /** What a lot of another form counts as: its content is told as the form that theory is in. */
    private Optional<String> otherForm(LotTally lot) {
        if (lot.netGrams().isEmpty()
                || lot.productFraction().isEmpty()
                || lot.pureGrams().isEmpty()) {
            return Optional.empty();
        }
        double asWeighed =
                lot.netGrams().get().value() * lot.productFraction().get().value();
        double factor = lot.pureGrams().get().value() / asWeighed;
        return asWeighed > 0 && Math.abs(factor - 1) > 1e-6
                ? Optional.of("Lot " + lot.lot().label() + " was weighed as another form: its m·w counts times "
                        + numbers.plain(factor) + ", the ratio of the molar masses.")
                : Optional.empty();
    }

    private Explanation adjusted(RunTally tally, ProductYield yield, MeasuredValue adjusted) {
        double conversion = yield.percent().value() / adjusted.value();
        Draft draft = new Draft(FigureKind.YIELDS, "Conversion-adjusted yield of " + title(yield));
        Optional<String> typed = numbers.entry(tally.run().head().conversionPercent(), "%");
        if (typed.isPresent()) {
            draft.equation("Y/X, X as entered: " + typed.get());
        } else {
            Theory.Limiting limiting = tally.theory().orElseThrow().limiting().get(0);
            draft.equation("Y/X with X = 1 − n(recovered)/n₀ of " + limiting.material())
                    .headings("Recovered in", "n (mmol)");
            double recovered = 0;
            for (Place place : recovered(tally, limiting.material())) {
                draft.row(place.label(), numbers.plain(place.millimoles()));
                recovered += place.millimoles();
            }
            draft.equation("X = 1 − " + numbers.plain(recovered) + " / " + numbers.plain(limiting.amountMillimoles())
                    + " = " + numbers.plain(conversion));
        }
        return draft.equation("Y/X = " + numbers.plain(yield.percent()) + " / " + numbers.plain(conversion))
                .note("Stands beside the yield, never instead of it.")
                .result(adjusted, "%", numbers);
    }

    private record Place(String label, double millimoles) {}

    /** Where the limiting material was found: as the closure counts it, else in the terminal layers. */
    private static List<Place> recovered(RunTally tally, String material) {
        for (Closure closure : tally.closures()) {
            List<Place> places = closure.terms().stream()
                    .filter(t -> t.isOf(material))
                    .map(t -> new Place(t.place(), t.unitsMillimoles().value() / t.unitsPerMolecule()))
                    .toList();
            if (!places.isEmpty()) {
                return places;
            }
        }
        List<Place> places = new ArrayList<>();
        for (LayerTally layer : tally.layers()) {
            for (Content content : layer.contents()) {
                if (layer.terminal() && layer.endsWorkup() && content.isOf(material)) {
                    content.amountMillimoles().ifPresent(n -> places.add(new Place(layer.label(), n.value())));
                }
            }
        }
        return places;
    }

    private Explanation corrected(RunTally tally, ProductYield yield, MeasuredValue corrected) {
        Draft draft = new Draft(FigureKind.YIELDS, "Yield of " + title(yield) + " with the aliquots put back")
                .equation("Y/Π(1 − f), f = product in the aliquot / product in the stream it was taken from")
                .headings("Aliquot", "Product (g)", "Stream (g)", "f (g/g)");
        double stream = yield.massGrams().value();
        StringBuilder divisors = new StringBuilder();
        List<Aliquot> taken = aliquots(tally, yield.product().name());
        for (int i = taken.size() - 1; i >= 0; i--) {
            double grams = taken.get(i).grams();
            stream += grams;
            String share = numbers.plain(grams / stream);
            draft.row(taken.get(i).label(), numbers.plain(grams), numbers.plain(stream), share);
            divisors.append(" / (1 − ").append(share).append(')');
        }
        return draft.equation("Y/Π(1 − f) = " + numbers.plain(yield.percent()) + divisors)
                .note("The stream is what was isolated and what was still to be sampled; the last aliquot comes first.")
                .result(corrected, "%", numbers);
    }

    private record Aliquot(String label, double grams) {}

    private static List<Aliquot> aliquots(RunTally tally, String product) {
        List<Aliquot> taken = new ArrayList<>();
        for (LayerTally layer : tally.layers()) {
            for (Content content : layer.contents()) {
                if (layer.aliquot() && layer.terminal() && layer.endsWorkup() && content.isOf(product)) {
                    content.massGrams().ifPresent(m -> taken.add(new Aliquot(layer.label(), m.value())));
                }
            }
        }
        return taken;
    }
}
