package workuptally.published;

import java.util.List;
import workuptally.measure.Contribution;
import workuptally.measure.MeasuredValue;
import workuptally.measure.NormalDistribution;
import workuptally.measure.Readings;
import workuptally.measure.StandardUncertainty;

/** Runs the code under test on the inputs of the uncertainty cases. */
final class UncertaintyFigures {
    private UncertaintyFigures() {}

    static CaseFigures of(PublishedCase each) {
        return switch (each.kind()) {
            case "calibration standard" -> calibrationStandard(each);
            case "titration" -> titration(each);
            case "end gauge" -> endGauge(each);
            case "straight line" -> straightLine(each);
            default -> throw new IllegalStateException("no computation for " + each.kind());
        };
    }

    private static double part(MeasuredValue value, String reading) {
        for (Contribution each : value.budget()) {
            if (each.reading().name().equals(reading)) {
                return Math.abs(each.sensitivity()) * each.reading().standardUncertainty();
            }
        }
        throw new IllegalStateException("no part " + reading);
    }

    private static CaseFigures calibrationStandard(PublishedCase each) {
        Readings readings = new Readings();
        MeasuredValue mass =
                readings.enter("mass", "mg", each.number("massMilligrams"), each.number("massU"), () -> "-");
        MeasuredValue purity = readings.enter(
                "purity",
                "1",
                each.number("purity"),
                StandardUncertainty.rectangular(each.number("purityHalfWidth")),
                () -> "-");
        MeasuredValue volume = readings.exact(each.number("volumeMillilitres"))
                .plus(readings.enter("flask", "mL", 0, triangular(each.number("flaskHalfWidth")), () -> "-"))
                .plus(readings.enter("repeatability", "mL", 0, each.number("repeatabilityU"), () -> "-"))
                .plus(readings.enter(
                        "temperature",
                        "mL",
                        0,
                        StandardUncertainty.rectangular(each.number("temperatureHalfWidth")),
                        () -> "-"));
        MeasuredValue concentration = mass.times(purity).times(1000).over(volume);
        CaseFigures figures = new CaseFigures()
                .with("concentration", concentration.value())
                .with("u", concentration.standardUncertainty());
        for (String name : List.of("mass", "temperature", "flask", "repeatability", "purity")) {
            figures.with("u " + name, part(concentration, name));
        }
        return figures;
    }

    /** JCGM 100:2008, 4.3.9. */
    private static double triangular(double halfWidth) {
        return halfWidth / Math.sqrt(6);
    }

    private static MeasuredValue volume(
            Readings readings, PublishedCase each, String name, double value, double nominal, String halfWidth) {
        double temperature = nominal * each.number("expansionPerKelvin") * each.number("temperatureKelvin");
        double u = Math.hypot(triangular(each.number(halfWidth)), StandardUncertainty.rectangular(temperature));
        return readings.enter(name, "mL", value, u, () -> "-");
    }

    private static CaseFigures titration(PublishedCase each) {
        double repeatability = each.number("repeatabilityU");
        MeasuredValue a = titration(each, repeatability, 0, 0);
        MeasuredValue b = titration(each, StandardUncertainty.rectangular(repeatability), 0, 0);
        MeasuredValue c = titration(
                each,
                StandardUncertainty.rectangular(repeatability),
                each.number("biasMillilitres"),
                each.number("biasU"));
        return new CaseFigures()
                .with("a", a.value())
                .with("a u", a.standardUncertainty())
                .with("b", b.value())
                .with("b u", b.standardUncertainty())
                .with("c", c.value())
                .with("c u", c.standardUncertainty());
    }

    private static MeasuredValue titration(PublishedCase each, double repeatabilityU, double bias, double biasU) {
        Readings readings = new Readings();
        double weighing = StandardUncertainty.rectangular(each.number("massHalfWidth"));
        MeasuredValue mass =
                readings.enter("mass", "g", each.number("massGrams"), Math.hypot(weighing, weighing), () -> "-");
        MeasuredValue purity = readings.enter(
                "purity",
                "1",
                each.number("purity"),
                StandardUncertainty.rectangular(each.number("purityHalfWidth")),
                () -> "-");
        MeasuredValue second = volume(
                        readings,
                        each,
                        "second titre",
                        each.number("secondTitreMillilitres"),
                        each.number("secondTitreNominal"),
                        "buretteHalfWidth")
                .minus(readings.enter("bias of the second", "mL", bias, biasU, () -> "-"));
        MeasuredValue first = volume(
                        readings,
                        each,
                        "first titre",
                        each.number("firstTitreMillilitres"),
                        each.number("firstTitreNominal"),
                        "buretteHalfWidth")
                .minus(readings.enter("bias of the first", "mL", bias, biasU, () -> "-"));
        MeasuredValue acid = volume(
                readings,
                each,
                "acid",
                each.number("acidMillilitres"),
                each.number("acidMillilitres"),
                "pipetteHalfWidth");
        MeasuredValue repeatability = readings.enter("repeatability", "1", 1, repeatabilityU, () -> "-");
        return mass.times(purity)
                .times(second)
                .times(1000)
                .over(first)
                .over(acid)
                .over(each.number("gramsPerMole"))
                .times(repeatability);
    }

