package workuptally.report.explain;

import java.util.ArrayList;
import java.util.List;
import workuptally.model.Step;
import workuptally.tally.RunTally;
import workuptally.tally.bench.Contact;

/** Fill of the funnel at every shake. */
final class ExplainedContacts {
    private final Numbers numbers;

    ExplainedContacts(Numbers numbers) {
        this.numbers = numbers;
    }

    List<Explanation> of(RunTally tally) {
        List<Explanation> all = new ArrayList<>();
        tally.contacts().forEach(contact -> all.add(of(contact)));
        return all;
    }

    private Explanation of(Contact contact) {
        Step step = contact.step();
        String portion = step.added().portionCount() > 1 ? ", portion " + contact.portion() : "";
        String funnel = contact.funnelRecorded()
                ? numbers.entry(step.funnel().millilitres(), "mL").orElse("?")
                : numbers.plain(contact.funnelMillilitres()) + " mL (not recorded; the smallest that fits)";
        return new Draft(FigureKind.CONTACTS, "Fill at step " + step.number() + portion)
                .equation("fill = 100·V/loads/V(funnel), V = everything in the funnel before mixing")
                .equation("fill = 100 × " + numbers.plain(contact.volumeMillilitres()) + " mL / " + contact.loads()
                        + " / " + funnel)
                .note("V: " + String.join(" + ", step.from())
                        + numbers.entry(step.added().volumeMillilitres(), "mL")
                                .map(v -> " and a portion of " + v + " "
                                        + step.added().material())
                                .orElse("")
                        + "; what was not measured is estimated from what went in.")
                .note("Limit " + numbers.plain(contact.fillLimitPercent()) + " %: " + contact.loadsNeeded()
                        + (contact.loadsNeeded() == 1 ? " load." : " loads."))
                .result(numbers.decimals(contact.fillPercent(), 1) + " %");
    }
}
