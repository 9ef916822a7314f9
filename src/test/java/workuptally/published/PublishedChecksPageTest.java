package workuptally.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Keeps the page that lists every published check equal to the data files. {@code -Dpublished-checks.renew=true} writes it anew. */
class PublishedChecksPageTest {
    private static final Path PAGE = Path.of("reference", "published-checks.md");

    @Test
    void pageListsEveryCheckOfTheDataFiles() throws IOException {
        String page = PublishedChecksPage.text();
        if (Boolean.getBoolean("published-checks.renew")) {
            Files.writeString(PAGE, page);
        }
        assertEquals(page, Files.readString(PAGE, StandardCharsets.UTF_8));
    }

    @Test
    void pageSaysWhyWhereThePrintIsWrongOrNothingIsComputed() {
        String page = PublishedChecksPage.text();
        assertTrue(page.contains("| extraction-6 |"));
        assertTrue(page.contains("the print is wrong: The page prints 0.0430 g for the third step"), page);
        assertTrue(page.contains("not computed: A bench test; the book records it in Checked by."), page);
    }
}
