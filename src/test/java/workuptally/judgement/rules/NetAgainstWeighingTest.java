package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A net mass typed beside gross and tare. Rounding to d decimals is uniform within half the last digit, u = 10^-d / sqrt(12) (JCGM 100:2008,
 * F.2.2.1); 3u of a balance with four decimals (0.0015 g) and of that rounding.
 */
class NetAgainstWeighingTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        // gross - tare = 6.5664 g; 3u = 0.0017, 0.0088, 0.087 and 0.87 g
        "6.5664, 0",
        "6.566, 0",
        "6.57, 0",
        "6.6, 0",
        "7, 0",
        "6.5684, 1",
        "6.58, 1",
        "6.8, 1",
        "8, 1",
        "ca. 6.8, 0"
    })
    void aTypedNetOfALotIsHeldAgainstItsRoundingAndTheBalance(String net, int findings) throws Exception {
        assertEquals(
                findings,
                ExampleBook.clean()
                        .with("isolated", "90.3358,,99.1", "90.3358," + net + ",99.1")
                        .findings(folder, "net-against-weighing")
                        .size());
    }

    @ParameterizedTest
    @CsvSource({"34.5, 0", "35, 0", "34.8, 1", "37, 1"})
    void aTypedNetOfALayerToo(String net, int findings) throws Exception {
        // gross - tare = 34.52 g; 3u of a balance with two decimals is 0.06 g
        assertEquals(
                findings,
                ExampleBook.clean()
                        .with("layers", "97.63,63.11,,,kept", "97.63,63.11," + net + ",,kept")
                        .findings(folder, "net-against-weighing")
                        .size());
    }
}
