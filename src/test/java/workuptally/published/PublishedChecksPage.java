package workuptally.published;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The page that lists every published check with its source and its verdict. */
final class PublishedChecksPage {
    private static final List<String> FILES = List.of(
            "procedures",
            "extraction",
            "uncertainty",
            "assay",
            "metrics",
            "gas",
            "vapour-pressure",
            "statistics",
            "drying",
            "waste",
            "trade");
    private static final String OPENING = """
            # Published checks

            Every case is computed by the program's own code in each build and compared with what its source prints, within the
            tolerance named in its data file (`src/test/resources/workuptally/published`). Where the print is wrong, the
            recomputed figure is expected, and the verdict says why. *Basis* tells what was seen in the source, what was
            recomputed, and what comes from memory or from common practice.

            This page is made from the data files; a test fails when it differs. Renew it with
            `mvn test -Dtest=PublishedChecksPageTest -Dpublished-checks.renew=true`.
            """;

    private PublishedChecksPage() {}

    static String text() {
        StringBuilder page = new StringBuilder(OPENING);
        int cases = 0;
        int figures = 0;
        StringBuilder tables = new StringBuilder();
        for (String file : FILES) {
            JsonNode data = read(file);
            tables.append("\n## ").append(data.required("about").asString()).append("\n\n");
            tables.append("| Case | What | Source | Basis | Figures | Verdict |\n|---|---|---|---|---|---|\n");
            for (JsonNode each : data.required("cases")) {
                tables.append(line(each));
                cases++;
                figures += each.required("expected").size();
            }
        }
        return page.append("\n")
                .append(cases)
                .append(" cases, ")
                .append(figures)
                .append(" figures.\n")
                .append(tables)
                .toString();
    }

    private static String line(JsonNode each) {
        return "| "
                + String.join(
                        " | ",
                        cell(each, "id"),
                        cell(each, "title"),
                        cell(each, "citation"),
                        cell(each, "basis"),
                        Integer.toString(each.required("expected").size()),
                        verdict(each))
                + " |\n";
    }

    private static String verdict(JsonNode each) {
        String note = each.has("note") ? ": " + cell(each, "note") : "";
        if (each.required("expected").isEmpty()) {
            return "not computed" + note;
        }
        boolean wrong =
                each.has("printIsWrong") && each.required("printIsWrong").booleanValue();
        return (wrong ? "agrees with the recomputed figures; the print is wrong" : "agrees") + note;
    }

    private static String cell(JsonNode each, String name) {
        return PublishedCase.text(each, name).replace("|", "\\|");
    }

    private static JsonNode read(String file) {
        try (InputStream stream = PublishedChecksPage.class.getResourceAsStream(file + ".json")) {
            return new ObjectMapper().readTree(stream);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
