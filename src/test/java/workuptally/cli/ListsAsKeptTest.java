package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * Lists as they are kept, invented, each reviewed with the headings file that is proposed for it, unedited. Expected yields are worked out by
 * hand: mass of product over (amount of substrate × molar mass of product); atomic weights are the abridged ones of IUPAC (C 12.011, H 1.008,
 * N 14.007, O 15.999, Cl 35.45, Br 79.904).
 */
@Tag("slow")
class ListsAsKeptTest {
    /** Expected yields are written with one decimal. */
    private static final double HALF_A_DIGIT = 0.05;

    @TempDir
    private Path folder;

    private String json = "";

    /** What {@code headings} says of a list, its spaces and line breaks as one space. */
    private String proposed(String list) throws IOException {
        Path file = Files.writeString(folder.resolve("list.csv"), list);
        Files.deleteIfExists(folder.resolve("list-headings.json"));
        Call call = Call.of("headings", file);
        assertEquals(0, call.code(), call::err);
        json = Files.readString(folder.resolve("list-headings.json"));
        return call.out().replaceAll("\\s+", " ");
    }

    private JsonNode review(String list) throws IOException {
        proposed(list);
        return reviewed();
    }

    /** The review of the list by the headings file as it stands. */
    private JsonNode reviewed() throws IOException {
        Path headings = folder.resolve("list-headings.json");
        Call call = Call.of(
                "review",
                folder.resolve("list.csv"),
                "--headings",
                headings,
                "--out",
                folder.resolve("out"),
                "--reports",
                "json,csv");
        assertEquals(0, call.code(), call::err);
        return new ObjectMapper()
                .readTree(Files.readString(folder.resolve("out").resolve("list-review.json")));
    }

    private static void assertYields(JsonNode review, double... percents) {
        List<Double> found = new ArrayList<>();
        review.get("runs")
                .forEach(run -> run.path("yields")
                        .forEach(each -> found.add(each.get("percent").asDouble())));
        assertEquals(percents.length, found.size(), found::toString);
        for (int i = 0; i < percents.length; i++) {
            assertEquals(percents[i], found.get(i), HALF_A_DIGIT, found.toString());
        }
    }

    private static List<String> seen(JsonNode review, String code) {
        List<String> all = new ArrayList<>();
        for (JsonNode finding : review.get("findings")) {
            if (finding.get("code").asString().equals(code)) {
                all.add(finding.get("severity").asString() + ": "
                        + finding.get("seen").asString());
            }
        }
        return all;
    }

    @Test
    void aHeadingOverWeightsIsNoName() throws IOException {
        JsonNode review = review(
                "No.,Date,Acid,Formula,Amount,Alcohol,Formula,Amount,Ester,Formula,Isolated,Yield\n"
                        + "E1,2025-03-01,benzoic acid,C7H6O2,1.22 g,methanol,CH4O,10 mL,methyl benzoate,C8H8O2,1.09 g,80 %\n"
                        + "E2,2025-03-02,salicylic acid,C7H6O3,690 mg,methanol,CH4O,5 mL,methyl salicylate,C8H8O3,608 mg,80 %\n"
                        + "E3,2025-03-03,4-toluic acid,C8H8O2,5 mmol,ethanol,C2H6O,25 mmol,ethyl 4-toluate,C10H12O2,0.70 g,85 %\n");
        // 1.09 / (1.22 / 122.123 × 136.150), 608 / (690 / 138.122 × 152.149), 700 / (5 × 164.204)
        assertYields(review, 80.1, 80.0, 85.3);
        assertEquals(
                "methyl benzoate", review.at("/runs/0/yields/0/product").asString(), review.at("/runs/0")::toString);
    }

    @Test
    void aWeightWithoutAUnitUnderAWordForAStageIsAskedAbout() throws IOException {
        String out = proposed("No,SM,Formula,mmol,Product,Formula,Isolated\n1,a,C7H6O2,5,b,C8H8O2,609\n");
        assertTrue(out.contains("'Isolated': mass of the purified in which unit?"), out);
    }

