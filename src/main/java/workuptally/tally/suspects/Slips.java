package workuptally.tally.suspects;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Figure;
import workuptally.model.RowPlace;
import workuptally.tally.amounts.Substances;
import workuptally.tally.suspects.Entry.Sort;

/** What may have been meant by one entry, by each slip of the pen that its kind of figure knows. */
final class Slips {
    private static final int UNIT_STEP = 3;
    private static final int DIGITS_OF_A_COPY = 3;

    /** A fraction below this stands where a percentage is meant: 0.985 for 98.5. */
    private static final double MOST_AS_FRACTION = 1;

    private static final int PERCENT_STEP = 2;

    /** A zero in front is seen more often than not before the sheet takes it away (common practice). */
    private static final double ZERO_IN_FRONT = 3;

    /** What is meant is seldom an assay of a tenth of the one typed: most lie near 100 % (common practice). */
    private static final double LOW_ASSAY = 20;

    /** So many per cent lower a purity is e times rarer (common practice). */
    private static final double USUAL_IMPURITY = 15;

    /** Of so many tares one will settle a balance by chance (common practice). */
    private static final double ANY_TARE = 15;

    private final Function<Entry, String> formulas;
    private final List<Entry> entries;
    private final TareRegister register;
    private final EntryChecks checks;
    private final Substances substances;

    /**
     * Slips of some entries.
     *
     * @param formulas the formula in the row of a molar mass; empty for a row without one
     * @param entries all entries that may stand for each other
     */
    Slips(
            Function<Entry, String> formulas,
            List<Entry> entries,
            TareRegister register,
            EntryChecks checks,
            Substances substances) {
        this.formulas = formulas;
        this.entries = entries;
        this.register = register;
        this.checks = checks;
        this.substances = substances;
    }

    /**
     * Numbers that may have been meant, by slip.
     *
     * @param settling the number that would settle the balances best, in the unit of the field, if there is one
     */
    List<Hypothesis> of(Entry entry, OptionalDouble settling) {
        List<Hypothesis> all = new ArrayList<>();
        TypedNumber typed = new TypedNumber(entry.number());
        if (entry.sort() != Sort.MOLAR_MASS) {
            moved(entry, typed, all);
            swapped(entry, typed, all);
        }
        switch (entry.sort()) {
            case TARE -> tare(entry, typed, settling, all);
            case NET -> grossForNet(entry, typed, settling, all);
            case MOLAR_MASS -> molarMass(entry, typed, all);
            default -> {}
        }
        if (settling.isPresent()) {
            copiedFrom(entry)
                    .ifPresent(row -> untold(
                            all,
                            entry,
                            UsualSlip.NEIGHBOURING_ROW,
                            typed.with(settling.getAsDouble()),
                            entry.what() + ", the figure of line " + row.row() + " too"));
        }
        return byFigure(all);
    }

    /** Of slips that lead to one figure, the more usual one. */
    private static List<Hypothesis> byFigure(List<Hypothesis> all) {
        Map<Double, Hypothesis> kept = new LinkedHashMap<>();
        for (Hypothesis one : all) {
            double figure = one.changes()
                    .numbers()
                    .get(0)
                    .field()
                    .entered()
                    .orElseThrow()
                    .value();
            kept.merge(figure, one, (a, b) -> b.slip().handicap() < a.slip().handicap() ? b : a);
        }
        return List.copyOf(kept.values());
    }

    private void swapped(Entry entry, TypedNumber typed, List<Hypothesis> all) {
        List<Figure> swapped = typed.swapped();
        swapped.forEach(s -> add(all, entry, UsualSlip.DIGITS_SWAPPED, s, swapped.size()));
        typed.zeroLost()
                .ifPresent(s -> add(all, entry, UsualSlip.DIGITS_SWAPPED, s, ZERO_IN_FRONT * (swapped.size() + 1)));
    }

