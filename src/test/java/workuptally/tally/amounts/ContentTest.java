package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import workuptally.measure.Readings;

class ContentTest {
    private static Content resting(Content.Rests rests, boolean measured) {
        return new Content(
                "P",
                Content.Kind.MEASURED,
                measured ? Optional.of(new Readings().exact(1)) : Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(1.2),
                OptionalDouble.of(5),
                "HPLC",
                rests);
    }

    @ParameterizedTest
    @EnumSource(Content.Rests.class)
    void onlyAReadingOfThePortionOrACompositeSampleIsItsOwnEvidence(Content.Rests rests) {
        assertEquals(
                rests == Content.Rests.COMPOSITE_SAMPLE
                        || rests == Content.Rests.OWN_READING
                        || rests == Content.Rests.READINGS_APART,
                resting(rests, true).isOwnEvidence());
        assertEquals(
                rests == Content.Rests.COMPOSITE_SAMPLE, resting(rests, false).isOwnEvidence());
        assertEquals(rests == Content.Rests.CONSERVATION, resting(rests, true).isBoundedByConservation());
    }

    @Test
    void whatNobodyLookedForIsABoundAndNoMass() {
        Content unknown = Content.unknown("P", "not assayed");
        assertEquals(Content.Rests.NOTHING, unknown.rests());
        assertTrue(unknown.upperBoundGrams().isEmpty());
        Content lacking = unknown.atMostByConservation(Content.Kind.UNKNOWN, 3.5, "what the run lacks");
        assertEquals(3.5, lacking.upperBoundGrams().orElseThrow(), 0);
        assertEquals(Content.Kind.UNKNOWN, lacking.kind());
        assertTrue(lacking.isBoundedByConservation());
        assertFalse(lacking.isOwnEvidence());
        assertTrue(lacking.massGrams().isEmpty());
        Content predicted = lacking.atMostByPrediction(0.5, "by partition");
        assertEquals(0.5, predicted.upperBoundGrams().orElseThrow(), 0);
        assertEquals(Content.Kind.BOUND, predicted.kind());
        assertEquals(Content.Rests.PREDICTION, predicted.rests());
        assertEquals("P", predicted.substance());
        assertEquals("by partition", predicted.evidence());
    }

    @Test
    void otherWordsChangeNothingElse() {
        Content content = resting(Content.Rests.PARENT, true);
        Content said = content.saying("GC");
        assertEquals("GC", said.evidence());
        assertEquals(content, said.saying("HPLC"));
    }

    @Test
    void wordsAreThoseOfTheJson() {
        assertEquals("own reading", Content.Rests.OWN_READING.word());
        assertEquals("measured", Content.Kind.MEASURED.word());
    }
}
