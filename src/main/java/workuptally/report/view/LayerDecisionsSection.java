package workuptally.report.view;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.layers.LayerDecision;
import workuptally.tally.bench.Reextraction;

/** What the evidence about each layer amounts to, with what is missing and what another extraction would bring. */
public final class LayerDecisionsSection {
    /** Title of the table. */
    public static final String TITLE = "Layer decisions";

    private LayerDecisionsSection() {}

    /** The table of a review. */
    public static TableView of(Review review, Wording wording) {
        return TableView.of(
                TITLE,
                SafetyWording.A_PERSON_DECIDES + "\n" + SafetyWording.DEFERS,
                List.of(
                        Column.text("Run", 14),
                        Column.text("Layer", 12),
                        Column.text("Outcome", 18),
                        Column.text("Reason", 50),
                        Column.text("Missing", 40),
                        Column.text("Not met", 40),
                        Column.text("Met", 30),
                        Column.text("One more extraction", 44)),
                review.runs(),
                run -> run.decisions().stream().map(decision -> row(run, decision, wording)));
    }

    private static TableView.Row row(RunReview run, LayerDecision decision, Wording wording) {
        return new TableView.Row(
                List.of(
                        Cell.of(run.id()),
                        Cell.of(decision.layer()),
                        Cell.of(decision.outcome().word()),
                        Cell.of(wording.of(decision.reasonAndSilence())),
                        Cell.of(conditions(decision, LayerDecision.State.MISSING, wording)),
                        Cell.of(conditions(decision, LayerDecision.State.NOT_MET, wording)),
                        Cell.of(decision.conditions().stream()
                                .filter(c -> c.state() == LayerDecision.State.MET)
                                .map(LayerDecision.Condition::id)
                                .collect(Collectors.joining(", "))),
                        Cell.of(run.tally().evidence().reextractions().stream()
                                .filter(r -> r.layer().equals(decision.layer()))
                                .map(LayerDecisionsSection::inWords)
                                .collect(Collectors.joining("\n")))),
                Optional.empty());
    }

    private static String conditions(LayerDecision decision, LayerDecision.State state, Wording wording) {
        return decision.conditions().stream()
                .filter(c -> c.state() == state)
                .map(c -> c.id() + " " + wording.of(c.evidence()))
                .collect(Collectors.joining("\n"));
    }

    private static String inWords(Reextraction extraction) {
        return extraction.portions() + " × " + Figures.plain(extraction.volumeMillilitres(), 0) + " mL "
                + extraction.solvent() + ": " + Figures.plain(extraction.gainGrams(), 2) + " g "
                + extraction.substance() + " (" + Figures.plain(extraction.gainPercentOfTheory(), 1)
                + " % of theory), estimated"
                + (extraction.acidGases().isEmpty()
                        ? ""
                        : "; the acid it needs must not meet " + extraction.acidCaution());
    }
}
