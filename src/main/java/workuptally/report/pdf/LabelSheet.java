package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import workuptally.judgement.RunReview;
import workuptally.judgement.hazards.HazardNote;
import workuptally.judgement.hazards.MixtureStatements;
import workuptally.model.Charge;
import workuptally.model.Product;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.LabelGrid;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.tally.bench.Plan;

/** A label to cut out for each portion that a planned run will give: run, layer, contents, hazard words, date, owner. */
final class LabelSheet {
    private final Look look;
    private final RunReview run;

    LabelSheet(Look look, RunReview run) {
        this.look = look;
        this.run = run;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(look.heading("Labels for " + run.id()));
        blocks.add(new Paragraph(
                look,
                "Contents and hazard words follow from the plan and the reference data; compare with the safety data sheets and the"
                        + " local label rules before use.",
                look.caption()));
        List<Plan.ExpectedLayer> layers = run.tally().plan().map(Plan::layers).orElse(List.of());
        blocks.addAll(LabelGrid.of(look, layers.stream().map(this::label).toList()));
        return blocks;
    }

    private LabelGrid.Label label(Plan.ExpectedLayer layer) {
        return new LabelGrid.Label(
                run.id() + "  " + layer.label(),
                layer.phase().map(p -> p.word()).orElse("phase: ________") + "; expected: " + PlanBlocks.contents(layer)
                        + "; may hold " + String.join(", ", othersOf(layer)),
                hazardWords(layer),
                "Made on: ________________    pH: ________",
                "Owner: ________________    Phone: ________________");
    }

    /** Products, and what may be left of what went in. */
    private List<String> mayHold() {
        Set<String> names = new LinkedHashSet<>();
        run.tally().run().products().stream().map(Product::name).forEach(names::add);
        run.tally().run().charges().stream()
                .filter(c -> c.role()
                        .filter(r -> r == Charge.Role.SUBSTRATE || r == Charge.Role.REAGENT)
                        .isPresent())
                .map(Charge::material)
                .forEach(names::add);
        return List.copyOf(names);
    }

    /** Those that are not named by what is expected already. */
    private List<String> othersOf(Plan.ExpectedLayer layer) {
        return mayHold().stream()
                .filter(name -> layer.substances().stream().noneMatch(part -> isSame(part, name)))
                .toList();
    }

    private String hazardWords(Plan.ExpectedLayer layer) {
        List<HazardNote> ofPortion =
                run.hazards().stream().filter(n -> n.isOfPortion(layer.label())).toList();
        List<String> phrases = layer.grams().isEmpty()
                ? MixtureStatements.ofUnknownShares(layer.mayHold(), run.hazards(), ofPortion)
                : MixtureStatements.of(layer.grams(), run.hazards(), ofPortion);
        return phrases.isEmpty()
                ? "Hazards: ______________________________"
                : look.figures().inWords(String.join(" ", phrases)) + " More: safety data sheets.";
    }

    /** A grade behind a comma may stand or not: {@code acetic acid, glacial}. */
    private static boolean isSame(String subject, String typed) {
        String name = typed.toLowerCase(Locale.ROOT);
        String plain = subject.toLowerCase(Locale.ROOT);
        return name.equals(plain) || name.startsWith(plain + ", ");
    }
}
