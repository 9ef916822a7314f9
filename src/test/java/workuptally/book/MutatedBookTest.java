package workuptally.book;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import workuptally.book.files.UnreadableBookException;

/** Whatever stands in a book, it is read or refused with a sentence; it never ends in an error of the program. */
@Tag("slow")
class MutatedBookTest {
    private static final Path EXAMPLE = Path.of("input-templates/demo-week");

    private static final List<String> ODD = List.of(
            "",
            " ",
            "-",
            "=1+1",
            "#REF!",
            "1e99",
            "-1e-99",
            "9".repeat(70),
            "1,234",
            "<",
            "<<1",
            "ca.",
            "%",
            "n.d.",
            "A1+",
            "+",
            ";",
            "a;b;c",
            "x 1;",
            "x -1",
            "2026-13-45",
            "99.99.9999",
            "\u0001",
            "\uD83E\uDDEA",
            "\u202E1",
            "\u00A0",
            "\"",
            "a\nb",
            "R26-041",
            "RM",
            "1 x 1 x 1",
            "1/2",
            "NaN",
            "٣",
            "½",
            "1.2.3,4");

    @TempDir
    private Path folder;

    static Stream<Integer> seeds() {
        return Stream.iterate(1, seed -> seed + 1).limit(40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void oddCellsOfACsvAreReadOrRefused(int seed) throws IOException {
        Random random = new Random(seed);
        try (Stream<Path> files = Files.list(EXAMPLE)) {
            for (Path file : files.sorted().toList()) {
                String[] cells = Files.readString(file).split(",", -1);
                for (int i = 0; i < 6; i++) {
                    cells[random.nextInt(cells.length)] = ODD.get(random.nextInt(ODD.size()));
                }
                Files.writeString(folder.resolve(file.getFileName()), String.join(",", cells));
            }
        }
        assertReadOrRefused(folder);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void oddXmlOfAWorkbookIsReadOrRefused(int seed) throws IOException {
        Random random = new Random(seed);
        Map<String, String> parts = Zips.parts(Zips.row("R1", "A1", "12.5", "3", "2026-03-02", "7", "x")
                + "<row r='9' spans='1:3'><c r='A9' s='1' t='s'><v>0</v></c><c r='C9'><f>1</f><v>2</v></c></row>");
        List<String> names = List.copyOf(parts.keySet());
        String name = names.get(random.nextInt(names.size()));
        StringBuilder xml = new StringBuilder(parts.get(name));
        for (int i = 0; i < 3; i++) {
            int at = random.nextInt(xml.length());
            switch (random.nextInt(3)) {
                case 0 -> xml.deleteCharAt(at);
                case 1 -> xml.insert(at, "<>&'\"/01x".charAt(random.nextInt(9)));
                default -> xml.setCharAt(at, (char) ('0' + random.nextInt(70)));
            }
        }
        parts.put(name, xml.toString());
        assertReadOrRefused(Zips.write(folder.resolve("book.xlsx"), parts));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void damagedBytesAreReadOrRefused(int seed) throws IOException {
        Random random = new Random(seed);
        Path file = Zips.write(
                folder.resolve("book.xlsx"),
                Zips.parts(Zips.row("R1", "A1", "12.5").repeat(50)));
        byte[] bytes = Files.readAllBytes(file);
        for (int i = 0; i < 8; i++) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        Files.write(file, random.nextBoolean() ? bytes : Arrays.copyOf(bytes, random.nextInt(bytes.length)));
        assertReadOrRefused(file);
    }

    private static void assertReadOrRefused(Path book) throws IOException {
        try {
            assertNotNull(new BookReader().read(book).findings());
        } catch (UnreadableBookException refused) {
            assertFalse(refused.getMessage().getBytes(StandardCharsets.UTF_8).length == 0);
        }
    }
}
