package workuptally.judgement.layers;

import java.util.ArrayList;
import java.util.List;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Product;
import workuptally.tally.LayerTally;

/**
 * R8: no second wanted component. Met where every other wanted product was looked for in this layer or found in another portion of the run;
 * where one was found nowhere, somebody must say whether it is wanted from here.
 */
final class NoOtherWanted implements LayerCondition {
    private static final String ID = "R8";
    private static final String TITLE = "no second wanted component";

    @Override
    public Condition judge(LayerEvidence evidence) {
        List<String> elsewhere = new ArrayList<>();
        for (Product product : evidence.run().run().products()) {
            if (!product.wanted() || isLookedForIn(evidence.layer(), product)) {
                continue;
            }
            boolean found = evidence.run().layers().stream().anyMatch(l -> isLookedForIn(l, product))
                    || evidence.run().lots().stream()
                            .anyMatch(l -> l.lot().product().equalsIgnoreCase(product.name())
                                    && l.pureGrams().isPresent());
            if (!found) {
                return new Condition(
                        ID, TITLE, State.MISSING, "ask whether " + product.name() + " is wanted from this layer");
            }
            elsewhere.add(product.name());
        }
        List<String> noted = evidence.layer().contents().stream()
                .filter(c -> evidence.run()
                        .run()
                        .product(c.substance())
                        .filter(p -> !p.wanted())
                        .isPresent())
                .filter(c -> c.massGrams().isPresent())
                .map(c -> c.substance() + " (" + c.evidence() + ")")
                .toList();
        String text = elsewhere.isEmpty() ? "none named" : String.join(", ", elsewhere) + " found in other portions";
        return new Condition(
                ID, TITLE, State.MET, noted.isEmpty() ? text : text + "; also holds " + String.join(", ", noted));
    }

    private static boolean isLookedForIn(LayerTally layer, Product product) {
        return layer.contents().stream()
                .anyMatch(c -> c.substance().equalsIgnoreCase(product.name())
                        && c.upperBoundGrams().isPresent());
    }
}
