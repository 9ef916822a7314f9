package workuptally.tally;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.measure.Readings;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.Addition;
import workuptally.tally.amounts.Calibrations;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.ContentsAccount;
import workuptally.tally.amounts.InstrumentUncertainty;
import workuptally.tally.amounts.LotContents;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.MolarMassAccount;
import workuptally.tally.amounts.Omissions;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.PutIn;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.CompositeAccount;
import workuptally.tally.balance.CompositeSamples;
import workuptally.tally.balance.Experience;
import workuptally.tally.balance.Found;
import workuptally.tally.balance.HeadlineYields;
import workuptally.tally.balance.MassAccount;
import workuptally.tally.balance.MassBalance;
import workuptally.tally.balance.Pooling;
import workuptally.tally.balance.Portions;
import workuptally.tally.balance.PurifiedLots;
import workuptally.tally.balance.Route;
import workuptally.tally.balance.RouteAccount;
import workuptally.tally.balance.Undecided;
import workuptally.tally.balance.YieldAccount;
import workuptally.tally.bench.ContactAccount;
import workuptally.tally.bench.ContactMixture;
import workuptally.tally.bench.ContactMixtureAccount;
import workuptally.tally.bench.DriedLayer;
import workuptally.tally.bench.DryingAccount;
import workuptally.tally.bench.PlanAccount;
import workuptally.tally.bench.Reextraction;
import workuptally.tally.bench.ReextractionAccount;
import workuptally.tally.bench.StepReaction;
import workuptally.tally.bench.StepReactionAccount;
import workuptally.tally.bench.WorkupEvidence;
import workuptally.tally.layers.AdditionAccount;
import workuptally.tally.layers.CakeContents;
import workuptally.tally.layers.ContentShares;
import workuptally.tally.layers.DryingCake;
import workuptally.tally.layers.IdentityAccount;
import workuptally.tally.layers.LayerAccount;
import workuptally.tally.layers.LayerFlow;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.LayerMakeUpAccount;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.LotAccount;
import workuptally.tally.layers.MeetingAccount;
import workuptally.tally.layers.Meetings;
import workuptally.tally.layers.StatedDistillates;
import workuptally.tally.layers.StepOutputs;
import workuptally.tally.waste.Metrics;
import workuptally.tally.waste.MetricsAccount;
import workuptally.tally.waste.PortionClasses;
import workuptally.tally.waste.SolventAccount;
import workuptally.tally.waste.SolventUse;
import workuptally.tally.waste.WasteAccount;

/** Puts the accounts of one run in order: amounts and theory, lots and layers, then what is made from them. */
public final class RunTallying {
    private final Limits limits;
    private final Substances substances;

    private final Experience experience;

    /** With the settings and reference data in force. */
    public RunTallying(Limits limits, Substances substances) {
        this(limits, substances, Experience.none());
    }

    /** The same beside what layers held in earlier batches. */
    public RunTallying(Limits limits, Substances substances, Experience experience) {
        this.limits = limits;
        this.substances = substances;
        this.experience = experience;
    }

    /** All results of a run. */
    public RunTally tally(Run run) {
        OfRun accounts = new OfRun(run);
        Charged charged = accounts.charged();
        Portions portions = accounts.portions(charged);
        Followed followed = accounts.followed(charged, portions);
        RunTally tally = accounts.result(charged, portions, followed);
        return run.status() == Run.Status.PLANNED
                ? tally.with(new PlanAccount(
                                run,
                                charged.amounts(),
                                charged.theory(),
                                limits,
                                substances,
                                followed.flow(),
                                accounts.classes(followed))
                        .plan())
                : tally;
    }

    /**
     * The balances of a run alone, without what is made from them: what an entry would do to them is asked many times.
     *
     * @param gasGrams gas expected to have left, g
     */
    public RunBalances balances(Run run, double gasGrams) {
        return new OfRun(run).balances(gasGrams);
    }

    /** Solvents, water and salts along the steps, with layers that are swapped by their density put right, and what the steps set going. */
    private record Followed(
            List<Addition> additions,
            LayerFlow flow,
            List<LayerIdentity> identities,
            List<DryingCake> cakes,
            List<ContactMixture> contacts,
            List<DriedLayer> dried,
            List<StepReaction> reactions,
            Meetings meetings) {}

