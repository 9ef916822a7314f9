package workuptally.report.json;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;

/**
 * Compares a document with a schema by the keywords that ours uses: {@code $ref}, type, required, properties, items, enum, minimum and
 * pattern (JSON Schema 2020-12). A name that the schema does not describe is a fault too, so that the schema stays complete.
 */
final class SchemaWalk {
    private final JsonNode root;
    private final List<String> faults = new ArrayList<>();

    SchemaWalk(JsonNode root) {
        this.root = root;
    }

    List<String> faults(JsonNode document) {
        walk(root, document, "");
        return List.copyOf(faults);
    }

    private void walk(JsonNode schema, JsonNode value, String path) {
        if (schema.has("$ref")) {
            walk(root.at(schema.required("$ref").asString().substring(1)), value, path);
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
