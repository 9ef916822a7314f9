package workuptally.book;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Workbooks written part by part, as other programs may write them. */
public final class Zips {
    public static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    public static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private Zips() {}

    /** Parts of a workbook whose Layers sheet has the given rows; the needed sheets hold one run. */
    public static Map<String, String> parts(String layersSheetData) {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put(
                "[Content_Types].xml", "<Types xmlns='http://schemas.openxmlformats.org/package/2006/content-types'/>");
        parts.put(
                "_rels/.rels",
                "<Relationships xmlns='http://schemas.openxmlformats.org/package/2006/relationships'><Relationship Id='a' Type='"
                        + RELATIONS + "/officeDocument' Target='xl/workbook.xml'/></Relationships>");
        String[] sheets = {"Runs", "Products", "Charges", "Isolated", "Layers"};
        StringBuilder list = new StringBuilder();
        StringBuilder relations = new StringBuilder();
        for (int i = 0; i < sheets.length; i++) {
            list.append("<sheet name='" + sheets[i] + "' sheetId='" + (i + 1) + "' r:id='s" + i + "'/>");
            relations.append("<Relationship Id='s" + i + "' Type='" + RELATIONS + "/worksheet' Target='worksheets/sheet"
                    + i + ".xml'/>");
        }
        relations.append("<Relationship Id='st' Type='" + RELATIONS
                + "/styles' Target='/xl/styles.xml'/><Relationship Id='ss' Type='" + RELATIONS
                + "/sharedStrings' Target='sharedStrings.xml'/>");
        parts.put(
                "xl/workbook.xml",
                "<workbook xmlns='" + MAIN + "' xmlns:r='" + RELATIONS + "'><sheets>" + list + "</sheets></workbook>");
        parts.put(
                "xl/_rels/workbook.xml.rels",
                "<Relationships xmlns='http://schemas.openxmlformats.org/package/2006/relationships'>" + relations
                        + "</Relationships>");
        parts.put(
                "xl/styles.xml",
                "<styleSheet xmlns='" + MAIN + "'><numFmts count='2'><numFmt numFmtId='164' formatCode='0.000'/>"
                        + "<numFmt numFmtId='165' formatCode='0.0&quot; mg&quot;'/></numFmts>"
                        + "<cellStyleXfs count='1'><xf numFmtId='14'/></cellStyleXfs>"
                        + "<cellXfs count='5'><xf numFmtId='0'/><xf numFmtId='164'/><xf numFmtId='14'/><xf numFmtId='10'/>"
                        + "<xf numFmtId='165'/></cellXfs></styleSheet>");
        parts.put(
                "xl/sharedStrings.xml",
                "<sst xmlns='" + MAIN + "'><si><t>A1</t></si><si><r><t>B</t></r><r><t xml:space='preserve"
                        + "'>1</t></r><rPh sb='0' eb='1'><t>bee</t></rPh></si></sst>");
        parts.put("xl/worksheets/sheet0.xml", sheet(row("Run", "Date") + row("R1", "2026-03-02")));
        parts.put("xl/worksheets/sheet1.xml", sheet(row("Run", "Product")));
        parts.put("xl/worksheets/sheet2.xml", sheet(row("Run", "Material")));
        parts.put("xl/worksheets/sheet3.xml", sheet(row("Run", "Lot")));
        parts.put(
                "xl/worksheets/sheet4.xml",
                sheet(row("Run", "Layer", "Gross (g)", "Tare (g)", "Made on", "pH", "Notes") + layersSheetData));
        return parts;
    }

    public static String sheet(String rows) {
        return "<worksheet xmlns='" + MAIN + "'><sheetData>" + rows + "</sheetData></worksheet>";
    }

    /** A row of inline texts without references. */
    public static String row(String... texts) {
        StringBuilder row = new StringBuilder("<row>");
        for (String text : texts) {
            row.append("<c t='inlineStr'><is><t>" + text + "</t></is></c>");
        }
        return row.append("</row>").toString();
    }

    public static Path write(Path file, Map<String, String> parts) throws IOException {
        return write(file, parts, StandardCharsets.UTF_8);
    }

    public static Path write(Path file, Map<String, String> parts, Charset charset) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, String> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue().getBytes(charset));
                zip.closeEntry();
            }
        }
        return file;
    }
}
