package workuptally.report.pdf.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import workuptally.report.view.wording.ReadableNumbers;

/** What makes a second label, and where it begins. */
class LabelPagesTest {
    private static final String SENTENCE = "Harmful if swallowed.";
    private static final String KNOWS_MORE = "Own compounds: by the group. More: safety data sheets.";
    private static Look look;

    @BeforeAll
    static void load() throws IOException {
        look = new Look(new Typeface(), new Palette(), new ReadableNumbers('.'), PageFlow.textWidth(595));
    }

    private static List<String> places(PdfOptions.Paper paper, int sentences) {
        String hazards = String.join(" ", java.util.Collections.nCopies(sentences, SENTENCE));
        return new LabelPages(
                        look,
                        paper,
                        Heading.Level.TITLE,
                        "Labels",
                        "More: safety data sheets.",
                        List.of(new LabelPages.Label(
                                "R1  A1",
                                "aqueous; about water 98 %",
                                hazards,
                                KNOWS_MORE,
                                "Made on: ____",
                                "Owner: ____")))
                .places();
    }

    @Test
    void whatTheMarginSaysMakesNoSecondLabel() {
        for (PdfOptions.Paper paper : PdfOptions.Paper.values()) {
            boolean left = false;
            for (int sentences = 1; sentences < 36; sentences++) {
                List<String> places = places(paper, sentences);
                left |= places.size() == 1 && !places.get(0).contains("Own compounds");
                places.stream().skip(1).forEach(place -> assertTrue(place.contains("swallowed."), place));
            }
            assertTrue(left, paper.name());
        }
    }

    @Test
    void secondLabelBeginsWithASentence() {
        for (PdfOptions.Paper paper : PdfOptions.Paper.values()) {
            int several = 0;
            for (int sentences = 1; sentences < 30; sentences++) {
                List<String> places = places(paper, sentences);
                if (places.size() == 2) {
                    several++;
                    assertTrue(places.get(0).endsWith("swallowed."), places.get(0));
                    assertEquals("Harmful i", places.get(1).split("\n")[1].substring(0, 9));
                }
            }
            assertTrue(several > 0, paper.name());
        }
    }
}
