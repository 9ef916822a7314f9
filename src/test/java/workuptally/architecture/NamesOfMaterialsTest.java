package workuptally.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import workuptally.material.MaterialReader;
import workuptally.material.State;

/** A name is understood once, in {@code material}: nobody else takes names apart or keeps lists of substances in code; {@link LookUpsOfNames} holds that nobody else looks them up. */
@Tag("slow")
class NamesOfMaterialsTest {
    private static final Path SOURCES = Path.of("src/main/java/workuptally");

    /** Holds the short signs of groups in formulas, some of which are names of reagents too. */
    private static final Set<String> SIGNS_OF_GROUPS = Set.of("FormulaReader");

    @Test
    void noPackageButMaterialTakesNamesApart() throws IOException {
        Pattern splits = Pattern.compile("[iI]ndexOf\\(\" in \"\\)|[iI]ndexOf\\(\", \"\\)|\\bString IN = \" in \"");
        Set<String> found = new TreeSet<>();
        for (Path file : sources("material", "reference")) {
            if (splits.matcher(Files.readString(file)).find()) {
                found.add(name(file));
            }
        }
        assertEquals(Set.of(), found);
    }

    /** Three names of listed substances or more among the texts of one file are a list that belongs into a table. */
    @Test
    void noListOfSubstancesStandsInCode() throws IOException {
        MaterialReader reader = MaterialReader.packed();
        Pattern texts = Pattern.compile("\"([^\"\\\\]{2,60})\"");
        Set<String> found = new TreeSet<>();
        for (Path file : sources("book")) {
            Set<String> names = new TreeSet<>();
            Matcher text = texts.matcher(Files.readString(file));
            while (text.find()) {
                if (reader.read(text.group(1)).state() == State.LISTED) {
                    names.add(text.group(1));
                }
            }
            if (names.size() >= 3) {
                found.add(name(file));
            }
        }
        found.removeAll(SIGNS_OF_GROUPS);
        assertEquals(Set.of(), found);
    }

    private static Iterable<Path> sources(String... without) throws IOException {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> Stream.of(without)
                            .noneMatch(name -> SOURCES.relativize(file).startsWith(Path.of(name))))
                    .sorted()
                    .toList();
        }
    }

    private static String name(Path file) {
        return file.getFileName().toString().replace(".java", "");
    }
}
