package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.judgement.Review;
import workuptally.model.Finding;
import workuptally.report.view.wording.Wording;

/**
 * A solution as it is sold needs the quench test of what is dissolved in it, and so does a peroxide or hydride that only its name tells.
 * Which of them hold peroxide or hydride is common chemical knowledge; strengths are those usually sold.
 */
class QuenchOfSolutionsTest {
    @TempDir
    Path folder;

    private Review with(String material) throws Exception {
        return ExampleBook.clean()
                .plus("charges", "X1,\"" + material + "\",reagent,,,,,,2,mL,,1.0,,,")
                .review(folder);
    }

    private static List<Finding> of(Review review, String code) {
        return review.findings().stream()
                .filter(f -> f.code().word().equals(code))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "tert-butyl hydroperoxide in decane",
                "TBHP in decane",
                "TBHP in nonane",
                "cumene hydroperoxide in cumene",
                "borane in THF",
                "BH3·THF",
                "BH3-SMe2",
                "Me2S·BH3",
                "LiAlH4 in THF",
                "DIBAL-H in toluene",
                "NaBH4 in triglyme",
                "urea·H2O2"
            })
    void aSolutionAsItIsSoldIsListedAndNeedsItsTest(String material) throws Exception {
        Review review = with(material);
        assertEquals(List.of(), of(review, "material-unlisted"));
        List<Finding> open = of(review, "quench-not-shown");
        assertEquals(1, open.size());
        assertTrue(Wording.POINT.of(open.get(0).seen()).contains("charged was " + material));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2-octyl hydroperoxide",
                "dicyclohexylborane in THF",
                "barium permanganate",
                "zinc hydride",
                "TBHP in an unknown oil",
                "N,N-diethylaniline·BH3"
            })
    void whatOnlyItsNameTellsNeedsItsTestToo(String material) throws Exception {
        Review review = with(material);
        assertEquals(1, of(review, "material-unlisted").size());
        assertEquals(1, of(review, "quench-not-shown").size());
        Review tested = ExampleBook.clean()
                .plus("charges", "X1,\"" + material + "\",reagent,,,,,,2,mL,,1.0,,,")
                .with(
                        "workup",
                        "X1,1,wash,RM,water,1,30,,,0.998,250,1,,,",
                        "X1,1,wash,RM,water,1,30,,,0.998,250,1,,negative,")
                .review(folder);
        assertEquals(List.of(), of(tested, "quench-not-shown"));
    }

    /** Destroyed by the water of the first wash, or no peroxide, hydride or oxidant that a strip shows. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaHMDS in THF",
                "n-BuLi in hexanes",
                "AlMe3 in toluene",
                "MeMgBr in Et2O",
                "LiHMDS in THF/ethylbenzene",
                "nBuLi, hexanes",
                "tris(pentafluorophenyl)borane",
                "triphenylborane",
                "silver nitrate"
            })
    void aReagentThatWaterEndsNeedsNoTest(String material) throws Exception {
        Review review = with(material);
        assertEquals(List.of(), of(review, "material-unlisted"));
        assertEquals(List.of(), of(review, "quench-not-shown"));
    }

    /** Judged by their names alone, of which none tells a peroxide or a hydride that reacts. */
    @ParameterizedTest
    @ValueSource(strings = {"o-carborane", "bismuth(III) nitrate", "triphenyltin hydride", "dodecyl anhydride"})
    void anUnlistedNameOfAnotherKindNeedsNoTest(String material) throws Exception {
        assertEquals(List.of(), of(with(material), "quench-not-shown"));
    }
}
