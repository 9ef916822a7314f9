package workuptally.report.pdf.layout;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfEncryption;
import com.lowagie.text.pdf.PdfFileSpecification;
import com.lowagie.text.pdf.PdfICCBased;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.Optional;

/**
 * What makes a file archivable and accessible beside its pages: colour profile, metadata, language, attachment.
 *
 * <p>Aims at PDF/A-3a (ISO 19005-3) and PDF/UA-1 (ISO 14289-1) at once. Nothing here depends on clock or chance.
 */
final class ArchiveEnvelope {
    private static final String LANGUAGE = "en-GB";
    /** The usual 6 takes half as long again for files 1 % smaller. */
    private static final int COMPRESSION = 5;

    private final PdfWriter writer;
    private final String title;
    private final String creator;
    private final Optional<LocalDate> date;

    /**
     * An envelope.
     *
     * @param writer writer of the document
     * @param title title of the document
     * @param creator name and version of this tool
     * @param date date from the input that the file bears; without one it bears none
     */
    ArchiveEnvelope(PdfWriter writer, String title, String creator, Optional<LocalDate> date) {
        this.writer = writer;
        this.title = title.replaceAll("\\p{Cntrl}", " ");
        this.creator = creator;
        this.date = date;
    }

    /** Sets what must stand before the document is opened. */
    void beforeOpen() {
        writer.setPdfVersion(PdfWriter.PDF_VERSION_1_7);
        writer.setFullCompression();
        writer.setCompressionLevel(COMPRESSION);
        writer.setTagged();
        writer.setTabs(PdfName.S);
        writer.addViewerPreference(PdfName.DISPLAYDOCTITLE, com.lowagie.text.pdf.PdfBoolean.PDFTRUE);
    }

    /**
     * Adds everything else, just before the document is closed.
     *
     * @param fingerprint text that differs where the review differs; the file's identifier is its hash
     */
    void beforeClose(String fingerprint, Optional<PdfAttachment> attachment) throws IOException {
        PdfDictionary catalog = writer.getExtraCatalog();
        catalog.put(PdfName.LANG, new PdfString(LANGUAGE));
        catalog.put(PdfName.OUTPUTINTENTS, new PdfArray(outputIntent()));
        if (attachment.isPresent()) {
            attach(catalog, attachment.get());
        }
        describe(fingerprint);
    }

    private PdfDictionary outputIntent() throws IOException {
        ICC_Profile profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB);
        PdfDictionary intent = new PdfDictionary(PdfName.OUTPUTINTENT);
        intent.put(PdfName.S, new PdfName("GTS_PDFA1"));
        intent.put(PdfName.OUTPUTCONDITIONIDENTIFIER, new PdfString("sRGB IEC61966-2.1"));
        intent.put(PdfName.INFO, new PdfString("sRGB IEC61966-2.1"));
        intent.put(
                PdfName.DESTOUTPUTPROFILE,
                writer.addToBody(new PdfICCBased(profile)).getIndirectReference());
        return intent;
    }

    private void attach(PdfDictionary catalog, PdfAttachment file) throws IOException {
        PdfDictionary parameters = new PdfDictionary();
        date.ifPresent(day -> parameters.put(PdfName.MODDATE, pdfDate(day)));
        PdfFileSpecification specification = file.embed(writer, parameters);
        specification.put(new PdfName("AFRelationship"), new PdfName("Data"));
        specification.put(PdfName.UF, new PdfString(file.fileName(), PdfObject.TEXT_UNICODE));
        writer.addFileAttachment(file.fileName(), specification);
        catalog.put(new PdfName("AF"), new PdfArray(specification.getReference()));
    }

    private void describe(String fingerprint) {
        PdfDictionary info = writer.getInfo();
        info.put(PdfName.TITLE, new PdfString(title, PdfObject.TEXT_UNICODE));
        info.put(PdfName.CREATOR, new PdfString(creator, PdfObject.TEXT_UNICODE));
        info.remove(PdfName.CREATIONDATE);
        info.remove(PdfName.MODDATE);
        date.ifPresent(day -> {
            info.put(PdfName.CREATIONDATE, pdfDate(day));
            info.put(PdfName.MODDATE, pdfDate(day));
        });
        byte[] id = sha256(fingerprint);
        info.put(PdfName.FILEID, PdfEncryption.createInfoId(id, id));
        String producer = info.getAsString(PdfName.PRODUCER).toUnicodeString();
        writer.setXmpMetadata(xmp(producer).getBytes(StandardCharsets.UTF_8));
    }

    private static PdfDate pdfDate(LocalDate day) {
        return new PdfDate(GregorianCalendar.from(day.atStartOfDay(ZoneOffset.UTC)));
    }

    private static byte[] sha256(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return java.util.Arrays.copyOf(hash, 16);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private String xmp(String producer) {
        String dates = date.map(day -> "<xmp:CreateDate>" + day + "T00:00:00Z</xmp:CreateDate><xmp:ModifyDate>" + day
                        + "T00:00:00Z</xmp:ModifyDate>")
                .orElse("");
        return """
                <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
                <x:xmpmeta xmlns:x="adobe:ns:meta/">
                <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
                <pdfaid:part>3</pdfaid:part><pdfaid:conformance>A</pdfaid:conformance><pdfuaid:part>1</pdfuaid:part>
                <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
                <dc:language><rdf:Bag><rdf:li>%s</rdf:li></rdf:Bag></dc:language>
                <xmp:CreatorTool>%s</xmp:CreatorTool>%s
                <pdf:Producer>%s</pdf:Producer>
                </rdf:Description>
                <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
                <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
                <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
                <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
                <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
                <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
                <pdfaProperty:name>part</pdfaProperty:name><pdfaProperty:valueType>Integer</pdfaProperty:valueType>
                <pdfaProperty:category>internal</pdfaProperty:category>
                <pdfaProperty:description>Part of ISO 14289 that the file follows</pdfaProperty:description>
                </rdf:li></rdf:Seq></pdfaSchema:property>
                </rdf:li></rdf:Bag></pdfaExtension:schemas>
                </rdf:Description>
                </rdf:RDF>
                </x:xmpmeta>
                <?xpacket end="w"?>
                """.formatted(xml(title), LANGUAGE, xml(creator), dates, xml(producer));
    }

    private static String xml(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                default -> {
                    boolean allowed = c >= 0x20 && c < 0xD800 || c > 0xDFFF && c < 0xFFFE || c > 0xFFFF;
                    out.appendCodePoint(allowed ? c : ' ');
                }
            }
        });
        return out.toString();
    }
}
