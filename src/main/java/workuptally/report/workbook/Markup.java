package workuptally.report.workbook;

import java.io.EOFException;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.util.Optional;

/**
 * Walks through the tags of an XML text and copies everything it passes, so that what nobody changes stays as it was, character by
 * character. Namespaces are not resolved: elements are told apart by local name, which is enough inside a sheet part.
 *
 * <p>A XML parser would hand out the content of the text, not the text: quotes, spaces and entities would come out changed.
 */
final class Markup {
    private final Reader in;
    private final Writer out;
    private final char[] buffer = new char[1 << 16];
    private int position;
    private int limit;

    private char[] tag = new char[256];
    private int tagLength;
    private int nameStart;
    private int nameEnd;
    private boolean silent;

    Markup(Reader in, Writer out) {
        this.in = in;
        this.out = out;
    }

    /** While silent, what is passed is dropped instead of copied. */
    void silent(boolean drop) {
        silent = drop;
    }

    /**
     * Goes to the next start or end tag. Text, comments and instructions on the way are copied; the tag itself is not, until
     * {@link #keep()} or one of the other writing methods is called.
     *
     * @return false at the end of the text
     */
    boolean next() throws IOException {
        while (true) {
            int start = position;
            while (position < limit && buffer[position] != '<') {
                position++;
            }
            copy(start, position);
            if (position == limit) {
                if (!fill()) {
                    return false;
                }
                continue;
            }
            position++;
            int first = peek();
            if (first == '!') {
                copyDeclaration();
            } else if (first == '?') {
                copyUntil("<", "?>");
            } else {
                readTag();
                return true;
            }
        }
    }

    /** True for an end tag. */
    boolean isEnd() {
        return tag[1] == '/';
    }

    /** True for a tag that is closed at once, {@code <row/>}. */
    boolean isEmpty() {
        return tag[tagLength - 2] == '/';
    }

    /** True when the local name of the element is that one. */
    boolean is(String localName) {
        int length = nameEnd - nameStart;
        if (length != localName.length()) {
            return false;
        }
        for (int i = 0; i < length; i++) {
            if (tag[nameStart + i] != localName.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    /** Prefix of the element with its colon, or empty. */
    String prefix() {
        int from = isEnd() ? 2 : 1;
        return new String(tag, from, nameStart - from);
    }

    /** Local name of the element. */
    String localName() {
        return new String(tag, nameStart, nameEnd - nameStart);
    }

    /** The tag as it stands. */
    String text() {
        return new String(tag, 0, tagLength);
    }

    /** Raw value of an attribute without prefix, if the tag has it; only for attributes whose values hold no entities. */
    Optional<String> attribute(String name) {
        int[] range = find(name);
        return range.length == 0 ? Optional.empty() : Optional.of(new String(tag, range[1], range[2] - range[1]));
    }

    /** The tag with the attribute set to a value; an attribute that is there keeps its place. */
    String with(String name, String value) {
        int[] range = find(name);
        if (range.length > 0) {
            return new String(tag, 0, range[1]) + value + new String(tag, range[2], tagLength - range[2]);
        }
        return new String(tag, 0, nameEnd) + " " + name + "=\"" + value + "\""
                + new String(tag, nameEnd, tagLength - nameEnd);
    }

    /** The text from here to the next tag, read without passing it on; only while silent. */
    String textAhead() throws IOException {
        StringBuilder text = new StringBuilder();
        while (peek() != '<') {
            text.append(read());
        }
        return text.toString();
    }

    /** Copies the tag as it is. */
    void keep() throws IOException {
        if (!silent) {
            out.write(tag, 0, tagLength);
        }
    }

    /** Writes other text. */
    void write(String text) throws IOException {
        if (!silent) {
            out.write(text);
        }
    }

    /** Start (name), start (value) and end (value) of an attribute, or an empty array. */
    private int[] find(String name) {
        int i = nameEnd;
        while (i < tagLength) {
            while (i < tagLength && (isSpace(tag[i]) || tag[i] == '/' || tag[i] == '>')) {
                i++;
            }
            int from = i;
            while (i < tagLength && tag[i] != '=' && !isSpace(tag[i])) {
                i++;
            }
            int to = i;
            while (i < tagLength && (isSpace(tag[i]) || tag[i] == '=')) {
                i++;
            }
            if (i >= tagLength) {
                break;
            }
            char quote = tag[i];
            int valueStart = ++i;
            while (i < tagLength && tag[i] != quote) {
                i++;
            }
            if (to - from == name.length() && new String(tag, from, to - from).equals(name)) {
                return new int[] {from, valueStart, i};
            }
            i++;
        }
        return new int[0];
    }

    private void readTag() throws IOException {
        tagLength = 0;
        append('<');
        char quote = 0;
        while (true) {
            char c = read();
            append(c);
            if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == '>') {
                break;
            }
        }
        nameStart = tag[1] == '/' ? 2 : 1;
        nameEnd = nameStart;
        while (!isSpace(tag[nameEnd]) && tag[nameEnd] != '>' && tag[nameEnd] != '/') {
            if (tag[nameEnd] == ':') {
                nameStart = nameEnd + 1;
            }
            nameEnd++;
        }
    }

    private void copyDeclaration() throws IOException {
        read();
        int next = peek();
        if (next == '-') {
            copyUntil("<!", "-->");
        } else if (next == '[') {
            copyUntil("<!", "]]>");
        } else {
            throw new IOException("a part of the workbook holds a document type declaration, which no workbook needs");
        }
    }

    private void copyUntil(String opened, String close) throws IOException {
        StringBuilder text = new StringBuilder(opened);
        while (!(text.length() >= opened.length() + close.length() && endsWith(text, close))) {
            text.append(read());
        }
        write(text.toString());
    }

    private static boolean endsWith(StringBuilder text, String end) {
        return text.indexOf(end, text.length() - end.length()) >= 0;
    }

    private void append(char c) {
        if (tagLength == tag.length) {
            tag = java.util.Arrays.copyOf(tag, 2 * tag.length);
        }
        tag[tagLength++] = c;
    }

    private void copy(int from, int to) throws IOException {
        if (!silent && to > from) {
            out.write(buffer, from, to - from);
        }
    }

    private char read() throws IOException {
        if (position == limit && !fill()) {
            throw new EOFException("a part of the workbook ends inside a tag");
        }
        return buffer[position++];
    }

    private int peek() throws IOException {
        if (position == limit && !fill()) {
            throw new EOFException("a part of the workbook ends inside a tag");
        }
        return buffer[position];
    }

    private boolean fill() throws IOException {
        position = 0;
        limit = Math.max(0, in.read(buffer, 0, buffer.length));
        return limit > 0;
    }

    private static boolean isSpace(char c) {
        return c == ' ' || c == '\t' || c == '\n' || c == '\r';
    }
}
