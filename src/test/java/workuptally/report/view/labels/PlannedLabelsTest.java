package workuptally.report.view.labels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.book.files.UnreadableBookException;
import workuptally.judgement.ReviewBuilder;
import workuptally.judgement.RunReview;
import workuptally.reference.Reference;
import workuptally.report.view.wording.ReadableNumbers;

/** Labels of an invented planned run with an azide, washed until no trace of it is followed, and concentrated from an ether. */
class PlannedLabelsTest {
    private static RunReview run(Path folder) throws IOException, UnreadableBookException {
        write(folder, "Runs", """
                Run,Date,Chemist,Reaction,Kind,Status
                Z1,2026-03-03,C1,azide with benzyl bromide,reaction,planned
                """);
        write(folder, "Products", """
                Run,Product,Wanted,Formula,Coefficient,Character
                Z1,benzyl azide,yes,C7H7N3,1,neutral
                """);
        write(folder, "Charges", """
                Run,Material,Role,Formula,Molar mass (g/mol),Coefficient,Planned amount,Planned unit,Assay (% w/w)
                Z1,benzyl bromide,substrate,C7H7Br,171.04,1,4.28,g,98
                Z1,sodium azide,reagent,NaN3,65.01,1,2.44,g,99
                Z1,DMF,solvent,,,,40,mL,
                """);
        write(folder, "Workup", """
                Run,Step,Operation,From,Material,Portions,Volume (mL),Funnel (mL),Gives organic,Gives aqueous,Gives other
                Z1,1,dilute,RM,water,1,120,,,,RM
                Z1,2,extract,RM,diethyl ether,1,90,500,O1,A1,
                Z1,3,wash,O1,water,1,40,250,O2,A2,
                Z1,4,wash,O2,brine,1,40,250,O3,A3,
                Z1,5,concentrate,O3,,,,,,,D1+CR1
                """);
        return new ReviewBuilder(Reference.load(), "test")
                .review(new BookReader().read(folder))
                .runs()
                .get(0);
    }

    private static void write(Path folder, String table, String text) throws IOException {
        Files.writeString(folder.resolve(table + ".csv"), text);
    }

    /** EUH032 of sodium azide: Regulation (EC) 1272/2008, Annex VI. A label that names it bears it. */
    @Test
    void everyLabelThatNamesAnAzideBearsItsStatement(@TempDir Path folder) throws Exception {
        List<LabelText> naming = PlannedLabels.of(run(folder), new ReadableNumbers('.')).stream()
                .filter(label -> label.contents().contains("sodium azide"))
                .toList();
        assertEquals(8, naming.size(), naming.toString());
        naming.forEach(label ->
                assertTrue(label.hazards().contains("Contact with acids liberates very toxic gas."), label.toString()));
    }

    /** An ether meets evaporation in every week: what is said is how, not that it never happens. */
    @Test
    void concentratingAnEtherIsNotSaidNeverToHappen(@TempDir Path folder) throws Exception {
        List<String> cautions = run(folder).hazards().stream()
                .filter(note -> note.subject().contains("evaporation"))
                .map(note -> note.caution())
                .toList();
        assertTrue(cautions.stream().anyMatch(c -> c.contains("never takes it to dryness")), cautions.toString());
        assertTrue(cautions.stream().noneMatch(c -> c.contains("meet in a workup")), cautions.toString());
    }
}
