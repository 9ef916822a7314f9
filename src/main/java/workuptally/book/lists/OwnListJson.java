package workuptally.book.lists;

import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;
import workuptally.book.headings.OwnListFeed;
import workuptally.book.schema.Schema;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.schema.Table;

/** Writes layouts of lists in the form that {@link OwnListParts} reads, a table, feed or list of names on each line. */
final class OwnListJson {
    private final StringBuilder out = new StringBuilder();

    private OwnListJson() {}

    /** A headings file with these lists. */
    static String of(List<OwnListLayout> layouts) {
        OwnListJson json = new OwnListJson();
        json.out.append("{\"lists\": [");
        for (int i = 0; i < layouts.size(); i++) {
            json.out.append(i == 0 ? "\n" : ",\n");
            json.layout(layouts.get(i));
        }
        return json.out.append("\n]}\n").toString();
    }

    private void layout(OwnListLayout layout) {
        out.append("  {\"sheets\": ").append(texts(layout.sheets()));
        out.append(",\n   \"heading rows\": ").append(layout.headingRows());
        out.append(",\n   \"leave out\": ").append(texts(layout.leaveOut()));
        for (Table table : Schema.TABLES) {
            List<OwnListFeed> feeds = layout.feeds().stream()
                    .filter(feed -> feed.table() == table)
                    .toList();
            for (int i = 0; i < feeds.size(); i++) {
                out.append(i == 0 ? ",\n   " + text(table.name()) + ": [" : ",").append("\n     ");
                feed(feeds.get(i));
            }
            out.append(feeds.isEmpty() ? "" : "]");
        }
        out.append(",\n   \"not used\": ").append(texts(layout.notUsed()));
        out.append(",\n   \"open\": [");
        for (int i = 0; i < layout.open().size(); i++) {
            OwnListLayout.OpenHeading open = layout.open().get(i);
            out.append(i == 0 ? "\n     " : ",\n     ")
                    .append("{\"heading\": ")
                    .append(text(open.heading()))
                    .append(", \"question\": ")
                    .append(text(open.question()))
                    .append("}");
        }
        out.append("]}");
    }

    private void feed(OwnListFeed feed) {
        String between = "{";
        for (Map.Entry<SchemaColumn, List<String>> column : feed.columns().entrySet()) {
            List<String> own = column.getValue();
            out.append(between)
                    .append(text(column.getKey().heading()))
                    .append(": ")
                    .append(own.size() == 1 ? text(own.get(0)) : texts(own));
            between = ", ";
        }
        for (Map.Entry<SchemaColumn, String> constant : feed.constants().entrySet()) {
            out.append(between)
                    .append(text(constant.getKey().heading()))
                    .append(": ")
                    .append(text("= " + constant.getValue()));
            between = ", ";
        }
        out.append("}");
    }

    private static String texts(List<String> texts) {
        return texts.stream().map(OwnListJson::text).toList().toString();
    }

    private static String text(String text) {
        StringWriter quoted = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(ObjectWriteContext.empty(), quoted)) {
            json.writeString(text);
        }
        return quoted.toString();
    }
}
