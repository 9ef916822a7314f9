package workuptally.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The contributor guide leads to files that are there. */
class ContributorGuideTest {
    private static final Pattern PATH =
            Pattern.compile("`((?:src|reference|input-templates|output-samples|\\.ci)/[^`\\s*]*)`");

    @Test
    void everyPathNamedExists() throws IOException {
        String guide = Files.readString(Path.of("DEVELOPERS.md"));
        List<String> paths = PATH.matcher(guide)
                .results()
                .map((MatchResult m) -> m.group(1))
                .distinct()
                .toList();
        assertTrue(paths.size() > 12, paths::toString);
        assertEquals(
                List.of(),
                paths.stream().filter(path -> !Files.exists(Path.of(path))).toList());
    }
}