    /** The accounts of one run; its readings are shared by all of them, so that what is common to two figures stays common. */
    private final class OfRun {
        private final Run run;
        private final LayerGraph graph;
        private final Readings readings = new Readings();
        private final Omissions omissions = new Omissions();
        private final MolarMassAccount molarMasses;
        private final Calibrations calibrations = new Calibrations(readings, new InstrumentUncertainty(limits));

        OfRun(Run run) {
            this.run = run;
            this.graph = LayerGraph.of(run);
            this.molarMasses = new MolarMassAccount(run, substances);
        }

        Charged charged() {
            return Charged.of(run, readings, limits, molarMasses, substances, omissions);
        }

        Portions portions(Charged charged) {
            ContentsAccount contents = new ContentsAccount(run, readings, limits, calibrations, molarMasses, omissions);
            ContentShares shares = new ContentShares(
                    charged.theory(),
                    charged.skeletons(),
                    substances.value(Threshold.READINGS_APART) * limits.value(Limit.LAYER_LIMIT));
            List<LotTally> lots = new LotAccount(run, readings, limits, calibrations, molarMasses, graph, omissions)
                    .of(charged.theory());
            List<LayerTally> alone = new LayerAccount(
                            run, readings, limits, new StepOutputs(run, graph, substances), contents, shares, omissions)
                    .of();
            Map<String, List<Content>> inLots = new LotContents(contents, molarMasses).of(lots);
            PurifiedLots purified = new PurifiedLots(graph, lots);
            CompositeSamples composites = composites(charged, alone, contents, shares);
            List<LayerTally> layers = composites.applied(alone);
            Found found = Found.in(layers, lots, purified, inLots, composites);
            List<ProductYield> yields = new YieldAccount(
                            run, readings, substances, graph, charged.theory(), found, omissions)
                    .of(lots, purified);
            return new Portions(
                    lots, purified, inLots, layers, composites, found, HeadlineYields.marked(yields, limits));
        }

        /** Before the layers are followed: which of two phases is the other by its density has no bearing on what may be pooled. */
        private CompositeSamples composites(
                Charged charged, List<LayerTally> layers, ContentsAccount contents, ContentShares shares) {
            if (!CompositeAccount.isNeeded(run)) {
                return CompositeSamples.NONE;
            }
            Meetings meetings = new MeetingAccount(run, limits, substances, graph, List.of()).of(charged.amounts());
            Pooling pooling = new Pooling(run, meetings, substances);
            return new CompositeAccount(run, contents, shares, pooling, substances, readings).of(layers);
        }

        List<Addition> additions() {
            return new AdditionAccount(run, readings, limits, graph, substances).list();
        }

        /** Which phase each layer is; the flow gives what is swapped the make-up of the other phase. */
        private List<LayerIdentity> identified(Charged charged, Portions portions, LayerFlow flow) {
            List<LayerIdentity> identities =
                    new IdentityAccount(run, substances, flow).of(portions.layers(), charged.amounts());
            flow.correct(identities);
            return identities;
        }

        RunBalances balances(double gasGrams) {
            Charged charged = charged();
            Portions portions = portions(charged);
            List<Addition> additions = additions();
            LayerFlow flow = LayerFlow.of(graph, substances, charged.amounts(), additions, portions.layers());
            List<LayerIdentity> identities = identified(charged, portions, flow);
            List<DryingCake> cakes = new CakeContents(run, substances, graph, flow, charged.amounts())
                    .of(portions.layers(), portions.lots());
            List<ContactMixture> contacts = ContactMixtureAccount.of(run, portions.layers(), substances, flow);
            return new RunBalances(
                    run,
                    closed(charged, portions, cakes, flow, contacts).closures(),
                    massBalance(charged, portions, additions, gasGrams),
                    portions.layers(),
                    identities,
                    contacts);
        }

        private PartnerBalances closed(
                Charged charged,
                Portions portions,
                List<DryingCake> cakes,
                LayerFlow flow,
                List<ContactMixture> contacts) {
            return new PartnerBalanceAccount(run, limits, substances, graph, experience, molarMasses, omissions)
                    .of(charged, portions, cakes, flow, contacts);
        }

