package workuptally.report.view.lines;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.hazards.HazardNote;

class HazardClassTest {
    /** EUH014 and EUH029, Regulation (EC) No 1272/2008, Annex II: reacts violently with water, toxic gas with water. */
    @ParameterizedTest
    @CsvSource({"thionyl chloride,WATER_REACTIVE", "sodium hydride,WATER_REACTIVE", "toluene,''"})
    void whatReactsWithWaterIsMarkedSo(String material, String marked) {
        HazardNote note = SmallBook.reaction()
                .row("charges", "Material", material, "Role", "reagent", "Actual amount", "1", "Actual unit", "g")
                .reviewOfRun()
                .hazards()
                .stream()
                .filter(n -> n.ofMaterial() && n.subject().equalsIgnoreCase(material))
                .findFirst()
                .orElseThrow();
        assertEquals(
                marked,
                Arrays.stream(HazardClass.values())
                        .filter(c -> c == HazardClass.WATER_REACTIVE && c.of(note))
                        .map(Enum::name)
                        .collect(Collectors.joining()));
    }
}