    @Test
    void aNumberUnderProductMayBeAWeightOrACompound() throws IOException {
        String out = proposed("No,SM,Formula,mmol,Product,Formula\n1,a,C7H6O2,5,12,C8H8O2\n");
        assertTrue(out.contains("'Product': name of the product or mass of the product?"), out);
    }

    @Test
    void namesUnderALoadingAreAskedAbout() throws IOException {
        String out = proposed("No,SM,mmol,Catalyst (mol %),Product,g\n1,a,5,Pd(PPh3)4 (5),b,0.6\n");
        assertTrue(out.contains("'Catalyst (mol %)': equivalents of the catalyst or name of the catalyst?"), out);
    }

    @Test
    void aTitreIsNoLabel() throws IOException {
        JsonNode review =
                review("Exp,Date,Aryl bromide,Formula,Mass (g),n-BuLi (mL),Titre (mol/L),Product,Formula,Pure (g)\n"
                        + "LI-1,2025-05-05,4-bromoanisole,C7H7BrO,1.870,4.40,2.50,4-anisaldehyde,C8H8O2,1.05\n");
        assertTrue(json.contains("\"Titre\": \"Titre (mol/L)\""), json);
        assertFalse(json.contains("Molarity"), json);
        assertEquals(List.of(), seen(review, "titre-missing"));
        // 1.05 / (1.870 / 187.036 × 136.150)
        assertYields(review, 77.1);
    }

    @Test
    void aCoefficientByItsSign() throws IOException {
        JsonNode review = review(
                "Exp;Date;Aldehyde;Formula;n (mmol);ν;Reductant;Formula;n (mmol);ν;Product;Formula;ν;m (g);Yield (%)\n"
                        + "C-1;2025-07-01;4-chlorobenzaldehyde;C7H5ClO;20;2;KOH;KOH;40;1;4-chlorobenzyl alcohol;C7H7ClO;1;1.20;84\n"
                        + "C-2;2025-07-02;benzaldehyde;C7H6O;40;2;KOH;KOH;80;1;benzyl alcohol;C7H8O;1;1.90;88\n");
        // 1.20 / (20 / 2 × 142.582 / 1000), 1.90 / (40 / 2 × 108.140 / 1000)
        assertYields(review, 84.2, 87.8);
    }

    @Test
    void lettersTellWhoseAMassIs() throws IOException {
        JsonNode review = review(
                "Run,Date,Ketone,Formula,mmol,Product A,Formula,Product B,Formula,mass A (mg),mass B (mg),yield A,yield B\n"
                        + "T-1,2025-08-01,2-methylcyclohexanone,C7H12O,5.0,7-methyloxepan-2-one,C7H12O2,3-methyloxepan-2-one,C7H12O2,480,60,75,9\n");
        // 480 / (5.0 × 128.171), 60 / (5.0 × 128.171)
        assertYields(review, 74.9, 9.4);
        assertEquals(List.of(), seen(review, "list-heading-open"));
    }

    @Test
    void whatFollowsAWashIsAskedAbout() throws IOException {
        String out = proposed("No,SM,mmol,Solvent,Wash,mL,Product,g\n1,a,5,toluene,brine,20,b,0.6\n");
        assertTrue(out.contains("'mL': volume of the solvent, or of 'Wash', which stands between?"), out);
    }

    @Test
    void partsAndSumsOfAProductAreAskedAbout() throws IOException {
        String out = proposed("No,SM,mmol,Product,Fraction 1 (mg),Fraction 2 (mg),Total (mg)\n1,a,5,b,300,200,500\n");
        assertTrue(out.contains("'Total (mg)': mass of the product or nothing that a table takes (not used)?"), out);
        assertFalse(json.contains("\"Net\""), json);
    }

