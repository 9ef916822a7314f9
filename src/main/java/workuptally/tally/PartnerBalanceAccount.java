package workuptally.tally;

import java.util.List;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.tally.amounts.MolarMassAccount;
import workuptally.tally.amounts.Omissions;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.ClosureAccount;
import workuptally.tally.balance.ContentBounds;
import workuptally.tally.balance.Experience;
import workuptally.tally.balance.Portions;
import workuptally.tally.balance.ProductWhereabouts;
import workuptally.tally.balance.Undecided;
import workuptally.tally.balance.Whereabouts;
import workuptally.tally.bench.ContactMixture;
import workuptally.tally.bench.PredictedContents;
import workuptally.tally.layers.DryingCake;
import workuptally.tally.layers.LayerFlow;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.LayerTally;

/** Balances what was charged of each partner against what layers and lots hold, and bounds what nobody assayed. */
final class PartnerBalanceAccount {
    private final Run run;
    private final Limits limits;
    private final Substances substances;
    private final LayerGraph graph;
    private final Experience experience;
    private final MolarMassAccount molarMasses;
    private final Omissions omissions;

    PartnerBalanceAccount(
            Run run,
            Limits limits,
            Substances substances,
            LayerGraph graph,
            Experience experience,
            MolarMassAccount molarMasses,
            Omissions omissions) {
        this.run = run;
        this.limits = limits;
        this.substances = substances;
        this.graph = graph;
        this.experience = experience;
        this.molarMasses = molarMasses;
        this.omissions = omissions;
    }

    /**
     * The balances, once it is known which phase each layer is.
     *
     * @param contacts what stood in the funnel at each contact
     */
    PartnerBalances of(
            Charged charged, Portions portions, List<DryingCake> cakes, LayerFlow flow, List<ContactMixture> contacts) {
        ContentBounds bounds = new ContentBounds(
                run,
                charged.theory(),
                portions.layers(),
                portions.lots(),
                portions.purified(),
                portions.found(),
                experience);
        Undecided undecided =
                new Undecided(run, graph, portions.layers(), portions.lots(), bounds, flow.unlabelledPhases());
        List<LayerTally> bounded = new PredictedContents(run, limits, substances, graph, charged.theory())
                .beside(bounds.applied(), contacts);
        Whereabouts whereabouts = new ProductWhereabouts(
                run,
                substances,
                portions.withLayers(bounded),
                cakes,
                flow.unlabelledPhases(),
                charged.theory(),
                molarMasses);
        List<Closure> closures = new ClosureAccount(
                        run, limits, charged.skeletons(), molarMasses, charged.theory(), omissions)
                .of(portions, undecided, whereabouts);
        return new PartnerBalances(bounded, undecided, closures);
    }
}
