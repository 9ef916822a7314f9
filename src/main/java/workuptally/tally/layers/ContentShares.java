package workuptally.tally.layers;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Skeletons;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.Theory.ProductTheory;

/**
 * Contents as a percentage: of theory for wanted products, of the partner charged for other substances. Readings of a wanted product that do
 * not agree, but all of which lie far below what a layer may hold, are no dispute: the larger counts, and no decision hangs on which is right.
 */
public final class ContentShares {
    private final Optional<Theory> theory;
    private final Skeletons skeletons;
    private final double apartAtMostPercent;

    /**
     * For a run.
     *
     * @param apartAtMostPercent bound of the largest reading up to which readings may differ, % of theory
     */
    public ContentShares(Optional<Theory> theory, Skeletons skeletons, double apartAtMostPercent) {
        this.theory = theory;
        this.skeletons = skeletons;
        this.apartAtMostPercent = apartAtMostPercent;
    }

    /** The same contents with their shares. */
    public List<Content> of(List<Content> contents) {
        return contents.stream().map(this::withShare).toList();
    }

    private Content withShare(Content content) {
        return new Content(
                content.substance(),
                content.kind(),
                content.massGrams(),
                content.amountMillimoles(),
                content.upperBoundGrams(),
                share(content),
                content.evidence(),
                isOfNoBearing(content) ? Content.Rests.READINGS_APART : content.rests());
    }

    private boolean isOfNoBearing(Content content) {
        return content.rests() == Content.Rests.DISPUTED_READINGS
                && content.upperBoundGrams().isPresent()
                && theoryOf(content)
                        .filter(t -> 100 * content.upperBoundGrams().getAsDouble()
                                <= apartAtMostPercent * t.massGrams().value())
                        .isPresent();
    }

    private Optional<ProductTheory> theoryOf(Content content) {
        return theory.flatMap(t -> t.products().stream()
                .filter(p -> p.product().wanted() && p.isOf(content.substance()))
                .findFirst());
    }

    private OptionalDouble share(Content content) {
        Optional<ProductTheory> product = theory.flatMap(t ->
                t.products().stream().filter(p -> p.isOf(content.substance())).findFirst());
        if (product.isPresent() && content.massGrams().isPresent()) {
            return OptionalDouble.of(100
                    * content.massGrams().get().value()
                    / product.get().massGrams().value());
        }
        for (String partner : skeletons.partners()) {
            double units = skeletons.units(content.substance(), partner);
            Optional<MeasuredValue> charged = skeletons.chargedMillimoles(partner);
            if (units > 0
                    && charged.filter(c -> c.value() > 0).isPresent()
                    && content.amountMillimoles().isPresent()) {
                return OptionalDouble.of(100
                        * units
                        * content.amountMillimoles().get().value()
                        / charged.get().value());
            }
        }
        return OptionalDouble.empty();
    }
}
