package workuptally.judgement;

import java.util.List;
import java.util.stream.Stream;
import workuptally.judgement.rules.BookRule;
import workuptally.judgement.rules.ProposalRule;
import workuptally.judgement.rules.RunRule;
import workuptally.judgement.rules.balance.AliquotsTaken;
import workuptally.judgement.rules.balance.AreaPercent;
import workuptally.judgement.rules.balance.AssayFitsNothing;
import workuptally.judgement.rules.balance.AssayImpossible;
import workuptally.judgement.rules.balance.ClosureVerdict;
import workuptally.judgement.rules.balance.CompositeRefused;
import workuptally.judgement.rules.balance.CropsIncomplete;
import workuptally.judgement.rules.balance.IsolatedAsIon;
import workuptally.judgement.rules.balance.LotsAboveTheory;
import workuptally.judgement.rules.balance.MassGap;
import workuptally.judgement.rules.balance.NetAgainstWeighing;
import workuptally.judgement.rules.balance.NotAtConstantMass;
import workuptally.judgement.rules.balance.NoteAgainstFigure;
import workuptally.judgement.rules.balance.PurificationGains;
import workuptally.judgement.rules.balance.PurificationOpen;
import workuptally.judgement.rules.balance.ResolutionAboveHalf;
import workuptally.judgement.rules.balance.StatedYieldDiffers;
import workuptally.judgement.rules.balance.TareFaults;
import workuptally.judgement.rules.balance.WetCrude;
import workuptally.judgement.rules.balance.YieldLimits;
import workuptally.judgement.rules.charges.AssayOfChargeForgotten;
import workuptally.judgement.rules.charges.BelowOneEquivalent;
import workuptally.judgement.rules.charges.ChargeTwice;
import workuptally.judgement.rules.charges.CoefficientForgotten;
import workuptally.judgement.rules.charges.DensityForgotten;
import workuptally.judgement.rules.charges.FormContradictsName;
import workuptally.judgement.rules.charges.FormulaDoubtful;
import workuptally.judgement.rules.charges.LimitingReagentUnclear;
import workuptally.judgement.rules.charges.MaterialUnlisted;
import workuptally.judgement.rules.charges.MolarMassMismatch;
import workuptally.judgement.rules.charges.OrganometallicExcess;
import workuptally.judgement.rules.charges.PlanCopied;
import workuptally.judgement.rules.charges.ReagentInExcess;
import workuptally.judgement.rules.charges.RecoveredSolventTakenAsPure;
import workuptally.judgement.rules.charges.SkeletonNotGiven;
import workuptally.judgement.rules.charges.SolventAmountMissing;
import workuptally.judgement.rules.charges.StatedAmountDiffers;
import workuptally.judgement.rules.charges.StepMaterialUnknown;
import workuptally.judgement.rules.charges.StrengthDiffers;
import workuptally.judgement.rules.charges.TheoryNotComputed;
import workuptally.judgement.rules.charges.TitreDiffers;
import workuptally.judgement.rules.charges.UnitSlip;
import workuptally.judgement.rules.containers.ContainerContents;
import workuptally.judgement.rules.containers.ContainerDays;
import workuptally.judgement.rules.containers.ContainerIncompatible;
import workuptally.judgement.rules.containers.DaysThatCannotBe;
import workuptally.judgement.rules.containers.ProposalAmount;
import workuptally.judgement.rules.containers.ProposalHeldByLayer;
import workuptally.judgement.rules.containers.ProposalInWrongStream;
import workuptally.judgement.rules.containers.ProposalIncompatible;
import workuptally.judgement.rules.containers.ProposalLabel;
import workuptally.judgement.rules.containers.ProposalOfSolid;
import workuptally.judgement.rules.containers.ProposalOverfills;
import workuptally.judgement.rules.containers.TransferMadeInWrongStream;
import workuptally.judgement.rules.containers.TransferOfWhatIsElsewhere;
import workuptally.judgement.rules.layers.CakeLighterThanAgent;
import workuptally.judgement.rules.layers.CompositionContradicted;
import workuptally.judgement.rules.layers.CompositionIncomplete;
import workuptally.judgement.rules.layers.CompositionNotCharged;
import workuptally.judgement.rules.layers.ContentAgainstPh;
import workuptally.judgement.rules.layers.ContentCarried;
import workuptally.judgement.rules.layers.CountedTwice;
import workuptally.judgement.rules.layers.DryingAgentShort;
import workuptally.judgement.rules.layers.ExtractionUndivided;
import workuptally.judgement.rules.layers.ImpossibleDensity;
import workuptally.judgement.rules.layers.LayerLost;
import workuptally.judgement.rules.layers.LayerNotRecorded;
import workuptally.judgement.rules.layers.LayerPartOnly;
import workuptally.judgement.rules.layers.LayerPhDiffers;
import workuptally.judgement.rules.layers.LayerVolumeImpossible;
import workuptally.judgement.rules.layers.LayersSwapped;
import workuptally.judgement.rules.layers.LiquorPartOnly;
import workuptally.judgement.rules.layers.LoadsNotRecorded;
import workuptally.judgement.rules.layers.MassVolumeDensity;
import workuptally.judgement.rules.layers.PkaShifted;
import workuptally.judgement.rules.layers.PortionHeldMore;
import workuptally.judgement.rules.layers.ProductOnCake;
import workuptally.judgement.rules.layers.RagNotAssayed;
import workuptally.judgement.rules.layers.ReleasedByNobody;
import workuptally.judgement.rules.layers.ReviewDatePassed;
import workuptally.judgement.rules.layers.RoutesCompared;
import workuptally.judgement.rules.layers.StepsDoNotFit;
import workuptally.judgement.rules.layers.VolatileProduct;
import workuptally.judgement.rules.layers.WaterMiscibleSolvent;
import workuptally.judgement.rules.quench.ConcentratedWithCare;
import workuptally.judgement.rules.quench.FunnelTooFull;
import workuptally.judgement.rules.quench.GasExpected;
import workuptally.judgement.rules.quench.MaterialsMeet;
import workuptally.judgement.rules.quench.NeutralisationShort;
import workuptally.judgement.rules.quench.OxidantQuench;
import workuptally.judgement.rules.quench.QuenchNotEntered;
import workuptally.judgement.rules.quench.QuenchNotShown;
import workuptally.judgement.rules.quench.StepAmountMissing;
import workuptally.judgement.rules.quench.WashTooSmall;
import workuptally.judgement.rules.series.CopiedData;
import workuptally.judgement.rules.series.RecordCorrected;
import workuptally.judgement.rules.series.SeriesOutOfControl;
import workuptally.tally.amounts.Substances;
import workuptally.tally.suspects.TareRegister;

