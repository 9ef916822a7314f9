package workuptally.book.tables;

import java.util.ArrayList;
import java.util.List;
import workuptally.model.Correction;
import workuptally.model.HistoryPoint;
import workuptally.model.VesselTare;

/** Reads the tables that stand for themselves: Vessels, History and Corrections. */
public final class RegisterRows {
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
                row.place())));
        return corrections;
    }
}
