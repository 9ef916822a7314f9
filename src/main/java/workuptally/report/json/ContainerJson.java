package workuptally.report.json;

import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.ProposalFit;
import workuptally.model.Container;
import workuptally.model.Limit;
import workuptally.tally.ContainerState;

/** What the ledger of a container shows: now, with the proposals that fit, its age, and how each proposal fits. */
final class ContainerJson {
    private ContainerJson() {}

    static void write(JsonFields json, Review review, Container container) {
        Optional<ContainerReview> found = review.containers().stream()
                .filter(c -> c.tally().container().equals(container))
                .findFirst();
        found.ifPresent(c -> write(json, review, c));
    }

    private static void write(JsonFields json, Review review, ContainerReview container) {
        json.object("now", () -> state(json, review, container.tally().now()));
        json.object("withProposalsThatFit", () -> state(json, review, container.afterProposals()));
        container.tally().reconciliation().ifPresent(r -> {
            json.number("ledgerGrams", r.ledgerGrams());
            json.number("weighedGrams", r.weighedGrams());
            json.flag("ledgerAgrees", r.agrees());
        });
        container.tally().age().ifPresent(age -> {
            json.text("asOf", age.asOf().toString());
            json.count("daysOpen", (int) age.daysOpen());
            json.text("dueOn", age.dueOn());
            json.text("lastWorkingDay", age.lastWorkingDay());
            json.flag("overdue", age.overdue());
        });
        json.array("proposals", container.proposals(), fit -> proposal(json, fit));
    }

    private static void state(JsonFields json, Review review, ContainerState state) {
        json.number("massGrams", state.totalGrams());
        json.number("volumeLitres", state.litres());
        json.number("fillPercent", state.fillPercent());
        json.array("composition", state.composition(review.book().limits().optional(Limit.CONTAINER_TRACE)), part -> {
            json.text("substance", part.substance());
            json.number("massGrams", part.massGrams());
            json.number("massPercent", part.massPercent());
        });
    }

    private static void proposal(JsonFields json, ProposalFit fit) {
        json.text("transfer", fit.addition().transfer().id());
        json.text("source", fit.addition().source());
        json.number("massGrams", fit.addition().totalGrams());
        json.number("volumeMillilitres", fit.addition().millilitres());
        json.text("streamFit", EnumWord.of(fit.streamFit()));
        json.text("streamSuggested", fit.streamName());
        json.flag("fits", fit.fits());
        json.number("fillThenPercent", fit.after().fillPercent());
        json.flag("crossesFill", fit.crossesFill());
        json.array("clashes", fit.clashes(), clash -> {
            json.text("incoming", clash.incoming());
            json.text("present", clash.present());
            json.text("earlierTransfer", clash.earlierTransfer());
            json.text("consequence", clash.row().consequence());
            json.text("gas", clash.row().gas());
            json.flag("hazardous", clash.isHazardous());
            json.flag("shownPresent", clash.shownPresent());
        });
    }
}
