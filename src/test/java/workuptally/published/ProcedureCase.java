package workuptally.published;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * One published procedure, whose entries are runs of the book in {@code procedures/}.
 *
 * @param id name of the case
 * @param title what is made
 * @param citation where it is printed
 * @param runs runs of the book; two where the source gives a range, or two bases of the yield
 * @param expected figures that must come out
 */
record ProcedureCase(String id, String title, String citation, List<String> runs, List<Expected> expected) {
    /**
     * One expected figure.
     *
     * @param run run of the book
     * @param figure which figure
     * @param subject material, product, lot or step it is about
     * @param text expected words; empty for a number
     * @param value recomputed number
     * @param tolerance allowed difference from {@code value}
     * @param printed what the source prints, if it prints a number
     */
    record Expected(
            String run,
            String figure,
            String subject,
            Optional<String> text,
            double value,
            double tolerance,
            Optional<Printed> printed) {}

    /**
     * A printed number.
     *
     * @param number the number
     * @param tolerance difference that the roundness of the print allows
     * @param agrees false where the source contradicts its own entries by more than that
     */
    record Printed(double number, double tolerance, boolean agrees) {}

    static List<ProcedureCase> all() {
        try (InputStream stream = ProcedureCase.class.getResourceAsStream("procedures.json")) {
            List<ProcedureCase> cases = new ArrayList<>();
            for (JsonNode each : new ObjectMapper().readTree(stream).required("cases")) {
                cases.add(read(each));
            }
            return cases;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ProcedureCase read(JsonNode each) {
        List<String> runs = new ArrayList<>();
        each.required("inputs").required("runs").forEach(run -> runs.add(run.asString()));
        List<Expected> expected = new ArrayList<>();
        each.required("expected").forEach(figure -> expected.add(expected(figure)));
        return new ProcedureCase(
                PublishedCase.text(each, "id"),
                PublishedCase.text(each, "title"),
                PublishedCase.text(each, "citation"),
                runs,
                expected);
    }

    private static Expected expected(JsonNode figure) {
        Optional<Printed> printed = figure.has("printedTolerance")
                ? Optional.of(new Printed(
                        Double.parseDouble(figure.required("printed").asString()),
                        figure.required("printedTolerance").doubleValue(),
                        figure.required("agrees").booleanValue()))
                : Optional.empty();
        boolean isText = figure.has("text");
        return new Expected(
                PublishedCase.text(figure, "run"),
                PublishedCase.text(figure, "figure"),
                PublishedCase.text(figure, "subject"),
                isText ? Optional.of(figure.required("text").asString()) : Optional.empty(),
                isText ? 0 : figure.required("value").doubleValue(),
                isText ? 0 : figure.required("tolerance").doubleValue(),
                printed);
    }

    @Override
    public String toString() {
        return id + " " + title;
    }
}
