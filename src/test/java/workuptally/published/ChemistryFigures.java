package workuptally.published;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import tools.jackson.databind.JsonNode;
import workuptally.chemistry.AcidBase;
import workuptally.chemistry.Antoine;
import workuptally.chemistry.AtomicWeights;
import workuptally.chemistry.Distribution;
import workuptally.chemistry.Drying;
import workuptally.chemistry.Extraction;
import workuptally.chemistry.Formula;
import workuptally.chemistry.IdealGas;
import workuptally.chemistry.IndividualsChart;
import workuptally.chemistry.Mixture;
import workuptally.chemistry.Statistics;
import workuptally.examples.SmallBook;
import workuptally.material.MaterialReader;
import workuptally.measure.ToleranceFactor;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.reference.Reference;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.Solvent;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.LotTally;

/** Runs the code under test on the inputs of the chemistry cases. */
final class ChemistryFigures {
    private static final MaterialReader NAMES = MaterialReader.packed();
    private final Reference reference = Reference.load();
    private final AtomicWeights weights = ReferenceWeights.load();

    CaseFigures of(PublishedCase each) {
        return switch (each.kind()) {
            case "repeated extraction" -> repeatedExtraction(each);
            case "stepwise extraction" -> stepwiseExtraction(each);
            case "acid extraction", "base extraction" -> ionisedExtraction(each);
            case "residual solvent" -> residualSolvent(each);
            case "internal standard" -> internalStandard(each);
            case "corrected yield" -> correctedYield(each);
            case "gas from salt" -> gasFromSalt(each);
            case "molar volume" -> molarVolume(each);
            case "vapour pressure" -> vapourPressure(each);
            case "individuals chart" -> individualsChart(each);
            case "summary" -> summary(each);
            case "tolerance factors" -> toleranceFactors(each);
            case "chart constants" -> chartConstants();
            case "hydrate" -> hydrate(each);
            case "uptake" -> uptake(each);
            case "wet layer" -> wetLayer(each);
            case "weighted harmonic sum" -> weightedHarmonicSum(each);
            case "regulatory limits" -> regulatoryLimits(each);
            case "mixture" -> mixture(each);
            case "flash points" -> flashPoints(each);
            case "fill rule" -> fillRule(each);
            case "lower layer" -> lowerLayer(each);
            case "carbonate gas" -> carbonateGas(each);
            case "small portions" -> smallPortions(each);
            case "brine first" -> brineFirst();
            default -> throw new IllegalStateException("no computation for " + each.kind());
        };
    }

    private static CaseFigures toleranceFactors(PublishedCase each) {
        CaseFigures figures = new CaseFigures();
        for (JsonNode row : each.inputs().get("rows")) {
            int count = row.get("n").asInt();
            double share = row.get("share").asDouble();
            double confidence = row.get("confidence").asDouble();
            figures.with(count + " " + share + " " + confidence, ToleranceFactor.oneSided(count, share, confidence));
        }
        return figures;
    }

    private double molarMass(String formula) {
        return Formula.parse(formula).molarMass(weights).gramsPerMole();
    }

    private static CaseFigures repeatedExtraction(PublishedCase each) {
        CaseFigures figures = new CaseFigures();
        int number = 1;
        for (JsonNode scheme : each.inputs().get("schemes")) {
            double left = Extraction.fractionLeft(
                    each.number("distributionRatio"),
                    scheme.get("organicMillilitres").asDouble(),
                    each.number("aqueousMillilitres"),
                    scheme.get("portions").asInt());
            figures.with("fractionLeft " + number, left)
                    .with("percentLeft " + number, 100 * left)
                    .with("fractionExtracted " + number, 1 - left)
                    .with("percentExtracted " + number, 100 * (1 - left));
            number++;
        }
        return figures;
    }

    private static CaseFigures stepwiseExtraction(PublishedCase each) {
        CaseFigures figures = new CaseFigures();
        double ratio = each.number("distributionRatio");
        double organic = each.number("organicMillilitres");
        double aqueous = each.number("aqueousMillilitres");
        int portions = each.count("portions");
        double left = each.number("massGrams");
        for (int i = 0; i < portions; i++) {
            double gained = Extraction.gainGrams(left, ratio, organic, aqueous, 1);
            figures.with("extracted " + (i + 1), gained);
            left -= gained;
        }
        return figures.with("total", Extraction.gainGrams(each.number("massGrams"), ratio, organic, aqueous, portions))
                .with(
                        "portionsNeeded",
                        IntStream.rangeClosed(1, portions)
                                .filter(n -> Extraction.fractionLeft(ratio, organic, aqueous, n)
                                        <= each.number("largestFractionLeft"))
                                .findFirst()
                                .orElseThrow());
    }

