package workuptally.judgement.rules.balance;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import workuptally.model.Assay;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Qualifier;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Lot;
import workuptally.model.Place;
import workuptally.model.Run;
import workuptally.model.SubstanceName;

/**
 * What one substance is of a lot or sample by its assay, as the form that counts. Of several rows the smallest figure stands: what is
 * concluded of a sum holds then whichever of them is right, and in whatever order they stand.
 *
 * @param substance the substance
 * @param percent mass per cent
 * @param standardUncertaintyPercent its standard uncertainty, in the same unit
 * @param place the entry
 */
record AssayedShare(String substance, double percent, double standardUncertaintyPercent, Place place) {

    /** By label and substance: the assay of a lot in Isolated, without one the rows of Assays. */
    static Map<String, List<AssayedShare>> bySample(Run run, Limits limits) {
        Map<String, Map<String, AssayedShare>> typed = new LinkedHashMap<>();
        for (Lot lot : run.lots()) {
            put(
                    typed,
                    run,
                    limits,
                    lot.label(),
                    lot.product(),
                    lot.assayPercent(),
                    lot.relativeStandardUncertaintyPercent());
        }
        Map<String, Map<String, AssayedShare>> shares = new LinkedHashMap<>();
        typed.forEach((label, of) -> shares.put(label, new LinkedHashMap<>(of)));
        for (Assay assay : run.assays()) {
            boolean isTyped = typed.getOrDefault(assay.sample(), Map.of())
                    .containsKey(SubstanceName.key(run.countsAs(assay.substance())));
            if (!isTyped
                    && assay.unit().filter(u -> u == Assay.Unit.MASS_PERCENT).isPresent()) {
                put(
                        shares,
                        run,
                        limits,
                        assay.sample(),
                        assay.substance(),
                        assay.result(),
                        assay.relativeStandardUncertaintyPercent());
            }
        }
        Map<String, List<AssayedShare>> bySample = new LinkedHashMap<>();
        shares.forEach((label, of) -> bySample.put(label, List.copyOf(of.values())));
        return bySample;
    }

    private static void put(
            Map<String, Map<String, AssayedShare>> shares,
            Run run,
            Limits limits,
            String label,
            String name,
            Field result,
            Field relativePercent) {
        String substance = run.countsAs(name);
        result.entered().filter(AssayedShare::isNumber).ifPresent(percent -> {
            double relative = relativePercent.entered().map(Entered::value).orElse(limits.value(Limit.ASSAY_OTHER));
            AssayedShare share =
                    new AssayedShare(substance, percent.value(), percent.value() * relative / 100, percent.place());
            shares.computeIfAbsent(label, l -> new LinkedHashMap<>())
                    .merge(SubstanceName.key(substance), share, (a, b) -> b.percent() < a.percent() ? b : a);
        });
    }

    private static boolean isNumber(Entered entered) {
        return entered.qualifier() == Qualifier.EXACT || entered.qualifier() == Qualifier.ABOUT;
    }
}
