package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.book.files.UnreadableBookException;
import workuptally.judgement.Review;
import workuptally.model.FindingCode;
import workuptally.report.view.wording.Wording;
import workuptally.tally.amounts.AcidGas;
import workuptally.tally.bench.Reextraction;

/**
 * Advice to acidify a layer in which a run may have left what gives a toxic gas with acid.
 *
 * <p>EU Annex VI (Regulation (EC) 1272/2008) gives sodium azide and sodium cyanide EUH032, contact with acids liberates very toxic gas, and
 * sodium hypochlorite solution EUH031, contact with acids liberates toxic gas.
 */
class AcidAdviceTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"sodium azide, HN3", "sodium cyanide, HCN", "sodium hypochlorite, Cl2", "sodium thiosulfate, SO2"})
    void namesTheGasInsteadOfAdvisingAcid(String material, String gas) throws IOException, UnreadableBookException {
        Review review = acidInBase()
                .plus("charges", "X1," + material + ",reagent,,,,1.0,g,1.0,g,,,,,")
                .review(folder);

        String advice = advice(review);

        assertTrue(advice.contains(material) && advice.contains(gas), advice);
        assertFalse(advice.contains("mmol of acid"), advice);
    }

    @Test
    void advisesAcidWhereNothingStandsAgainstIt() throws IOException, UnreadableBookException {
        String advice = advice(acidInBase().review(folder));

        assertTrue(advice.contains("mmol of acid"), advice);
    }

    @Test
    void baseAndNoChangeOfPhCarryNoCaution() throws IOException, UnreadableBookException {
        Review review = acidInBase()
                .plus("charges", "X1,sodium azide,reagent,,,,1.0,g,1.0,g,,,,,")
                .review(folder);

        for (Reextraction gain : review.runs().get(0).tally().evidence().reextractions()) {
            assertEquals(
                    gain.phSetting().acidMillimoles() > 0,
                    gain.phSetting().acidGases().stream()
                            .map(AcidGas::material)
                            .toList()
                            .equals(List.of("sodium azide")));
        }
    }

    /** An acid that stayed in a basic layer. */
    private static ExampleBook acidInBase() {
        return ExampleBook.clean()
                .with("products", "neutral,,,304", "acid,4.2,60,304")
                .with("layers", "Composition,Status", "Composition,Status,pH")
                .with("layers", "63.11,,,kept", "63.11,,,kept,9.0")
                .with("workup", "wash,RM,water,1,30,,,0.998", "extract,RM,ethyl acetate,1,30,,,0.902")
                .with("assays", "HPLC,1.51", "HPLC,8.0");
    }

    private static String advice(Review review) {
        return review.runs().get(0).findings().stream()
                .filter(f -> f.code() == FindingCode.LAYER_HOLDS_PRODUCT)
                .map(f -> Wording.POINT.of(f.action()))
                .findFirst()
                .orElse("no finding");
    }
}
