package workuptally.report.view.lines;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import workuptally.judgement.Review;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.ProposalFit;
import workuptally.model.Limit;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.Words;
import workuptally.tally.containers.ContainerState;
import workuptally.tally.containers.ContainerTally;

/**
 * A container at a glance.
 *
 * @param id id
 * @param stream stream as named by the lab
 * @param nowPercent fill now, % of the capacity
 * @param afterPercent fill with the proposals that fit, %
 * @param limitPercent largest fill, %
 * @param fillWords fill in words, with what was put in that is of another stream
 * @param dayWords days that are left, in words
 */
public record ContainerLine(
        String id,
        String stream,
        OptionalDouble nowPercent,
        OptionalDouble afterPercent,
        double limitPercent,
        String fillWords,
        String dayWords) {
    /** The containers of a book in its order. */
    public static List<ContainerLine> of(Review review, ReadableNumbers numbers) {
        double limit = review.book().limits().value(Limit.CONTAINER_FILL);
        Map<String, List<ProposalLine>> fitting = ProposalLine.fitting(review);
        return review.containers().stream()
                .map(c -> of(c, ProposalLine.after(c, fitting), limit, numbers))
                .toList();
    }

    private static ContainerLine of(
            ContainerReview review, ContainerState fitting, double limit, ReadableNumbers numbers) {
        ContainerTally tally = review.tally();
        OptionalDouble now = tally.now().fillPercent();
        OptionalDouble after = review.proposals().isEmpty() ? OptionalDouble.empty() : fitting.fillPercent();
        String words = now.isPresent() ? numbers.fixed(now.getAsDouble(), 0) : "fill not known";
        if (now.isPresent()) {
            words += after.isPresent() && !numbers.fixed(after.getAsDouble(), 0).equals(words)
                    ? " to " + numbers.fixed(after.getAsDouble(), 0) + "\u00A0%"
                    : "\u00A0%";
            words = (tally.isLeast() ? "≥\u00A0" : "") + words;
        }
        return new ContainerLine(
                review.id(),
                tally.container().wasteStream(),
                now,
                after,
                limit,
                words + ofAnotherStream(review),
                tally.age()
                        .map(ContainerLine::days)
                        .orElse(tally.container()
                                .opened()
                                .map(day -> "opened " + day + "; as-of date not stated")
                                .orElse("opened on: not stated")));
    }

    /** Transfers that were made though their stream is another: the label no longer tells what is in it. */
    private static String ofAnotherStream(ContainerReview review) {
        List<String> made = review.made().stream()
                .filter(m -> m.streamFit() == ProposalFit.StreamFit.OTHER)
                .map(m -> m.addition().transfer().id())
                .toList();
        return made.isEmpty() ? "" : " · holds another stream: " + String.join(", ", made);
    }

    private static String days(ContainerTally.Age age) {
        if (age.dueOn().isEmpty()) {
            return "open " + Words.count(age.daysOpen(), "day") + ", no limit set";
        }
        long limit = age.dueOn().get().toEpochDay() - age.asOf().toEpochDay();
        if (age.overdue()) {
            return Words.count(-limit, "day") + " overdue";
        }
        if (age.dueNow()) {
            return limit == 0 ? "due today" : "last working day today";
        }
        long left = age.lastWorkingDay().orElseThrow().toEpochDay() - age.asOf().toEpochDay();
        return Words.count(left, "day") + " left of " + Words.count(age.daysOpen() + limit, "day");
    }
}
