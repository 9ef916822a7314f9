package workuptally.report.json;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import workuptally.examples.DemoReview;
import workuptally.judgement.Review;
import workuptally.judgement.period.BookShare;
import workuptally.judgement.period.BookShare.ClassShare;
import workuptally.judgement.period.PeriodLedger;
import workuptally.judgement.period.PeriodReview;
import workuptally.judgement.period.PeriodReview.Standing;
import workuptally.judgement.period.Span;
import workuptally.judgement.totals.RunShare;
import workuptally.measure.Contribution;
import workuptally.tally.balance.Closure;
import workuptally.tally.series.SeriesTally.Material;
import workuptally.tally.series.SeriesTally.Together;

class JsonReportTest {
    /** Endings that name a unit. */
    private static final List<String> UNITS =
            List.of("Grams", "Millimoles", "Percent", "Millilitres", "Litres", "PerMillilitre", "PerMole", "Fraction");

    /** Percentages of something named, counts, and numbers with the unit beside them. */
    private static final Set<String> UNITLESS = Set.of(
            "pH",
            "percent",
            "percentOfTheory",
            "percentOfCharged",
            "gapPercentOfOrganicSolvent",
            "gainPercentOfTheory",
            "z",
            "chiSquareBefore",
            "chiSquareAfter",
            "measured",
            "adjusted",
            "standardisedAdjustment",
            "mustBeBelow",
            "dilutionRatio",
            "costClass",
            "value",
            "standardUncertainty",
            "coverageFactor",
            "unitsPerMolecule",
            "distributionRatio",
            "standardUncertaintyDistributionRatio",
            "capacityRatio",
            "fillPercentAfter",
            "pmi",
            "meanOfPmis",
            "pmiWorkupOnly",
            "eFactorWithWater",
            "eFactorWithoutWater",
            "solventIntensity",
            "waterIntensity",
            "expandedUncertaintyPmi",
            "expandedUncertaintyPmiWorkupOnly",
            "expandedUncertaintySolventIntensity",
            "expandedUncertaintyWaterIntensity",
            "plannedAmount",
            "actualAmount",
            "actualPercentOfPlanned",
            "gasLitresExpected",
            "gasLitresWorst");

    private static Review review;
    private static byte[] bytes;
    private static JsonNode json;

    @BeforeAll
    static void writeTheDemoWeek() throws Exception {
        review = DemoReview.review();
        bytes = written(review);
        json = new JsonMapper().readTree(bytes);
    }

