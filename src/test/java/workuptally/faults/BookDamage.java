package workuptally.faults;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Damages a book; the same seed does the same damage. */
final class BookDamage {
    /** What people and programs leave in cells, and what nobody should. */
    static final List<String> ODD_CELLS = List.of(
            "",
            " ",
            "-",
            "—",
            "=1+1",
            "+1",
            "@x",
            "#REF!",
            "#DIV/0!",
            "1e99",
            "1e400",
            "-1e-99",
            "-0",
            "0",
            "-5",
            "1e-30",
            "9".repeat(70),
            "1,234",
            "1.234,5",
            "<",
            "<0",
            "<<1",
            ">5",
            "~3",
            "ca. 4",
            "5 %",
            "%",
            "n.d.",
            "RM",
            "A1+",
            "A1",
            "A2+A3",
            "+",
            ";",
            "a;b;c",
            "x 1;",
            "x -1",
            "x 1; x 1",
            "2026-13-45",
            "2026-02-29",
            "99.99.9999",
            "2026-03-02",
            "0001-01-01",
            "12.5 mL",
            "12.5 mg",
            "3 kg",
            "2 x 20",
            "1 x 1 x 1",
            "1/2",
            "NaN",
            "Infinity",
            "٣",
            "½",
            "1.2.3,4",
            "\u0001",
            "\u001B[31m",
            "\uD83E\uDDEA",
            "\u202E1",
            "\u00A0",
            "\u200B",
            "\"",
            "'",
            "a\tb",
            "../../x",
            "R26-041",
            "R26-042",
            "R26-044",
            "C7H6O2",
            "C0",
            "C(",
            "C99999999999",
            "Xx2",
            "(((((((",
            "yes",
            "no",
            "kept",
            "consumed",
            "reaction",
            "separation",
            "resolution",
            "extract",
            "wash",
            "dry",
            "water",
            "brine",
            "100",
            "101",
            "1000000",
            "0.000001",
            "12,5o",
            "x".repeat(2_000),
            "null",
            "true",
            "TRUE",
            "_xD83D_",
            "_x0000_",
            "https://x.invalid/?a=b");

    private static final List<String> ODD_HEADINGS = List.of(
            "",
            "Run",
            "run ",
            "Gross",
            "Gross (mg)",
            "Gross (mL)",
            "Volume (L)",
            "Amount",
            "(g)",
            "Notes",
            "Layer",
            "Result (%)",
            "Assay (g/L)",
            "x (((",
            "Tare (furlong)",
            "Net (g) (g)",
            "\u202ERun",
            "9".repeat(300));

    private static final String ODD_XML = "<>&'\"/01xs=ABZ:;\u0007é";

    private final long seed;
    private final Random random;

    BookDamage(long seed) {
        this.seed = seed;
        this.random = new Random(seed);
    }

    long seed() {
        return seed;
    }

    /** One cell of one run, which only that run may feel. */
    record HitCell(String file, int row, int column, String heading, String run, String before, String after) {}

    HitCell cell(Map<String, List<List<String>>> tables, List<String> files) {
        String file = pick(files);
        List<List<String>> rows = tables.get(file);
        int row = 1 + random.nextInt(rows.size() - 1);
        int column = 1 + random.nextInt(rows.get(row).size() - 1);
        String before = rows.get(row).get(column);
        String after = pick(ODD_CELLS);
        rows.get(row).set(column, after);
        return new HitCell(
                file, row, column, rows.get(0).get(column), rows.get(row).get(0), before, after);
    }

    /** Rows and headings: taken away, doubled, exchanged, emptied, made longer or shorter, renamed. */
    String rows(List<List<String>> rows) {
        int at = random.nextInt(rows.size());
        int other = random.nextInt(rows.size());
        List<String> row = rows.get(at);
        switch (random.nextInt(10)) {
            case 0 -> rows.remove(at);
            case 1 -> rows.add(other, new ArrayList<>(row));
            case 2 -> Collections.swap(rows, at, other);
            case 3 -> row.replaceAll(cell -> "");
            case 4 -> row.subList(random.nextInt(row.size()), row.size()).clear();
            case 5 -> row.addAll(List.of("", "x", pick(ODD_CELLS)));
            case 6 -> row.add(random.nextInt(row.size() + 1), pick(ODD_CELLS));
            case 7 -> rows.get(0).set(random.nextInt(rows.get(0).size()), pick(ODD_HEADINGS));
            case 8 -> {
                List<String> headings = rows.get(0);
                Collections.swap(headings, random.nextInt(headings.size()), random.nextInt(headings.size()));
            }
            default -> {
                int column = random.nextInt(rows.get(0).size());
                rows.forEach(each -> {
                    if (column < each.size()) {
                        each.set(column, random.nextInt(3) == 0 ? pick(ODD_CELLS) : each.get(column));
                    }
                });
            }
        }
        return "rows";
    }

