package workuptally.judgement.rules.charges;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import workuptally.judgement.rules.BookRule;
import workuptally.judgement.rules.FindingList;
import workuptally.material.Material;
import workuptally.material.State;
import workuptally.material.Substance;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Subject;
import workuptally.model.SubstanceName;
import workuptally.model.Transfer;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.RunMaterial;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.UnreadParts;

/**
 * A reagent, solvent, wash, part of a stated composition or free material of a transfer that no table knows, or whose name means more than one thing: said once a book. What it does with water, acid,
 * base or anything else is then not judged, and silence about it is no safety. It holds nothing.
 */
public final class MaterialUnlisted implements BookRule {

    private final Substances substances;

    /** With the reader of names. */
    public MaterialUnlisted(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.MATERIAL_UNLISTED, FindingCode.MATERIAL_AMBIGUOUS);
    }

    @Override
    public List<Finding> judge(Book book, List<RunTally> tallies) {
        Map<String, Met> met = new LinkedHashMap<>();
        Set<Place> nameless = namelessCharges(book);
        RunMaterial.ofBook(book, substances).forEach((run, materials) -> {
            for (RunMaterial material : materials) {
                // A liquid of a step that no table has is a finding of its own, which says this too.
                boolean said = material.stepLiquid()
                        && material.material().parts().size() == 1
                        && !material.material().isAmbiguous();
                if (material.isUnjudged() && !said && !nameless.contains(material.place())) {
                    met.computeIfAbsent(
                                    SubstanceName.key(material.written()),
                                    name -> new Met(
                                            material.written(), material.material(), material.place(), Subject.NONE))
                            .runs()
                            .add(run);
                }
            }
        });
        for (Run run : book.runs()) {
            UnreadParts unread = new UnreadParts(run, substances);
            for (Layer layer : run.layers()) {
                for (String part : unread.of(layer)) {
                    met.computeIfAbsent(
                                    SubstanceName.key(part),
                                    name -> new Met(
                                            part,
                                            substances.material(part),
                                            layer.row().at("Composition"),
                                            Subject.NONE))
                            .inLayer(run.id(), layer.label());
                }
            }
        }
        for (Transfer transfer : book.transfers()) {
            if (transfer.layers().isEmpty()) {
                Material material = substances.material(transfer.material());
                if (material.state() != State.LISTED) {
                    met.computeIfAbsent(
                                    SubstanceName.key(transfer.material()),
                                    name -> new Met(
                                            transfer.material(),
                                            material,
                                            transfer.row().at("Material"),
                                            Subject.NONE.withTransfer(transfer.id(), transfer.container())))
                            .transfers()
                            .add(transfer.id());
                }
            }
        }
        List<Finding> findings = new ArrayList<>();
        met.values().forEach(each -> findings.add(finding(each)));
        return List.copyOf(findings);
    }

    /** Charges whose rows were left out: the rows are asked about, and have no name to ask about. */
    private static Set<Place> namelessCharges(Book book) {
        return book.runs().stream()
                .flatMap(run -> run.charges().stream())
                .filter(charge -> charge.reading() == Charge.Reading.LEFT_OUT)
                .map(charge -> charge.row().at("Material"))
                .collect(Collectors.toSet());
    }

    private Finding finding(Met met) {
        if (met.material().isAmbiguous()) {
            return ambiguous(met);
        }
        return met.material().state() == State.LISTED ? mixed(met) : unlisted(met);
    }

    private record Met(
            String written,
            Material material,
            Place place,
            Subject ofTransfer,
            Set<String> runs,
            Set<String> layers,
            Set<String> transfers) {
        Met(String written, Material material, Place place, Subject ofTransfer) {
            this(
                    written,
                    material,
                    place,
                    ofTransfer,
                    new LinkedHashSet<>(),
                    new LinkedHashSet<>(),
                    new LinkedHashSet<>());
        }

        void inLayer(String run, String layer) {
            runs.add(run);
            layers.add(runs.size() == 1 ? layer : run + " " + layer);
        }

        /** What else is left open where it is part of a stated composition. */
        Phrase undecided() {
            return layers.isEmpty() ? Phrase.NONE : Phrase.of(", nor the stream of {}", String.join(", ", layers));
        }

        String inRuns() {
            return Stream.of(listed("run", runs), listed("transfer", transfers))
                    .filter(each -> !each.isEmpty())
                    .collect(Collectors.joining("; "));
        }

        private static String listed(String what, Set<String> ids) {
            return ids.isEmpty() ? "" : what + (ids.size() == 1 ? " " : "s ") + String.join(", ", ids);
        }

        Subject subject() {
            return (ofTransfer.transfer().isEmpty()
                            ? Subject.ofRun(runs.iterator().next())
                            : ofTransfer)
                    .withSubstance(written);
        }
    }

    private Finding unlisted(Met met) {
        List<String> nearest = substances.nearest(met.written());
        boolean described = met.material().state() == State.DESCRIBED;
        return new Finding(
                FindingCode.MATERIAL_UNLISTED,
                Severity.CHECK,
                met.subject(),
                met.place(),
                Phrase.of(
                        "no table knows '{}' ({}){}: its reactivity is {}{}",
                        met.written(),
                        met.inRuns(),
                        described ? Phrase.of("; its formula gives its mass, not what it does") : Phrase.NONE,
                        judged(met.material()),
                        met.undecided()),
                nearest.isEmpty()
                        ? Phrase.of("a listed name; none is near")
                        : Phrase.of("a listed name; the nearest: {}", String.join(", ", nearest)),
                "reference table of materials",
                Phrase.of(
                        "Write the full name or the usual abbreviation, or add a row of your own to the table of materials; until"
                                + " then judge what it meets by its safety data sheet."));
    }

    /** What its name alone tells is judged: {@code mercury(II) nitrate} is no row, but mercury and nitrate are classes. */
    private static Phrase judged(Material material) {
        return material.classes().isEmpty()
                ? Phrase.of("not judged")
                : Phrase.of(
                        "judged by its name alone, as {}",
                        material.classes().stream()
                                .map(each -> each.replace('-', ' '))
                                .collect(Collectors.joining(", ")));
    }

    /** Listed liquids in one name of a composition: each is known, how much of each is there is not. */
    private static Finding mixed(Met met) {
        return new Finding(
                FindingCode.MATERIAL_AMBIGUOUS,
                Severity.CHECK,
                met.subject(),
                met.place(),
                Phrase.of(
                        "'{}' ({}) is a mixture, and the share of each part is not read{}",
                        met.written(),
                        met.inRuns(),
                        met.undecided()),
                Phrase.of("a share for each part, such as heptane 40 %; ethyl acetate 60 %"),
                FindingList.PRACTICE,
                Phrase.of("Write each part with its own share."));
    }

    private static Finding ambiguous(Met met) {
        List<String> choices = met.material().parts().stream()
                .flatMap(part -> part.choices().stream())
                .map(Substance::name)
                .distinct()
                .toList();
        return new Finding(
                FindingCode.MATERIAL_AMBIGUOUS,
                Severity.CHECK,
                met.subject(),
                met.place(),
                Phrase.of(
                        "'{}' ({}) is not certain; its reactivity is {}{}",
                        met.written(),
                        met.inRuns(),
                        judged(met.material()),
                        met.undecided()),
                choices.size() == 1
                        ? Phrase.of("{} in its usual spelling", choices.get(0))
                        : Phrase.of("one of: {}", String.join(", ", choices)),
                FindingList.PRACTICE,
                Phrase.of("Write the full name; beside a charge its formula may tell too."));
    }
}
