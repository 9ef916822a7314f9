package workuptally.tally.amounts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;

/** What a lot holds: its products, and every other substance with an assay row. */
public final class LotContents {
    private final ContentsAccount contents;
    private final MolarMassAccount molarMasses;

    public LotContents(ContentsAccount contents, MolarMassAccount molarMasses) {
        this.contents = contents;
        this.molarMasses = molarMasses;
    }

    /** The contents of every lot by its label, in order of the table. */
    public Map<String, List<Content>> of(List<LotTally> lots) {
        Map<String, List<LotTally>> rows = new LinkedHashMap<>();
        lots.forEach(l -> rows.computeIfAbsent(l.lot().label(), label -> new ArrayList<>())
                .add(l));
        Map<String, List<Content>> inLots = new LinkedHashMap<>();
        rows.forEach((label, products) -> inLots.put(label, ofOne(products)));
        return inLots;
    }

    /** Of one lot by its rows, one for each product; mole ratios are to the product of the first. */
    private List<Content> ofOne(List<LotTally> products) {
        List<Content> found = new ArrayList<>();
        products.forEach(lot -> lot.pureGrams()
                .ifPresent(pure -> found.add(new Content(
                        lot.product(),
                        lot.basis().isUpperBound() ? Content.Kind.BOUND : Content.Kind.MEASURED,
                        Optional.of(pure),
                        productMillimoles(lot),
                        OptionalDouble.of(pure.oneSidedUpperBound()),
                        OptionalDouble.empty(),
                        lot.basis().word()))));
        LotTally first = products.get(0);
        contents.of(first.lot().label(), first.netGrams(), Optional.empty(), productMillimoles(first)).stream()
                .filter(c -> products.stream().noneMatch(l -> l.isOf(c.substance())))
                .forEach(found::add);
        return found;
    }

    private Optional<MeasuredValue> productMillimoles(LotTally lot) {
        OptionalDouble molarMass = molarMasses.of(lot.product());
        return lot.pureGrams().filter(p -> molarMass.isPresent()).map(p -> p.over(molarMass.getAsDouble() / 1000));
    }
}
