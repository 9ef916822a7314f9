package workuptally.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import workuptally.material.MaterialReader;
import workuptally.material.State;

/** A name is understood once, in {@code material}: nobody else takes names apart or keeps lists of substances in code; {@link LookUpsOfNames} holds that nobody else looks them up. */
class NamesOfMaterialsTest {
    private static final Path SOURCES = Path.of("src/main/java/workuptally");

    /** Short signs of groups in formulas, and keys of classes, some of which are names of substances too. */
    private static final Set<String> SIGNS_AND_CLASSES = Set.of("FormulaReader", "MaterialClass");

    /** No name of the tables has more, 1 M Phosphate buffer pH 7 has six; longer texts are sentences, and take long to read. */
    private static final int MOST_WORDS_OF_A_NAME = 6;

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
        Map<String, Boolean> listed = new HashMap<>();
        Pattern texts = Pattern.compile("\"([^\"\\\\]{2,60})\"");
        Set<String> found = new TreeSet<>();
        for (Path file : sources("book")) {
            Set<String> names = new TreeSet<>();
            Matcher text = texts.matcher(Files.readString(file));
            while (text.find()) {
                boolean name = text.group(1).split(" ").length <= MOST_WORDS_OF_A_NAME
                        && listed.computeIfAbsent(
                                text.group(1), t -> reader.read(t).state() == State.LISTED);
                if (name) {
                    names.add(text.group(1));
                }
            }
            if (names.size() >= 3) {
                found.add(name(file));
            }
        }
        found.removeAll(SIGNS_AND_CLASSES);
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
