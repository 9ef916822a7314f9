package workuptally.report.json;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Compares a document with a schema by the keywords that ours uses: {@code $ref} into the same file or one beside it, type, required, properties, items, enum, minimum and
 * pattern (JSON Schema 2020-12). A name that the schema does not describe is a fault too, so that the schema stays complete.
 */
final class SchemaWalk {
    private final Path folder;
    private final Map<String, JsonNode> files = new HashMap<>();
    private final List<String> faults = new ArrayList<>();
    private final String main;
    private String file;

    SchemaWalk(Path schema) {
        this.folder = schema.getParent();
        this.main = schema.getFileName().toString();
        this.file = main;
    }

    List<String> faults(JsonNode document) {
        walk(root(main), document, "");
        return List.copyOf(faults);
    }

    private void walk(JsonNode schema, JsonNode value, String path) {
        if (schema.has("$ref")) {
            follow(schema.required("$ref").asString(), value, path);
            return;
        }
        checkType(schema.required("type").asString(), value, path);
        if (schema.has("enum") && schema.required("enum").valueStream().noneMatch(value::equals)) {
            faults.add(path + " is " + value);
        }
        if (schema.has("minimum")
                && value.doubleValue() < schema.required("minimum").doubleValue()) {
            faults.add(path + " is " + value);
        }
        if (schema.has("pattern")
                && !value.asString().matches(schema.required("pattern").asString())) {
            faults.add(path + " is " + value);
        }
        if (value.isObject()) {
            object(schema, value, path);
        }
        if (value.isArray()) {
            for (int i = 0; i < value.size(); i++) {
                walk(schema.required("items"), value.get(i), path + "/" + i);
            }
        }
    }

    private JsonNode root(String name) {
        return files.computeIfAbsent(name, n -> new JsonMapper().readTree(folder.resolve(n)));
    }

    private void follow(String reference, JsonNode value, String path) {
        String from = file;
        int hash = reference.indexOf('#');
        file = hash == 0 ? file : reference.substring(0, hash);
        JsonNode target = root(file).at(reference.substring(hash + 1));
        if (target.isMissingNode()) {
            throw new IllegalArgumentException(reference);
        }
        walk(target, value, path);
        file = from;
    }

    private void object(JsonNode schema, JsonNode value, String path) {
        for (JsonNode name : schema.path("required")) {
            if (!value.has(name.asString())) {
                faults.add(path + " lacks " + name.asString());
            }
        }
        for (String name : value.propertyStream().map(e -> e.getKey()).collect(Collectors.toList())) {
            JsonNode described = schema.path("properties").path(name);
            if (described.isMissingNode()) {
                faults.add(path + "/" + name + " is not described");
            } else {
                walk(described, value.required(name), path + "/" + name);
            }
        }
    }

    private void checkType(String type, JsonNode value, String path) {
        boolean fits = switch (type) {
            case "object" -> value.isObject();
            case "array" -> value.isArray();
            case "string" -> value.isString();
            case "boolean" -> value.isBoolean();
            case "integer" -> value.isIntegralNumber();
            case "number" -> value.isNumber();
            default -> throw new IllegalArgumentException(type);
        };
        if (!fits) {
            faults.add(path + " is no " + type + ": " + value);
        }
    }
}
