package workuptally.report.view.labels;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import workuptally.judgement.RunReview;
import workuptally.judgement.hazards.HazardNote;
import workuptally.judgement.hazards.MixtureStatements;
import workuptally.model.Charge;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.tally.bench.Plan;
import workuptally.tally.layers.IngredientAccount;

/** The words of a label for each portion that a planned run will give: what to expect in it, hazards, lines to fill in. */
public final class PlannedLabels {
    private static final int NAMED = 4;
    private static final String TO_FILL = "________________";

    private PlannedLabels() {}

    /** A label for each portion, in order of the steps. */
    public static List<LabelText> of(RunReview run, ReadableNumbers numbers) {
        return run.tally().plan().map(Plan::layers).orElse(List.of()).stream()
                .map(layer -> of(run, layer, numbers))
                .toList();
    }

    private static LabelText of(RunReview run, Plan.ExpectedLayer layer, ReadableNumbers numbers) {
        return new LabelText(
                run.id() + "  " + layer.label(),
                layer.phase().map(Layer.Phase::word).orElse("phase: ________") + "; " + contents(run, layer),
                hazards(run, layer, numbers),
                LabelHazards.deferring(LabelHazards.hasOwn(run)),
                "Made on: " + TO_FILL + "    pH: ________",
                "Owner: " + TO_FILL + "    Phone: " + TO_FILL);
    }

    /** What to expect by name, then what else may be in it: reactants and products are named where most of them go. */
    private static String contents(RunReview run, Plan.ExpectedLayer layer) {
        List<String> expected =
                new ArrayList<>(layer.substances().stream().limit(NAMED).toList());
        List<String> others = othersOf(run, layer);
        String named = String.join(", ", others);
        if (layer.grams().isEmpty()) {
            return "from " + layer.step().operation().map(o -> o.word()).orElse("step") + ", step "
                    + layer.step().number() + (expected.isEmpty() ? "" : ", of " + String.join(", ", expected))
                    + (named.isEmpty() ? "" : "; may hold " + named);
        }
        boolean reactants = !named.isEmpty() && expected.remove(IngredientAccount.REACTANTS);
        return "expected: " + String.join(", ", expected)
                + (named.isEmpty() ? "" : (reactants ? "; reactants and products: " : "; may hold ") + named);
    }

    /** Products, and what may be left of what went in, without what is expected by name already. */
    private static List<String> othersOf(RunReview run, Plan.ExpectedLayer layer) {
        Set<String> names = new LinkedHashSet<>();
        run.tally().run().products().stream().map(Product::name).forEach(names::add);
        Plan.leftOver(run.tally().run()).stream()
                .map(Charge::material)
                .filter(name -> !isExpected(run, layer, name))
                .forEach(names::add);
        names.removeIf(name -> layer.substances().stream().anyMatch(name::equalsIgnoreCase));
        return List.copyOf(names);
    }

    /** By the name that the tables have for it: 65 % nitric acid is nitric acid. */
    private static boolean isExpected(RunReview run, Plan.ExpectedLayer layer, String charged) {
        return run.materials().stream()
                .filter(m -> m.written().equals(charged))
                .anyMatch(m -> layer.substances().stream().anyMatch(m::means));
    }

    private static String hazards(RunReview run, Plan.ExpectedLayer layer, ReadableNumbers numbers) {
        List<HazardNote> ofPortion = LabelHazards.ofPortion(run, layer.label(), layer.grams());
        return LabelHazards.line(
                layer.grams().isEmpty()
                        ? MixtureStatements.ofUnknownShares(layer.mayHold(), run.hazards(), ofPortion)
                        : MixtureStatements.of(
                                layer.grams(),
                                run.hazards(),
                                ofPortion,
                                LabelHazards.mayBe(run, layer.label(), layer.grams())),
                LabelHazards.notJudged(run, layer.grams()),
                numbers);
    }
}
