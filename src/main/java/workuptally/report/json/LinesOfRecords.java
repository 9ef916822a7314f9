package workuptally.report.json;

import tools.jackson.core.JsonGenerator;
import tools.jackson.core.PrettyPrinter;

/**
 * Form of the JSON: what a report and each of its runs hold stands on lines of its own; a record deeper down, such as a layer, is one line.
 * So a reader finds and compares records. Only what the report holds is set in: with more, a tenth of a large book would be spaces.
 */
final class LinesOfRecords implements PrettyPrinter {
    /** The report, the list of its runs, a run, and a list of the run. */
    private static final int DEEPEST_WITH_LINES = 4;

    private int depth;

    private void line(JsonGenerator generator) {
        if (depth <= DEEPEST_WITH_LINES) {
            generator.writeRaw('\n');
            generator.writeRaw(depth == 1 ? "  " : "");
        }
    }

    private void close(JsonGenerator generator, int entries, char bracket) {
        boolean lines = depth <= DEEPEST_WITH_LINES && entries > 0;
        depth--;
        if (lines) {
            line(generator);
        }
        generator.writeRaw(bracket);
    }

    @Override
    public void writeRootValueSeparator(JsonGenerator generator) {
        generator.writeRaw('\n');
    }

    @Override
    public void writeStartObject(JsonGenerator generator) {
        depth++;
        generator.writeRaw('{');
    }

    @Override
    public void beforeObjectEntries(JsonGenerator generator) {
        line(generator);
    }

    @Override
    public void writeObjectNameValueSeparator(JsonGenerator generator) {
        generator.writeRaw(depth <= DEEPEST_WITH_LINES ? ": " : ":");
    }

    @Override
    public void writeObjectEntrySeparator(JsonGenerator generator) {
        generator.writeRaw(',');
        line(generator);
    }

    @Override
    public void writeEndObject(JsonGenerator generator, int entries) {
        close(generator, entries, '}');
    }

    @Override
    public void writeStartArray(JsonGenerator generator) {
        depth++;
        generator.writeRaw('[');
    }

    @Override
    public void beforeArrayValues(JsonGenerator generator) {
        line(generator);
    }

    @Override
    public void writeArrayValueSeparator(JsonGenerator generator) {
        generator.writeRaw(',');
        line(generator);
    }

    @Override
    public void writeEndArray(JsonGenerator generator, int entries) {
        close(generator, entries, ']');
    }
}
