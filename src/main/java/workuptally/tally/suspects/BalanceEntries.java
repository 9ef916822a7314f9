package workuptally.tally.suspects;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import workuptally.model.Assay;
import workuptally.model.Charge;
import workuptally.model.Dimension;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Qualifier;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.Product;
import workuptally.model.RowPlace;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Transfer;
import workuptally.tally.suspects.Entry.Sort;

/** The numbers of a run that its balances rest on, in order of the tables. */
final class BalanceEntries {
    private final List<Entry> list = new ArrayList<>();

    private BalanceEntries() {}

    static List<Entry> of(Run run) {
        BalanceEntries entries = new BalanceEntries();
        run.products().forEach(entries::product);
        run.charges().forEach(entries::charge);
        run.orderedSteps().forEach(entries::step);
        run.layers().forEach(entries::layer);
        run.assays().forEach(entries::assay);
        run.lots().forEach(entries::lot);
        return entries.list;
    }

    /** The amount of a transfer. */
    static List<Entry> of(Transfer transfer) {
        BalanceEntries entries = new BalanceEntries();
        entries.add(
                transfer.row(),
                EntryHeadings.AMOUNT,
                transfer.massGrams(),
                "amount of transfer " + transfer.id(),
                Sort.NET,
                "");
        return entries.list;
    }

    private void product(Product product) {
        add(
                product.row(),
                EntryHeadings.MOLAR_MASS,
                product.molarMassGramsPerMole(),
                "molar mass of " + product.name(),
                Sort.MOLAR_MASS,
                "");
    }

    private void charge(Charge charge) {
        String of = " of " + charge.material();
        charge.quantity()
                .actual()
                .filter(a -> a.dimension() != Dimension.EQUIVALENTS)
                .ifPresent(a -> add(
                        charge.row(),
                        EntryHeadings.ACTUAL_AMOUNT,
                        a.value(),
                        "amount" + of,
                        a.dimension() == Dimension.VOLUME ? Sort.LIQUID : Sort.AMOUNT,
                        ""));
        add(
                charge.row(),
                EntryHeadings.MOLAR_MASS,
                charge.molarMassGramsPerMole(),
                "molar mass" + of,
                Sort.MOLAR_MASS,
                "");
        add(charge.row(), EntryHeadings.ASSAY, charge.goods().assayPercent(), "assay" + of, Sort.PERCENT, "");
        add(
                charge.row(),
                EntryHeadings.MOLARITY,
                charge.goods().molarityMolesPerLitre(),
                "molarity" + of,
                Sort.STRENGTH,
                "");
        add(charge.row(), EntryHeadings.TITRE, charge.goods().titreMolesPerLitre(), "titre" + of, Sort.STRENGTH, "");
        add(
                charge.row(),
                EntryHeadings.DENSITY,
                charge.goods().densityGramsPerMillilitre(),
                "density" + of,
                Sort.DENSITY,
                "");
    }

    private void step(Step step) {
        String of = " of " + step.added().material() + " in step " + step.number();
        add(step.row(), EntryHeadings.VOLUME, step.added().volumeMillilitres(), "volume" + of, Sort.VOLUME, "");
        add(step.row(), EntryHeadings.MASS, step.added().massGrams(), "mass" + of, Sort.NET, "");
        add(
                step.row(),
                EntryHeadings.DENSITY,
                step.added().densityGramsPerMillilitre(),
                "density" + of,
                Sort.DENSITY,
                "");
    }

    private void layer(Layer layer) {
        String of = " of layer " + layer.label();
        add(layer.row(), EntryHeadings.VOLUME, layer.volumeMillilitres(), "volume" + of, Sort.VOLUME, layer.vessel());
        add(layer.row(), EntryHeadings.GROSS, layer.weighing().grossGrams(), "gross" + of, Sort.GROSS, layer.vessel());
        add(layer.row(), EntryHeadings.TARE, layer.weighing().tareGrams(), "tare" + of, Sort.TARE, layer.vessel());
        add(layer.row(), EntryHeadings.NET, layer.weighing().netGrams(), "net mass" + of, Sort.NET, layer.vessel());
    }

    private void assay(Assay assay) {
        add(
                assay.row(),
                EntryHeadings.RESULT,
                assay.result(),
                "assay of " + assay.substance() + " in " + assay.sample(),
                assay.unit().filter(u -> u == Assay.Unit.MASS_PERCENT).isPresent() ? Sort.PERCENT : Sort.RESULT,
                "");
    }

    private void lot(Lot lot) {
        String of = " of lot " + lot.label();
        add(lot.row(), EntryHeadings.GROSS, lot.weighing().grossGrams(), "gross" + of, Sort.GROSS, lot.vessel());
        add(lot.row(), EntryHeadings.TARE, lot.weighing().tareGrams(), "tare" + of, Sort.TARE, lot.vessel());
        add(lot.row(), EntryHeadings.NET, lot.weighing().netGrams(), "net mass" + of, Sort.NET, lot.vessel());
        add(lot.row(), EntryHeadings.ASSAY, lot.assayPercent(), "assay" + of, Sort.PERCENT, "");
        add(
                lot.row(),
                EntryHeadings.SECOND_WEIGHING,
                lot.weighing().secondGrossGrams(),
                "second weighing" + of,
                Sort.NET,
                "");
    }

    /** True where a cell of the run that balances rest on holds what nobody could read: they have a hole then that no other cell explains. */
    static boolean lacksReading(Run run) {
        return Stream.of(
                        run.charges().stream()
                                .flatMap(c -> Stream.of(
                                        c.quantity()
                                                .actual()
                                                .map(a -> a.value())
                                                .orElse(Field.NoNumber.BLANK),
                                        c.molarMassGramsPerMole(),
                                        c.goods().assayPercent(),
                                        c.goods().densityGramsPerMillilitre(),
                                        c.goods().molarityMolesPerLitre())),
                        run.steps().stream()
                                .flatMap(s -> Stream.of(
                                        s.added().volumeMillilitres(),
                                        s.added().massGrams(),
                                        s.added().densityGramsPerMillilitre(),
                                        s.added().portions())),
                        run.layers().stream()
                                .flatMap(l -> Stream.of(
                                        l.volumeMillilitres(),
                                        l.weighing().grossGrams(),
                                        l.weighing().tareGrams(),
                                        l.weighing().netGrams())),
                        run.assays().stream().map(Assay::result),
                        run.lots().stream()
                                .flatMap(l -> Stream.of(
                                        l.weighing().grossGrams(),
                                        l.weighing().tareGrams(),
                                        l.weighing().netGrams(),
                                        l.assayPercent())))
                .flatMap(fields -> fields)
                .anyMatch(Field::isUnreadable);
    }

    private void add(RowPlace row, String heading, Field field, String what, Sort sort, String vessel) {
        if (field instanceof Entered number
                && number.value() > 0
                && (number.qualifier() == Qualifier.EXACT || number.qualifier() == Qualifier.ABOUT)) {
            list.add(new Entry(new BookCell(row, heading), number, what, sort, vessel));
        }
    }
}
