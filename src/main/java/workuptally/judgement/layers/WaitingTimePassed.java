package workuptally.judgement.layers;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Figure;
import workuptally.model.Limit;
import workuptally.model.Phrase;

/** R12, asked where the group sets a waiting time: it has passed on the day of the report. */
final class WaitingTimePassed implements LayerCondition {

    @Override
    public Condition judge(LayerEvidence evidence) {
        OptionalDouble days = evidence.book().limits().optional(Limit.WAITING_DAYS);
        if (days.isEmpty()) {
            return new Condition(Criterion.WAITING_TIME, State.NOT_ASKED, Phrase.of("no waiting time set"));
        }
        Optional<LocalDate> made = evidence.layer()
                .entry()
                .flatMap(l -> l.custody().madeOn())
                .or(() -> evidence.run().run().head().date());
        Optional<LocalDate> today = evidence.book().limits().day(Limit.AS_OF);
        if (made.isEmpty() || today.isEmpty()) {
            return new Condition(
                    Criterion.WAITING_TIME,
                    State.MISSING,
                    made.isEmpty() ? Phrase.of("day the layer was made") : Phrase.of("As of in Limits"));
        }
        LocalDate until = made.get().plusDays((long) Math.ceil(days.getAsDouble()));
        return new Condition(
                Criterion.WAITING_TIME,
                today.get().isBefore(until) ? State.NOT_MET : State.MET,
                Phrase.of("{} days from {}: {}", Figure.decimals(days.getAsDouble(), 0, ""), made.get(), until));
    }
}
