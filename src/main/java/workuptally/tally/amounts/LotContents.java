package workuptally.tally.amounts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;

/** What a lot holds: its product, and every other substance with an assay row. */
public final class LotContents {
    private final Contents contents;
    private final MolarMasses molarMasses;

    public LotContents(Contents contents, MolarMasses molarMasses) {
        this.contents = contents;
        this.molarMasses = molarMasses;
    }

    public List<Content> of(LotTally lot) {
        List<Content> found = new ArrayList<>();
        String product = lot.lot().product();
        OptionalDouble molarMass = molarMasses.of(product);
        Optional<MeasuredValue> productMillimoles =
                lot.pureGrams().filter(p -> molarMass.isPresent()).map(p -> p.over(molarMass.getAsDouble() / 1000));
        lot.pureGrams()
                .ifPresent(pure -> found.add(new Content(
                        product,
                        lot.basis().isUpperBound() ? Content.Kind.BOUND : Content.Kind.MEASURED,
                        Optional.of(pure),
                        productMillimoles,
                        OptionalDouble.of(pure.oneSidedUpperBound()),
                        OptionalDouble.empty(),
                        lot.basis().word())));
        contents.of(lot.lot().label(), lot.netGrams(), Optional.empty(), productMillimoles).stream()
                .filter(c -> !c.substance().equalsIgnoreCase(product))
                .forEach(found::add);
        return found;
    }
}
