package workuptally.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A book without a fault of one run, into which an entry is put; written as a workbook or as CSV. Substances and figures are invented. */
final class BenchBook {
    private static final Map<String, Integer> USUAL_ROW = Map.of("Workup", 1, "Layers", 0);

    private final Map<String, List<Map<String, String>>> tables = new LinkedHashMap<>();
    private final Map<BenchEntry, Integer> rowOf = new LinkedHashMap<>();
    private final Map<Map<String, String>, BenchEntry> entryOf = new IdentityHashMap<>();
    private final Map<String, Integer> counts = new LinkedHashMap<>();
    private final List<String> formats = new ArrayList<>();
    private final boolean commas;
    private static final Set<String> OWN = Set.of("R1", "W1", "T1");
    private int number;

    /** A book with a run for each entry. */
    BenchBook(List<BenchEntry> entries) {
        this.commas = entries.stream()
                .anyMatch(e -> e.writes().equals("de") || e.writes().equals("fr"));
        entries.forEach(this::add);
    }

    private void add(BenchEntry entry) {
        number++;
        rows(
                "Runs",
                "Run|Date|Chemist|Reaction|Kind|Status|Conversion (%)|Notes",
                "R1|2026-11-02|C|esterification|reaction|isolated|95|");
        rows(
                "Products",
                "Run|Product|Wanted|Formula|Molar mass (g/mol)|Coefficient|Skeleton|Planned yield (%)|Character|pKa|Partition ratio|Partition solvent|Log P|Boiling point (°C)",
                "R1|methyl benzoate|yes|C8H8O2|136.15|1|benzoic acid 1|80|neutral||60|MTBE|2.1|199.5",
                "R1|benzoic acid|no|C7H6O2|122.12||benzoic acid 1||acid|4.2||||");
        rows(
                "Charges",
                "Run|Material|Role|Formula|Molar mass (g/mol)|Coefficient|Planned amount|Planned unit|Actual amount|Actual unit|Assay (% w/w)|Molarity (mol/L)|Titre (mol/L)|Titre date|Density (g/mL)|Assay uncertainty (%)|Titre uncertainty (%)",
                "R1|benzoic acid|substrate|C7H6O2|122.12|1|12.2|g|12.21|g|99.5||||||",
                "R1|methanol|reagent|CH4O|32.04|1|40.5|mL|40.5|mL|||||0.792||",
                "R1|sulfuric acid|catalyst|H2SO4|98.08||1.1|mL|1.1|mL|96||||1.84||",
                "R1|toluene|solvent||||10.5|mL|10.5|mL|||||0.867||",
                "R1|sodium methoxide|base|CH3ONa|54.02||2.5|mL|2.5|mL||4.4|4.2|2026-11-02|0.945||");
        rows(
                "Workup",
                "Run|Step|Operation|From|Material|Portions|Volume (mL)|Mass (g)|Molarity (mol/L)|Density (g/mL)|Funnel (mL)|Loads|Temperature (°C)|pH after|Quench test|Lower layer|Checked by|Emulsion|Gives organic|Gives aqueous|Gives other|Notes",
                "R1|1|quench|RM|water|1|100.5||||250.5|1|22.5|3.5|negative|aqueous|density|none|O1|A1||",
                "R1|2|wash|O1|water|1|60.5||||250.5|1|22.5|7.5||aqueous|density|none|O2|A2||",
                "R1|3|back-extract|A1|MTBE|1|50.5||||250.5|1|||||||O3|A3||",
                "R1|4|combine|O2 + O3|||||||||||||||O4|||",
                "R1|5|wash|O4|brine|1|50.5||||250.5|1||7.5||||none|O5|A4||",
                "R1|6|dry|O5|MgSO4|||5.5||||||||||||O6||K1|",
                "R1|7|concentrate|O6|||||||||||||||||N1; D1|".replace("; ", "+"));
        rows(
                "Layers",
                "Run|Layer|Phase|Position|Vessel|Volume (mL)|Gross (g)|Tare (g)|Net (g)|Temperature (°C)|pH|Composition|Balance|Volume uncertainty (mL)|Made on|Review by|Status|Released by|Notes",
                "R1|A1|aqueous|lower|E1|120.5|294.2|150.1||22.5|3.5|||1.5|2026-11-02|2026-12-02|kept||",
                "R1|O2|organic|upper||240.5|||||||||||||",
                "R1|A3|aqueous|lower|E2|60.5|||||||||||kept||",
                "R1|K1|solid|||||||||||||||kept||",
                "R1|D1|distillate||||||36.6|||||||||kept||");
        rows(
                "Assays",
                "Run|Sample|Substance|Formula|Method|Result|Unit|Relative standard uncertainty (%)|Calibration|Aliquot (mL)|Residue (mg)|Notes",
                "R1|A1|methyl benzoate||HPLC|0.81|mg/mL|2||||");
        rows(
                "NMR assays",
                "Run|Sample|Substance|Standard|Standard molar mass (g/mol)|Standard purity (%)|Standard mass (mg)|Sample mass (mg)|Standard integral|Standard nuclei|Substance integral|Substance nuclei|Relative standard uncertainty (%)",
                "R1|N1|methyl benzoate|standard|168.19|99.5|25.3|30.1|1.5|3|1.4|3|1.5");
        rows(
                "Isolated",
                "Run|Lot|Product|Stage|From|Vessel|Gross (g)|Tare (g)|Net (g)|Assay (% w/w)|Relative standard uncertainty (%)|Identity by|Second weighing (g)|Notes",
                "R1|N1|methyl benzoate|crude|O6|F1|95.71|84.1||97.5|1.5|NMR||");
        rows(
                "Transfers",
                "Transfer|Run|Layer|Material|Container|Amount (g)|Status|By|Date",
                "T1|R1|A3||W1|40.5|proposed|C|2026-11-03");
        rows(
                "Containers",
                "Container|Waste stream|Capacity (L)|Tare (g)|Weighed on|Gross then (g)|Contents then|Opened|Location|Contact",
                "W1|aqueous|10.5|412.5|2026-11-01|2612.5|acetone 1950 g; water 250 g|2026-10-20||");
        rows("Vessels", "Vessel|Date|Clean dry tare (g)", "F1|2026-10-01|84.1");
        rows("History", "Series|Date|Yield (%)", "S1|2026-10-01|84.1");
        rows("Limits", "Name|Value|Unit|Meaning", "Funnel fill|75.5|%|");
        rowOf.put(entry, put(entry));
    }

