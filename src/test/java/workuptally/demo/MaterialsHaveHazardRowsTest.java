package workuptally.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import workuptally.material.MaterialReader;
import workuptally.material.Substance;
import workuptally.reference.Reference;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.Solvent;

/** A material without a row has no hazard words on a label, which a reader could take for no hazard. */
class MaterialsHaveHazardRowsTest {
    private static final MaterialReader NAMES = MaterialReader.packed();
    private static final Reference REFERENCE = Reference.load();

    private static Set<String> materials(Path file) throws IOException {
        Set<String> names = new TreeSet<>();
        try (CSVParser rows = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(Files.newBufferedReader(file))) {
            for (CSVRecord row : rows) {
                names.add(row.get("Material"));
            }
        }
        names.remove("");
        return names;
    }

    private static boolean isListed(String name) {
        return NAMES.read(name).main().substance().flatMap(Substance::hazard).isPresent();
    }

    @Test
    void everyMaterialOfTheDemoHasOneButForTheUnlistedOne() throws IOException {
        Path demo = Path.of("input-templates", "demo-week");
        Set<String> names = materials(demo.resolve("charges.csv"));
        names.addAll(materials(demo.resolve("workup.csv")));
        assertTrue(names.size() > 40, names::toString);
        assertEquals(
                List.of("transfer salt PT-9"),
                names.stream().filter(name -> !isListed(name)).toList());
    }

    @Test
    void everySolventWashAndDryingAgentHasOne() {
        Stream<String> solvents = REFERENCE.solvents().stream().map(Solvent::name);
        Stream<String> agents = REFERENCE.dryingAgents().stream().map(agent -> agent.name());
        assertEquals(
                List.of(),
                Stream.concat(solvents, agents).filter(name -> !isListed(name)).toList());
        assertEquals(
                List.of(),
                REFERENCE.washes().stream()
                        .map(Wash::solute)
                        .flatMap(Optional::stream)
                        .filter(solute -> NAMES.read(solute).hazard().isEmpty())
                        .toList());
    }

    @Test
    void gradeBehindACommaDoesNotHideTheMaterial() {
        assertEquals(
                List.of("H226", "H314"),
                NAMES.read("acetic acid, glacial").hazard().orElseThrow().statements());
        assertTrue(NAMES.read("no such thing, glacial").hazard().isEmpty());
    }
}