    private static CaseFigures ionisedExtraction(PublishedCase each) {
        CaseFigures figures = new CaseFigures();
        List<Double> pKa = List.of(each.number("pKa"));
        for (double pH : each.numbers("pH")) {
            double ratio = each.kind().startsWith("acid")
                    ? Distribution.acid(each.number("partitionRatio"), pKa, pH)
                    : Distribution.base(each.number("partitionRatio"), pKa, pH);
            double left = Extraction.fractionLeft(
                    ratio, each.number("organicMillilitres"), each.number("aqueousMillilitres"), 1);
            figures.with("distributionRatio " + pH, ratio)
                    .with("fractionLeft " + pH, left)
                    .with("percentExtracted " + pH, 100 * (1 - left));
        }
        return figures;
    }

    /** A crude lot with the mole ratio of the solvent in the Assays table. */
    private static CaseFigures residualSolvent(PublishedCase each) {
        double ratio = each.number("solventIntegral")
                / each.number("solventNuclei")
                / (each.number("productIntegral") / each.number("productNuclei"));
        RunTally tally = lot(each.number("startGrams"), each.number("productGramsPerMole"), each.number("crudeGrams"))
                .first("charges", "Molar mass", each.text("startGramsPerMole"))
                .row("assays", "Sample", "C1", "Substance", "dichloromethane", "Method", "NMR")
                .but("assays", "Result", Double.toString(ratio))
                .but("assays", "Unit", "mol ratio to product")
                .tally();
        LotTally lot = tally.lots().get(0);
        double theory =
                tally.theory().orElseThrow().products().get(0).massGrams().value();
        double product = lot.pureGrams().orElseThrow().value();
        return new CaseFigures()
                .with("molePercentProduct", 100 / (1 + ratio))
                .with(
                        "massPercentProduct",
                        100 * lot.productFraction().orElseThrow().value())
                .with("theoryGrams", theory)
                .with("productGrams", product)
                .with("yieldPercent", 100 * product / theory);
    }

    /** The sample as a lot with a row of the NMR assays table. */
    private static CaseFigures internalStandard(PublishedCase each) {
        double sampleGrams = each.number("sampleMilligrams") / 1000;
        LotTally lot = lot(1, each.number("analyteGramsPerMole"), sampleGrams)
                .row("nmr-assays", "Sample", "C1", "Substance", "P", "Standard", "standard")
                .but("nmr-assays", "Standard molar mass", each.text("standardGramsPerMole"))
                .but("nmr-assays", "Standard purity", each.text("standardPurityPercent"))
                .but("nmr-assays", "Standard mass", each.text("standardMilligrams"))
                .but("nmr-assays", "Sample mass", each.text("sampleMilligrams"))
                .but("nmr-assays", "Standard integral", each.text("standardIntegral"))
                .but("nmr-assays", "Standard nuclei", each.text("standardNuclei"))
                .but("nmr-assays", "Substance integral", each.text("analyteIntegral"))
                .but("nmr-assays", "Substance nuclei", each.text("analyteNuclei"))
                .tally()
                .lots()
                .get(0);
        return new CaseFigures()
                .with("purityPercent", 100 * lot.productFraction().orElseThrow().value())
                .with("analyteGrams", lot.pureGrams().orElseThrow().value());
    }

    private static SmallBook lot(double startGrams, double productGramsPerMole, double netGrams) {
        return SmallBook.reaction()
                .first("charges", "Actual amount", Double.toString(startGrams))
                .first("products", "Molar mass", Double.toString(productGramsPerMole))
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", Double.toString(netGrams));
    }

    private static CaseFigures correctedYield(PublishedCase each) {
        double crude = 100 * each.number("massGrams") / each.number("theoryGrams");
        return new CaseFigures()
                .with("uncorrectedPercent", crude)
                .with("correctedPercent", crude * each.number("purityPercent") / 100);
    }

    private CaseFigures gasFromSalt(PublishedCase each) {
        Formula salt = Formula.parse(each.text("formula"));
        double millimoles =
                1000 * each.number("massGrams") / salt.molarMass(weights).gramsPerMole();
        boolean hydrogencarbonate = salt.count("H") > 0;
        double gas = AcidBase.carbonDioxideMillimoles(
                each.number("acidMillimoles"), hydrogencarbonate ? 0 : millimoles, hydrogencarbonate ? millimoles : 0);
        double temperature = each.number("temperatureCelsius");
        double pressure = each.number("pressureKilopascals");
        return new CaseFigures()
                .with("litres", IdealGas.volumeLitres(gas / 1000, temperature, pressure))
                .with("molarLitres", IdealGas.volumeLitres(1, temperature, pressure));
    }