    private void moved(Entry entry, TypedNumber typed, List<Hypothesis> all) {
        // a point slips by one place; further only by a unit or a percentage
        add(all, entry, UsualSlip.DECIMAL_POINT, typed.moved(-1), entry.sort() == Sort.PERCENT ? LOW_ASSAY : 2);
        add(all, entry, UsualSlip.DECIMAL_POINT, typed.moved(1), 2);
        // a purity is known to lie near 100 %; what a layer holds of a substance is often below 1 % and meant so
        if (entry.cell().heading().equals(EntryHeadings.ASSAY) && typed.value() <= MOST_AS_FRACTION) {
            add(all, entry, UsualSlip.DECIMAL_POINT, typed.moved(PERCENT_STEP), 2);
        }
        if (entry.sort().hasUnits()) {
            add(all, entry, UsualSlip.MILLIGRAMS_FOR_GRAMS, typed.moved(-UNIT_STEP), 2);
            add(all, entry, UsualSlip.MILLIGRAMS_FOR_GRAMS, typed.moved(UNIT_STEP), 2);
        }
    }

    /**
     * The register's tare where the one typed is that of another vessel, of the register or of the run; what settles the balances where the
     * register does not know the vessel and the one typed is another's to the last digit.
     */
    private void tare(Entry entry, TypedNumber typed, OptionalDouble settling, List<Hypothesis> all) {
        double tolerance = checks.toleranceGrams(entry.number());
        boolean ofAnother = register.isOfAnother(entry.vessel(), typed.value(), tolerance)
                || entries.stream()
                        .anyMatch(e -> e.sort() == Sort.TARE
                                && !e.vessel().equalsIgnoreCase(entry.vessel())
                                && Math.abs(e.number().value() - typed.value()) <= tolerance);
        Optional<Entered> own = register.latest(entry.vessel());
        if (ofAnother && own.isPresent()) {
            add(all, entry, UsualSlip.TARE_OF_ANOTHER_VESSEL, own.get().figure());
        }
        double lastDigit = Math.pow(10, -entry.number().decimals());
        if (own.isEmpty()
                && settling.isPresent()
                && register.isOfAnother(entry.vessel(), typed.value(), lastDigit / 2)) {
            untold(
                    all,
                    entry,
                    UsualSlip.TARE_OF_ANOTHER_VESSEL,
                    typed.with(settling.getAsDouble()),
                    entry.what() + ", the tare of another vessel in the register");
        }
    }

    /**
     * Less the register's tare of its vessel; of a vessel that the register does not have, less one of the usual size where what settles the
     * balances leaves that: which tare it was is not told then.
     */
    private void grossForNet(Entry entry, TypedNumber typed, OptionalDouble settling, List<Hypothesis> all) {
        Optional<Entered> own = register.latest(entry.vessel());
        own.ifPresent(t -> add(all, entry, UsualSlip.GROSS_FOR_NET, typed.with(typed.value() - t.value())));
        if (own.isEmpty()
                && settling.isPresent()
                && entry.cell().heading().equals(EntryHeadings.NET)
                && isUsualTare(typed.value() - settling.getAsDouble())) {
            untold(
                    all,
                    entry,
                    UsualSlip.GROSS_FOR_NET,
                    typed.with(settling.getAsDouble()),
                    entry.what() + ", with a vessel and without its tare");
        }
    }

    /** True for a mass no smaller than half the lightest and no larger than twice the heaviest tare of the run and the register. */
    private boolean isUsualTare(double grams) {
        DoubleSummaryStatistics tares = DoubleStream.concat(
                        entries.stream()
                                .filter(e -> e.sort() == Sort.TARE)
                                .mapToDouble(e -> e.number().value()),
                        register.all())
                .summaryStatistics();
        return tares.getCount() > 0 && grams >= tares.getMin() / 2 && grams <= 2 * tares.getMax();
    }

    private void molarMass(Entry entry, TypedNumber typed, List<Hypothesis> all) {
        OptionalDouble computed = checks.molarMass(formulas.apply(entry));
        if (computed.isEmpty()) {
            return;
        }
        boolean otherForm = substances
                .formDifference(typed.value() - computed.getAsDouble())
                .isPresent();
        if (otherForm) {
            add(all, entry, UsualSlip.SALT_FOR_BASE, typed.with(computed.getAsDouble()));
        } else {
            moved(entry, typed, all);
            swapped(entry, typed, all);
        }
    }

