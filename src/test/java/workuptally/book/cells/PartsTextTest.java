package workuptally.book.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.book.words.Unit;

/** The rest of a mixture, as benches write it (common practice; invented). */
class PartsTextTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ethyl acetate 97 %, rest water|ethyl acetate 97.0, water 3.0",
                "ethyl acetate 97 %, water rest|ethyl acetate 97.0, water 3.0",
                "97 % EtOAc + balance water|EtOAc 97.0, water 3.0",
                "EtOAc 80 %, EtOH 12 %, remainder: water|EtOAc 80.0, EtOH 12.0, water 8.0",
                "EtOAc 97, rest water|EtOAc 97.0, water 3.0",
                "EtOAc 97 %, rest|EtOAc 97.0",
                "EtOAc 97 %, rest not determined|EtOAc 97.0",
                "EtOAc 0.97, rest water|?",
                "EtOAc 100 %, rest water|?",
                "rest water|?",
                "EtOAc 90 %, rest water and EtOH|?",
                "EtOAc/THF 7:3|EtOAc/THF 7:3 100.0",
                "EtOAc/THF (7:3)|EtOAc/THF (7:3) 100.0",
                "2:1 EtOAc:THF|2:1 EtOAc:THF 100.0",
                "EtOAc 7:3|?",
                "EtOAc/THF 7:3, rest water|?",
                "EtOAc/THF|EtOAc/THF 100.0"
            })
    void restOfAMixtureGoesToWhatIsNamedForIt(String typed, String parts) {
        PartsText.Read read = PartsText.read(typed, Unit.PERCENT, Optional.of(100.0));
        String said = read.parts().stream().map(p -> p.name() + " " + p.value()).collect(Collectors.joining(", "));
        assertEquals(parts, read.fault().isPresent() ? "?" : said);
    }
}
