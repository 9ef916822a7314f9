package workuptally.published;

import java.util.NoSuchElementException;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field.Entered;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Theory;
import workuptally.tally.bench.Contact;

/** Looks up the figures of a tallied run that a published procedure is checked by. */
final class ProcedureFigures {
    private final RunTally tally;

    ProcedureFigures(RunTally tally) {
        this.tally = tally;
    }

    String text(ProcedureCase.Expected expected) {
        if (expected.figure().equals("limitingMaterial")) {
            return theory().limiting().get(0).material();
        }
        throw new NoSuchElementException(expected.figure());
    }

    double number(ProcedureCase.Expected expected) {
        String subject = expected.subject();
        return switch (expected.figure()) {
            case "amountMillimoles" -> amountMillimoles(subject);
            case "theoryGrams" -> theoryGrams(subject);
            case "overTheoryPercent" -> overTheoryPercent(subject);
            case "yieldPercent" -> yieldPercent(subject);
            case "workupMillilitres" -> workupMillilitres(subject);
            case "fillPercent" -> fillPercent(subject);
            default -> throw new NoSuchElementException(expected.figure());
        };
    }

    private Theory theory() {
        return tally.theory().orElseThrow();
    }

    private double amountMillimoles(String material) {
        return tally.amounts().stream()
                .filter(a -> a.charge().material().equals(material))
                .findFirst()
                .flatMap(a -> a.amountMillimoles())
                .map(MeasuredValue::value)
                .orElseThrow();
    }

    private double theoryGrams(String product) {
        return theory().products().stream()
                .filter(p -> p.product().name().equals(product))
                .findFirst()
                .orElseThrow()
                .massGrams()
                .value();
    }

    private double overTheoryPercent(String lot) {
        return tally.lots().stream()
                .filter(l -> l.lot().label().equals(lot))
                .findFirst()
                .flatMap(l -> l.overTheoryPercent())
                .orElseThrow()
                .value();
    }

    /** The yield of what was isolated in the end: after purification where there was one. */
    private double yieldPercent(String product) {
        return tally.yields().stream()
                .filter(y -> y.product().name().equals(product))
                .reduce((workup, purified) -> purified)
                .map(ProductYield::percent)
                .orElseThrow()
                .value();
    }

    private double workupMillilitres(String material) {
        return tally.run().steps().stream()
                .filter(s -> s.added().material().equals(material))
                .mapToDouble(s -> s.added()
                                .volumeMillilitres()
                                .entered()
                                .map(Entered::value)
                                .orElse(0.0)
                        * s.added().portionCount())
                .sum();
    }

    private double fillPercent(String step) {
        return tally.contacts().stream()
                .filter(c -> c.step().number().equals(step))
                .filter(Contact::funnelRecorded)
                .findFirst()
                .orElseThrow()
                .fillPercent();
    }

    /** Volume the solvent account counts for the workup and purification, mL. */
    static double accountedMillilitres(RunTally tally, String solvent) {
        return tally.solvents().stream()
                .filter(s -> s.solvent().equalsIgnoreCase(solvent))
                .mapToDouble(s -> (s.workupGrams() + s.purificationGrams()) / s.densityGramsPerMillilitre())
                .sum();
    }
}
