package workuptally.book.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.model.Notes.Said;

/** Words of the bench that speak against a figure (common practice), and everyday notes that do not. */
class NoteWordsTest {
    @ParameterizedTest
    @CsvSource({
        "'sample diluted 1:50, value as injected',DILUTED DOUBTED",
        "'1:20 verdünnt',DILUTED",
        "calibration failed,DOUBTED",
        "'solid crystallised out on standing',DOUBTED",
        "'Kalibrierung fehlgeschlagen',DOUBTED",
        "'about 20 mL spilled',SPILLED",
        "poured down the sink,SPILLED",
        "'teilweise verschüttet',SPILLED",
        "noch feucht,NOT_DRY",
        "weighed before drying,NOT_DRY",
        "pesé humide,NOT_DRY",
        "'not diluted, nothing lost',''",
        "'dry, no weight lost on standing',''",
        "'column 15 cm, 254 nm, n = 3',''",
        "hexane/EtOAc 4:1,''",
        "'aqueous after extraction; pale yellow',''",
        "brine wash,''",
        "nicht verdünnt,''"
    })
    void notesSayWhatCounts(String note, String said) {
        assertEquals(
                said,
                NoteWords.read(note).says().stream().map(Said::name).sorted().collect(Collectors.joining(" ")));
    }
}
