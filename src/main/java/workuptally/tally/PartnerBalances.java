package workuptally.tally;

import java.util.List;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.Undecided;
import workuptally.tally.layers.LayerTally;

/**
 * The layers of a run with what conservation and partition leave in them at most, and the balance over each partner.
 *
 * @param bounded layers in order of the steps, with their bounds
 * @param undecided what nobody assayed
 * @param closures closure per skeleton
 */
record PartnerBalances(List<LayerTally> bounded, Undecided undecided, List<Closure> closures) {}
