package workuptally.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Severity;
import workuptally.report.pdf.layout.PdfOptions;
import workuptally.report.view.firstpage.UrgentAction;
import workuptally.report.view.lines.Recovery;
import workuptally.report.view.wording.ReadableNumbers;

/** What a reader can take in: pages, words, sizes of type, one line an action. The limits are the project's own. */
@Tag("slow")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReaderLimitsTest {
    private static final int WORDS_A_RUN = 600;
    /** A third product and each further one bring a map, a balance and a row in each layer that may hold it. */
    private static final int WORDS_A_FURTHER_PRODUCT = 60;

    private static final float SMALLEST_POINTS = 7.5f;
    private static final float TABLE_POINTS = 8.5f;
    private static final int ACTIONS = 7;
    /** Numbers of the catalogue of catches, and the sign of a remembered value, are for us and not for readers. */
    private static final Pattern INSIDE_WORDS = Pattern.compile("\\bC\\d\\d\\b|\\(memory\\)");

    private final Map<Integer, Review> reviews = new HashMap<>();
    private final Map<Integer, byte[]> documents = new HashMap<>();

    private Review review(int runs) throws IOException {
        if (!reviews.containsKey(runs)) {
            reviews.put(
                    runs,
                    switch (runs) {
                        case -1 -> InventedReviews.demoWeek();
                        case -24 -> CourseBook.ofTwentyFour();
                        default -> InventedReviews.ofRuns(runs);
                    });
        }
        return reviews.get(runs);
    }

    private byte[] bytes(int runs) throws IOException {
        if (!documents.containsKey(runs)) {
            documents.put(runs, PdfText.bytes(review(runs), PdfOptions.standard()));
        }
        return documents.get(runs);
    }

    private static List<String> pages(byte[] pdf) throws IOException {
        List<String> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document));
            }
        }
        return pages;
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 12, 60, -24})
    void noMoreThanAPageARunAndTwoForTheRest(int runs) throws IOException {
        int all = review(runs).runs().size();
        int pages = pages(bytes(runs)).size();
        assertTrue(pages <= all + 2, pages + " pages for " + all + " runs");
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 12, 60, -24})
    void twoPagesStandInFront(int runs) throws IOException {
        List<String> pages = pages(bytes(runs));
        String first = review(runs).runs().get(0).id();
        assertTrue(pages.get(0).contains("What to do first"));
        assertTrue(pages.get(1).startsWith("Runs"), pages.get(1));
        assertTrue(pages.get(2).startsWith(first), pages.get(2));
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 12, -24})
    void aRunIsToldInFewWords(int runs) throws IOException {
        Review review = review(runs);
        List<String> pages = pages(bytes(runs));
        String text = String.join("\n", pages.subList(2, pages.size()));
        List<Integer> starts = new ArrayList<>();
        for (RunReview run : review.runs()) {
            String heading =
                    run.id() + " " + run.tally().run().head().reaction().split(" ")[0];
            Matcher found = Pattern.compile("(?m)^" + Pattern.quote(run.id()) + "\\s+"
                            + Pattern.quote(run.tally().run().head().reaction().split(" ")[0]))
                    .matcher(text);
            assertTrue(found.find(), heading);
            starts.add(found.start());
        }
        starts.add(
                text.contains("Methods, limits and sources")
                        ? text.indexOf("Methods, limits and sources")
                        : text.length());
        for (int i = 0; i + 1 < starts.size(); i++) {
            int words = text.substring(starts.get(i), starts.get(i + 1)).strip().split("\\s+").length;
            int products = review.runs().get(i).tally().run().products().size();
            int most = WORDS_A_RUN + WORDS_A_FURTHER_PRODUCT * Math.max(0, products - 2);
            assertTrue(words <= most, review.runs().get(i).id() + " has " + words + " words");
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 60, -24})
    void typeIsLargeEnough(int runs) throws IOException {
        try (PDDocument document = Loader.loadPDF(bytes(runs))) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                int small = 0;
                List<TextPosition> glyphs = PdfText.glyphs(document, page);
                for (TextPosition glyph : glyphs) {
                    assertTrue(
                            glyph.getFontSize() >= SMALLEST_POINTS - 0.01f,
                            () -> "size of " + glyph + " is " + glyph.getFontSize());
                    small += glyph.getFontSize() < TABLE_POINTS - 0.01f ? 1 : 0;
                }
                assertTrue(small <= glyphs.size() / 2, "words in pictures on page " + page);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 12, 60, -24})
    void anActionIsOneUncutLine(int runs) throws IOException {
        Review review = review(runs);
        List<UrgentAction> actions = UrgentAction.of(review, new ReadableNumbers('.'), ACTIONS);
        assertTrue(actions.size() <= ACTIONS);
        String first = pages(bytes(runs)).get(0).replace('\u00A0', ' ');
        for (UrgentAction action : actions) {
            assertFalse(action.text().contains("…"), action.text());
            String text = action.text().replace('\u00A0', ' ');
            assertTrue(
                    first.lines().anyMatch(line -> line.contains(text)), () -> text + " is not one line of\n" + first);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 12})
    void readersMeetNoNumbersOfOurs(int runs) throws IOException {
        for (String page : pages(bytes(runs))) {
            Matcher found = INSIDE_WORDS.matcher(page);
            assertEquals("", found.find() ? page.substring(Math.max(0, found.start() - 40), found.end()) : "");
        }
    }

    @Test
    void worstClosureOfARunStandsOnPageOneAndTwo() throws IOException {
        String first = pages(bytes(-1)).get(0).replace('\u00A0', ' ');
        assertTrue(first.contains("94.2 % open"), "R26-041, of which two other balances close");
        assertTrue(first.contains("90.4 % open"), "R26-044, by the amine");
        String second = pages(bytes(-1)).get(1).replace('\u00A0', ' ');
        assertTrue(second.contains("94.2 ± 3.1"), "R26-041, of which two other balances close");
        assertTrue(second.contains("90.4 ± 2.8"), "R26-044, by the amine");
    }

    /** Three planned runs have little to say: what page two holds stands on page one, where half of it would be empty. */
    @Test
    void aFewRunsNeedNoPageTwo() throws IOException {
        List<String> pages = pages(PdfText.bytes(InventedReviews.planned(3), PdfOptions.standard()));
        assertTrue(pages.get(0).contains("Runs"), pages.get(0));
        assertEquals(2, pages.size());
    }

    /** No page is turned for a line or two. */
    @ParameterizedTest
    @ValueSource(ints = {-1, 12, 60, -24})
    void theLastPageIsNotNearlyEmpty(int runs) throws IOException {
        List<String> pages = pages(bytes(runs));
        long lines = pages.get(pages.size() - 1).lines().count();
        assertTrue(lines > 8, pages.get(pages.size() - 1));
    }

    @Test
    void everyStopOfTheDemoWeekStandsOnPageOneWithItsRun() throws IOException {
        Review week = review(-1);
        String first = pages(bytes(-1)).get(0).replace('\u00A0', ' ');
        for (RunReview run : week.runs()) {
            if (run.has(Severity.STOP)) {
                assertTrue(first.contains("stop " + run.id()), run.id() + " in " + first);
            }
        }
        assertFalse(first.contains("more run"), first);
    }

    /** Every layer whose evidence is complete is named on page one. */
    @Test
    void completeLayersOfTheDemoWeekStandOnPageOne() throws IOException {
        String first = pages(bytes(-1)).get(0).replace('\u00A0', ' ');
        assertTrue(
                first.contains("R26-042 O0, A2; 043 A1, A2; 046 A1, A2; 050 A1a, A1b, A1c, A2, A3; 051 A2, A4; 052 A3"),
                first);
    }

    /** A bar without its name tells nobody anything. */
    @ParameterizedTest
    @ValueSource(ints = {-1, 12, 60, -24})
    void everyBarStandsBesideItsName(int runs) throws IOException {
        String first = pages(bytes(runs)).get(0);
        String strip = first.substring(first.indexOf("Where the product is"));
        for (Recovery run : Recovery.of(review(runs))) {
            assertTrue(strip.contains(run.run()), run.run() + " in " + strip);
        }
    }
}
