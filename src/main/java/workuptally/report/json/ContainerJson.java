package workuptally.report.json;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import workuptally.judgement.Review;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.ProposalFit;
import workuptally.model.Container;
import workuptally.report.view.lines.ProposalLine;
import workuptally.tally.containers.ContainerAddition;
import workuptally.tally.containers.ContainerState;
import workuptally.tally.containers.ContainerTally;

/** Waste containers: what stands in them, what is proposed, how full and how old they are. */
final class ContainerJson {
    private ContainerJson() {}

    static void array(JsonFields json, Review review) {
        Map<String, String> verdicts = new HashMap<>();
        ProposalLine.of(review)
                .forEach(line -> verdicts.put(line.transfer(), line.group().word()));
        json.array("containers", review.containers(), container -> container(json, container, verdicts));
    }

    private static void container(JsonFields json, ContainerReview review, Map<String, String> verdicts) {
        ContainerTally tally = review.tally();
        entry(json, tally.container());
        json.array("done", tally.done(), addition -> addition(json, addition));
        json.array("proposed", review.proposals(), proposal -> {
            proposal(json, proposal);
            json.text(
                    "verdict",
                    verdicts.getOrDefault(proposal.addition().transfer().id(), ""));
        });
        json.object("now", () -> state(json, tally.now()));
        json.object("afterProposals", () -> state(json, review.afterProposals()));
        tally.reconciliation()
                .ifPresent(r -> json.object("reconciliation", () -> {
                    json.number("ledgerGrams", r.ledgerGrams());
                    json.number("weighedGrams", r.weighedGrams());
                    json.number("differenceGrams", r.differenceGrams());
                    json.number("toleranceGrams", r.toleranceGrams());
                    json.flag("agrees", r.agrees());
                }));
        tally.age()
                .ifPresent(age -> json.object("age", () -> {
                    json.text("asOf", age.asOf().toString());
                    json.count("daysOpen", age.daysOpen());
                    json.text("dueOn", age.dueOn());
                    json.text("lastWorkingDay", age.lastWorkingDay());
                    json.flag("overdue", age.overdue());
                }));
        facts(json, review);
        new SuspectsJson(json).cells(review.suspects());
    }

    private static void facts(JsonFields json, ContainerReview review) {
        json.array("regulatoryFacts", review.facts(), fact -> {
            json.text("key", fact.key());
            json.text("text", fact.text());
            json.text("source", fact.source());
            json.text("citation", fact.citation());
        });
    }

    private static void entry(JsonFields json, Container container) {
        json.text("container", container.id());
        json.text("wasteStream", container.wasteStream());
        PeriodJson.entered(json, "capacityLitres", container.capacityLitres());
        PeriodJson.entered(json, "tareGrams", container.tareGrams());
        json.text("weighedOn", container.weighedOn());
        PeriodJson.entered(json, "grossThenGrams", container.grossThenGrams());
        json.array("contentsThen", container.contentsThen(), content -> {
            json.text("substance", content.substance());
            json.number("massGrams", content.massGrams());
        });
        json.text("opened", container.opened());
        json.text("location", container.location());
        json.text("contact", container.contact());
    }

    private static void addition(JsonFields json, ContainerAddition addition) {
        json.text("transfer", addition.transfer().id());
        json.text("source", addition.source());
        json.number("massGrams", addition.totalGrams());
        json.number("volumeMillilitres", addition.millilitres());
    }

    private static void proposal(JsonFields json, ProposalFit proposal) {
        addition(json, proposal.addition());
        json.text("streamFit", EnumWord.of(proposal.streamFit()));
        json.text("streamSuggested", proposal.streamName());
        json.flag("fits", proposal.fits());
        json.number("fillThenPercent", proposal.after().fillPercent());
        json.flag("crossesFill", proposal.crossesFill());
        json.array("clashes", proposal.clashes(), clash -> {
            json.text("incoming", clash.incoming());
            json.text("present", clash.present());
            json.text("earlierTransfer", clash.earlierTransfer());
            json.text("consequence", clash.consequence());
            json.text("gas", clash.gas());
            json.flag("hazardous", clash.isHazardous());
            json.flag("shownPresent", clash.shownPresent());
        });
    }

    private static void state(JsonFields json, ContainerState state) {
        json.number("massGrams", state.totalGrams());
        json.number("volumeLitres", state.litres());
        json.number("fillPercent", state.fillPercent());
        json.array("composition", state.composition(OptionalDouble.empty()), part -> {
            json.text("substance", part.substance());
            json.number("massGrams", part.massGrams());
            json.number("massPercent", part.massPercent());
        });
    }
}
