package workuptally.book.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.model.Assay;
import workuptally.model.Layer;
import workuptally.model.Step;

/** Words of the bench beside those of the form; the words are common practice. */
class ChoiceSynonymsTest {
    private static ChoiceSynonyms of(String rows) {
        String file = "# words\nchoice,value,words\n" + rows;
        return new ChoiceSynonyms(
                word -> word.toLowerCase(Locale.ROOT), new ByteArrayInputStream(file.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void wordOfTheFileIsFoundInItsChoiceOnly() {
        ChoiceSynonyms words = of("operation,concentrate,rotavap;einrotiert\nlayer status,lost,spilt\n");
        assertEquals(Optional.of(Step.Operation.CONCENTRATE), words.find(Step.Operation.class, "Rotavap"));
        assertEquals(Optional.of(Layer.Status.LOST), words.find(Layer.Status.class, "spilt"));
        assertEquals(Optional.empty(), words.find(Step.Operation.class, "spilt"));
        assertEquals(EnumSet.of(Step.Operation.CONCENTRATE), words.slips(Step.Operation.class, "rotavpa"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "colour,red,rot | no choice is named colour",
                "phase,gas,Gas | phase has no value gas",
                "'phase,solid,cake\nphase,rag,Cake' | Cake means both SOLID and RAG",
            })
    void wrongRowIsNamed(String rows, String fault) {
        IllegalArgumentException wrong = assertThrows(IllegalArgumentException.class, () -> of(rows));
        assertEquals(fault, wrong.getMessage());
    }

    @Test
    void fileThatComesWithTheProgramIsSound() {
        ChoiceSynonyms words = new ChoiceSynonyms(BookWords::loose);
        assertEquals(Optional.of(Layer.Phase.MOTHER_LIQUOR), words.find(Layer.Phase.class, "Mutterlauge"));
        assertTrue(words.find(Step.Operation.class, "verdünnt").isPresent());
        assertEquals(Optional.of(Layer.Phase.SOLID), words.find(Layer.Phase.class, "fest"));
        assertEquals(Optional.of(Step.Operation.STRIP), words.find(Step.Operation.class, "strippen"));
        for (String method : List.of("UHPLC-DAD", "UPLC-PDA", "HPLC-DAD", "uhplc")) {
            assertEquals(Optional.of(Assay.Method.HPLC), words.find(Assay.Method.class, method), method);
        }
    }
}
