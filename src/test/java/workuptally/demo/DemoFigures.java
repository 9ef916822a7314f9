package workuptally.demo;

import java.util.NoSuchElementException;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.tally.Closure;
import workuptally.tally.Content;
import workuptally.tally.LotTally;
import workuptally.tally.MassBalance;
import workuptally.tally.ProductYield;
import workuptally.tally.RunTally;
import workuptally.tally.Theory;

/** Looks up a figure of the key in the results of a run. */
final class DemoFigures {
    private static final double COVERAGE_FACTOR = 2;

    private DemoFigures() {}

    static String text(RunTally tally, KeyFigure figure) {
        return switch (figure.figure()) {
            case "limitingMaterial" -> theory(tally).limiting().get(0).material();
            case "verdict" -> closure(tally, figure).verdict().word();
            default -> throw new NoSuchElementException(figure.figure());
        };
    }

    static double number(RunTally tally, KeyFigure figure) {
        return switch (figure.figure()) {
            case "theoryGrams" -> productTheory(tally, figure).massGrams().value();
            case "limitingMillimoles" ->
                theory(tally).limiting().get(0).amountMillimoles().value();
            case "crudeOverTheoryPercent" -> value(lot(tally, figure).overTheoryPercent());
            case "yieldPercent" ->
                yieldOf(tally, figure, ProductYield.Stage.WORKUP).percent().value();
            case "yieldExpandedUncertaintyPercent" ->
                yieldOf(tally, figure, ProductYield.Stage.WORKUP).percent().expandedUncertainty(COVERAGE_FACTOR);
            case "purifiedYieldPercent" ->
                yieldOf(tally, figure, ProductYield.Stage.PURIFIED).percent().value();
            case "aliquotCorrectedPercent" ->
                value(yieldOf(tally, figure, ProductYield.Stage.WORKUP).aliquotCorrectedPercent());
            case "conversionAdjustedPercent" ->
                value(yieldOf(tally, figure, ProductYield.Stage.WORKUP).conversionAdjustedPercent());
            case "closurePercent" -> closure(tally, figure).percent().value();
            case "closureExpandedUncertaintyPercent" -> closure(tally, figure).expandedUncertaintyPercent();
            case "unaccountedGrams" -> closure(tally, figure).unaccountedGrams();
            case "layerGrams" -> value(content(tally, figure).massGrams());
            case "layerPercentOfTheory" -> content(tally, figure).percentOf().orElseThrow();
            case "upperBoundGrams" -> content(tally, figure).upperBoundGrams().orElseThrow();
            case "massInGrams" -> mass(tally).inGrams().value();
            case "massOutGrams" -> mass(tally).outGrams().value();
            case "massGapGrams" -> mass(tally).gapGrams().value();
            case "organicSolventGrams" -> mass(tally).organicSolventGrams();
            case "gapPercentOfOrganic" -> mass(tally).gapPercentOfOrganic();
            default -> throw new NoSuchElementException(figure.figure());
        };
    }

    private static double value(Optional<MeasuredValue> value) {
        return value.orElseThrow().value();
    }

    private static Theory theory(RunTally tally) {
        return tally.theory().orElseThrow();
    }

    private static MassBalance mass(RunTally tally) {
        return tally.massBalance().orElseThrow();
    }

    private static Theory.ProductTheory productTheory(RunTally tally, KeyFigure figure) {
        return theory(tally).products().stream()
                .filter(p -> p.product().name().equals(figure.subject()))
                .findFirst()
                .orElseThrow();
    }

    private static LotTally lot(RunTally tally, KeyFigure figure) {
        return tally.lots().stream()
                .filter(l -> l.lot().label().equals(figure.subject()))
                .findFirst()
                .orElseThrow();
    }

    private static ProductYield yieldOf(RunTally tally, KeyFigure figure, ProductYield.Stage stage) {
        return tally.yields().stream()
                .filter(y -> y.stage() == stage && y.product().name().equals(figure.subject()))
                .findFirst()
                .orElseThrow();
    }

    private static Closure closure(RunTally tally, KeyFigure figure) {
        return tally.closures().stream()
                .filter(c -> c.skeleton().equals(figure.subject()))
                .findFirst()
                .orElseThrow();
    }

    private static Content content(RunTally tally, KeyFigure figure) {
        String[] parts = figure.subject().split("/", 2);
        return tally.layer(parts[0]).orElseThrow().contents().stream()
                .filter(c -> c.substance().equals(parts[1]))
                .findFirst()
                .orElseThrow();
    }
}
