package workuptally.report.view.sheets;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.measure.MeasuredValue;
import workuptally.model.Amount;
import workuptally.model.Charge;
import workuptally.model.Dimension;
import workuptally.model.Field;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.LiveEntries;
import workuptally.report.view.tables.RowIndex;
import workuptally.report.view.tables.ShownFigures;
import workuptally.report.view.tables.TableView;
import workuptally.report.view.wording.Words;
import workuptally.tally.amounts.ChargeAmount;

/** Charges as mass and amount of substance, with the molar mass that was used: what theories and closures are made of. */
public final class AmountsSection {
    /** Title of the table. */
    public static final String TITLE = "Amounts";

    /** Column of the amount of substance. */
    static final String AMOUNT = "Amount";

    /** Column of the amount of substance with the molar mass as typed. */
    static final String AS_TYPED = "Amount as typed";

    /** Column of the stoichiometric coefficient. */
    static final String COEFFICIENT = "Coefficient";

    /** Column of the mass as charged. */
    static final String MASS = "Mass";

    private static final String CONTENT = "Content";
    private static final String MOLAR_MASS = "Molar mass";

    private AmountsSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        double k = review.period().coverageFactor();
        return TableView.of(
                TITLE,
                "Amount = 10 · mass · content / molar mass, or volume · molarity. The molar mass is that of the formula; where none is given,"
                        + " as typed. An amount as typed stands only where the typed molar mass differs from that of the formula.",
                List.of(
                        Column.text("Run", 14),
                        Column.text("Material", 30),
                        Column.text("Role", 11),
                        Column.number(COEFFICIENT, "", 2),
                        Column.number(MASS, "g", 3),
                        Column.number(CONTENT, "% w/w", 2),
                        Column.number(MOLAR_MASS, "g/mol", 3),
                        Column.number(AMOUNT, "mmol", 3),
                        Column.number(AS_TYPED, "mmol", 3)),
                review.runs(),
                run -> run.tally().amounts().stream().map(amount -> row(run, amount, k)));
    }

    /** Rows by material, and by material and position among the charges of the run, from 0. */
    static RowIndex rows(Review review) {
        return new RowIndex(
                review.runs(),
                run -> IntStream.range(0, run.tally().amounts().size())
                        .mapToObj(i ->
                                List.of(run.tally().amounts().get(i).charge().material(), Integer.toString(i)))
                        .toList());
    }

    private static TableView.Row row(RunReview run, ChargeAmount amount, double k) {
        Charge charge = amount.charge();
        return new TableView.Row(
                List.of(
                        Cell.of(run.id()),
                        Cell.of(charge.material()),
                        Cell.of(charge.role().map(Words::of).orElse("")),
                        entered(charge.coefficient()),
                        ShownFigures.cell(amount.massGrams(), k, mass(amount)),
                        content(amount),
                        molarMass(amount),
                        ShownFigures.cell(amount.amountMillimoles(), k, millimoles(amount)),
                        asTyped(amount)),
                Optional.empty());
    }

    private static Cell entered(Field field) {
        Optional<Double> value = field.entered().map(Field.Entered::value);
        return value.isEmpty()
                ? new Cell.Missing("")
                : new Cell.Number(value.get(), Cell.Number.AS_COLUMN, LiveEntries.of(field));
    }

    private static Optional<Amount> amount(ChargeAmount amount) {
        return amount.planned()
                ? amount.charge().quantity().planned()
                : amount.charge().quantity().actual();
    }

    private static Optional<Live> strength(Charge charge) {
        return LiveEntries.of(
                charge.goods().titreMolesPerLitre().entered().isPresent()
                        ? charge.goods().titreMolesPerLitre()
                        : charge.goods().molarityMolesPerLitre());
    }

    /** As weighed; of a volume by its density, as typed or as the tables have it. */
    private static Optional<Live> mass(ChargeAmount amount) {
        Optional<Live> byDensity = amount(amount)
                .filter(a -> a.dimension() == Dimension.VOLUME)
                .flatMap(a -> LiveEntries.of(a.value()))
                .flatMap(volume -> LiveEntries.of(amount.charge().goods().densityGramsPerMillilitre())
                        .map(density -> Live.times(volume, density)));
        return byDensity.or(() -> amount.massGrams().flatMap(grams -> LiveEntries.massGrams(amount, grams.value())));
    }

    /** Content by mass: as typed, else what the amount says of the mass; of solutions made up by volume it says nothing. */
    private static Cell content(ChargeAmount amount) {
        Optional<Double> grams = amount.massGrams().map(MeasuredValue::value).filter(m -> m > 0);
        Optional<Double> millimoles = amount.amountMillimoles().map(MeasuredValue::value);
        if (grams.isEmpty()
                || millimoles.isEmpty()
                || amount.molarMassGramsPerMole().isEmpty()) {
            return new Cell.Missing("");
        }
        double percent = millimoles.get() * amount.molarMassGramsPerMole().getAsDouble() / grams.get() / 10;
        return new Cell.Number(
                percent,
                Cell.Number.AS_COLUMN,
                LiveEntries.of(amount.charge().goods().assayPercent())
                        .filter(live -> strength(amount.charge()).isEmpty()));
    }

    /** The cell of the book where no formula stands beside it. */
    private static Cell molarMass(ChargeAmount amount) {
        OptionalDouble used = amount.molarMassGramsPerMole();
        return used.isEmpty()
                ? new Cell.Missing("")
                : new Cell.Number(
                        used.getAsDouble(),
                        Cell.Number.AS_COLUMN,
                        LiveEntries.of(amount.charge().molarMassGramsPerMole())
                                .filter(live -> amount.charge().formula().isBlank()));
    }

    private static Optional<Live> millimoles(ChargeAmount amount) {
        Optional<Dimension> dimension = amount(amount).map(Amount::dimension);
        if (dimension.filter(d -> d == Dimension.VOLUME).isPresent()
                && strength(amount.charge()).isPresent()) {
            return amount(amount)
                    .flatMap(a -> LiveEntries.of(a.value()))
                    .flatMap(volume -> strength(amount.charge()).map(c -> Live.times(volume, c)));
        }
        boolean weighed = dimension
                        .filter(d -> d == Dimension.MASS || d == Dimension.VOLUME)
                        .isPresent()
                && amount.molarMassGramsPerMole().isPresent();
        return weighed
                ? Optional.of(Live.over(pure(), new Live.InRow(MOLAR_MASS)))
                : LiveEntries.amountMillimoles(amount);
    }

    private static Live pure() {
        return Live.times(new Live.Fixed(10), new Live.InRow(MASS), new Live.InRow(CONTENT));
    }

    private static Cell asTyped(ChargeAmount amount) {
        return amount.asTypedMillimoles().isEmpty()
                ? new Cell.Missing("")
                : new Cell.Number(
                        amount.asTypedMillimoles().getAsDouble(),
                        Cell.Number.AS_COLUMN,
                        LiveEntries.of(amount.charge().molarMassGramsPerMole()).map(m -> Live.over(pure(), m)));
    }
}
