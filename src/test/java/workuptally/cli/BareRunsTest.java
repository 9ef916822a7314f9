package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.report.pdf.PdfText;

/** A list of one row a run: what is the same of each is said once, and what is not keeps its own part. */
class BareRunsTest {
    private static final String TITLE = "3 runs of which only the product was weighed";

    @TempDir
    private Path folder;

    /** Four runs from 10.00 g of 100 g/mol to 200 g/mol, 20.0 g theory; the last one states a yield of 95 % where 75 % were weighed. */
    private Path list(int runs) throws IOException {
        StringBuilder list = new StringBuilder(
                "Run,Product,MW product,Starting material,MW SM,Mass SM (g)," + "Mass product (g),Yield (%)\n");
        for (int i = 1; i <= runs; i++) {
            list.append("L-").append(i).append(",P,200.0,S,100.0,10.00,15.0").append(i);
            list.append(i == 4 ? ",95" : ",75").append('\n');
        }
        Path file = Files.writeString(folder.resolve("week.csv"), list);
        Call.of("headings", file, "--out", folder.resolve("headings.json"));
        return file;
    }

    private Call call(String command, Path list, Object... more) {
        Object[] args = new Object[4 + more.length];
        args[0] = command;
        args[1] = list;
        args[2] = "--headings";
        args[3] = folder.resolve("headings.json");
        System.arraycopy(more, 0, args, 4, more.length);
        return Call.of(args);
    }

    private static long count(String text, String part) {
        return text.split(java.util.regex.Pattern.quote(part), -1).length - 1L;
    }

    @Test
    void checkTellsTheNotesOfAListOnce() throws IOException {
        String out = call("check", list(4)).out();
        assertEquals(1, count(out, TITLE), out);
        assertEquals(2, count(out, "[yield-upper-bound]"), out);
        assertTrue(out.contains("likewise 2 more of these runs"), out);
        assertTrue(out.indexOf("[stated-yield-differs]") < out.indexOf(TITLE), out);
        for (int i = 1; i <= 4; i++) {
            assertEquals(1, count(out, "\nL-" + i + " "), out);
        }
    }

    @Test
    void checkWritesTheDecimalMarkAskedFor() throws IOException {
        String out = call("check", list(4), "--locale", "comma").out();
        assertTrue(out.contains("75,20 ± 0,58"), out);
        assertTrue(out.contains("typed yield 95 % where lot product weighs 75,2 % of theory"), out);
    }

    @Test
    void twoRunsAreToldEach() throws IOException {
        String out = call("check", list(2)).out();
        assertEquals(0, count(out, "of which only the product was weighed"), out);
        assertEquals(2, count(out, "[yield-upper-bound]"), out);
    }

    @Test
    void documentHasATableForThemAndAPartForTheOther() throws IOException {
        call("review", list(4), "--reports", "pdf", "--out", folder.resolve("out"));
        String text = PdfText.dense(Files.readAllBytes(folder.resolve("out/week-review.pdf")));
        assertEquals(1, count(text, "Runsofwhichonlytheproductwasweighed"), text);
        assertEquals(1, count(text, "BalanceonS"), text);
        assertTrue(text.contains("3runswithoutarecordedworkup"), text);
        assertTrue(text.contains("15.030±0.040≤75.15"), text);
    }
}
