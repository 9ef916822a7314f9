package workuptally.report.json;

import java.util.Collection;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import tools.jackson.core.JsonGenerator;
import workuptally.measure.Contribution;
import workuptally.measure.MeasuredValue;

/** Writes named values. What is not known, an empty text, an empty optional or a number that is not finite, is left out. */
final class JsonFields {
    private static final int DIGITS = 12;

    /** Powers of ten are exact up to this one. */
    private static final int MOST_PLACES = 22;

    private final JsonGenerator generator;
    private final double coverageFactor;

    JsonFields(JsonGenerator generator, double coverageFactor) {
        this.generator = generator;
        this.coverageFactor = coverageFactor;
    }

    void text(String name, String value) {
        if (!value.isEmpty()) {
            generator.writeStringProperty(name, value);
        }
    }

    void text(String name, Optional<?> value) {
        value.ifPresent(v -> text(name, v.toString()));
    }

    void flag(String name, boolean value) {
        generator.writeBooleanProperty(name, value);
    }

    void count(String name, long value) {
        generator.writeNumberProperty(name, value);
    }

    void number(String name, double value) {
        if (Double.isFinite(value)) {
            generator.writeNumberProperty(name, rounded(value));
        }
    }

    /** Twelve significant digits: no measurement has more, and what lies behind them is the error of the arithmetic. */
    private static double rounded(double value) {
        int places = DIGITS - 1 - (int) Math.floor(Math.log10(Math.abs(value)));
        if (value == 0 || places < 0 || places > MOST_PLACES) {
            return value;
        }
        double scale = Math.pow(10, places);
        return Math.rint(value * scale) / scale;
    }

    void number(String name, OptionalDouble value) {
        if (value.isPresent()) {
            number(name, value.getAsDouble());
        }
    }

    /** The value, and U = k·u under the same name behind {@code expandedUncertainty}. */
    void measured(String name, MeasuredValue value) {
        number(name, value.value());
        number(
                "expandedUncertainty" + Character.toUpperCase(name.charAt(0)) + name.substring(1),
                value.expandedUncertainty(coverageFactor));
    }

    void measured(String name, Optional<MeasuredValue> value) {
        if (value.isPresent()) {
            measured(name, value.get());
        }
    }

    /** The coverage factor and degrees of freedom of a result where few repeats make them differ from the book's. */
    void coverage(MeasuredValue value) {
        double degrees = value.effectiveDegreesOfFreedom();
        if (Double.isFinite(degrees)) {
            number("coverageFactor", value.coverageFactor(coverageFactor));
            number("degreesOfFreedom", degrees);
        }
    }

    /** The entered numbers a value depends on, the largest share of its variance first. */
    void dependsOn(MeasuredValue value) {
        array("dependsOn", value.budget(), this::contribution);
    }

    private void contribution(Contribution part) {
        text("name", part.reading().name());
        text("place", part.reading().where());
        number("value", part.reading().value());
        text("unit", part.reading().unit());
        number("standardUncertainty", part.reading().standardUncertainty());
        number("variancePercent", part.variancePercent());
    }

    /** An array of objects; {@code fields} writes the fields of one. */
    <T> void array(String name, Collection<T> values, Consumer<T> fields) {
        generator.writeArrayPropertyStart(name);
        for (T value : values) {
            generator.writeStartObject();
            fields.accept(value);
            generator.writeEndObject();
        }
        generator.writeEndArray();
    }

    /** An array of texts. */
    void texts(String name, Collection<String> values) {
        generator.writeArrayPropertyStart(name);
        for (String value : values) {
            generator.writeString(value);
        }
        generator.writeEndArray();
    }

    /** An object; {@code fields} writes its fields. */
    void object(String name, Runnable fields) {
        generator.writeObjectPropertyStart(name);
        fields.run();
        generator.writeEndObject();
    }
}
