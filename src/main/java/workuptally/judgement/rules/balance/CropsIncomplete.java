package workuptally.judgement.rules.balance;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.tally.RunTally;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.UnlabelledPhase;

/** A crystallisation whose mother liquor is not recorded or not assayed: it always keeps some product. */
public final class CropsIncomplete implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.LIQUOR_NOT_RECORDED, FindingCode.LIQUOR_NOT_ASSAYED);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        List<LayerTally> liquors = tally.layers().stream()
                .filter(l ->
                        l.phase().filter(p -> p == Layer.Phase.MOTHER_LIQUOR).isPresent())
                .toList();
        for (LayerTally liquor : liquors) {
            boolean assayed = liquor.contents().stream()
                    .filter(c -> tally.run()
                            .product(c.substance())
                            .filter(p -> p.wanted())
                            .isPresent())
                    .anyMatch(c -> c.massGrams().isPresent());
            if (!assayed && liquor.terminal() && liquor.entry().isPresent()) {
                findings.add(
                        FindingCode.LIQUOR_NOT_ASSAYED,
                        Severity.CHECK,
                        liquor.entry().get().row().at("Layer"),
                        Phrase.of("mother liquor {} has no assay for the product", liquor.label()),
                        Phrase.of("an assay or a dry residue of the liquor"),
                        FindingList.PRACTICE,
                        Phrase.of(
                                "Evaporate a measured aliquot to dryness, or assay it, before the yield of the crops is final."));
            }
        }
        Optional<Lot> crop = tally.run().lots().stream()
                .filter(l -> l.stage().filter(s -> s == Lot.Stage.CROP).isPresent())
                .findFirst();
        boolean isAskedFor = tally.evidence().gaps().unlabelledPhases().stream().anyMatch(UnlabelledPhase::isLiquor);
        if (crop.isPresent() && liquors.isEmpty() && !isAskedFor) {
            findings.add(
                    FindingCode.LIQUOR_NOT_RECORDED,
                    Severity.CHECK,
                    crop.get().row().at("Stage"),
                    Phrase.of(
                            "lot {} is a crop, but no mother liquor is recorded{}",
                            crop.get().label(),
                            crystallisation(tally)),
                    Phrase.of("the liquor as a layer, with its volume and an assay"),
                    FindingList.PRACTICE,
                    Phrase.of("Enter the liquor in Layers; what it holds belongs beside the crops."));
        }
        return findings.list();
    }

    private static Phrase crystallisation(RunTally tally) {
        return tally.run().orderedSteps().stream()
                .filter(s -> s.operation()
                        .filter(o -> o == Step.Operation.CRYSTALLISE)
                        .isPresent())
                .findFirst()
                .map(s -> Phrase.of(" (step {})", s.number()))
                .orElse(Phrase.NONE);
    }
}