    @Test
    void aRowOfUnitsBelongsToTheHeadings() throws IOException {
        String rows = "V1;03.03.2025;Vanillin;C8H8O3;1521;Vanillylalkohol;C8H10O3;1310;85\n"
                + "V2;04.03.2025;Piperonal;C8H6O3;1501;Piperonylalkohol;C8H8O3;1,28 g;84 %\n";
        String headings = "Versuch;Datum;Edukt;Summenformel;Einwaage;Produkt;Summenformel;Auswaage;Ausbeute\n";
        // 1310 / (1521 / 152.149 × 154.165), 1280 / (1501 / 150.133 × 152.149)
        for (String units : List.of(";;;;mg;;;mg;%\n", ";;;;[mg];;;[mg];[%]\n", ";;;;in mg;;;in mg;in %\n")) {
            assertYields(review(headings + units + rows), 85.0, 84.1);
            assertTrue(json.contains("\"Actual amount\": \"Einwaage\""), json);
        }
        JsonNode again = review(headings + ";;;;mg;;;mg;%\n" + rows.replaceFirst("V2", headings + "V2"));
        assertYields(again, 85.0, 84.1);
    }

    @Test
    void aRowOfUnitsThatContradictsAHeadingIsNotTaken() throws IOException {
        JsonNode review = review("No,SM,Formula,m (mg),Product,Formula,Weight\n,,,g,,,mg\n"
                + "1,benzoic acid,C7H6O2,500,methyl benzoate,C8H8O2,300\n");
        assertYields(review);
        assertFalse(review.get("findings").isEmpty());
    }

    @Test
    void aSecondTableUnderAListIsNamedAndNoRun() throws IOException {
        String list = "Exp,Date,Starting material,Formula,Mass (mg),Product,Formula,Mass (mg)\n"
                + "A-1,2025-01-03,4-nitrotoluene,C7H7NO2,1371,4-toluidine,C7H9N,943\n";
        JsonNode review = review(list + "\nBalance,Checked,By\nAB-1,2025-01-01,KB\n");
        assertEquals(1, review.get("runs").size());
        assertEquals(
                List.of("check: a second table under the list, rows 4 to 5, with the headings 'Balance', 'Checked',"
                        + " 'By'"),
                seen(review, "list-rows-left-out"));
        JsonNode planned = review(list + "\nB-1,2025-02-01,vanillin,C8H8O3,,vanillyl alcohol,C8H10O3,\n"
                + "B-2,2025-02-02,vanillin,C8H8O3,,vanillyl alcohol,C8H10O3,\n");
        assertEquals(3, planned.get("runs").size());
    }

    @Test
    void aSecondTableBelowItsTitleIsNamedAndNoRun() throws IOException {
        JsonNode review = review("Exp,Date,Starting material,Formula,Mass (mg),Product,Formula,Mass (mg)\n"
                + "A-1,2025-01-03,4-nitrotoluene,C7H7NO2,1371,4-toluidine,C7H9N,943\n"
                + ",,,,,,,\nRecrystallised,,,,,,,\nExp,Batch,m (g),,,,,\nA-1,1,2.9,,,,,\n");
        assertEquals(1, review.get("runs").size());
        assertEquals(
                List.of(
                        "check: a second table under the list, rows 5 to 6, with the headings 'Exp', 'Batch', 'm (g)'",
                        "note: row 4 ('Recrystallised')"),
                seen(review, "list-rows-left-out"));
        assertEquals(List.of(), seen(review, "run-duplicate"));
    }

    @Test
    void twoWordsForAMaterialThatBearOneNumberAreTwoMaterials() throws IOException {
        String said = proposed("Exp,Reactant 1 Name,Reactant 1 Mass (g),Reagent 1 Name,Reagent 1 Vol (mL),Product,"
                + "Product Mass (g)\nX-1,benzyl alcohol,,DIPEA,1.4,benzyl ether,0.98\n");
        assertTrue(said.contains("Reagent 1 Name name of the reagent 2 "), said);
        assertTrue(said.contains("Reagent 1 Vol (mL) volume of the reagent 2 "), said);
    }

    @Test
    void aSecondWordForAMaterialWithoutANumberIsAskedAboutWithItsAmounts() throws IOException {
        String said = proposed("Exp,Reagent,Oxidant,Oxidant mass (g),Product,Product Mass (g)\n"
                + "X-1,benzyl alcohol,PCC,2.2,benzaldehyde,0.9\n");
        String asked = said.substring(said.indexOf("To answer in the file"));
        assertTrue(asked.contains("'Oxidant': ") && asked.contains("'Oxidant mass (g)': "), said);
    }