    private static CaseFigures molarVolume(PublishedCase each) {
        CaseFigures figures = new CaseFigures();
        for (double pressure : each.numbers("pressuresKilopascals")) {
            figures.with("litres " + pressure, IdealGas.volumeLitres(1, each.number("temperatureCelsius"), pressure));
        }
        return figures;
    }

    private CaseFigures vapourPressure(PublishedCase each) {
        Solvent.Antoine set = NAMES.read(each.text("solvent"))
                .solvent()
                .orElseThrow()
                .volatility()
                .antoine()
                .orElseThrow();
        Antoine equation = new Antoine(set.a(), set.b(), set.c(), set.fromCelsius(), set.toCelsius());
        return new CaseFigures().with("kilopascals", equation.kilopascals(each.number("temperatureCelsius")));
    }

    private static CaseFigures individualsChart(PublishedCase each) {
        List<Double> values = each.numbers("values");
        IndividualsChart chart = IndividualsChart.of(values);
        return new CaseFigures()
                .with("centre", chart.centre())
                .with("meanMovingRange", chart.meanMovingRange())
                .with("upperLimit", chart.upperLimit())
                .with("lowerLimit", chart.lowerLimit())
                .with("movingRangeLimit", chart.movingRangeLimit())
                .with("signals", chart.signals(values).size());
    }

    private static CaseFigures summary(PublishedCase each) {
        List<Double> values = new ArrayList<>();
        if (each.inputs().has("values")) {
            values.addAll(each.numbers("values"));
        } else {
            values.add(each.number("first"));
            for (int i = 0; i < each.count("pairs"); i++) {
                values.addAll(each.numbers("pair"));
            }
        }
        return new CaseFigures()
                .with("mean", Statistics.mean(values))
                .with("standardDeviation", Statistics.standardDeviation(values));
    }

    private static CaseFigures chartConstants() {
        return new CaseFigures()
                .with("d2", IndividualsChart.D2)
                .with("upperRangeFactor", IndividualsChart.D4)
                .with("limitFactor", new IndividualsChart(0, 1).upperLimit());
    }

    private CaseFigures hydrate(PublishedCase each) {
        double share = molarMass(each.text("dry")) / molarMass(each.text("hydrate"));
        double mass = each.number("massGrams");
        return new CaseFigures()
                .with("dryGrams", mass * share)
                .with("waterGrams", mass * (1 - share))
                .with("waterPercent", 100 * (1 - share));
    }

    private CaseFigures uptake(PublishedCase each) {
        CaseFigures figures = new CaseFigures();
        int number = 1;
        for (JsonNode pair : each.inputs().get("pairs")) {
            figures.with(
                    "uptake " + number++,
                    molarMass(pair.get(1).asString()) / molarMass(pair.get(0).asString()) - 1);
        }
        return figures;
    }

    private CaseFigures wetLayer(PublishedCase each) {
        double millilitres = each.number("millilitres");
        double low = millilitres * each.numbers("milligramsPerMillilitre").get(0) / 1000;
        double high = millilitres * each.numbers("milligramsPerMillilitre").get(1) / 1000;
        double uptake = NAMES.read(each.text("agent"))
                .dryingAgent()
                .orElseThrow()
                .uptake()
                .theoreticalGramsPerGram();
        Solvent solvent = NAMES.read(each.text("solvent")).solvent().orElseThrow();
        return new CaseFigures()
                .with("waterLow", low)
                .with("waterHigh", high)
                .with("removedLow", low * each.numbers("removedPercent").get(0) / 100)
                .with("removedHigh", high * each.numbers("removedPercent").get(1) / 100)
                .with("agentLow", Drying.agentGrams(low, uptake, 1))
                .with("agentHigh", Drying.agentGrams(high, uptake, 1))
                .with(
                        "saturatedSolventGrams",
                        Drying.waterToBindGrams(
                                millilitres * solvent.density().gramsPerMillilitre(),
                                millilitres,
                                solvent.waterMixing()
                                        .waterInSolventMassPercent()
                                        .orElseThrow(),
                                0));
    }

    private static CaseFigures weightedHarmonicSum(PublishedCase each) {
        List<Mixture.Part> parts = new ArrayList<>();
        for (int i = 0; i < each.numbers("percents").size(); i++) {
            parts.add(new Mixture.Part(
                    each.numbers("percents").get(i), each.numbers("values").get(i)));
        }
        return new CaseFigures().with("estimate", 100 / Mixture.volumeMillilitres(parts));
    }