    private static byte[] written(Review review) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        JsonReport.write(review, out);
        return out.toByteArray();
    }

    @Test
    void documentHasTheShapeOfTheSchemaAndNoOtherName() {
        Path schema = Path.of("reference", "review.schema.json");
        assertEquals(List.of(), new SchemaWalk(schema).faults(json));
    }

    @Test
    void accountsOfAPeriodHaveTheShapeOfTheirSchemaAndNoOtherName() throws IOException {
        Path schema = Path.of("reference", "period.schema.json");
        JsonNode period = new JsonMapper().readTree(written(periodOfTwoWeeks()));
        assertEquals(List.of(), new SchemaWalk(schema).faults(period));
        Set<String> nameless = new TreeSet<>();
        collectNumbersWithoutUnit(period, "", nameless);
        assertEquals(Set.of(), nameless);
        period.properties()
                .forEach(field -> assertFalse(
                        field.getValue().isArray() && field.getValue().isEmpty(),
                        field.getKey() + " is not exercised"));
    }

    @Test
    void schemaOfAPeriodRefusesAnotherName() throws IOException {
        Path schema = Path.of("reference", "period.schema.json");
        String other = new String(written(periodOfTwoWeeks()), StandardCharsets.UTF_8)
                .replace("\"medianYieldPercent\"", "\"middleYieldPercent\"");
        assertFalse(
                new SchemaWalk(schema).faults(new JsonMapper().readTree(other)).isEmpty());
    }

    /** The invented week, a second book that repeats it, the week before, and a class. */
    private static PeriodReview periodOfTwoWeeks() {
        PeriodLedger ledger = new PeriodLedger(new Span(LocalDate.of(2026, 3, 5), LocalDate.of(2026, 3, 8)));
        BookShare share = BookShare.of("week-10", review);
        ClassShare ofStudents = new ClassShare(
                "week-10",
                "esterification",
                new Together(
                        24,
                        23,
                        OptionalDouble.of(71.5),
                        OptionalDouble.of(4.5),
                        List.of("S-07"),
                        List.of("S-12"),
                        List.of("S-20: no yield computed"),
                        1234.5,
                        2345.5,
                        List.of(new Material("acetic acid", "g", 144.5, 150.5))));
        ledger.add(new BookShare(
                share.book(),
                share.places(),
                share.files(),
                share.coverageFactor(),
                share.runs(),
                share.containers(),
                List.of(ofStudents),
                share.corrections(),
                share.limits(),
                share.basis()));
        ledger.add(new BookShare(
                "week-10-again",
                share.places(),
                List.of(),
                share.coverageFactor(),
                share.runs().stream()
                        .map(r -> new RunShare(
                                r.run(),
                                r.date().map(d -> d.minusWeeks(1)),
                                r.status(),
                                r.yieldPercents(),
                                r.foundMillimoles(),
                                r.theoryMillimoles(),
                                r.leftOut(),
                                r.solvents(),
                                r.waste(),
                                r.masses()))
                        .toList(),
                List.of(),
                List.of(),
                List.of(),
                share.limits(),
                share.basis()));
        ledger.leaveOut("torn.xlsx", Standing.NOT_READ, "no workbook");
        return ledger.review("test");
    }

    private static byte[] written(PeriodReview period) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        JsonReport.write(period, out);
        return out.toByteArray();
    }

    @Test
    void everyNumberNamesItsUnit() {
        Set<String> nameless = new TreeSet<>();
        collectNumbersWithoutUnit(json, "", nameless);
        assertEquals(Set.of(), nameless);
    }

    private static void collectNumbersWithoutUnit(JsonNode node, String name, Set<String> found) {
        if (node.isObject()) {
            node.propertyStream().forEach(e -> collectNumbersWithoutUnit(e.getValue(), e.getKey(), found));
        } else if (node.isArray()) {
            node.valueStream().forEach(value -> collectNumbersWithoutUnit(value, name, found));
        } else if (node.isFloatingPointNumber()
                && !UNITLESS.contains(name)
                && UNITS.stream().noneMatch(name::endsWith)) {
            found.add(name);
        }
    }

    @Test
    void numbersReadBackToTwelveDigits() {
        Closure closure = review.runs().get(1).tally().closures().get(0);
        JsonNode written = json.at("/runs/1/closures/0");
        assertEquals(
                1, written.required("percent").doubleValue() / closure.percent().value(), 1e-11);
        assertEquals(
                1,
                written.required("expandedUncertaintyPercent").doubleValue() / closure.expandedUncertaintyPercent(),
                1e-11);
        assertEquals(1, written.required("z").doubleValue() / closure.z(), 1e-11);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0.0",
        "-0.1, -0.1",
        "123456.7890123456, 123456.789012",
        "2.0000000000004e-9, 2.0E-9",
        "97.49772345090845, 97.4977234509",
        "1.23456789012345e-15, 1.23456789012345E-15",
        "9e17, 9.0E17",
    })
    void digitsThatNoMeasurementHasAreLeftOut(double value, String shown) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        JsonReport.fields(out, fields -> fields.number("value", value));
        assertEquals("{\n  \"value\": " + shown + "\n}\n", out.toString(StandardCharsets.UTF_8));
    }

    @Test
    void dependenciesAreTheBudgetWithTheLargestShareFirst() {
        List<Contribution> budget =
                review.runs().get(1).tally().yields().get(0).percent().budget();
        JsonNode written = json.at("/runs/1/yields/0/dependsOn");
        assertFalse(budget.isEmpty());
        assertEquals(budget.size(), written.size());
        assertEquals(
                budget.get(0).reading().where(),
                written.get(0).required("place").asString());
        double sum = written.valueStream()
                .mapToDouble(part -> part.required("variancePercent").doubleValue())
                .sum();
        assertEquals(100, sum, 1e-9);
    }

    @Test
    void everyFindingIsThereInOrder() {
        assertEquals(review.findings().size(), json.required("findings").size());
        for (int i = 0; i < review.findings().size(); i++) {
            JsonNode written = json.required("findings").get(i);
            assertEquals(
                    review.findings().get(i).code().word(),
                    written.required("code").asString());
            assertEquals(
                    review.findings().get(i).severity().word(),
                    written.required("severity").asString());
        }
    }

    @Test
    void aFigureThatWasNotComputedIsAbsentAndNamedWithItsReason() {
        JsonNode run = json.required("runs")
                .valueStream()
                .filter(r -> r.required("run").asString().equals("R26-047"))
                .findFirst()
                .orElseThrow();
        assertFalse(run.at("/lots/0").has("netGrams"));
        assertTrue(run.required("notComputed")
                .valueStream()
                .anyMatch(n -> n.required("because").asString().contains("tare")));
    }

    @Test
    void sameReviewGivesSameBytesAndEndsWithALineFeed() throws IOException {
        assertArrayEquals(bytes, written(review));
        String text = new String(bytes, StandardCharsets.UTF_8);
        assertTrue(text.startsWith("{\n  \"schemaVersion\""), () -> text.substring(0, 60));
        assertTrue(text.endsWith("}\n"));
        assertFalse(text.contains("\r"));
    }

    @Test
    void aFailingTargetIsReportedWithItsOwnException() {
        IOException full = new IOException("no space left");
        OutputStream failing = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw full;
            }
        };
        assertSame(full, assertThrows(IOException.class, () -> JsonReport.write(review, failing)));
    }
}