    @Test
    void listsSideBySideAreReadEachByItself() throws IOException {
        String half = "Exp,Starting material,Formula,mmol,Product,Formula,Mass (mg),Yield (%)";
        JsonNode review = review(half + ",," + half + "\n"
                + "P-1,benzyl bromide,C7H7Br,5,benzyl azide,C7H7N3,600,90,,"
                + "Q-1,aniline,C6H7N,10,acetanilide,C8H9NO,1200,89\n"
                + "P-2,benzyl chloride,C7H7Cl,5,benzyl azide,C7H7N3,560,84,,,,,,,,,\n");
        // 600 / (5 × 133.154), 560 / (5 × 133.154), 1200 / (10 × 135.166)
        assertEquals(3, review.get("runs").size());
        assertYields(review, 90.1, 84.1, 88.8);
        assertEquals(List.of(), seen(review, "list-heading-open"));
        assertEquals(List.of(), seen(review, "list-heading-unread"));
    }

    @Test
    void aDecimalCommaThatPartsTheCellsIsNamed() throws IOException {
        JsonNode review = review("No,SM,Formula,m (g),Product,Formula,Weight (g),Notes\n"
                + "1,benzoic acid,C7H6O2,1,22,methyl benzoate,C8H8O2,1,09,\n"
                + "2,benzoic acid,C7H6O2,1.22,methyl benzoate,C8H8O2,1.09,\n");
        // 1.09 / (1.22 / 122.123 × 136.150)
        assertYields(review, 80.1);
        assertEquals(List.of("stop: read line 2 with more cells than headings"), seen(review, "row-shifted"));
    }

    @Test
    void anAmountThatNoTheoryNeedsIsACheck() throws IOException {
        JsonNode review = review("No.,Acid,Formula,Amount,Alcohol,Formula,Amount,Ester,Formula,Isolated\n"
                + "E4,anthranilic acid,C7H7NO2,1.37 g,methanol,CH4O,excess,methyl anthranilate,C8H9NO2,1.06 g\n"
                + "E5,benzoic acid,C7H6O2,excess,methanol,CH4O,10 mL,methyl benzoate,C8H8O2,1.09 g\n");
        assertEquals(
                List.of("stop: read 'excess'", "check: read 'excess'"),
                seen(review, "number-unreadable").stream()
                        .sorted(java.util.Comparator.reverseOrder())
                        .toList());
        // 1.06 / (1.37 / 137.138 × 151.165)
        assertYields(review, 70.2);
    }

    @Test
    void aPurifiedProductWithoutACrudeIsCalledPurified() throws IOException {
        JsonNode review = review("No,SM,Formula,mmol,Product,Formula,Isolated mass (mg)\n"
                + "1,benzoic acid,C7H6O2,5.00,methyl benzoate,C8H8O2,609\n");
        assertEquals("purified", review.at("/runs/0/yields/0/stage").asString());
        assertTrue(review.at("/runs/0/yields/0/headline").asBoolean());
        assertTrue(Files.readString(folder.resolve("out").resolve("list-yields.csv"))
                .contains(",purified,"));
    }

    @Test
    void quenchesThatAListCannotShowAreSaidOnce() throws IOException {
        StringBuilder list = new StringBuilder("No,SM,Formula,mmol,Reagent,mmol,Product,Formula,mg\n");
        for (int n = 1; n <= 5; n++) {
            list.append("J").append(n).append(",benzaldehyde,C7H6O,10,NaBH4,5,benzyl alcohol,C7H8O,950\n");
        }
        JsonNode review = review(list.toString());
        assertEquals(List.of(), seen(review, "quench-not-shown"));
        assertEquals(
                List.of("hold: no workup is entered of 5 isolated runs with NaBH4: J1, J2, J3 and 2 more"),
                seen(review, "quench-not-entered"));
    }
}
