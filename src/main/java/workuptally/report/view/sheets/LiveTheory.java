package workuptally.report.view.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import workuptally.judgement.RunReview;
import workuptally.model.Field;
import workuptally.model.SubstanceName;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.RowIndex;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Theory;

/** Theories as expressions over the table of amounts: the least that any partner allows. */
final class LiveTheory {
    private final RowIndex amounts;

    /**
     * Over a table of amounts.
     *
     * @param amounts its rows
     */
    LiveTheory(RowIndex amounts) {
        this.amounts = amounts;
    }

    /** Theoretical amount of a product, mmol. */
    Optional<Live> millimoles(RunReview run, Theory.ProductTheory product) {
        double extent =
                run.tally().theory().map(t -> t.extentMillimoles().value()).orElse(0.0);
        return extent == 0
                ? component(run, product)
                : least(run, false).map(n -> share(product.amountMillimoles().value() / extent, n));
    }

    /** The same with the molar masses as typed, mmol. */
    Optional<Live> millimolesAsTyped(RunReview run, Theory.ProductTheory product) {
        double extent =
                run.tally().theory().map(t -> t.extentMillimoles().value()).orElse(0.0);
        return extent == 0
                ? Optional.empty()
                : least(run, true).map(n -> share(product.amountMillimoles().value() / extent, n));
    }

    private static Live share(double share, Live extent) {
        return Live.agree(share, 1) ? extent : Live.times(new Live.Fixed(share), extent);
    }

    /** The least n/ν over the partners; portions of one material in several rows are one partner. */
    private Optional<Live> least(RunReview run, boolean asTyped) {
        Map<String, List<Live>> partners = new LinkedHashMap<>();
        List<ChargeAmount> charges = run.tally().amounts();
        for (int i = 0; i < charges.size(); i++) {
            ChargeAmount charge = charges.get(i);
            if (charge.charge()
                    .coefficient()
                    .entered()
                    .map(Field.Entered::value)
                    .isEmpty()) {
                continue;
            }
            OptionalInt row = amounts.of(run, charge.charge().material(), Integer.toString(i));
            if (row.isEmpty() || charge.amountMillimoles().isEmpty()) {
                return Optional.empty();
            }
            String column =
                    asTyped && charge.asTypedMillimoles().isPresent() ? AmountsSection.AS_TYPED : AmountsSection.AMOUNT;
            partners.computeIfAbsent(charge.charge().material().toLowerCase(Locale.ROOT), m -> new ArrayList<>())
                    .add(Live.over(
                            new Live.InTable(AmountsSection.TITLE, row.getAsInt(), column),
                            new Live.InTable(AmountsSection.TITLE, row.getAsInt(), AmountsSection.COEFFICIENT)));
        }
        return partners.isEmpty()
                ? Optional.empty()
                : Optional.of(new Live.Least(
                        partners.values().stream().map(LiveTheory::together).toList()));
    }

    private static Live together(List<Live> portions) {
        return portions.size() == 1 ? portions.get(0) : Live.sum(portions);
    }

    /** Theory in a separation: the component charged. */
    private Optional<Live> component(RunReview run, Theory.ProductTheory product) {
        List<Live> portions = new ArrayList<>();
        List<ChargeAmount> charges = run.tally().amounts();
        for (int i = 0; i < charges.size(); i++) {
            String material = charges.get(i).charge().material();
            OptionalInt row = amounts.of(run, material, Integer.toString(i));
            if (SubstanceName.same(material, product.product().name()) && row.isPresent()) {
                portions.add(new Live.InTable(AmountsSection.TITLE, row.getAsInt(), AmountsSection.AMOUNT));
            }
        }
        return portions.isEmpty() ? Optional.empty() : Optional.of(together(portions));
    }
}