    private CaseFigures regulatoryLimits(PublishedCase each) {
        CaseFigures figures = new CaseFigures();
        each.expected()
                .forEach(expected -> figures.with(
                        expected.figure(),
                        reference.regulatoryLimits().stream()
                                .filter(row -> row.key().equals(expected.figure()))
                                .findFirst()
                                .orElseThrow()
                                .value()
                                .orElseThrow()));
        return figures;
    }

    private CaseFigures mixture(PublishedCase each) {
        CaseFigures figures = new CaseFigures();
        List<Mixture.Part> parts = new ArrayList<>();
        double chlorineGrams = 0;
        for (JsonNode part : each.inputs().get("parts")) {
            double grams =
                    part.get("millilitres").asDouble() * part.get("density").asDouble();
            parts.add(new Mixture.Part(grams, part.get("density").asDouble()));
            Formula formula = Formula.parse(part.get("formula").asString());
            double chlorine = formula.count("Cl")
                    * Formula.parse("Cl").molarMass(weights).gramsPerMole()
                    / formula.molarMass(weights).gramsPerMole();
            figures.with("chlorineFraction " + parts.size(), chlorine);
            chlorineGrams += grams * chlorine;
        }
        double total = parts.stream().mapToDouble(Mixture.Part::massGrams).sum();
        for (int i = 0; i < parts.size(); i++) {
            figures.with("massPercent " + (i + 1), 100 * parts.get(i).massGrams() / total);
        }
        return figures.with("totalGrams", total)
                .with("totalMillilitres", Mixture.volumeMillilitres(parts))
                .with("density", total / Mixture.volumeMillilitres(parts))
                .with("chlorinePercent", 100 * chlorineGrams / total);
    }

    private CaseFigures flashPoints(PublishedCase each) {
        CaseFigures figures = new CaseFigures();
        each.expected()
                .forEach(expected -> figures.with(
                        expected.figure(),
                        Double.parseDouble(NAMES.read(expected.figure())
                                .solvent()
                                .orElseThrow()
                                .hazards()
                                .flashPoint()
                                .orElseThrow())));
        return figures;
    }

    private static CaseFigures fillRule(PublishedCase each) {
        CaseFigures figures = new CaseFigures();
        each.expected()
                .forEach(expected ->
                        figures.with(expected.figure(), Limits.defaults().value(Limit.FUNNEL_FILL) / 100));
        return figures;
    }

    private double density(String solvent) {
        return NAMES.read(solvent).solvent().orElseThrow().density().gramsPerMillilitre();
    }

    private CaseFigures lowerLayer(PublishedCase each) {
        double water = density("water");
        Wash salt = NAMES.read(each.text("inverting")).wash().orElseThrow();
        return new CaseFigures()
                .with(
                        "below",
                        each.texts("below").stream()
                                .filter(name -> density(name) > water)
                                .count())
                .with(
                        "above",
                        each.texts("above").stream()
                                .filter(name -> density(name) < water)
                                .count())
                .with(
                        "inverted",
                        salt.concentration().densityGramsPerMillilitre().orElseThrow() > density(each.text("inverted"))
                                ? 1
                                : 0);
    }

    private CaseFigures carbonateGas(PublishedCase each) {
        return new CaseFigures()
                .with(
                        "withGas",
                        each.texts("washes").stream()
                                .filter(name -> NAMES.read(name)
                                        .wash()
                                        .orElseThrow()
                                        .gas()
                                        .orElseThrow()
                                        .formula()
                                        .equals("CO2"))
                                .count())
                .with("millimolesFromTen", AcidBase.carbonDioxideMillimoles(10, 0, 100));
    }

    private static CaseFigures smallPortions(PublishedCase each) {
        double ratio = each.number("distributionRatio");
        double total = each.number("totalOrganicMillilitres");
        double aqueous = each.number("aqueousMillilitres");
        double one = Extraction.fractionLeft(ratio, total, aqueous, 1);
        double ten = Extraction.fractionLeft(ratio, total / 10, aqueous, 10);
        return new CaseFigures()
                .with("gainsOverOne", ten < one ? 1 : 0)
                .with("limitBeatsTen", Math.exp(-ratio * total / aqueous) < ten ? 1 : 0);
    }

    private static CaseFigures brineFirst() {
        double without = Drying.waterToBindGrams(90, 100, 3, 0.01);
        double with = Drying.waterToBindGrams(90, 100, 3, 0);
        Drying.Range rinsed = Drying.productOnCakeGrams(9, 6, 1, 0.5, 0.3);
        Drying.Range unrinsed = Drying.productOnCakeGrams(9, 6, 1, 0.5, 1);
        return new CaseFigures()
                .with("lessWater", with < without ? 1 : 0)
                .with("rinseKeeps", rinsed.high() / unrinsed.high());
    }
}
