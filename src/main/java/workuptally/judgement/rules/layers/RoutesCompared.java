package workuptally.judgement.rules.layers;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.Route;

/** Independent routes to the product in a layer, side by side: a note where their bands overlap, a check where two of them do not. */
public final class RoutesCompared implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public RoutesCompared(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.ROUTES_AGREE, FindingCode.ROUTES_DISAGREE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Map<String, List<Route>> byLayer = tally.evidence().routes().stream()
                .collect(Collectors.groupingBy(
                        r -> r.layer() + "/" + r.substance(), LinkedHashMap::new, Collectors.toList()));
        byLayer.values().forEach(routes -> compare(tally, routes, findings));
        return findings.list();
    }

    private void compare(RunTally tally, List<Route> routes, FindingList findings) {
        Route first = routes.get(0);
        double theory = tally.theory().stream()
                .flatMap(t -> t.products().stream())
                .filter(p -> p.isOf(first.substance()))
                .mapToDouble(p -> p.massGrams().value())
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
        boolean agree = true;
        for (Route a : routes) {
            for (Route b : routes) {
                agree &= a.lowGrams() <= b.highGrams() && b.lowGrams() <= a.highGrams();
            }
        }
        if (agree && 100 * first.massGrams() / theory < substances.value(Threshold.ROUTES_NOTE)) {
            return;
        }
        Place place = tally.layer(first.layer())
                .flatMap(l -> l.entry())
                .map(Layer::row)
                .map(r -> r.at("Layer"))
                .orElse(tally.run().row().at("Run"));
        Phrase seen = routes.stream()
                .map(r -> Phrase.of(
                        "{} {} ({} to {}; {})",
                        r.way().word(),
                        Figure.decimals(r.massGrams(), 2, "g"),
                        Figure.from(r.lowGrams(), 2),
                        Figure.from(r.highGrams(), 2),
                        r.equation()))
                .collect(Phrase.joining("; "));
        findings.add(
                agree ? FindingCode.ROUTES_AGREE : FindingCode.ROUTES_DISAGREE,
                agree ? Severity.NOTE : Severity.CHECK,
                place,
                Phrase.of("layer {}, {}: {}", first.layer(), first.substance(), seen),
                Phrase.of("bands that overlap"),
                "assay; charge balance; partition at the pH of the layer",
                agree
                        ? Phrase.of("Independent routes agree; the assay is used.")
                        : Phrase.of(
                                "One of pH, layer identity, pKa or the compound is not what the record says: measure the pH again and"
                                        + " repeat the assay."));
    }
}