    /** The bytes of a file: changed, cut, doubled, in another encoding or with other marks. */
    byte[] bytes(byte[] whole) {
        byte[] bytes = whole.clone();
        String text = new String(whole, StandardCharsets.UTF_8);
        switch (random.nextInt(9)) {
            case 0 -> {
                return Arrays.copyOf(bytes, random.nextInt(bytes.length + 1));
            }
            case 1 -> {
                return text.getBytes(StandardCharsets.UTF_16);
            }
            case 2 -> {
                return text.getBytes(StandardCharsets.ISO_8859_1);
            }
            case 3 -> {
                return text.replace(',', ";\t|".charAt(random.nextInt(3))).getBytes(StandardCharsets.UTF_8);
            }
            case 4 -> {
                return ("sep=" + ";,\t\"\\'#x".charAt(random.nextInt(8)) + "\n" + text)
                        .getBytes(StandardCharsets.UTF_8);
            }
            case 5 -> {
                return new byte[0];
            }
            case 6 -> {
                StringBuilder odd = new StringBuilder(text);
                odd.insert(
                        random.nextInt(text.length() + 1),
                        pick(List.of("\"", "\"\"", "\r", "\0", "\n\n", "\uFEFF", ",,,,")));
                return odd.toString().getBytes(StandardCharsets.UTF_8);
            }
            default -> {
                for (int i = 0; i <= random.nextInt(8) && bytes.length > 0; i++) {
                    bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
                }
                return bytes;
            }
        }
    }

    /** Parts of a workbook: marks of the XML, values, kinds, styles and numbers of cells, whole elements, whole parts. */
    byte[] workbook(Map<String, byte[]> whole) throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>(whole);
        List<String> names = List.copyOf(parts.keySet());
        for (int i = 0; i <= random.nextInt(3); i++) {
            String name = random.nextInt(3) == 0
                    ? pick(names)
                    : pick(names.stream().filter(n -> n.contains("sheet")).toList());
            if (random.nextInt(40) == 0) {
                parts.remove(name);
            } else if (parts.containsKey(name)) {
                parts.put(
                        name,
                        xml(new String(parts.get(name), StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8));
            }
        }
        byte[] zip = zip(parts);
        return random.nextInt(10) == 0 ? bytes(zip) : zip;
    }

    private String xml(String text) {
        if (text.isEmpty()) {
            return "x";
        }
        StringBuilder xml = new StringBuilder(text);
        int at = random.nextInt(text.length());
        switch (random.nextInt(8)) {
            case 0 -> xml.deleteCharAt(at);
            case 1 -> xml.insert(at, ODD_XML.charAt(random.nextInt(ODD_XML.length())));
            case 2 -> xml.setCharAt(at, (char) ('0' + random.nextInt(70)));
            case 3 -> attribute(xml, at);
            case 4 -> element(xml, at, false);
            case 5 -> element(xml, at, true);
            case 6 -> value(xml, at);
            default -> insert(xml, at);
        }
        return xml.toString();
    }

    private void attribute(StringBuilder xml, int from) {
        int start = xml.indexOf("=\"", from);
        int end = start < 0 ? -1 : xml.indexOf("\"", start + 2);
        if (end > 0) {
            xml.replace(
                    start + 2,
                    end,
                    pick(List.of(
                            "",
                            "0",
                            "1",
                            "-1",
                            "s",
                            "n",
                            "b",
                            "e",
                            "str",
                            "d",
                            "inlineStr",
                            "A1",
                            "XFD1048576",
                            "XFE1",
                            "ZZZ99999999",
                            "4000000000",
                            "A1:A1",
                            ":",
                            "hidden",
                            "../x",
                            "9".repeat(30))));
        }
    }

    private void value(StringBuilder xml, int from) {
        int start = xml.indexOf("<v>", from);
        int end = start < 0 ? -1 : xml.indexOf("</v>", start);
        if (end > 0) {
            String odd = pick(ODD_CELLS).replace("&", "").replace("<", "").replaceAll("[\\x00-\\x1F]", "");
            xml.replace(start + 3, end, odd);
        }
    }

    private void element(StringBuilder xml, int from, boolean twice) {
        int start = xml.indexOf("<c ", from);
        int end = start < 0 ? -1 : xml.indexOf("</c>", start);
        if (end > 0) {
            String cell = xml.substring(start, end + 4);
            xml.replace(start, end + 4, twice ? cell + cell : "");
        }
    }

    private void insert(StringBuilder xml, int from) {
        int start = xml.indexOf("</sheetData>", from);
        if (start > 0) {
            xml.insert(
                    start + 12,
                    pick(List.of(
                            "<mergeCells><mergeCell ref=\"A2:C9\"/></mergeCells>",
                            "<mergeCells><mergeCell ref=\":\"/></mergeCells>",
                            "<mergeCells><mergeCell ref=\"\"/><mergeCell ref=\"C9:A2\"/></mergeCells>",
                            "<x/>",
                            "<row r=\"2\"><c r=\"A2\"><v>1</v></c></row>")));
        }
    }

    /** Parts of a zip package in order. */
    static Map<String, byte[]> parts(byte[] zip) throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                parts.put(entry.getName(), in.readAllBytes());
            }
        }
        return parts;
    }

    private static byte[] zip(Map<String, byte[]> parts) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                ZipEntry entry = new ZipEntry(part.getKey());
                CRC32 sum = new CRC32();
                sum.update(part.getValue());
                entry.setMethod(ZipEntry.STORED);
                entry.setSize(part.getValue().length);
                entry.setCrc(sum.getValue());
                out.putNextEntry(entry);
                out.write(part.getValue());
                out.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    private <T> T pick(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    int next(int bound) {
        return random.nextInt(bound);
    }
}
