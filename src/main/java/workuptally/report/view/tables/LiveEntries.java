package workuptally.report.view.tables;

import java.util.Optional;
import workuptally.model.Amount;
import workuptally.model.Field;
import workuptally.tally.amounts.ChargeAmount;

/** Expressions over the entries of the book that several tables use. */
public final class LiveEntries {
    private LiveEntries() {}

    /** An entered number, if it is a plain one. */
    public static Optional<Live> of(Field field) {
        return field.entered()
                .filter(entered ->
                        entered.qualifier() == Field.Qualifier.EXACT || entered.qualifier() == Field.Qualifier.ABOUT)
                .map(entered -> new Live.Entry(entered.place(), entered.value()));
    }

    /** Net mass: gross − tare where both are entered, else the net mass as typed. */
    public static Optional<Live> net(Field gross, Field tare, Field net) {
        Optional<Live> difference = of(gross).flatMap(g -> of(tare).map(t -> Live.minus(g, t)));
        return difference.or(() -> of(net));
    }

    /** Amount of a charge, mmol, as its entry times what one unit of the entry holds. */
    public static Optional<Live> amountMillimoles(ChargeAmount charge) {
        return (charge.planned()
                        ? charge.charge().quantity().planned()
                        : charge.charge().quantity().actual())
                .map(Amount::value)
                .flatMap(value -> scaled(
                        value, charge.amountMillimoles().map(n -> n.value()).orElse(0.0)));
    }

    /** Mass of a charge, g, as its entry times what one unit of the entry weighs. */
    public static Optional<Live> massGrams(ChargeAmount charge, double grams) {
        return (charge.planned()
                        ? charge.charge().quantity().planned()
                        : charge.charge().quantity().actual())
                .map(Amount::value)
                .flatMap(value -> scaled(value, grams));
    }

    private static Optional<Live> scaled(Field field, double result) {
        return field.entered()
                .filter(entered -> entered.value() != 0 && result != 0)
                .flatMap(entered -> of(field)
                        .map(live -> Live.agree(result, entered.value())
                                ? live
                                : Live.times(new Live.Fixed(result / entered.value()), live)));
    }
}
