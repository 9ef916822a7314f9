package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.reference.Reference;
import workuptally.report.view.wording.Wording;

/** A figure of the bench that a laboratory sets decides, and its sentence says it. */
class FigureOfALaboratoryTest {
    @TempDir
    private Path folder;

    private Review review(SmallBook book, String row) throws IOException {
        Files.writeString(folder.resolve("bench-rules.csv"), "key,name,value,unit,meaning,source,basis\n" + row + "\n");
        return new ReviewBuilder(Reference.load(folder), "test").review(book.book());
    }

    private static List<String> expected(Review review, FindingCode code) {
        return review.findings().stream()
                .filter(f -> f.code() == code)
                .map(Finding::expected)
                .map(new Wording('.')::of)
                .toList();
    }

    private static SmallBook boilsAt(String celsius) {
        return SmallBook.reaction()
                .but("products", "Boiling point", celsius)
                .row("workup", "Step", "1", "Operation", "concentrate", "From", "RM", "Gives other", "R1");
    }

    @Test
    void boilingPointBelowWhichAProductGoesOver() throws IOException {
        String row = "volatile-below,Volatile product,120,C,own,local,local";
        assertEquals(
                List.of("a product that boils above 120 °C, or gentle evaporation"),
                expected(review(boilsAt("110"), row), FindingCode.PRODUCT_VOLATILE));
        assertEquals(List.of(), expected(review(boilsAt("130"), row), FindingCode.PRODUCT_VOLATILE));
    }

    @Test
    void differenceOfATypedYieldThatRoundingExplains() throws IOException {
        SmallBook book = SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "10.00", "Stated yield", "53");
        assertEquals(
                1,
                expected(
                                review(book, "stated-yield-rounding,Typed yield,1,%,own,local,local"),
                                FindingCode.STATED_YIELD_DIFFERS)
                        .size());
        assertTrue(expected(
                        review(book, "stated-yield-rounding,Typed yield,5,%,own,local,local"),
                        FindingCode.STATED_YIELD_DIFFERS)
                .isEmpty());
    }
}
