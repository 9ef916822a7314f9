package workuptally.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Several hundred names as people write them, with what each must mean and why. */
class WrittenNamesTest {
    private static final MaterialReader READER = MaterialReader.packed();

    record Case(String written, String state, String means, String finestClass, String reason) {
        @Override
        public String toString() {
            return written;
        }
    }

    static Stream<Case> cases() throws IOException {
        try (InputStream in = WrittenNamesTest.class.getResourceAsStream("written-names.tsv")) {
            return Arrays.stream(new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n"))
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .skip(1)
                    .map(line -> line.split("\t"))
                    .map(cells -> new Case(cells[0], cells[1], cells[2], cells[3], cells[4]))
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aNameMeansWhatTheTradeMeansByIt(Case expected) {
        Material material = READER.read(expected.written());
        String state = material.isAmbiguous() ? "ambiguous" : material.state().word();
        List<String> classes = List.copyOf(material.main().classes());
        assertEquals(
                expected.state() + " | " + expected.means() + " | " + expected.finestClass(),
                state + " | " + Meaning.of(material) + " | " + (classes.isEmpty() ? "-" : classes.get(0)),
                expected.reason());
    }

    @Test
    void severalHundredNamesAreTried() throws IOException {
        assertTrue(cases().count() >= 400);
    }
}
