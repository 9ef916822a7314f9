package workuptally.book.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;

/** A JSON value as objects of the language: maps and lists in their order, texts; numbers and words such as {@code true} as their text. */
public final class JsonTree {
    private JsonTree() {}

    /** The value that starts at the current token. */
    public static Object of(JsonParser json) {
        if (json.currentToken() == JsonToken.START_OBJECT) {
            Map<String, Object> object = new LinkedHashMap<>();
            while (json.nextToken() == JsonToken.PROPERTY_NAME) {
                String name = json.currentName();
                json.nextToken();
                object.put(name, of(json));
            }
            return object;
        }
        if (json.currentToken() == JsonToken.START_ARRAY) {
            List<Object> array = new ArrayList<>();
            while (json.nextToken() != JsonToken.END_ARRAY) {
                array.add(of(json));
            }
            return array;
        }
        return json.getString();
    }
}
