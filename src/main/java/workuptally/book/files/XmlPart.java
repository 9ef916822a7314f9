package workuptally.book.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * One XML part of a workbook, read as a stream of elements by their local names, whatever prefix they carry.
 *
 * <p>Document types and entities of the file's own are refused: no part of a workbook needs them, and they can pull in other files.
 */
public final class XmlPart implements AutoCloseable {
    private static final XMLInputFactory FACTORY = factory();

    private final String file;
    private final String part;
    private final CappedStream stream;
    private final XMLStreamReader xml;

    /**
     * Opens a part.
     *
     * @param file file name, for messages
     * @param part part name, for messages
     * @param stream its bytes; closed with the part
     */
    XmlPart(String file, String part, CappedStream stream) throws UnreadableBookException {
        this.file = file;
        this.part = part;
        this.stream = stream;
        try {
            this.xml = FACTORY.createXMLStreamReader(reader(stream));
        } catch (XMLStreamException | IOException damaged) {
            throw damaged(damaged);
        }
    }

    /**
     * Decodes a part, which is in UTF-8 or UTF-16 (ISO/IEC 29500-2, annex on XML usage). Left to the parser, a byte that is neither would be
     * reported on the standard error stream.
     */
    private static Reader reader(InputStream stream) throws IOException {
        PushbackInputStream in = new PushbackInputStream(stream, 4);
        byte[] start = in.readNBytes(4);
        in.unread(start);
        Charset charset = StandardCharsets.UTF_8;
        if (start.length >= 2) {
            int first = (start[0] & 0xFF) << 8 | start[1] & 0xFF;
            charset = switch (first) {
                case 0xFEFF, 0xFFFE -> StandardCharsets.UTF_16;
                case 0x003C -> StandardCharsets.UTF_16BE;
                case 0x3C00 -> StandardCharsets.UTF_16LE;
                default -> StandardCharsets.UTF_8;
            };
        }
        if (start.length >= 3 && (start[0] & 0xFF) == 0xEF && (start[1] & 0xFF) == 0xBB && (start[2] & 0xFF) == 0xBF) {
            in.skipNBytes(3);
        }
        return new InputStreamReader(
                in,
                charset.newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT));
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        // Without one the library reports some faults on the terminal, beside the exception.
        factory.setXMLReporter((message, type, information, location) -> {});
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("external parts are not read");
        });
        return factory;
    }

    /** Moves to the next event; false at the end. */
    public boolean next() throws UnreadableBookException {
        try {
            if (!xml.hasNext()) {
                return false;
            }
            int event = xml.next();
            if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
                throw new UnreadableBookException(file + " declares entities of its own in " + part
                        + " and was refused: save it again from a spreadsheet program.");
            }
            return true;
        } catch (XMLStreamException damaged) {
            throw damaged(damaged);
        }
    }

    private UnreadableBookException damaged(Exception cause) {
        return stream.isExceeded()
                ? new UnreadableBookException(
                        file + " expands too far in " + part
                                + " and was refused: check that it is the right file, or split it.",
                        cause)
                : new UnreadableBookException(
                        file + " is damaged in " + part + ": open it in a spreadsheet program, repair and save it.",
                        cause);
    }

    public boolean isStart() {
        return xml.isStartElement();
    }

    public boolean isStart(String name) {
        return xml.isStartElement() && xml.getLocalName().equals(name);
    }

    boolean isEnd(String name) {
        return xml.isEndElement() && xml.getLocalName().equals(name);
    }

    public String name() {
        return xml.getLocalName();
    }

    boolean isText() {
        int event = xml.getEventType();
        return event == XMLStreamConstants.CHARACTERS
                || event == XMLStreamConstants.CDATA
                || event == XMLStreamConstants.SPACE;
    }

    String text() {
        return xml.getText();
    }

    /** Text of the current element, without that of elements within. */
    String ownText() throws UnreadableBookException {
        StringBuilder text = new StringBuilder();
        int depth = 0;
        while (next()) {
            if (xml.isStartElement()) {
                depth++;
            } else if (xml.isEndElement()) {
                if (depth == 0) {
                    break;
                }
                depth--;
            } else if (isText() && depth == 0) {
                text.append(xml.getText());
            }
        }
        return text.toString();
    }

    /** Passes over the current element with all within. */
    void skip() throws UnreadableBookException {
        for (int depth = 1; depth > 0 && next(); ) {
            if (xml.isStartElement()) {
                depth++;
            } else if (xml.isEndElement()) {
                depth--;
            }
        }
    }

    /** An attribute without prefix. */
    public Optional<String> attribute(String name) {
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            if (xml.getAttributeLocalName(i).equals(name)
                    && (xml.getAttributeNamespace(i) == null
                            || xml.getAttributeNamespace(i).isEmpty())) {
                return Optional.of(xml.getAttributeValue(i));
            }
        }
        return Optional.empty();
    }

    /** An attribute of another namespace than the element's, {@code r:id}. */
    public Optional<String> foreignAttribute(String name) {
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            String namespace = xml.getAttributeNamespace(i);
            if (xml.getAttributeLocalName(i).equals(name) && namespace != null && !namespace.isEmpty()) {
                return Optional.of(xml.getAttributeValue(i));
            }
        }
        return Optional.empty();
    }

    long bytesRead() {
        return stream.givenBytes();
    }

    @Override
    public void close() throws IOException {
        stream.close();
    }
}
