package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Figure;
import workuptally.model.Field.Qualifier;

class TypedNumberTest {
    private static TypedNumber typed(String text) {
        return new TypedNumber(TypedCells.number(text, TypedCells.row("layers", 2), "Net"));
    }

    @ParameterizedTest
    @CsvSource({
        "123.4, 1, 1234",
        "123.4, -1, 12.34",
        "123.4, 3, 123400",
        // zeros behind a point were written on purpose, those of a whole number were not
        "50.0, -1, 5.00",
        "9000, -1, 900",
        "9000, -3, 9",
        "3, -1, 0.3",
        "3, 1, 30"
    })
    void thePointMovesAndTheDigitsStay(String typed, int places, String moved) {
        Figure figure = typed(typed).moved(places);
        assertEquals(moved, figure.asTyped());
        assertEquals(Double.parseDouble(moved), figure.value(), 1e-12);
        int point = moved.indexOf('.');
        assertEquals(point < 0 ? 0 : moved.length() - point - 1, figure.decimals());
    }

    @Test
    void slipsAreMadeOfTheDigitsUnderTheUnitThatWasTyped() {
        TypedNumber milligrams = new TypedNumber(TypedCells.milligrams("123.4"));
        Figure moved = milligrams.moved(1);
        assertEquals("1234", moved.asTyped());
        assertEquals(1.234, moved.value(), 1e-12);
        assertEquals(3, moved.decimals());
        Figure other = milligrams.with(0.2);
        assertEquals("200.0", other.asTyped());
        assertEquals(0.2, other.value(), 1e-12);
        assertEquals(4, other.decimals());
        assertEquals(0.1234, milligrams.value(), 1e-12);
    }

    @Test
    void aRangeIsTakenByItsMiddle() {
        TypedNumber range = new TypedNumber(
                new Entered(new Figure(1.5, Qualifier.EXACT, 1, "1-2", true, 0.5), TypedCells.row("layers", 2), "Net"));
        Figure moved = range.moved(1);
        assertEquals("15", moved.asTyped());
        assertEquals(0.5, moved.halfWidth(), 0);
    }

    @Test
    void anotherUnitThanAPowerOfTenIsTakenByItsValue() {
        // 2 oz are 56.699 g
        TypedNumber ounces = new TypedNumber(
                new Entered(new Figure(56.7, Qualifier.EXACT, 1, "2 oz"), TypedCells.row("layers", 2), "Net"));
        assertEquals("567", ounces.moved(1).asTyped());
    }

    @ParameterizedTest
    @CsvSource({
        "16.3, 61.3 13.6",
        // the point is no digit, those on both sides of it are neighbours
        "0.65, 6.05 0.56",
        // nobody means 06, and two alike make no other number
        "60, ''",
        "10.5, 15.0",
        "11.2, 12.1",
        "5.03, 0.53 5.30",
        "7, ''"
    })
    void twoNeighbouringDigitsChangePlaces(String typed, String expected) {
        List<String> numbers =
                typed(typed).swapped().stream().map(Figure::asTyped).toList();
        assertEquals(expected, String.join(" ", numbers));
    }

    @Test
    void aZeroBehindTheFirstDigitMayHaveBeenInFrontOfIt() {
        assertEquals(Optional.of("106.3"), typed("16.3").zeroLost().map(Figure::asTyped));
        assertEquals(Optional.of("10"), typed("1").zeroLost().map(Figure::asTyped));
        assertEquals(Optional.of("90.2"), typed("9.2").zeroLost().map(Figure::asTyped));
        assertTrue(typed("0.5").zeroLost().isEmpty());
    }

    @Test
    void aSlipOfAnotherNumberIsKnownToTheDigitsTyped() {
        assertTrue(typed("21.3").isSlipOf(12.3));
        assertTrue(typed("4.25").isSlipOf(42.5));
        assertTrue(typed("4.25").isSlipOf(0.425));
        assertTrue(typed("4.25").isSlipOf(4250));
        assertTrue(typed("4250").isSlipOf(4.25));
        assertFalse(typed("4.25").isSlipOf(425));
        assertFalse(typed("4.25").isSlipOf(4.25));
        // 42.5 is known to half of 0.1
        assertTrue(typed("4.25").isSlipOf(42.54));
        assertFalse(typed("4.25").isSlipOf(42.56));
        // 5.24 to half of 0.01
        assertTrue(typed("4.25").isSlipOf(2.454));
        assertFalse(typed("4.25").isSlipOf(2.456));
        // of 150 mg the digits that were typed count, 1500 or 510
        assertTrue(new TypedNumber(TypedCells.milligrams("150")).isSlipOf(1.5));
        assertTrue(new TypedNumber(TypedCells.milligrams("150")).isSlipOf(0.5103));
        assertFalse(new TypedNumber(TypedCells.milligrams("150")).isSlipOf(0.512));
    }

    @Test
    void moreThanNineDecimalsAreNotShown() {
        assertEquals("0.123456789", typed("0.12345678901").moved(0).asTyped());
    }
}
