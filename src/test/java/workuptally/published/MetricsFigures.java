package workuptally.published;

import java.nio.file.Path;
import workuptally.book.BookReader;
import workuptally.model.Book;
import workuptally.reference.Reference;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;
import workuptally.tally.amounts.Substances;
import workuptally.tally.waste.Metrics;

/** Mass metrics: of a run of the book in {@code metrics/}, or straight from molar masses. */
final class MetricsFigures {
    private static final Path BOOK = Path.of("src/test/resources/workuptally/published/metrics");

    private MetricsFigures() {}

    static CaseFigures of(PublishedCase each) throws Exception {
        return each.kind().equals("run") ? ofRun(each.text("run")) : ofMolarMasses(each);
    }

    private static CaseFigures ofMolarMasses(PublishedCase each) {
        return new CaseFigures()
                .with(
                        "atomEconomyPercent",
                        Metrics.atomEconomyPercent(
                                each.number("productGramsPerMole"), each.number("reactantsGramsPerMole")));
    }

    private static CaseFigures ofRun(String id) throws Exception {
        Book book = new BookReader().read(BOOK);
        RunTally tally = new RunTallying(book.limits(), new Substances(Reference.load()))
                .tally(book.runs().stream()
                        .filter(r -> r.id().equals(id))
                        .findFirst()
                        .orElseThrow());
        Metrics metrics = tally.metrics().orElseThrow();
        return new CaseFigures()
                .with(
                        "theoryGrams",
                        tally.theory()
                                .orElseThrow()
                                .products()
                                .get(0)
                                .massGrams()
                                .value())
                .with("yieldPercent", tally.yields().get(0).percent().value())
                .with("atomEconomyPercent", metrics.atomEconomyPercent().orElseThrow())
                .with(
                        "reactionMassEfficiencyPercent",
                        metrics.reactionMassEfficiencyPercent().orElseThrow().value())
                .with("eFactorWithWater", metrics.eFactorWithWater())
                .with("pmi", metrics.pmi().value())
                .with("solventGrams", metrics.solventGrams().value());
    }
}
