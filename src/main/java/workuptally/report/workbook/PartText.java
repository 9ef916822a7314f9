package workuptally.report.workbook;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The characters of an XML part in the encoding it says it has. Its declaration, where it names another encoding than UTF-8, is
 * handed out naming UTF-8, since everything is written in UTF-8.
 *
 * <p>How the encoding is found: XML 1.0 (fifth edition), appendix F.
 */
final class PartText {
    private static final int LOOK_AHEAD = 256;
    private static final Pattern DECLARED =
            Pattern.compile("^<\\?xml[^>]*?encoding\\s*=\\s*[\"']([A-Za-z0-9._-]+)[\"']");

    private PartText() {}

    /** Opens a part; the reader closes the stream. */
    static Reader open(InputStream part) throws IOException {
        BufferedInputStream bytes = new BufferedInputStream(part, 1 << 16);
        bytes.mark(LOOK_AHEAD);
        byte[] head = bytes.readNBytes(LOOK_AHEAD);
        bytes.reset();
        Charset charset = wide(head);
        if (charset == null) {
            charset = declared(new String(head, StandardCharsets.ISO_8859_1).replaceFirst("^\u00EF\u00BB\u00BF", ""));
        }
        Reader text = new InputStreamReader(bytes, charset);
        return withoutEncoding(text, charset);
    }

    private static Charset wide(byte[] head) {
        if (head.length < 2) {
            return StandardCharsets.UTF_8;
        }
        int first = (head[0] & 0xFF) << 8 | head[1] & 0xFF;
        return switch (first) {
            case 0xFEFF, 0x003C -> StandardCharsets.UTF_16BE;
            case 0xFFFE, 0x3C00 -> StandardCharsets.UTF_16LE;
            default -> null;
        };
    }

    private static Charset declared(String head) throws IOException {
        Matcher matcher = DECLARED.matcher(head);
        if (!matcher.find()) {
            return StandardCharsets.UTF_8;
        }
        try {
            return Charset.forName(matcher.group(1));
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            throw new IOException("a part of the workbook names the unknown encoding " + matcher.group(1), e);
        }
    }

    private static Reader withoutEncoding(Reader text, Charset charset) throws IOException {
        if (charset.equals(StandardCharsets.UTF_8)) {
            return text;
        }
        char[] head = new char[LOOK_AHEAD];
        int length = 0;
        while (length < head.length && (length == 0 || head[length - 1] != '>')) {
            int c = text.read();
            if (c < 0) {
                break;
            }
            if (c != 0xFEFF) {
                head[length++] = (char) c;
            }
        }
        String start = new String(Arrays.copyOf(head, length));
        Matcher matcher = DECLARED.matcher(start);
        String renamed = matcher.find()
                ? start.substring(0, matcher.start(1)) + "UTF-8" + start.substring(matcher.end(1))
                : start;
        return new Joined(new StringReader(renamed), text);
    }

    /** Two readers one after the other. */
    private static final class Joined extends Reader {
        private final Reader first;
        private final Reader second;

        Joined(Reader first, Reader second) {
            this.first = first;
            this.second = second;
        }

        @Override
        public int read(char[] target, int offset, int length) throws IOException {
            int count = first.read(target, offset, length);
            return count > 0 ? count : second.read(target, offset, length);
        }

        @Override
        public void close() throws IOException {
            second.close();
        }
    }
}