        Followed followed(Charged charged, Portions portions) {
            List<Addition> additions = additions();
            LayerFlow flow = LayerFlow.of(graph, substances, charged.amounts(), additions, portions.layers());
            List<LayerIdentity> identities = identified(charged, portions, flow);
            List<StepReaction> reactions = new StepReactionAccount(
                            run,
                            limits,
                            substances,
                            new PutIn(charged.amounts(), additions),
                            portions.layers(),
                            charged.theory())
                    .list();
            CakeContents cakeContents = new CakeContents(run, substances, graph, flow, charged.amounts());
            List<DryingCake> cakes = cakeContents.of(portions.layers(), portions.lots());
            return new Followed(
                    additions,
                    flow,
                    identities,
                    cakes,
                    ContactMixtureAccount.of(run, portions.layers(), substances, flow),
                    DryingAccount.of(run, substances, cakeContents, cakes),
                    reactions,
                    new MeetingAccount(run, limits, substances, graph, identities).of(charged.amounts()));
        }

        PortionClasses classes(Followed followed) {
            return new PortionClasses(run, substances, graph, followed.meetings());
        }

        RunTally result(Charged charged, Portions portions, Followed followed) {
            PartnerBalances closed = closed(charged, portions, followed.cakes(), followed.flow(), followed.contacts());
            Optional<MassBalance> massBalance =
                    massBalance(charged, portions, followed.additions(), StepReaction.gasGrams(followed.reactions()));
            return new RunTally(
                    run,
                    charged.amounts(),
                    charged.theory(),
                    portions.lots(),
                    portions.yields(),
                    closed.bounded(),
                    closed.closures(),
                    massBalance,
                    new ContactAccount(run, limits, substances).of(followed.flow(), followed.reactions()),
                    solvents(charged, portions, followed),
                    new WasteAccount(run, limits, substances, classes(followed))
                            .of(portions.layers(), followed.flow(), followed.identities()),
                    evidence(
                            charged,
                            portions,
                            followed,
                            closed.undecided(),
                            metrics(charged, portions, followed, massBalance)),
                    omissions.list());
        }

        private Optional<MassBalance> massBalance(
                Charged charged, Portions portions, List<Addition> additions, double gasGrams) {
            return new MassAccount(run, readings, limits, substances, omissions)
                    .of(charged.theory(), charged.amounts(), additions, portions.layers(), portions.lots(), gasGrams);
        }

        private List<SolventUse> solvents(Charged charged, Portions portions, Followed followed) {
            return new SolventAccount(run, substances, omissions)
                    .of(
                            charged.amounts(),
                            followed.additions(),
                            portions.layers(),
                            followed.cakes(),
                            portions.lots(),
                            portions.inLots(),
                            followed.flow());
        }

        private Optional<Metrics> metrics(
                Charged charged, Portions portions, Followed followed, Optional<MassBalance> massBalance) {
            return new MetricsAccount(run, readings, substances, omissions)
                    .of(
                            massBalance,
                            charged.theory(),
                            portions.yields(),
                            charged.amounts(),
                            followed.additions(),
                            portions.layers(),
                            followed.flow());
        }

        private WorkupEvidence evidence(
                Charged charged, Portions portions, Followed followed, Undecided undecided, Optional<Metrics> metrics) {
            List<Route> routes = new RouteAccount(
                            run,
                            limits,
                            graph,
                            substances,
                            molarMasses,
                            new PutIn(charged.amounts(), followed.additions()),
                            portions)
                    .list();
            List<Reextraction> reextractions = new ReextractionAccount(
                            run,
                            graph,
                            substances,
                            charged.amounts(),
                            portions.layers(),
                            charged.theory(),
                            followed.flow())
                    .list();
            return new WorkupEvidence(
                    followed.identities(),
                    followed.reactions(),
                    routes,
                    reextractions,
                    new WorkupEvidence.Gaps(undecided.missing(), followed.flow().unlabelledPhases(), graph.faults()),
                    new LayerMakeUpAccount(substances, followed.flow())
                            .of(
                                    portions.layers(),
                                    new StatedDistillates(run, limits, substances, followed.flow(), portions.layers())),
                    followed.contacts(),
                    followed.dried(),
                    followed.meetings(),
                    portions.composites(),
                    portions.inLots(),
                    metrics,
                    Optional.empty());
        }
    }
}