    private static CaseFigures endGauge(PublishedCase each) {
        Readings readings = new Readings();
        MeasuredValue standard = readings.enter(
                "standard",
                "nm",
                each.number("standardNanometres"),
                each.number("standardU"),
                each.number("standardDegrees"),
                () -> "-");
        MeasuredValue difference = readings.exact(each.number("differenceNanometres"));
        for (int i = 0; i < each.numbers("differenceParts").size(); i++) {
            difference = difference.plus(readings.enter(
                    "difference, part " + i,
                    "nm",
                    0,
                    each.numbers("differenceParts").get(i),
                    each.numbers("differenceDegrees").get(i),
                    () -> "-"));
        }
        MeasuredValue expansion = readings.enter(
                "expansion",
                "1/K",
                each.number("expansionPerKelvin"),
                StandardUncertainty.rectangular(each.number("expansionHalfWidth")),
                () -> "-");
        MeasuredValue expansionDifference = readings.enter(
                "expansion difference",
                "1/K",
                0,
                StandardUncertainty.rectangular(each.number("expansionDifferenceHalfWidth")),
                each.number("expansionDifferenceDegrees"),
                () -> "-");
        double deviationU =
                Math.hypot(each.number("deviationMeanU"), each.number("deviationArcsineHalfWidth") / Math.sqrt(2));
        MeasuredValue deviation =
                readings.enter("deviation", "K", each.number("deviationKelvin"), deviationU, () -> "-");
        MeasuredValue temperatureDifference = readings.enter(
                "temperature difference",
                "K",
                0,
                StandardUncertainty.rectangular(each.number("temperatureDifferenceHalfWidth")),
                each.number("temperatureDifferenceDegrees"),
                () -> "-");
        MeasuredValue length = standard.plus(difference)
                .minus(standard.times(
                        expansionDifference.times(deviation).plus(expansion.times(temperatureDifference))));
        double k = NormalDistribution.quantile((1 + each.number("confidence")) / 2);
        return new CaseFigures()
                .with("length", length.value())
                .with("u", length.standardUncertainty())
                .with("u standard", part(length, "standard"))
                .with("u temperature difference", part(length, "temperature difference"))
                .with("u expansion difference", part(length, "expansion difference"))
                .with("degrees of freedom", Math.floor(length.effectiveDegreesOfFreedom()))
                .with("coverage factor", length.coverageFactor(k))
                .with("expanded", length.expandedUncertainty(k));
    }

    private static CaseFigures straightLine(PublishedCase each) {
        List<Double> temperatures = each.numbers("temperaturesCelsius");
        List<Double> corrections = each.numbers("correctionsCelsius");
        double reference = each.number("referenceCelsius");
        int n = temperatures.size();
        double mean =
                temperatures.stream().mapToDouble(t -> t - reference).average().orElseThrow();
        double squares = temperatures.stream()
                .mapToDouble(t -> (t - reference - mean) * (t - reference - mean))
                .sum();
        double residual = residual(temperatures, corrections, reference, mean, squares);
        Readings readings = new Readings();
        MeasuredValue sum = readings.exact(0);
        MeasuredValue slope = readings.exact(0);
        for (int i = 0; i < n; i++) {
            MeasuredValue correction = readings.enter("b" + i, "°C", corrections.get(i), residual, () -> "-");
            sum = sum.plus(correction);
            slope = slope.plus(correction.times((temperatures.get(i) - reference - mean) / squares));
        }
        MeasuredValue intercept = sum.over(n).minus(slope.times(mean));
        MeasuredValue predicted = intercept.plus(slope.times(each.number("predictAtCelsius") - reference));
        double together = intercept.plus(slope).standardUncertainty();
        double correlation = (together * together
                        - Math.pow(intercept.standardUncertainty(), 2)
                        - Math.pow(slope.standardUncertainty(), 2))
                / (2 * intercept.standardUncertainty() * slope.standardUncertainty());
        return new CaseFigures()
                .with("intercept", intercept.value())
                .with("intercept u", intercept.standardUncertainty())
                .with("slope", slope.value())
                .with("slope u", slope.standardUncertainty())
                .with("correlation", correlation)
                .with("residual", residual)
                .with("predicted", predicted.value())
                .with("predicted u", predicted.standardUncertainty());
    }

    private static double residual(
            List<Double> temperatures, List<Double> corrections, double reference, double mean, double squares) {
        double level =
                corrections.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double slope = 0;
        for (int i = 0; i < corrections.size(); i++) {
            slope += corrections.get(i) * (temperatures.get(i) - reference - mean) / squares;
        }
        double sum = 0;
        for (int i = 0; i < corrections.size(); i++) {
            double miss = corrections.get(i) - level - slope * (temperatures.get(i) - reference - mean);
            sum += miss * miss;
        }
        return Math.sqrt(sum / (corrections.size() - 2));
    }
}
