package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.report.view.wording.Wording;

class RunScreenTest {
    /** What no table knows is told once for all layers that it can be in. */
    @Test
    void whatIsNotJudgedIsToldOnceForAllLayers() {
        SmallBook book = SmallBook.reaction()
                .row(
                        "charges",
                        "Material",
                        "unobtainium dust",
                        "Role",
                        "reagent",
                        "Actual amount",
                        "1",
                        "Actual unit",
                        "g")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "49.90", "Status", "kept")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "50", "Net", "49.90", "Status", "kept");
        StringWriter text = new StringWriter();
        PrintWriter out = new PrintWriter(text);
        new RunScreen(book.reviewOfRun(), Wording.POINT, out).print(2);
        out.flush();
        List<String> lines = text.toString()
                .lines()
                .filter(line -> line.contains("not judged: reactivity of"))
                .toList();
        assertEquals(1, lines.size(), text::toString);
        assertTrue(
                lines.get(0).strip().startsWith("A1, A2: not judged: reactivity of unobtainium dust"), lines::toString);
    }
}
