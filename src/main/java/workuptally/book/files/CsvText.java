package workuptally.book.files;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * A CSV file as text.
 *
 * @param text its text without byte-order mark
 * @param guessedEncoding true if it is no Unicode text and was read as Windows Latin-1
 */
public record CsvText(String text, boolean guessedEncoding) {
    /** What a spreadsheet program on Windows writes where it does not write Unicode. */
    private static final Charset WINDOWS_LATIN_1 = Charset.forName("windows-1252");

    /**
     * Decodes a file: by its byte-order mark, else as UTF-8, else as Windows Latin-1.
     *
     * @throws UnreadableBookException if it is no text
     */
    public static CsvText of(FileBytes file) throws UnreadableBookException {
        byte[] bytes = file.bytes();
        if (startsWith(bytes, 'P', 'K', 3, 4) || startsWith(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
            throw new UnreadableBookException(
                    file.name() + " is a workbook with the wrong ending: give it the ending .xlsx, or save it as CSV.");
        }
        try {
            CsvText csv = decode(bytes);
            if (csv.text().indexOf('\0') >= 0) {
                throw new UnreadableBookException(
                        file.name() + " holds zero bytes and is no CSV text: save it again as CSV in UTF-8.");
            }
            return csv;
        } catch (CharacterCodingException damaged) {
            throw new UnreadableBookException(
                    file.name() + " is cut off or damaged within a character: save it again as CSV in UTF-8.", damaged);
        }
    }

    private static CsvText decode(byte[] bytes) throws CharacterCodingException {
        if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
            return new CsvText(decode(bytes, 3, StandardCharsets.UTF_8), false);
        }
        if (startsWith(bytes, 0xFF, 0xFE)) {
            return new CsvText(decode(bytes, 2, StandardCharsets.UTF_16LE), false);
        }
        if (startsWith(bytes, 0xFE, 0xFF)) {
            return new CsvText(decode(bytes, 2, StandardCharsets.UTF_16BE), false);
        }
        try {
            return new CsvText(decode(bytes, 0, StandardCharsets.UTF_8), false);
        } catch (CharacterCodingException notUtf8) {
            return new CsvText(new String(bytes, WINDOWS_LATIN_1), true);
        }
    }

    private static String decode(byte[] bytes, int from, Charset charset) throws CharacterCodingException {
        return charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(ByteBuffer.wrap(bytes, from, bytes.length - from))
                .toString();
    }

    private static boolean startsWith(byte[] bytes, int... start) {
        if (bytes.length < start.length) {
            return false;
        }
        for (int i = 0; i < start.length; i++) {
            if ((bytes[i] & 0xFF) != start[i]) {
                return false;
            }
        }
        return true;
    }
}
