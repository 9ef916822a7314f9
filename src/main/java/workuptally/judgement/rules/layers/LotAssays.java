package workuptally.judgement.rules.layers;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import workuptally.judgement.rules.FindingList;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Assay;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.FindingCode;
import workuptally.model.Lot;
import workuptally.model.NmrAssay;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.model.SubstanceName;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.InstrumentUncertainty;
import workuptally.tally.amounts.MolarMassAccount;
import workuptally.tally.amounts.NmrPurity;
import workuptally.tally.amounts.Substances;

/** The assay of a lot in Isolated beside what Assays and NMR assays give for it: the first counts, and a difference is asked about. */
final class LotAssays {
    private final Substances substances;
    private final RunTally tally;
    private final Book book;

    LotAssays(Substances substances, RunTally tally, Book book) {
        this.substances = substances;
        this.tally = tally;
        this.book = book;
    }

    void judge(FindingList findings) {
        for (Lot lot : tally.run().lots()) {
            Optional<Entered> typed = lot.assayPercent().entered();
            List<Assay> rows = tally.run().assays().stream()
                    .filter(a -> a.sample().equals(lot.label())
                            && a.isOf(lot.product())
                            && a.unit()
                                    .filter(u -> u == Assay.Unit.MASS_PERCENT)
                                    .isPresent()
                            && a.result().entered().isPresent())
                    .toList();
            typed.flatMap(t -> others(t, rows))
                    .ifPresent(others -> differs(findings, lot, typed.get(), others, "Isolated"));
            Optional<Entered> row =
                    rows.stream().findFirst().flatMap(a -> a.result().entered());
            typed.or(() -> row)
                    .ifPresent(used -> besideNmr(findings, lot, used, typed.isPresent() ? "Isolated" : "Assays"));
        }
    }

    /** The results in Assays that are not the one in Isolated; none where that is the mean of several which agree with it. */
    private Optional<String> others(Entered typed, List<Assay> rows) {
        List<Entered> results =
                rows.stream().flatMap(a -> a.result().entered().stream()).toList();
        String others = results.stream()
                .filter(result -> result.value() != typed.value())
                .map(Entered::asTyped)
                .distinct()
                .collect(Collectors.joining(" and "));
        boolean isMean = rows.size() > 1
                && rounded(typed.value(), typed.decimals())
                                .compareTo(rounded(
                                        results.stream()
                                                .mapToDouble(Entered::value)
                                                .average()
                                                .orElseThrow(),
                                        typed.decimals()))
                        == 0
                && rows.stream().allMatch(row -> agrees(typed, row));
        return others.isEmpty() || isMean ? Optional.empty() : Optional.of(others + " % in Assays");
    }

    private boolean agrees(Entered typed, Assay row) {
        Entered result = row.result().entered().orElseThrow();
        double u = new InstrumentUncertainty(book.limits()).assayFraction(row, result) * result.value();
        return Math.abs(result.value() - typed.value()) <= substances.value(Threshold.READINGS_AGREE) * u;
    }

    private static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }

    /** Two results of one lot agree within k times their standard uncertainties together, as two readings of one portion do. */
    private void besideNmr(FindingList findings, Lot lot, Entered used, String table) {
        OptionalDouble molarMass = new MolarMassAccount(tally.run(), substances).of(lot.product());
        for (NmrAssay assay : tally.run().nmrAssays()) {
            boolean ofLot = assay.sample().equals(lot.label()) && SubstanceName.same(assay.substance(), lot.product());
            if (!ofLot || molarMass.isEmpty()) {
                continue;
            }
            Optional<MeasuredValue> found =
                    new NmrPurity(new Readings(), book.limits()).fraction(assay, molarMass.getAsDouble());
            Optional<MeasuredValue> counted = tally.lots().stream()
                    .filter(l -> l.lot() == lot)
                    .flatMap(l -> l.productFraction().stream())
                    .findFirst();
            if (found.isPresent()
                    && counted.isPresent()
                    && Math.abs(found.get().value() - counted.get().value())
                            > substances.value(Threshold.READINGS_AGREE)
                                    * Math.hypot(
                                            found.get().standardUncertainty(),
                                            counted.get().standardUncertainty())) {
                differs(
                        findings,
                        lot,
                        used,
                        Phrase.of(
                                "{} by NMR assays",
                                Figure.decimals(100 * found.get().value(), 1, "%")),
                        table);
            }
        }
    }

    private static void differs(FindingList findings, Lot lot, Entered used, Object other, String table) {
        findings.add(
                FindingCode.LOT_ASSAY_DIFFERS,
                Severity.CHECK,
                used.place(),
                Phrase.of("lot {}: assay {} % in {}, {}; the first is used", lot.label(), used.asTyped(), table, other),
                Phrase.of("one assay of the lot"),
                FindingList.PRACTICE,
                Phrase.of("Keep the assay that the yield shall rest on and note the other."));
    }
}
