package workuptally.judgement.rules;

import java.util.List;
import workuptally.tally.Substances;

/** Every rule, in the order in which findings of one severity are listed. Adding a rule touches the rule, its test, its page and this list. */
public final class Rules {
    private Rules() {}

    /** Rules about one run. */
    public static List<RunRule> ofRun(Substances substances) {
        return List.of(
                new MolarMassMismatch(substances),
                new FormContradictsName(),
                new StepsDoNotFit(),
                new TareFaults(),
                new LayersSwapped(),
                new LayerNotRecorded(),
                new RagNotAssayed(),
                new FunnelTooFull(),
                new WashTooSmall(),
                new ExtractionUndivided(),
                new QuenchNotShown(substances.reference()),
                new OxidantQuench(substances.reference()),
                new ClosureVerdict(),
                new YieldLimits(),
                new ResolutionAboveHalf(),
                new TheoryNotComputed(),
                new DensityForgotten(substances.reference()),
                new StepMaterialUnknown(substances.reference()),
                new AssayOfChargeForgotten(substances.reference()),
                new TitreDiffers(),
                new RoutesCompared(),
                new GasExpected(),
                new OrganometallicExcess(substances.reference()),
                new ContentCarried(),
                new LimitingReagentUnclear(),
                new CoefficientForgotten(),
                new UnitSlip(),
                new PlanCopied(),
                new LayerVolumeImpossible(),
                new MassVolumeDensity(),
                new LoadsNotRecorded(),
                new DryingAgentShort(),
                new ProductOnCake(),
                new WetCrude(substances),
                new NotAtConstantMass(),
                new VolatileProduct(),
                new AreaPercent(),
                new AssayImpossible(),
                new CountedTwice(),
                new AliquotsTaken(),
                new CropsIncomplete(),
                new WaterMiscibleSolvent(),
                new PkaShifted(),
                new RecoveredSolventTakenAsPure(),
                new MassGap(),
                new ReviewDatePassed());
    }

    /** Rules about the whole book. */
    public static List<BookRule> ofBook() {
        return List.of(new CopiedData(), new SeriesOutOfControl(), new RecordCorrected());
    }

    /** Rules about containers and what is proposed for them. */
    public static List<ProposalRule> ofProposals(Substances substances) {
        return List.of(
                new ProposalInWrongStream(),
                new ProposalIncompatible(),
                new ProposalOverfills(),
                new ProposalHeldByLayer(),
                new ContainerContents(substances.reference()),
                new ContainerDays(),
                new ProposalAmount(),
                new ProposalLabel(substances));
    }
}