    /** The row above or below that has the same digits in the same column, too many for chance, and is not about the same thing. */
    private Optional<RowPlace> copiedFrom(Entry entry) {
        String digits = entry.number().asTyped();
        long significant = digits.chars().filter(Character::isDigit).count();
        return entries.stream()
                .filter(e -> significant >= DIGITS_OF_A_COPY
                        && entry.isNeighbourOf(e)
                        && !e.what().equals(entry.what())
                        && e.number().asTyped().equals(digits))
                .findFirst()
                .map(Entry::row);
    }

    private void add(List<Hypothesis> all, Entry entry, UsualSlip slip, Figure meant) {
        add(all, entry, slip, meant, 1);
    }

    /** A slip that tells the cell and not the figure that was meant: what settles the balances stands in no cell, and is not shown. */
    private void untold(List<Hypothesis> all, Entry entry, UsualSlip slip, Figure meant, String what) {
        List<Hypothesis> one = new ArrayList<>();
        add(one, entry, slip, meant, slip == UsualSlip.GROSS_FOR_NET ? ANY_TARE : 1);
        one.forEach(h -> all.add(
                new Hypothesis(h.changes(), h.slip(), h.places(), h.row(), what, h.typed(), "", h.alternatives())));
    }

    private void add(List<Hypothesis> all, Entry entry, UsualSlip slip, Figure meant, double alternatives) {
        boolean isWeighed = entry.sort() != Sort.GROSS
                || tareOf(entry).filter(t -> meant.value() <= t).isEmpty();
        boolean isBelowGross = entry.sort() != Sort.TARE
                || grossOf(entry).filter(g -> meant.value() >= g).isEmpty();
        if (!entry.sort().allows(meant.value())
                || !isWeighed
                || !isBelowGross
                || Double.compare(meant.value(), entry.number().value()) == 0) {
            return;
        }
        List<workuptally.model.Place> places = new ArrayList<>();
        places.add(entry.cell().place());
        entries.stream()
                .filter(entry::isOneWeighingWith)
                .forEach(e -> places.add(e.cell().place()));
        all.add(new Hypothesis(
                Changes.of(List.of(change(entry, meant))),
                slip,
                places,
                entry.row(),
                entry.what(),
                entry.number().asTyped(),
                meant.asTyped(),
                alternatives * rarity(entry, meant.value())));
    }

    /**
     * How many times rarer the number meant is than the one typed: purities lie near 100 %, and the lower the fewer (common practice); of other figures nothing is known. Below 1 where what was typed is the rare one.
     */
    private static double rarity(Entry entry, double meant) {
        return entry.cell().heading().equals(EntryHeadings.ASSAY)
                ? Math.exp((entry.number().value() - meant) / USUAL_IMPURITY)
                : 1;
    }

    private Optional<Double> tareOf(Entry gross) {
        return inWeighing(gross, Sort.TARE);
    }

    private Optional<Double> grossOf(Entry tare) {
        return inWeighing(tare, Sort.GROSS);
    }

    private Optional<Double> inWeighing(Entry entry, Sort sort) {
        return entries.stream()
                .filter(e -> e.sort() == sort && entry.isOneWeighingWith(e))
                .map(e -> e.number().value())
                .findFirst();
    }

    static Changes.Number change(Entry entry, Figure meant) {
        return new Changes.Number(
                entry.cell(), new Entered(meant, entry.row(), entry.number().heading()));
    }

    /** The entry with its number so much larger. */
    static Changes nudged(Entry entry, double by) {
        Figure figure = entry.number().figure();
        Field nudged = new Entered(
                new Figure(
                        figure.value() + by,
                        figure.qualifier(),
                        figure.decimals(),
                        figure.asTyped(),
                        figure.digitsKnown(),
                        figure.halfWidth()),
                entry.row(),
                entry.number().heading());
        return Changes.of(List.of(new Changes.Number(entry.cell(), nudged)));
    }
}
