package workuptally.published;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * One case of a data file.
 *
 * @param id name of the case
 * @param kind which computation it checks
 * @param title what it is about
 * @param citation where the printed answer stands
 * @param inputs numbers put in
 * @param expected figures that must come out
 */
record PublishedCase(String id, String kind, String title, String citation, JsonNode inputs, List<Expected> expected) {
    /** One expected figure with its tolerance. */
    record Expected(String figure, double value, double tolerance) {}

    static List<PublishedCase> of(String file) {
        try (InputStream stream = PublishedCase.class.getResourceAsStream(file + ".json")) {
            List<PublishedCase> cases = new ArrayList<>();
            for (JsonNode each : new ObjectMapper().readTree(stream).get("cases")) {
                cases.add(read(each));
            }
            return cases;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static PublishedCase read(JsonNode each) {
        List<Expected> expected = new ArrayList<>();
        for (JsonNode figure : each.get("expected")) {
            expected.add(new Expected(
                    figure.get("figure").asString(),
                    figure.get("value").asDouble(),
                    figure.get("tolerance").asDouble()));
        }
        return new PublishedCase(
                text(each, "id"),
                text(each, "kind"),
                text(each, "title"),
                text(each, "citation"),
                each.get("inputs"),
                expected);
    }

    static String text(JsonNode node, String name) {
        String text = node.get(name).asString();
        if (text.isBlank()) {
            throw new IllegalStateException(name + " is blank");
        }
        return text;
    }

    double number(String name) {
        return inputs.get(name).asDouble();
    }

    int count(String name) {
        return inputs.get(name).asInt();
    }

    String text(String name) {
        return text(inputs, name);
    }

    List<Double> numbers(String name) {
        List<Double> values = new ArrayList<>();
        inputs.get(name).forEach(value -> values.add(value.asDouble()));
        return values;
    }

    List<String> texts(String name) {
        List<String> values = new ArrayList<>();
        inputs.get(name).forEach(value -> values.add(value.asString()));
        return values;
    }

    @Override
    public String toString() {
        return id + " " + title;
    }
}