    private void rows(String table, String headings, String... rows) {
        String[] names = headings.split("\\|", -1);
        List<Map<String, String>> all = new ArrayList<>();
        for (String row : rows) {
            String[] cells = row.split("\\|", -1);
            Map<String, String> map = new LinkedHashMap<>();
            for (int i = 0; i < names.length; i++) {
                map.put(names[i], i < cells.length ? own(cells[i]) : "");
            }
            all.add(map);
        }
        if (number == 1 || !table.equals("Limits")) {
            tables.computeIfAbsent(table, t -> new ArrayList<>()).addAll(all);
        }
        counts.put(table, all.size());
    }

    /** The ids of the run, container and vessel of this entry. */
    private String own(String cell) {
        return OWN.contains(cell) ? cell.charAt(0) + String.valueOf(number) : cell;
    }

    /** Puts the entry in and says in which row, from 1 with the headings first. */
    private int put(BenchEntry entry) {
        List<Map<String, String>> rows = tables.get(entry.sheet());
        int first = rows.size() - counts.get(entry.sheet());
        if (entry.hasNewRow()) {
            Map<String, String> blank = new LinkedHashMap<>();
            rows.get(0).keySet().forEach(heading -> blank.put(heading, ""));
            rows.add(blank);
        }
        int at = entry.hasNewRow()
                ? rows.size() - 1
                : entry.row().isEmpty()
                        ? first + USUAL_ROW.getOrDefault(entry.sheet(), 0)
                        : first + Integer.parseInt(entry.row());
        Map<String, String> cells = rows.get(at);
        if (entry.heading().equals("Net (g)") && cells.containsKey("Gross (g)")) {
            cells.put("Gross (g)", "");
            cells.put("Tare (g)", "");
        }
        if (entry.heading().equals("From") && !entry.row().equals("0")) {
            at = first + 3;
            cells = rows.get(at);
        }
        for (Map.Entry<String, String> other : entry.others().entrySet()) {
            cells.put(other.getKey(), own(other.getValue()));
        }
        cells.put(entry.heading(), entry.typed());
        entryOf.put(cells, entry);
        return at + 2;
    }

    /** The row of an entry, from 1 with the headings first. */
    int row(BenchEntry entry) {
        return rowOf.get(entry);
    }

    /** The book as a folder of CSV files. */
    Path csv(Path folder) throws IOException {
        char delimiter = commas ? ';' : ',';
        for (Map.Entry<String, List<Map<String, String>>> table : tables.entrySet()) {
            StringBuilder text = new StringBuilder();
            line(text, table.getValue().get(0).keySet(), delimiter);
            for (Map<String, String> cells : table.getValue()) {
                line(text, cells.entrySet().stream().map(c -> written(cells, c)).toList(), delimiter);
            }
            Files.writeString(
                    folder.resolve(
                            table.getKey().toLowerCase(java.util.Locale.ROOT).replace(' ', '-') + ".csv"),
                    text);
        }
        return folder;
    }

