package workuptally.tally.suspects;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import workuptally.model.Amount;
import workuptally.model.Assay;
import workuptally.model.Charge;
import workuptally.model.Dimension;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.Product;
import workuptally.model.RowPlace;
import workuptally.model.Run;
import workuptally.model.Step;

/**
 * A run with some of its cells read otherwise.
 *
 * @param numbers cells with the number to read instead
 * @param dimension charge whose actual amount is read in another unit, if one is
 * @param swapped labels of two layers that change their names and phases, or none
 * @param leftOut label of a layer that is not counted, if one is
 * @param leftOutLot label of a lot that is not counted, if one is
 * @param leftOutCharge row of a charge that is not counted, if one is
 * @param formula product whose formula is read otherwise, if one is
 */
record Changes(
        List<Number> numbers,
        Optional<Unit> dimension,
        List<String> swapped,
        Optional<String> leftOut,
        Optional<String> leftOutLot,
        Optional<RowPlace> leftOutCharge,
        Optional<ProductFormula> formula) {
    /** Everything as typed. */
    static final Changes NONE = of(List.of());

    /**
     * A cell read otherwise.
     *
     * @param cell the cell
     * @param field what is read instead
     */
    record Number(BookCell cell, Field field) {}

    /**
     * An actual amount in another unit.
     *
     * @param row row of the charge
     * @param dimension the unit it is read in
     */
    record Unit(RowPlace row, Dimension dimension) {}

    /**
     * A product with another formula.
     *
     * @param row row of the product
     * @param formula what is read instead
     */
    record ProductFormula(RowPlace row, String formula) {}

    private Changes(List<Number> numbers, Optional<Unit> dimension, List<String> swapped) {
        this(numbers, dimension, swapped, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    static Changes of(List<Number> numbers) {
        return new Changes(numbers, Optional.empty(), List.of());
    }

    static Changes ofUnit(RowPlace row, Dimension dimension) {
        return new Changes(List.of(), Optional.of(new Unit(row, dimension)), List.of());
    }

    static Changes ofLabels(String one, String other) {
        return new Changes(List.of(), Optional.empty(), List.of(one, other));
    }

    static Changes without(String layer) {
        return without(Optional.of(layer), Optional.empty(), Optional.empty());
    }

    static Changes withoutLot(String lot) {
        return without(Optional.empty(), Optional.of(lot), Optional.empty());
    }

    static Changes withoutCharge(RowPlace charge) {
        return without(Optional.empty(), Optional.empty(), Optional.of(charge));
    }

    private static Changes without(Optional<String> layer, Optional<String> lot, Optional<RowPlace> charge) {
        return new Changes(List.of(), Optional.empty(), List.of(), layer, lot, charge, Optional.empty());
    }

    /** A product in another form: its formula, and its molar mass where one was typed. */
    static Changes ofForm(RowPlace product, String formula, List<Number> molarMass) {
        return new Changes(
                molarMass,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new ProductFormula(product, formula)));
    }

    /** The run as it would read. */
    Run in(Run run) {
        return new Run(
                run.head(),
                each(run.products(), this::product),
                each(run.charges(), this::charge).stream()
                        .filter(c -> leftOutCharge.filter(row -> row == c.row()).isEmpty())
                        .toList(),
                each(run.steps(), this::step),
                each(run.layers(), this::layer).stream()
                        .filter(l -> leftOut.filter(l.label()::equals).isEmpty())
                        .toList(),
                each(run.assays(), this::assay).stream()
                        .filter(a -> leftOut.filter(a.sample()::equals).isEmpty())
                        .filter(a -> leftOutLot.filter(a.sample()::equals).isEmpty())
                        .toList(),
                run.nmrAssays(),
                each(run.lots(), this::lot).stream()
                        .filter(l -> leftOutLot.filter(l.label()::equals).isEmpty())
                        .toList(),
                run.leftOut());
    }

    private static <T> List<T> each(List<T> all, UnaryOperator<T> change) {
        return all.stream().map(change).toList();
    }

    /** What is read in a cell of several numbers instead of one of them, if something is. */
    Optional<Entered> in(BookCell part) {
        return numbers.stream()
                .filter(n -> n.cell().is(part.row(), part.heading(), part.part()))
                .findFirst()
                .flatMap(n -> n.field().entered());
    }

    /** What is read in a cell. */
    Field at(RowPlace row, String heading, Field typed) {
        for (Number number : numbers) {
            if (number.cell().is(row, heading)) {
                return number.field();
            }
        }
        return typed;
    }

    private boolean concerns(RowPlace row) {
        for (Number number : numbers) {
            if (number.cell().isIn(row)) {
                return true;
            }
        }
        return false;
    }

    private Product product(Product p) {
        boolean otherForm = formula.filter(f -> f.row() == p.row()).isPresent();
        return !otherForm && !concerns(p.row())
                ? p
                : new Product(
                        p.name(),
                        p.wanted(),
                        otherForm ? formula.orElseThrow().formula() : p.formula(),
                        at(p.row(), EntryHeadings.MOLAR_MASS, p.molarMassGramsPerMole()),
                        p.coefficient(),
                        p.skeleton(),
                        p.plannedYieldPercent(),
                        p.partitioning(),
                        p.boilingPointCelsius(),
                        p.formOf(),
                        p.row());
    }

    private Charge charge(Charge c) {
        boolean otherUnit = dimension.filter(u -> u.row() == c.row()).isPresent();
        return !otherUnit && !concerns(c.row())
                ? c
                : new Charge(
                        c.material(),
                        c.role(),
                        c.formula(),
                        at(c.row(), EntryHeadings.MOLAR_MASS, c.molarMassGramsPerMole()),
                        c.coefficient(),
                        new Charge.Quantity(
                                c.quantity().planned(),
                                c.quantity().actual().map(a -> amount(c, a, otherUnit)),
                                c.quantity().statedMillimoles(),
                                c.quantity().statedEquivalents()),
                        goods(c.goods(), c.row()),
                        c.reading(),
                        c.row());
    }

    private Charge.Goods goods(Charge.Goods g, RowPlace row) {
        return new Charge.Goods(
                at(row, EntryHeadings.ASSAY, g.assayPercent()),
                g.assayUncertaintyPercent(),
                at(row, EntryHeadings.MOLARITY, g.molarityMolesPerLitre()),
                at(row, EntryHeadings.TITRE, g.titreMolesPerLitre()),
                g.titreUncertaintyPercent(),
                g.titreDate(),
                at(row, EntryHeadings.DENSITY, g.densityGramsPerMillilitre()),
                g.supplierLot());
    }

    private Amount amount(Charge charge, Amount typed, boolean otherUnit) {
        return new Amount(
                at(charge.row(), EntryHeadings.ACTUAL_AMOUNT, typed.value()),
                otherUnit ? dimension.orElseThrow().dimension() : typed.dimension(),
                typed.unitAsTyped());
    }

    private Step step(Step s) {
        return swapped.isEmpty() && !concerns(s.row())
                ? s
                : new Step(
                        s.number(),
                        s.operation(),
                        s.from(),
                        added(s.added(), s.row()),
                        s.funnel(),
                        s.temperatureCelsius(),
                        s.pHAfter(),
                        s.quenchTest(),
                        new Step.Given(
                                named(s.given().organic()),
                                named(s.given().aqueous()),
                                s.given().other()),
                        s.notes(),
                        s.row());
    }

    private Step.Addition added(Step.Addition added, RowPlace row) {
        return new Step.Addition(
                added.material(),
                added.portions(),
                at(row, EntryHeadings.VOLUME, added.volumeMillilitres()),
                at(row, EntryHeadings.MASS, added.massGrams()),
                added.molarityMolesPerLitre(),
                at(row, EntryHeadings.DENSITY, added.densityGramsPerMillilitre()));
    }

    private List<String> named(List<String> labels) {
        return labels.stream().map(this::other).toList();
    }

    private String other(String label) {
        return !swapped.contains(label) ? label : swapped.get(0).equals(label) ? swapped.get(1) : swapped.get(0);
    }

    private Layer layer(Layer l) {
        boolean otherPhase = swapped.contains(l.label());
        return !otherPhase && !concerns(l.row())
                ? l
                : new Layer(
                        l.label(),
                        otherPhase ? l.phase().map(Changes::opposite) : l.phase(),
                        l.position(),
                        l.vessel(),
                        at(l.row(), EntryHeadings.VOLUME, l.volumeMillilitres()),
                        l.volumeUncertaintyMillilitres(),
                        weighing(l.weighing(), l.row()),
                        l.temperatureCelsius(),
                        l.pH(),
                        l.composition(),
                        l.custody(),
                        l.notes(),
                        l.row());
    }

    private Layer.Weighing weighing(Layer.Weighing w, RowPlace row) {
        return new Layer.Weighing(
                at(row, EntryHeadings.GROSS, w.grossGrams()),
                at(row, EntryHeadings.TARE, w.tareGrams()),
                at(row, EntryHeadings.NET, w.netGrams()),
                w.balance());
    }

    private static Layer.Phase opposite(Layer.Phase phase) {
        return phase == Layer.Phase.ORGANIC
                ? Layer.Phase.AQUEOUS
                : phase == Layer.Phase.AQUEOUS ? Layer.Phase.ORGANIC : phase;
    }

    private Assay assay(Assay a) {
        return !concerns(a.row())
                ? a
                : new Assay(
                        a.sample(),
                        a.substance(),
                        a.formula(),
                        a.method(),
                        at(a.row(), EntryHeadings.RESULT, a.result()),
                        a.unit(),
                        a.relativeStandardUncertaintyPercent(),
                        a.calibration(),
                        a.replicates(),
                        a.aliquotMillilitres(),
                        a.residueMilligrams(),
                        a.notes(),
                        a.row());
    }

    private Lot.Weighing weighing(Lot.Weighing w, RowPlace row) {
        return new Lot.Weighing(
                at(row, EntryHeadings.GROSS, w.grossGrams()),
                at(row, EntryHeadings.TARE, w.tareGrams()),
                at(row, EntryHeadings.NET, w.netGrams()),
                at(row, EntryHeadings.SECOND_WEIGHING, w.secondGrossGrams()));
    }

    private Lot lot(Lot l) {
        return !concerns(l.row())
                ? l
                : new Lot(
                        l.label(),
                        l.product(),
                        l.stage(),
                        l.from(),
                        l.vessel(),
                        weighing(l.weighing(), l.row()),
                        at(l.row(), EntryHeadings.ASSAY, l.assayPercent()),
                        l.relativeStandardUncertaintyPercent(),
                        l.identity(),
                        l.statedYieldPercent(),
                        l.notes(),
                        l.row());
    }
}
