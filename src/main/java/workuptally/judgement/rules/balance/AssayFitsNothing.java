package workuptally.judgement.rules.balance;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.material.Material;
import workuptally.material.State;
import workuptally.model.Assay;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.NmrAssay;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.model.RowPlace;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;

/** An assay of a sample that the run does not have, or of a substance that it neither made nor used: it counts nowhere, unseen. */
public final class AssayFitsNothing implements RunRule {

    private final Substances materials;

    /** With the reader of names. */
    public AssayFitsNothing(Substances materials) {
        this.materials = materials;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.ASSAY_SAMPLE_UNKNOWN, FindingCode.ASSAY_SUBSTANCE_UNKNOWN);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        Run run = tally.run();
        FindingList findings = new FindingList(run.id());
        Set<String> samples = samples(tally);
        Set<String> substances = substances(run);
        for (Assay assay : run.assays()) {
            assay.samples().forEach(sample -> sample(findings, assay.row(), sample, samples));
            if (assay.formula().isBlank()) {
                substance(findings, assay.row(), assay.substance(), substances);
            }
        }
        for (NmrAssay assay : run.nmrAssays()) {
            sample(findings, assay.row(), assay.sample(), samples);
            substance(findings, assay.row(), assay.substance(), substances);
        }
        return findings.list();
    }

    private static void sample(FindingList findings, RowPlace row, String sample, Set<String> samples) {
        if (!sample.isBlank() && !samples.contains(sample.strip())) {
            findings.add(
                    FindingCode.ASSAY_SAMPLE_UNKNOWN,
                    Severity.CHECK,
                    row.at("Sample"),
                    Phrase.of(
                            "sample '{}' is no layer and no lot of the run; its assay counts nowhere", sample.strip()),
                    Phrase.of("a label of the run{}", nearest(sample, samples)),
                    "labels of Workup, Layers and Isolated",
                    Phrase.of("Correct the label, or name the layer in the step that gives it."));
        }
    }

    private void substance(FindingList findings, RowPlace row, String substance, Set<String> substances) {
        if (!substance.isBlank() && !substances.isEmpty() && !fits(substances, substance)) {
            findings.add(
                    FindingCode.ASSAY_SUBSTANCE_UNKNOWN,
                    Severity.CHECK,
                    row.at("Substance"),
                    Phrase.of("'{}' is no product, charge or step material of the run", substance),
                    Phrase.of("a substance of the run{}", nearest(substance, substances)),
                    "Products, Charges and Workup",
                    Phrase.of(
                            "Write it as the run does, list it under Products, or enter its formula beside the assay."));
        }
    }

    private static Set<String> samples(RunTally tally) {
        Set<String> samples = new LinkedHashSet<>();
        tally.layers().forEach(layer -> samples.add(layer.label()));
        tally.run().layers().forEach(layer -> samples.add(layer.label()));
        tally.run().lots().forEach(lot -> samples.add(lot.label()));
        for (Step step : tally.run().steps()) {
            samples.addAll(step.from());
            samples.addAll(step.given().organic());
            samples.addAll(step.given().aqueous());
            samples.addAll(step.given().other());
        }
        return samples;
    }

    private static Set<String> substances(Run run) {
        Set<String> names = new LinkedHashSet<>();
        run.products().stream().map(Product::name).forEach(names::add);
        run.charges().stream().map(Charge::material).forEach(names::add);
        run.steps().stream()
                .map(s -> s.added().material())
                .filter(m -> !m.isBlank())
                .forEach(names::add);
        run.layers().forEach(layer -> layer.composition().forEach(part -> names.add(part.substance())));
        return names;
    }

    /** A name of the run, another name for the same substance, or a solvent, which can be in any sample. */
    private boolean fits(Set<String> names, String name) {
        Material material = materials.material(name);
        boolean solvent = material.solvent().isPresent();
        return names.stream().anyMatch(name::equalsIgnoreCase)
                || solvent
                || material.state() == State.LISTED
                        && names.stream()
                                .map(materials::material)
                                .anyMatch(m -> m.main()
                                        .substance()
                                        .equals(material.main().substance()));
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replace(" ", "").replace("-", "");
    }

    /** The name that begins alike for longest, if half of it does. */
    private static Phrase nearest(String name, Set<String> names) {
        String plain = plain(name);
        String best = "";
        int longest = (plain.length() + 1) / 2 - 1;
        for (String each : names) {
            String other = plain(each);
            int same = 0;
            while (same < Math.min(plain.length(), other.length()) && plain.charAt(same) == other.charAt(same)) {
                same++;
            }
            if (same > longest) {
                longest = same;
                best = each;
            }
        }
        return best.isEmpty() ? Phrase.NONE : Phrase.of("; the nearest: {}", best);
    }
}
