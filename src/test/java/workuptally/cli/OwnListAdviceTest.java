package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * A list that lacks an entry names it, and the entry named yields the figure promised. Invented substances of round molar masses; expected
 * percentages worked out by hand: product over (amount charged × molar mass of product), with 5 mmol of A (M 100) and B (M 150).
 */
@Tag("slow")
class OwnListAdviceTest {
    @TempDir
    private Path folder;

    private JsonNode review(String name, String list) throws IOException {
        Path file = Files.writeString(folder.resolve(name + ".csv"), list.replace("~", "\n"));
        Path headings = folder.resolve(name + ".json");
        Call proposed = Call.of("headings", file, "--out", headings);
        assertEquals(0, proposed.code(), proposed::err);
        Call call = Call.of("review", file, "--headings", headings, "--out", folder.resolve(name), "--reports", "json");
        assertEquals(0, call.code(), call::err);
        return new ObjectMapper().readTree(Files.readString(folder.resolve(name).resolve(name + "-review.json")));
    }

    /** What the review asks for: actions of its findings and entries that unlock what was not computed. */
    private static String advice(JsonNode review) {
        List<String> all = new ArrayList<>();
        review.get("findings").forEach(finding -> all.add(finding.get("action").asString()));
        review.at("/runs/0/notComputed")
                .forEach(each -> all.add(each.get("unlockedBy").asString()));
        return String.join("\n", all);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                // 600 / (500 / 100 × 150)
                "no molar mass | Formula of A | Exp,SM,mg,Product,mg~A-1,A,500,B,600"
                        + " | Exp,SM,MW,mg,Product,MW,mg~A-1,A,100,500,B,150,600 | 80.0",
                // 4.0 mmol of C limit: 480 / (4.0 × 150)
                "no coefficient | Enter the coefficient"
                        + " | Exp,SM,MW,mg,Reagent,MW,mmol,Product,MW,mg~A-1,A,100,500,C,80,4.0,B,150,480"
                        + " | Exp,SM,MW,mg,Reagent,MW,mmol,coefficient,Product,MW,mg~A-1,A,100,500,C,80,4.0,1,B,150,480 | 80.0",
                // the same reagent in equivalents of A, 0.8 of 5 mmol
                "equivalents below one | Enter the coefficient"
                        + " | Exp,SM,MW,mg,Reagent,MW,equiv,Product,MW,mg~A-1,A,100,500,C,80,0.80,B,150,480"
                        + " | Exp,SM,MW,mg,Reagent,MW,equiv,coefficient,Product,MW,mg~A-1,A,100,500,C,80,0.80,1,B,150,480 | 80.0",
                "no product mass | Add Isolated with the weight | Exp,SM,MW,mg,Product,MW~A-1,A,100,500,B,150"
                        + " | Exp,SM,MW,mg,Product,MW,mg~A-1,A,100,500,B,150,600 | 80.0",
                "a product mass not filled | Fill the column | Exp,SM,MW,mg,Product,MW,mg~A-1,A,100,500,B,150,"
                        + " | Exp,SM,MW,mg,Product,MW,mg~A-1,A,100,500,B,150,600 | 80.0",
                // 0.50 mL × 1.10 g/mL = 550 mg: 600 / (5.5 × 150)
                "no density | Enter the density | Exp,SM,MW,mL,Product,MW,mg~A-1,A,100,0.50,B,150,600"
                        + " | Exp,SM,MW,mL,density (g/mL),Product,MW,mg~A-1,A,100,0.50,1.10,B,150,600 | 72.7",
                // 600 × 0.90 / 750
                "no assay of a crude | Assay of lot crude | Exp,SM,MW,mg,Product,MW,crude (mg)~A-1,A,100,500,B,150,600"
                        + " | Exp,SM,MW,mg,Product,MW,crude (mg),assay (% w/w)~A-1,A,100,500,B,150,600,90 | 72.0"
            })
    void theEntryNamedGivesTheFigurePromised(String gap, String asked, String without, String with, double percent)
            throws IOException {
        JsonNode lacking = review("lacking", without);
        assertTrue(advice(lacking).contains(asked), () -> advice(lacking));
        assertTrue(yields(lacking).stream().noneMatch(y -> Math.abs(y - percent) < 0.05), lacking::toString);
        assertEquals(List.of(percent), yields(review("filled", with)));
    }

    @Test
    void layersAreAskedForOnceForAllRunsOfAListWithoutAny() throws IOException {
        String rows = "~A-1,A,100,500,B,150,600~A-2,A,100,500,B,150,580~A-3,A,100,400,B,150,450";
        review("bare", "Exp,SM,MW,mg,Product,MW,mg" + rows);
        Call call = Call.of(
                "review",
                folder.resolve("bare.csv"),
                "--headings",
                folder.resolve("bare.json"),
                "--reports",
                "json",
                "--out",
                folder.resolve("again"));
        assertEquals(1, call.out().split("enter the layers", -1).length - 1, call::out);
        assertTrue(call.out().contains("3 runs"), call::out);
    }

    @Test
    void aListThatLeavesItsReagentsOutHasNoMassBalanceToFail() throws IOException {
        // acetylation of 2.00 g of M 138.12 gives at most 2.609 g of M 180.16, the anhydride is not listed
        JsonNode review = review("acetyl", "Exp,SM,MW,g,Product,MW,g~A-1,A,138.12,2.00,B,180.16,2.30");
        assertEquals(List.of(88.2), yields(review));
        review.get("findings").forEach(finding -> {
            String code = finding.get("code").asString();
            assertTrue(!code.equals("mass-gap-negative") && !code.equals("entry-suspect"), finding::toString);
        });
        assertTrue(advice(review).contains("all reagents"), () -> advice(review));
    }

    private static List<Double> yields(JsonNode review) {
        List<Double> all = new ArrayList<>();
        review.at("/runs/0/yields")
                .forEach(each -> all.add(Math.round(each.get("percent").asDouble() * 10) / 10.0));
        return all;
    }
}
