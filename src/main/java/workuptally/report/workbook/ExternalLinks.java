package workuptally.report.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Links that lead out of a book, as their owner wrote them. The library writes targets anew in the form of an address, spaces and backslashes
 * coded, which programs then look for under that name.
 */
final class ExternalLinks {
    private static final Pattern RELATIONSHIP = Pattern.compile("<Relationship\\b[^>]*>");
    private static final Pattern ID = Pattern.compile("\\bId=\"([^\"]*)\"");
    private static final Pattern TARGET = Pattern.compile("\\bTarget=\"[^\"]*\"");

    private ExternalLinks() {}

    /**
     * A list of relationships with the targets put back.
     *
     * @param saved the list as the library saved it
     * @param targets targets by id
     */
    static byte[] asWritten(InputStream saved, Map<String, String> targets) throws IOException {
        Matcher relationships = RELATIONSHIP.matcher(new String(saved.readAllBytes(), StandardCharsets.UTF_8));
        return relationships
                .replaceAll(found -> Matcher.quoteReplacement(restored(found.group(), targets)))
                .getBytes(StandardCharsets.UTF_8);
    }

    private static String restored(String relationship, Map<String, String> targets) {
        Matcher id = ID.matcher(relationship);
        boolean external = relationship.contains("TargetMode=\"External\"") && id.find();
        String target = external ? targets.get(id.group(1)) : null;
        return target == null
                ? relationship
                : TARGET.matcher(relationship)
                        .replaceFirst(Matcher.quoteReplacement("Target=\"" + XmlText.of(target) + "\""));
    }
}
