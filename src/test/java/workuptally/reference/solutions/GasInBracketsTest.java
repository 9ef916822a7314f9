package workuptally.reference.solutions;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.reference.hazards.ReactivityPair;
import workuptally.reference.tables.Basis;

/** A gas that the consequence names is not said again behind it. */
class GasInBracketsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "heat, HCl | HCl | heat, HCl",
                "heat, HCl | HCl;SO2 | heat, HCl (SO2)",
                "hydrogen cyanide | HCN | hydrogen cyanide (HCN)",
                "explodes | '' | explodes",
                "CO2 comes off | CO | CO2 comes off (CO)"
            })
    void onlyWhatIsNotNamedStandsInBrackets(String consequence, String gases, String expected) {
        ReactivityPair pair = new ReactivityPair(
                "a",
                "b",
                Optional.empty(),
                consequence,
                gases.isEmpty() ? List.of() : List.of(gases.split(";")),
                ReactivityPair.Severity.HIGH,
                ReactivityPair.InWorkup.NEVER,
                List.of(ReactivityPair.FUNNEL),
                Optional.empty(),
                List.of("common-practice"),
                Basis.COMMON_PRACTICE);
        assertEquals(expected, consequence + pair.gasInBrackets());
    }
}
