package workuptally.report.view.sheets;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Limit;
import workuptally.model.Step;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.LiveEntries;
import workuptally.report.view.tables.TableView;
import workuptally.tally.bench.Contact;

/** Every shake in a funnel: how full it is, how many loads keep it within the limit, and the gas to expect. */
public final class ContactsSection {
    /** Title of the table. */
    public static final String TITLE = "Funnel fill";

    private ContactsSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        return TableView.of(
                TITLE,
                "Fill = volume / loads / funnel, volumes before mixing added. A funnel that the book does not name is the smallest that fits.",
                List.of(
                        Column.text("Run", 14),
                        Column.text("Step", 8),
                        Column.text("Operation", 14),
                        Column.number("Portion", "", 0),
                        Column.number("Volume", "mL", 0),
                        Column.number("Funnel", "mL", 0),
                        Column.text("Named", 8),
                        Column.number("Loads", "", 0),
                        Column.number("Fill", "%", 0),
                        Column.number("Largest fill", "%", 0),
                        Column.number("Loads needed", "", 0),
                        Column.number("Gas expected", "L", 2),
                        Column.number("Gas at worst", "L", 2)),
                review.runs(),
                run -> run.tally().contacts().stream().map(contact -> row(run, contact)));
    }

    private static TableView.Row row(RunReview run, Contact contact) {
        Step step = contact.step();
        return new TableView.Row(
                List.of(
                        Cell.of(run.id()),
                        Cell.of(step.number()),
                        Cell.of(step.operation().map(Step.Operation::word).orElse("")),
                        Cell.of(contact.portion()),
                        Cell.of(contact.volumeMillilitres()),
                        live(
                                contact.funnelMillilitres(),
                                LiveEntries.of(step.funnel().millilitres())),
                        Cell.yesNo(contact.funnelRecorded()),
                        live(contact.loads(), LiveEntries.of(step.funnel().loads())),
                        Cell.of(
                                contact.fillPercent(),
                                Live.over(
                                        Live.percent(new Live.InRow("Volume"), new Live.InRow("Loads")),
                                        new Live.InRow("Funnel"))),
                        Cell.of(contact.fillLimitPercent(), limit(contact)),
                        Cell.of(contact.loadsNeeded()),
                        Cell.of(contact.gasLitresExpected()),
                        Cell.of(contact.gasLitresWorst())),
                Optional.empty());
    }

    private static Live limit(Contact contact) {
        return Live.Named.of(contact.gasExpected() ? Limit.FUNNEL_FILL_WITH_GAS : Limit.FUNNEL_FILL);
    }

    private static Cell live(double value, Optional<Live> live) {
        return new Cell.Number(value, Cell.Number.AS_COLUMN, live);
    }
}
