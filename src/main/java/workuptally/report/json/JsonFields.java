package workuptally.report.json;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tools.jackson.core.JsonGenerator;
import workuptally.measure.MeasuredValue;
import workuptally.model.InputFile;
import workuptally.model.Place;

/** Writes named values. What is not known, an empty text, an empty optional or a number that is not finite, is left out. */
final class JsonFields {
    /** Whole numbers up to this one are written without a decimal point. */
    private static final double MOST_WHOLE = 1e15;

    private final JsonGenerator generator;
    private final double coverageFactor;
    private final String onlyFile;

    /** Of a book of these files: a place in the only file of a book does not name it. */
    JsonFields(JsonGenerator generator, double coverageFactor, List<InputFile> files) {
        this.generator = generator;
        this.coverageFactor = coverageFactor;
        this.onlyFile = files.size() == 1 ? files.get(0).name() : "";
    }

    void place(Place place) {
        object("place", () -> {
            if (!place.file().equals(onlyFile)) {
                text("file", place.file());
            }
            text("sheet", place.sheet());
            text("cell", place.cell());
        });
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

    /** A flag that is left out where it is not set. */
    void flagIfSet(String name, boolean value) {
        if (value) {
            flag(name, true);
        }
    }

    void count(String name, long value) {
        generator.writeNumberProperty(name, value);
    }

    void number(String name, double value) {
        shortNumber(name, ShortNumber.computed(value));
    }

    /** A number that a person entered: all its digits. */
    void typed(String name, double value) {
        shortNumber(name, ShortNumber.typed(value));
    }

    /** An uncertainty, or a share of one. */
    void rough(String name, double value) {
        shortNumber(name, ShortNumber.rough(value));
    }

    private void shortNumber(String name, double value) {
        if (Double.isFinite(value)) {
            generator.writeName(name);
            write(value);
        }
    }

    private void write(double value) {
        if (value == Math.rint(value) && Math.abs(value) < MOST_WHOLE) {
            generator.writeNumber((long) value);
        } else {
            generator.writeNumber(value);
        }
    }

    void number(String name, OptionalDouble value) {
        value.ifPresent(v -> number(name, v));
    }

    /** The value, and U = k·u under the same name behind {@code expandedUncertainty}. */
    void measured(String name, MeasuredValue value) {
        double expanded = value.expandedUncertainty(coverageFactor);
        shortNumber(name, ShortNumber.worth(value.value(), expanded));
        rough("expandedUncertainty" + Character.toUpperCase(name.charAt(0)) + name.substring(1), expanded);
    }

    void measured(String name, Optional<MeasuredValue> value) {
        value.ifPresent(v -> measured(name, v));
    }

    /** The coverage factor and degrees of freedom of a result where few repeats make them differ from the book's. */
    void coverage(MeasuredValue value) {
        double degrees = value.effectiveDegreesOfFreedom();
        if (Double.isFinite(degrees)) {
            number("coverageFactor", value.coverageFactor(coverageFactor));
            number("degreesOfFreedom", degrees);
        }
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

    /** An array of objects that is left out where it is empty. */
    <T> void arrayIfAny(String name, Collection<T> values, Consumer<T> fields) {
        if (!values.isEmpty()) {
            array(name, values, fields);
        }
    }

    /** An array of texts that is left out where it is empty. */
    void textsIfAny(String name, Collection<String> values) {
        if (!values.isEmpty()) {
            texts(name, values);
        }
    }

    /** An array of texts. */
    void texts(String name, Collection<String> values) {
        generator.writeArrayPropertyStart(name);
        values.forEach(generator::writeString);
        generator.writeEndArray();
    }

    /** An array of whole numbers. */
    void counts(String name, Stream<Integer> values) {
        generator.writeName(name);
        generator.writeRawValue(values.map(String::valueOf).collect(Collectors.joining(",", "[", "]")));
    }

    /** Records as rows of values; {@code cells} writes those of one, in the order of the columns. */
    <T> void rows(Rows shape, Collection<T> values, BiConsumer<Row, T> cells) {
        generator.writeArrayPropertyStart(shape.array());
        for (T value : values) {
            generator.writeStartArray();
            Row row = new Row();
            cells.accept(row, value);
            if (row.cells != shape.columns().size()) {
                throw new IllegalStateException(shape + " with " + row.cells + " values");
            }
            generator.writeEndArray();
        }
        generator.writeEndArray();
    }

    /** One row of values. What is not known is null. */
    final class Row {
        private int cells;

        /** A text; null where it is empty. */
        Row text(String value) {
            cells++;
            if (value.isEmpty()) {
                generator.writeNull();
            } else {
                generator.writeString(value);
            }
            return this;
        }

        Row text(Optional<?> value) {
            return text(value.map(Object::toString).orElse(""));
        }

        /** Several texts in one place. */
        Row texts(Collection<String> values) {
            cells++;
            generator.writeStartArray();
            values.forEach(generator::writeString);
            generator.writeEndArray();
            return this;
        }

        Row flag(boolean value) {
            cells++;
            generator.writeBoolean(value);
            return this;
        }

        Row count(long value) {
            cells++;
            generator.writeNumber(value);
            return this;
        }

        /** A number that a person entered. */
        Row typed(double value) {
            return cell(ShortNumber.typed(value));
        }

        Row number(double value) {
            return cell(ShortNumber.computed(value));
        }

        Row number(OptionalDouble value) {
            return number(value.orElse(Double.NaN));
        }

        /** A result of that uncertainty. */
        Row figure(double value, double uncertainty) {
            return cell(ShortNumber.worth(value, uncertainty));
        }

        /** The value and its U = k·u: two places of the row. */
        Row measured(MeasuredValue value) {
            double expanded = value.expandedUncertainty(coverageFactor);
            return figure(value.value(), expanded).rough(expanded);
        }

        /** An uncertainty, or a share of one. */
        Row rough(double value) {
            return cell(ShortNumber.rough(value));
        }

        private Row cell(double value) {
            cells++;
            if (Double.isFinite(value)) {
                write(value);
            } else {
                generator.writeNull();
            }
            return this;
        }
    }

    /** An object; {@code fields} writes its fields. */
    void object(String name, Runnable fields) {
        generator.writeObjectPropertyStart(name);
        fields.run();
        generator.writeEndObject();
    }
}
