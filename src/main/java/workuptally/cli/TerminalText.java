package workuptally.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;

/**
 * Text for a terminal. What a terminal would act on instead of showing it, or would show in another order than it stands, becomes a question
 * mark: a cell, a file name or an argument may hold it.
 */
final class TerminalText extends FilterWriter {
    private static final char SHOWN_INSTEAD = '?';

    TerminalText(Writer out) {
        super(out);
    }

    /** The text with a question mark for each such character; line feeds and tabs stay. */
    static String plain(String text) {
        char[] characters = text.toCharArray();
        replace(characters);
        return new String(characters);
    }

    @Override
    public void write(int character) throws IOException {
        out.write(isActedOn((char) character) ? SHOWN_INSTEAD : character);
    }

    @Override
    public void write(char[] characters, int offset, int length) throws IOException {
        write(new String(characters, offset, length), 0, length);
    }

    @Override
    public void write(String text, int offset, int length) throws IOException {
        char[] characters = text.substring(offset, offset + length).toCharArray();
        if (!System.lineSeparator().contentEquals(text)) {
            replace(characters);
        }
        out.write(characters, 0, length);
    }

    private static void replace(char[] characters) {
        for (int i = 0; i < characters.length; i++) {
            if (isActedOn(characters[i])) {
                characters[i] = SHOWN_INSTEAD;
            }
        }
    }

    /** Control characters of both sets, separators of lines and paragraphs, and marks, embeddings and isolates of direction. */
    private static boolean isActedOn(char character) {
        return Character.isISOControl(character) && character != '\n' && character != '\t'
                || character >= '\u2028' && character <= '\u202E'
                || character >= '\u2066' && character <= '\u2069'
                || character == '\u200E'
                || character == '\u200F'
                || character == '\u061C';
    }
}
