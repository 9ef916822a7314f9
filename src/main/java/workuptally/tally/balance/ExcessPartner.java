package workuptally.tally.balance;

import java.util.List;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.model.Layer;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Skeletons;
import workuptally.tally.amounts.Theory;
import workuptally.tally.layers.LayerTally;

/**
 * A partner charged beyond what the theory of the wanted products uses up. What is left of it is in no product, so that its balance says
 * nothing of a loss before the partner itself was looked for.
 *
 * @param name the partner, as named in Charges
 * @param percent part of the charge beyond theory, %, above 0
 * @param lookedFor true where an assay of a layer or lot names it
 * @param ask layers and lots to assay for it, water layers first
 */
record ExcessPartner(String name, double percent, boolean lookedFor, List<String> ask) {
    private static final int MOST_ASKED = 4;

    ExcessPartner {
        ask = List.copyOf(ask);
    }

    /** What is known of a partner's excess; empty for one that limits the theory or is used up by it. */
    static Optional<ExcessPartner> of(
            String partner,
            MeasuredValue chargedMillimoles,
            Theory theory,
            Skeletons skeletons,
            Found found,
            List<LayerTally> layers) {
        boolean limits = theory.limiting().stream().anyMatch(l -> l.isOf(partner));
        double used = theory.products().stream()
                .filter(p -> p.product().wanted())
                .mapToDouble(p -> p.amountMillimoles().value()
                        * skeletons.units(p.product().name(), partner))
                .sum();
        double percent = 100 * (1 - used / chargedMillimoles.value());
        if (limits || percent <= 0) {
            return Optional.empty();
        }
        boolean lookedFor = found.terms().stream()
                .map(Found.Term::content)
                .anyMatch(c -> c.kind() != Content.Kind.UNKNOWN && c.isOf(partner));
        return Optional.of(new ExcessPartner(partner, percent, lookedFor, ask(layers)));
    }

    private static List<String> ask(List<LayerTally> layers) {
        List<String> water = labels(layers, Layer.Phase.AQUEOUS);
        return water.isEmpty() ? labels(layers, Layer.Phase.ORGANIC) : water;
    }

    private static List<String> labels(List<LayerTally> layers, Layer.Phase phase) {
        return layers.stream()
                .filter(l -> l.terminal()
                        && l.endsWorkup()
                        && !l.aliquot()
                        && l.phase().filter(p -> p == phase).isPresent())
                .map(LayerTally::label)
                .limit(MOST_ASKED)
                .toList();
    }
}
