package workuptally.report.json;

import java.io.IOException;
import java.io.OutputStream;
import java.util.function.Consumer;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.exc.JacksonIOException;
import tools.jackson.core.json.JsonFactory;
import workuptally.judgement.Review;
import workuptally.judgement.period.PeriodReview;

/** Writes a review as JSON in UTF-8, in a fixed order: the same review gives the same bytes. */
public final class JsonReport {
    /** Version of the shape. While it is 0.x, names stay and more are added. */
    public static final String SCHEMA_VERSION = "0.1";

    /** Where no measured value is written, its factor is of no account. */
    private static final double NO_FACTOR = 1;

    private JsonReport() {}

    /**
     * Writes the review.
     *
     * @param review what is reported
     * @param out where to; left open
     * @throws IOException if writing fails
     */
    public static void write(Review review, OutputStream out) throws IOException {
        write(out, review.period().coverageFactor(), json -> {
            BookJson.head(json, review);
            FirstPageJson.write(json, review);
            json.array("runs", review.runs(), run -> new RunJson(json, run).write());
            NextTestJson.ofBook(json, review);
            PeriodJson.write(json, review);
            FindingJson.array(json, review.findings());
            BasisJson.write(json, review);
        });
    }

    /**
     * Writes the accounts of a period over many books.
     *
     * @param review what is reported
     * @param out where to; left open
     * @throws IOException if writing fails
     */
    public static void write(PeriodReview review, OutputStream out) throws IOException {
        write(out, review.totals().coverageFactor(), json -> BooksJson.write(json, review));
    }

    private static void write(OutputStream out, double coverageFactor, Consumer<JsonFields> fields) throws IOException {
        object(out, generator -> fields.accept(new JsonFields(generator, coverageFactor)));
    }

    /** One object of names and texts, in the same form as the reports. */
    static void fields(OutputStream out, Consumer<JsonFields> fields) throws IOException {
        object(out, generator -> fields.accept(new JsonFields(generator, NO_FACTOR)));
    }

    private static void object(OutputStream out, Consumer<JsonGenerator> fields) throws IOException {
        JsonFactory factory = JsonFactory.builder()
                .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
                .build();
        try (JsonGenerator generator = factory.createGenerator(new InLines(), out)) {
            generator.writeStartObject();
            fields.accept(generator);
            generator.writeEndObject();
            generator.writeRaw('\n');
        } catch (JacksonIOException failed) {
            throw failed.getCause();
        } catch (JacksonException wrong) {
            throw new IllegalStateException("it cannot be written as JSON: " + wrong.getMessage(), wrong);
        }
    }

    private static final class InLines extends ObjectWriteContext.Base {
        @Override
        public PrettyPrinter getPrettyPrinter() {
            return new LinesOfRecords();
        }

        @Override
        public boolean hasPrettyPrinter() {
            return true;
        }
    }
}