    private String written(Map<String, String> row, Map.Entry<String, String> cell) {
        boolean own = isOwn(row, cell.getKey());
        boolean number = cell.getValue().matches("\\d+\\.\\d+");
        return !own && commas && number ? cell.getValue().replace('.', ',') : cell.getValue();
    }

    private boolean isOwn(Map<String, String> row, String heading) {
        return entryOf.containsKey(row) && entryOf.get(row).heading().equals(heading);
    }

    private static void line(StringBuilder text, Iterable<String> cells, char delimiter) {
        String mark = "";
        for (String cell : cells) {
            text.append(mark).append('"').append(cell.replace("\"", "\"\"")).append('"');
            mark = String.valueOf(delimiter);
        }
        text.append('\n');
    }

    /** The book as a workbook, texts as texts and numbers as numbers. */
    Path workbook(Path file) throws IOException {
        Map<String, String> parts = Zips.parts("");
        StringBuilder codes = new StringBuilder();
        StringBuilder styles = new StringBuilder();
        rowOf.keySet().stream()
                .map(BenchEntry::format)
                .filter(f -> !f.isEmpty())
                .distinct()
                .forEach(formats::add);
        for (int i = 0; i < formats.size(); i++) {
            codes.append("<numFmt numFmtId='" + (170 + i) + "' formatCode='" + escaped(formats.get(i)) + "'/>");
            styles.append("<xf numFmtId='" + (170 + i) + "'/>");
        }
        StringBuilder list = new StringBuilder();
        StringBuilder relations = new StringBuilder();
        int sheet = 0;
        for (Map.Entry<String, List<Map<String, String>>> table : tables.entrySet()) {
            list.append("<sheet name='" + table.getKey() + "' sheetId='" + (sheet + 1) + "' r:id='s" + sheet + "'/>");
            relations.append("<Relationship Id='s" + sheet + "' Type='" + Zips.RELATIONS
                    + "/worksheet' Target='worksheets/sheet" + sheet + ".xml'/>");
            parts.put("xl/worksheets/sheet" + sheet + ".xml", Zips.sheet(sheet(table.getValue())));
            sheet++;
        }
        parts.put(
                "xl/workbook.xml",
                "<workbook xmlns='" + Zips.MAIN + "' xmlns:r='" + Zips.RELATIONS + "'><sheets>" + list
                        + "</sheets></workbook>");
        parts.put(
                "xl/_rels/workbook.xml.rels",
                "<Relationships xmlns='http://schemas.openxmlformats.org/package/2006/relationships'>" + relations
                        + "<Relationship Id='st' Type='" + Zips.RELATIONS
                        + "/styles' Target='/xl/styles.xml'/></Relationships>");
        parts.put(
                "xl/styles.xml",
                "<styleSheet xmlns='" + Zips.MAIN + "'><numFmts>" + codes + "</numFmts><cellXfs><xf numFmtId='0'/>"
                        + styles + "</cellXfs></styleSheet>");
        return Zips.write(file, parts);
    }

    private String sheet(List<Map<String, String>> rows) {
        StringBuilder xml = new StringBuilder("<row>");
        rows.get(0).keySet().forEach(heading -> xml.append(text(heading)));
        xml.append("</row>");
        for (Map<String, String> cells : rows) {
            xml.append("<row>");
            for (Map.Entry<String, String> cell : cells.entrySet()) {
                xml.append(isOwn(cells, cell.getKey()) ? stored(entryOf.get(cells)) : other(cell.getValue()));
            }
            xml.append("</row>");
        }
        return xml.toString();
    }

    private String stored(BenchEntry entry) {
        String typed = entry.typed();
        String style = "<c s='" + (formats.indexOf(entry.format()) + 1) + "'><v>";
        return switch (entry.stored()) {
            case "number" -> style + typed + "</v></c>";
            case "date" ->
                style
                        + java.time.LocalDate.of(1899, 12, 30)
                                .until(java.time.LocalDate.parse(typed), java.time.temporal.ChronoUnit.DAYS)
                        + "</v></c>";
            case "boolean" -> "<c t='b'><v>" + (typed.equals("TRUE") ? 1 : 0) + "</v></c>";
            case "error" -> "<c t='e'><v>" + typed + "</v></c>";
            default -> text(typed);
        };
    }

    private static String other(String cell) {
        return cell.isEmpty() ? "<c/>" : cell.matches("\\d+\\.?\\d*") ? "<c><v>" + cell + "</v></c>" : text(cell);
    }

    private static String text(String text) {
        return "<c t='inlineStr'><is><t xml:space='preserve'>" + escaped(text) + "</t></is></c>";
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace("'", "&apos;")
                .replace("\"", "&quot;");
    }
}
