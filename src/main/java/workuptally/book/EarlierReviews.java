package workuptally.book;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;
import workuptally.book.files.JsonTree;
import workuptally.model.EarlierContent;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.Severity;
import workuptally.model.Subject;

/**
 * What layers of earlier batches were found to hold, from the JSON of their reviews: terminal layers of runs of a series, by readings of their
 * own.
 *
 * @param contents what they held, in order of the files
 * @param findings files that could not be read
 */
public record EarlierReviews(List<EarlierContent> contents, List<Finding> findings) {
    private static final String ENDING = "-review.json";
    private static final int DEEPEST = 8;

    /** Copies the lists. */
    public EarlierReviews {
        contents = List.copyOf(contents);
        findings = List.copyOf(findings);
    }

    /**
     * Reads the reviews in a folder and its subfolders.
     *
     * @throws IOException if the folder cannot be accessed
     */
    public static EarlierReviews in(Path folder) throws IOException {
        List<EarlierContent> contents = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        List<Path> files = new ArrayList<>();
        Files.walkFileTree(folder, Set.of(), DEEPEST, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                if (file.toString().endsWith(ENDING) && Files.isRegularFile(file)) {
                    files.add(file);
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException failure) throws IOException {
                if (file.equals(folder)) {
                    throw failure;
                }
                findings.add(unreadable(file));
                return FileVisitResult.CONTINUE;
            }
        });
        Collections.sort(files);
        for (Path file : files) {
            try {
                contents.addAll(read(file));
            } catch (JacksonException | ClassCastException | IOException damaged) {
                findings.add(unreadable(file));
            }
        }
        return new EarlierReviews(contents, findings);
    }

    private static Finding unreadable(Path file) {
        return new Finding(
                FindingCode.EXPERIENCE_UNREADABLE,
                Severity.CHECK,
                Subject.NONE,
                Place.ofFile(file.getFileName().toString()),
                Phrase.of("an earlier review that cannot be read"),
                Phrase.of("the JSON of a review as this program wrote it"),
                "folder given with --experience",
                Phrase.of("Take it out of the folder, or review its book again; its batches count nowhere."));
    }

    private static List<EarlierContent> read(Path file) throws IOException {
        List<EarlierContent> contents = new ArrayList<>();
        try (InputStream in = Files.newInputStream(file);
                JsonParser json = new JsonFactory().createParser(ObjectReadContext.empty(), in)) {
            if (json.nextToken() != JsonToken.START_OBJECT) {
                throw new IOException("no object");
            }
            while (json.nextToken() == JsonToken.PROPERTY_NAME) {
                boolean runs = json.currentName().equals("runs");
                JsonToken value = json.nextToken();
                if (runs && value == JsonToken.START_ARRAY) {
                    while (json.nextToken() != JsonToken.END_ARRAY) {
                        ofRun(object(JsonTree.of(json)), contents);
                    }
                } else {
                    json.skipChildren();
                }
            }
        }
        return contents;
    }

    private static void ofRun(Map<?, ?> run, List<EarlierContent> contents) {
        String series = text(run, "series");
        if (series.isBlank()) {
            return;
        }
        for (Object each : list(run, "layers")) {
            Map<?, ?> layer = object(each);
            if (!text(layer, "terminal").equals("true")) {
                continue;
            }
            for (Object held : list(layer, "contents")) {
                Map<?, ?> content = object(held);
                percent(content)
                        .ifPresent(percent -> contents.add(new EarlierContent(
                                series,
                                text(layer, "layer"),
                                text(content, "substance"),
                                text(run, "run"),
                                date(run),
                                percent,
                                isBound(content))));
            }
        }
    }

    /** A result, or the limit of a non-detect, which counts as half of it in the review. */
    private static Optional<Double> percent(Map<?, ?> content) {
        boolean own = text(content, "restsOn").equals("own reading");
        String percent = text(content, "percentOfTheory");
        if (!own
                || percent.isEmpty()
                || !(isBound(content) || text(content, "kind").equals("measured"))) {
            return Optional.empty();
        }
        try {
            double value = Double.parseDouble(percent);
            return Double.isFinite(value) && value >= 0
                    ? Optional.of(isBound(content) ? 2 * value : value)
                    : Optional.empty();
        } catch (NumberFormatException none) {
            return Optional.empty();
        }
    }

    private static boolean isBound(Map<?, ?> content) {
        return text(content, "kind").equals("bound");
    }

    private static Optional<LocalDate> date(Map<?, ?> run) {
        try {
            return Optional.of(text(run, "date")).filter(d -> !d.isEmpty()).map(LocalDate::parse);
        } catch (DateTimeParseException none) {
            return Optional.empty();
        }
    }

    private static String text(Map<?, ?> object, String name) {
        return object.get(name) instanceof String text ? text : "";
    }

    private static List<?> list(Map<?, ?> object, String name) {
        return object.get(name) instanceof List<?> list ? list : List.of();
    }

    private static Map<?, ?> object(Object value) {
        return value instanceof Map<?, ?> map ? map : Map.of();
    }
}
