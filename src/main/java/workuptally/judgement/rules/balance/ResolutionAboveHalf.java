package workuptally.judgement.rules.balance;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ProductYield;

/** More than half of a racemate as one enantiomer without racemisation, or theory halved twice. */
public final class ResolutionAboveHalf implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.RESOLUTION_ABOVE_HALF, FindingCode.RESOLUTION_HALVED_TWICE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        if (tally.run().kind() != Run.Kind.RESOLUTION) {
            return findings.list();
        }
        double factor = book.limits().value(Limit.COVERAGE_FACTOR);
        Set<String> told = new HashSet<>();
        for (ProductYield product : tally.yields()) {
            double expanded = product.percent().expandedUncertainty(factor);
            if (product.percent().value() > 100 + expanded
                    && told.add(product.product().name())) {
                findings.add(
                        FindingCode.RESOLUTION_ABOVE_HALF,
                        Severity.STOP,
                        product.product().row().at("Product"),
                        Phrase.of(
                                "{}: {} of the racemate",
                                product.product().name(),
                                Figure.pair(product.percent().value() / 2, expanded / 2, 1, "%")),
                        Phrase.of("50 % of the racemate at most"),
                        "definition of a resolution without racemisation",
                        Phrase.of(
                                "Measure the enantiomeric excess and the assay of the lot, or correct Kind if the substrate racemises."));
            }
        }
        for (Product product : tally.run().products()) {
            product.coefficient()
                    .entered()
                    .map(Entered::value)
                    .filter(c -> product.wanted() && c == 0.5)
                    .ifPresent(c -> findings.add(
                            FindingCode.RESOLUTION_HALVED_TWICE,
                            Severity.CHECK,
                            product.row().at("Coefficient"),
                            Phrase.of("coefficient 0.5 for {} in a run of kind resolution", product.name()),
                            Phrase.of("coefficient 1; the kind halves theory already"),
                            "definition of the kind resolution",
                            Phrase.of("Enter 1, or set Kind to reaction.")));
        }
        return findings.list();
    }
}
