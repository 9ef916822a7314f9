package workuptally.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import workuptally.judgement.Review;
import workuptally.model.Correction;
import workuptally.report.pdf.layout.PdfOptions;
import workuptally.report.view.sheets.ReviewTables;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.TableView;
import workuptally.report.view.wording.Wording;

/** A reader of decimal commas finds no decimal point in any text of the demo week, but in a version, a citation and what is quoted as typed. */
class CommaInEveryTextTest {
    private static final Pattern POINT = Pattern.compile(".{0,30}\\d\\.\\d.{0,20}");
    private static final Set<String> CITES = Set.of("Source", "Origin", "Place");

    private static final PdfOptions COMMA =
            new PdfOptions(PdfOptions.Paper.A4, PdfOptions.DecimalMark.COMMA, Optional.empty());

    private interface Writing {
        void to(ByteArrayOutputStream out) throws IOException;
    }

    private static String text(Writing writing) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        writing.to(out);
        return PdfText.spaced(out.toByteArray());
    }

    /** The places with a decimal point, without versions and the parts of regulations. */
    private static List<String> points(String text, Review review) {
        String read = text.replaceAll("Workup Tally \\S+", "").replaceAll("40 CFR [\\d.]+", "");
        for (Correction correction : review.book().corrections()) {
            for (String typed : List.of(correction.oldValue(), correction.newValue(), correction.reason())) {
                read = typed.isBlank() ? read : read.replace(typed, "");
            }
        }
        List<String> points = new ArrayList<>();
        Matcher matcher = POINT.matcher(read);
        while (matcher.find()) {
            points.add(matcher.group());
        }
        return points;
    }

    @Test
    void noPdfOfTheDemoWeekHasADecimalPoint() throws IOException {
        Review review = InventedReviews.demoWeek();
        Map<String, String> documents = new LinkedHashMap<>();
        documents.put("review", text(out -> PdfReport.write(review, COMMA, out)));
        documents.put("safety", text(out -> SafetyReport.write(review, COMMA, out)));
        documents.put("labels", text(out -> LabelReport.write(review, COMMA, out)));
        documents.put("bench", text(out -> BenchSheet.write(review, COMMA, out)));
        documents.forEach((name, text) -> assertEquals(List.of(), points(text, review), name));
    }

    @Test
    void noTextOfAResultSheetHasADecimalPoint() throws IOException {
        Review review = InventedReviews.demoWeek();
        List<String> found = new ArrayList<>();
        for (TableView table : ReviewTables.of(review, new Wording(','))) {
            for (TableView.Row row : table.rows()) {
                for (int i = 0; i < row.cells().size(); i++) {
                    Cell cell = row.cells().get(i);
                    boolean text = cell instanceof Cell.Text || cell instanceof Cell.Missing;
                    if (text && !CITES.contains(table.columns().get(i).name())) {
                        points(cell.shown().replaceFirst("^\\d+\\.\\d+\\.\\d+.*", ""), review)
                                .forEach(p -> found.add(table.title() + ": " + p));
                    }
                }
            }
        }
        assertEquals(List.of(), found);
    }
}
