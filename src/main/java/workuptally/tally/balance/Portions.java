package workuptally.tally.balance;

import java.util.List;
import java.util.Map;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.layers.LayerTally;

/**
 * What was weighed and assayed of one run.
 *
 * @param lots lots, in order of the table
 * @param purified which lots stand for an earlier one
 * @param inLots contents of each lot by its label
 * @param layers layers in order of the steps
 * @param composites composite samples of them
 * @param found contents found in lots and terminal layers
 * @param yields yields, workup first
 */
public record Portions(
        List<LotTally> lots,
        PurifiedLots purified,
        Map<String, List<Content>> inLots,
        List<LayerTally> layers,
        CompositeSamples composites,
        Found found,
        List<ProductYield> yields) {
    /** The same with other readings of the layers. */
    public Portions withLayers(List<LayerTally> others) {
        return new Portions(lots, purified, inLots, others, composites, found, yields);
    }
}