/** Every rule, in the order in which findings of one severity are listed. Adding a rule touches the rule, its test, its page and this list. */
public final class Rules {
    private Rules() {}

    /**
     * Rules about one run.
     *
     * @param vessels the register of vessels of its book
     */
    public static List<RunRule> ofRun(Substances substances, TareRegister vessels) {
        return Stream.concat(first(substances, vessels), later(substances)).toList();
    }

    private static Stream<RunRule> first(Substances substances, TareRegister vessels) {
        return Stream.of(
                new MolarMassMismatch(substances),
                new FormulaDoubtful(),
                new FormContradictsName(substances),
                new IsolatedAsIon(substances),
                new StepsDoNotFit(),
                new TareFaults(substances, vessels),
                new NetAgainstWeighing(substances),
                new LayersSwapped(),
                new LayerNotRecorded(),
                new RagNotAssayed(),
                new FunnelTooFull(),
                new NeutralisationShort(substances),
                new WashTooSmall(),
                new StepAmountMissing(),
                new ExtractionUndivided(substances),
                new QuenchNotShown(substances),
                new OxidantQuench(substances),
                new ClosureVerdict(),
                new YieldLimits(),
                new StatedYieldDiffers(substances),
                new ResolutionAboveHalf(),
                new TheoryNotComputed(),
                new DensityForgotten(substances),
                new StepMaterialUnknown(substances),
                new AssayFitsNothing(substances));
    }

    private static Stream<RunRule> later(Substances substances) {
        return Stream.of(
                new CompositeRefused(substances),
                new AssayOfChargeForgotten(substances),
                new TitreDiffers(substances),
                new RoutesCompared(substances),
                new GasExpected(substances),
                new MaterialsMeet(substances),
                new OrganometallicExcess(substances),
                new ContentCarried(),
                new ContentAgainstPh(substances),
                new LayerPhDiffers(substances),
                new PortionHeldMore(substances),
                new LayerLost(),
                new LimitingReagentUnclear(substances),
                new BelowOneEquivalent(substances),
                new StatedAmountDiffers(substances),
                new CoefficientForgotten(substances),
                new SkeletonNotGiven(),
                new UnitSlip(substances),
                new ChargeTwice(),
                new ReagentInExcess(substances),
                new PlanCopied(substances),
                new LayerVolumeImpossible(),
                new MassVolumeDensity(substances),
                new ImpossibleDensity(substances),
                new LoadsNotRecorded(),
                new DryingAgentShort(substances),
                new CakeLighterThanAgent(substances),
                new ProductOnCake(substances),
                new WetCrude(substances),
                new LotsAboveTheory(),
                new PurificationGains(),
                new PurificationOpen(substances),
                new NotAtConstantMass(substances),
                new VolatileProduct(substances),
                new CompositionNotCharged(substances),
                new CompositionContradicted(),
                new CompositionIncomplete(substances),
                new LayerPartOnly(substances),
                new LiquorPartOnly(substances),
                new NoteAgainstFigure(),
                new AreaPercent(),
                new AssayImpossible(substances),
                new CountedTwice(substances),
                new AliquotsTaken(substances),
                new CropsIncomplete(),
                new WaterMiscibleSolvent(substances),
                new PkaShifted(substances),
                new RecoveredSolventTakenAsPure(substances),
                new SolventAmountMissing(),
                new StrengthDiffers(substances),
                new MassGap(substances),
                new ReviewDatePassed(),
                new ReleasedByNobody());
    }

    /** Rules about the whole book. */
    public static List<BookRule> ofBook(Substances substances) {
        return List.of(
                new QuenchNotEntered(substances),
                new ConcentratedWithCare(),
                new CopiedData(),
                new SeriesOutOfControl(substances),
                new RecordCorrected(),
                new MaterialUnlisted(substances));
    }

    /** Rules about containers and what is proposed for them. */
    public static List<ProposalRule> ofProposals(Substances substances) {
        return List.of(
                new ProposalInWrongStream(),
                new ProposalIncompatible(),
                new DaysThatCannotBe(),
                new ContainerIncompatible(),
                new TransferMadeInWrongStream(),
                new ProposalOfSolid(),
                new TransferOfWhatIsElsewhere(),
                new ProposalOverfills(substances),
                new ProposalHeldByLayer(),
                new ContainerContents(substances),
                new ContainerDays(substances),
                new ProposalAmount(substances),
                new ProposalLabel(substances));
    }
}
