package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CleanBookTest {
    @TempDir
    Path folder;

    @Test
    void aRunInWhichNothingIsWrongRaisesNothing() throws Exception {
        assertEquals(List.of(), ExampleBook.clean().review(folder).findings());
    }
}
