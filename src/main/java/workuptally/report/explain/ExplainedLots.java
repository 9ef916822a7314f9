package workuptally.report.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.Theory;

/** Lots: net mass, net mass over theory, product in the lot. */
final class ExplainedLots {
    private final Numbers numbers;

    ExplainedLots(Numbers numbers) {
        this.numbers = numbers;
    }

    List<Explanation> of(RunTally tally) {
        List<Explanation> all = new ArrayList<>();
        for (LotTally lot : tally.lots()) {
            lot.netGrams().ifPresent(net -> all.add(net(lot, net)));
            lot.overTheoryPercent().ifPresent(percent -> all.add(overTheory(tally, lot, percent)));
            if (lot.productFraction().isPresent()) {
                lot.pureGrams().ifPresent(pure -> all.add(product(lot, pure)));
            }
        }
        return all;
    }

    private Explanation net(LotTally lot, MeasuredValue net) {
        String label = lot.lot().label();
        return new Draft(FigureKind.LOTS, "Net mass of lot " + label)
                .equation("m = gross − tare, or the net mass as entered")
                .equation("m = "
                        + Weighings.of(
                                        lot.lot().weighing().grossGrams(),
                                        lot.lot().weighing().tareGrams(),
                                        lot.lot().weighing().netGrams(),
                                        numbers)
                                .orElse("?"))
                .result(net, "g", numbers);
    }

    private Explanation overTheory(RunTally tally, LotTally lot, MeasuredValue percent) {
        Optional<Theory.ProductTheory> theory = tally.theory().stream()
                .flatMap(t -> t.products().stream())
                .filter(p -> p.isOf(lot.product()))
                .findFirst();
        return new Draft(FigureKind.LOTS, "Lot " + lot.lot().label() + " over theory of " + lot.product())
                .equation("100·m/m(theory)")
                .equation("100 × " + numbers.plain(lot.netGrams()) + " g" + asCounted(lot) + " / "
                        + numbers.plain(theory.map(Theory.ProductTheory::massGrams)) + " g")
                .note("Whatever the lot holds is counted: this is no yield.")
                .result(percent, "%", numbers);
    }

    /** The factor of a lot in another form than the one that theory is in. */
    private String asCounted(LotTally lot) {
        return lot.gramsPerGram() == 1
                ? ""
                : " × " + numbers.plain(lot.gramsPerGram()) + " (" + lot.lot().product() + " as " + lot.product() + ")";
    }

    private Explanation product(LotTally lot, MeasuredValue pure) {
        String assay = numbers.entry(lot.lot().assayPercent(), "%")
                .map(a -> " = " + a.replace(" [", "/100 ["))
                .orElse("");
        return new Draft(FigureKind.LOTS, lot.product() + " in lot " + lot.lot().label())
                .equation("m(product) = m·w")
                .equation("m(product) = " + numbers.plain(lot.netGrams()) + " g × "
                        + numbers.plain(lot.productFraction()) + asCounted(lot) + "; w" + assay + ", basis "
                        + lot.basis().word())
                .result(pure, "g", numbers);
    }
}
