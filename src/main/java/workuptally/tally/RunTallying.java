package workuptally.tally;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.measure.Readings;
import workuptally.model.Limits;
import workuptally.model.Run;

/** Puts the accounts of one run in order: amounts and theory, lots and layers, then what is made from them. */
public final class RunTallying {
    private final Limits limits;
    private final Substances substances;

    /** With the settings and reference data in force. */
    public RunTallying(Limits limits, Substances substances) {
        this.limits = limits;
        this.substances = substances;
    }

    /** All results of a run. */
    public RunTally tally(Run run) {
        Readings readings = new Readings();
        Omissions omissions = new Omissions();
        MolarMasses molarMasses = new MolarMasses(run, substances);
        Calibrations calibrations = new Calibrations(readings, new InstrumentUncertainty(limits));
        LayerGraph graph = LayerGraph.of(run);
        List<ChargeAmount> amounts = new Amounts(readings, limits, molarMasses, substances, omissions).of(run);
        Optional<Theory> theory = new TheoryAccount(readings, molarMasses, omissions).of(run, amounts);
        Skeletons skeletons = new Skeletons(run, amounts);
        Contents contents = new Contents(run, readings, limits, calibrations, molarMasses, omissions);
        ContentShares shares = new ContentShares(theory, skeletons);
        List<LotTally> lots =
                new LotAccount(run, readings, limits, calibrations, molarMasses, graph, omissions).of(theory);
        List<LayerTally> layers = new LayerAccount(run, readings, limits, graph, contents, shares, omissions).of();
        Map<String, List<Content>> inLots = new LinkedHashMap<>();
        LotContents lotContents = new LotContents(contents, molarMasses);
        lots.forEach(l -> inLots.put(l.lot().label(), lotContents.of(l)));
        Found found = Found.in(layers, lots, inLots);
        List<ProductYield> yields = new YieldAccount(run, readings, graph, theory, found, omissions).of(lots);
        List<Addition> additions = new Additions(run, readings, limits, graph, substances).list();
        LayerFlow flow = LayerFlow.of(run, substances, amounts, additions, layers);
        List<LayerIdentity> identities = new IdentityAccount(run, flow).of(layers, amounts);
        ContentBounds bounds = new ContentBounds(run, theory, layers, lots, found);
        Undecided undecided = new Undecided(run, graph, layers, lots, bounds);
        List<LayerTally> bounded = bounds.applied();
        Whereabouts whereabouts =
                new ProductWhereabouts(run, substances, bounded, lots, additions, flow, theory, found);
        List<Closure> closures = new ClosureAccount(run, limits, skeletons, molarMasses, omissions)
                .of(found, lots, undecided.labels(), whereabouts);
        List<StepReaction> reactions = new StepReactions(
                        run, limits, substances, new AcidsAndBases(run, substances), amounts, additions, layers, theory)
                .list();
        Optional<MassBalance> massBalance = new MassAccount(run, readings, limits, substances, omissions)
                .of(amounts, additions, layers, lots, StepReaction.gasGrams(reactions));
        List<Contact> contacts = new ContactAccount(run, limits, substances).of(flow, reactions);
        flow.correct(identities);
        Optional<Metrics> metrics = new MetricsAccount(run, readings, substances, omissions)
                .of(massBalance, theory, yields, amounts, additions, layers, flow);
        RunTally tally = new RunTally(
                run,
                amounts,
                theory,
                lots,
                yields,
                bounded,
                closures,
                massBalance,
                contacts,
                new SolventAccount(run, substances).of(amounts, additions, layers, lots, inLots, flow),
                new WasteAccount(run, limits, substances).of(layers, flow, identities),
                new WorkupEvidence(
                        identities,
                        reactions,
                        new RouteAccount(run, limits, graph, substances, molarMasses, amounts, additions, layers, found)
                                .list(),
                        new ReextractionAccount(run, graph, substances, amounts, layers, theory).list(),
                        undecided.missing(),
                        graph.faults(),
                        new LayerMakeUps(substances, flow).of(layers),
                        metrics,
                        Optional.empty()),
                omissions.list());
        return run.status() == Run.Status.PLANNED ? tally.with(PlanAccount.of(tally, limits, substances, flow)) : tally;
    }
}
