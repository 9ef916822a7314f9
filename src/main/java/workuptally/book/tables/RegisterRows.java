package workuptally.book.tables;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import workuptally.model.Correction;
import workuptally.model.FindingCode;
import workuptally.model.HistoryPoint;
import workuptally.model.VesselTare;

/** Reads the tables that stand for themselves: Vessels, History and Corrections. */
public final class RegisterRows {
    private static final String SETTLED = "settled";
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[\\s,;:]+");

    private RegisterRows() {}

    public static List<VesselTare> vessels(TableRows rows) {
        List<VesselTare> tares = new ArrayList<>();
        rows.forEach(row -> row.key("Vessel")
                .ifPresent(vessel -> tares.add(
                        new VesselTare(vessel, row.date("Date"), row.number("Clean dry tare"), row.place()))));
        return tares;
    }

    public static List<HistoryPoint> history(TableRows rows, RunIndex runs) {
        List<HistoryPoint> points = new ArrayList<>();
        rows.forEach(row -> row.key("Series")
                .ifPresent(series -> points.add(new HistoryPoint(
                        runs.series(series),
                        row.date("Date"),
                        row.number("Yield"),
                        row.text("Layer"),
                        row.number("Content"),
                        row.place()))));
        return points;
    }

    public static List<Correction> corrections(TableRows rows) {
        List<Correction> corrections = new ArrayList<>();
        rows.forEach(row -> corrections.add(new Correction(
                row.text("When"),
                row.text("Who"),
                row.text("Record"),
                row.text("Old"),
                row.text("New"),
                row.text("Reason"),
                settled(row.text("Record"), row.text("New")),
                row.place())));
        return corrections;
    }

    /** Findings that a row settles: those whose codes stand under Record, where New says so. */
    private static Set<FindingCode> settled(String record, String newValue) {
        if (!newValue.strip().equalsIgnoreCase(SETTLED)) {
            return Set.of();
        }
        Set<String> words = new HashSet<>(List.of(BETWEEN_WORDS.split(record.toLowerCase(Locale.ROOT))));
        return Stream.of(FindingCode.values())
                .filter(code -> words.contains(code.word()))
                .collect(Collectors.toSet());
    }
}
