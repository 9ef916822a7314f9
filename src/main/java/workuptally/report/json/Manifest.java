package workuptally.report.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;
import workuptally.model.InputFile;

/**
 * What a folder holds of one set of reports: written last, it marks the set as whole, and later tells which files are still as the program
 * left them.
 *
 * @param tool version of the program
 * @param inputs files that were read, with their hashes
 * @param files files that were written, with their hashes; names without folders
 */
public record Manifest(String tool, List<InputFile> inputs, List<InputFile> files) {
    private static final long MOST_BYTES = 10_000_000;

    /** Copies the lists. */
    public Manifest {
        inputs = List.copyOf(inputs);
        files = List.copyOf(files);
    }

    /** The hash of a file of the set; empty where it is none of it. */
    public Optional<String> hashOf(String name) {
        return files.stream()
                .filter(file -> file.name().equals(name))
                .map(InputFile::sha256)
                .findFirst();
    }

    /** The same set with those files of an earlier one that this one does not name. */
    public Manifest andStill(List<InputFile> earlier) {
        Map<String, InputFile> all = new LinkedHashMap<>();
        files.forEach(file -> all.put(file.name(), file));
        earlier.forEach(file -> all.putIfAbsent(file.name(), file));
        return new Manifest(tool, inputs, new ArrayList<>(all.values()));
    }

    /**
     * Writes the manifest.
     *
     * @throws IOException if writing fails
     */
    public void write(Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            JsonReport.fields(out, json -> {
                json.text("tool", tool);
                json.array("inputs", inputs, input -> nameAndHash(json, input));
                json.array("files", files, output -> nameAndHash(json, output));
            });
        }
    }

    private static void nameAndHash(JsonFields json, InputFile file) {
        json.text("name", file.name());
        json.text("sha256", file.sha256());
    }

    /**
     * Reads a manifest.
     *
     * @return empty where there is none, or where the file of that name is no manifest of ours
     * @throws IOException if it cannot be accessed
     */
    public static Optional<Manifest> read(Path file) throws IOException {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > MOST_BYTES) {
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(file);
                JsonParser json = new JsonFactory().createParser(ObjectReadContext.empty(), in)) {
            return json.nextToken() == JsonToken.START_OBJECT ? manifest(json) : Optional.empty();
        } catch (JacksonException damaged) {
            return Optional.empty();
        }
    }

    private static Optional<Manifest> manifest(JsonParser json) {
        String tool = "";
        List<InputFile> inputs = List.of();
        List<InputFile> files = List.of();
        while (json.nextToken() == JsonToken.PROPERTY_NAME) {
            String part = json.currentName();
            json.nextToken();
            switch (part) {
                case "tool" -> tool = json.getString();
                case "inputs" -> inputs = files(json);
                case "files" -> files = files(json);
                default -> json.skipChildren();
            }
        }
        return files.isEmpty() ? Optional.empty() : Optional.of(new Manifest(tool, inputs, files));
    }

    private static List<InputFile> files(JsonParser json) {
        List<InputFile> files = new ArrayList<>();
        if (json.currentToken() != JsonToken.START_ARRAY) {
            return files;
        }
        while (json.nextToken() == JsonToken.START_OBJECT) {
            Map<String, String> fields = new LinkedHashMap<>();
            while (json.nextToken() == JsonToken.PROPERTY_NAME) {
                String name = json.currentName();
                json.nextToken();
                fields.put(name, String.valueOf(json.getValueAsString()));
            }
            String name = fields.getOrDefault("name", "");
            // A name with a folder in it is none that the program writes: nobody is led out of the folder.
            if (!name.isEmpty() && Path.of(name).getNameCount() == 1 && !name.equals("..")) {
                files.add(new InputFile(name, fields.getOrDefault("sha256", "")));
            }
        }
        return files;
    }
}
