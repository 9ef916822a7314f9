package workuptally.reference.bench;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The figures of the bench that the program reads from {@code bench-rules}, each with the range within which a laboratory may set it. The
 * table holds a row for each of them and no other; value, unit and basis stand there.
 */
public enum Threshold {
    /** Used where a solvent row has no density change of its own; most lie between 0.0009 and 0.0016; 1/K. */
    EXPANSION(0, 0.01),
    /** Distance within which the change of a density with temperature is taken for a straight line; K. */
    DENSITY_REACH(0, 100),
    /** Boiling point up to which a solvent has the evaporation allowance of ether and dichloromethane; C. */
    VERY_VOLATILE_BELOW(-50, 150),
    /** Ledger and weighing of a container that differ by less agree; fraction of the contents. */
    CONTAINER_WEIGHING_RELATIVE(0, 1),
    /** The same for small contents; g. */
    CONTAINER_WEIGHING_LEAST(0, 100000),
    /** Weighed contents below this need no composition; g. */
    CONTAINER_EMPTY(0, 100000),
    /** Fill from which a proposal says so; % of capacity. */
    CONTAINER_NEARLY_FULL(0, 100),
    /** Days before the local limit from which a container is named; d. */
    CONTAINER_DAYS_AHEAD(0, 3650),
    /** Contents below this are not asked for on a label; % w/w. */
    LABEL_LEAST_SHARE(0, 100),
    /** A proposed amount that differs less from the layer agrees with it; fraction. */
    PROPOSAL_AMOUNT_RELATIVE(0, 1),
    /** The same for small layers; g. */
    PROPOSAL_AMOUNT_LEAST(0, 100000),
    /** Half-width of a measured pH in the band of a partition figure; 1. */
    PH_READING(0, 2),
    /** Half-width of each strength in the band of a charge balance; fraction. */
    EQUIVALENT_STRENGTH(0, 1),
    /** Conversion below which no conversion-adjusted yield is formed; fraction. */
    LEAST_CONVERSION(0, 1),
    /** For a solvent that mixes with water and that octanol does not prefer; c(organic)/c(water). */
    MISCIBLE_DISTRIBUTION(0, 1000),
    /** Solubility of a solvent in an aqueous layer that salts out; fraction of that in water. */
    SALTING_OUT_FACTOR(0, 1),
    /** Salt in the aqueous layer from which the factor holds; mass fraction. */
    SALTING_OUT_FROM(0, 1),
    /** A solvent that takes up more is reckoned with this much; mass %. */
    MOST_WATER_IN_SOLVENT(0, 99),
    /** Less of a phase than this is taken for a rounding of the estimates; mL. */
    LEAST_PHASE(0, 1000),
    /** For the volume that product takes up in a layer; g/mL. */
    ORGANIC_SOLUTE_DENSITY(0.5, 5),
    /** For the volume that salt takes up in a layer; g/mL. */
    DISSOLVED_SALT_DENSITY(0.5, 10),
    /** Within which a density fits what is expected; standard uncertainties. */
    DENSITY_FIT(0.5, 20),
    /** Smallest difference of two expected densities that tells which layer is which; g/mL. */
    DENSITY_DIFFERENCE(0, 1),
    /** Typed densities below this are asked about; g/mL. */
    DENSITY_LOW(0.01, 2),
    /** Typed densities above this are asked about; g/mL. */
    DENSITY_HIGH(1, 30),
    /** A typed density that differs more from the listed one is asked about; fraction. */
    DENSITY_LISTED(0, 1),
    /** From which the smaller tolerance of mass, volume and density holds; mL. */
    LARGE_VOLUME(0, 100000),
    /** Difference that is noted from that volume on; fraction. */
    LARGE_VOLUME_TOLERANCE(0, 1),
    /** Difference that is noted below that volume; fraction. */
    SMALL_VOLUME_TOLERANCE(0, 1),
    /** The extracting phase may be this much larger than what is added; ratio. */
    PHASE_SWELLING(1, 5),
    /** Smallest gain for which more portions are proposed; % of the product. */
    SPLIT_GAIN(0, 100),
    /** Smallest gain for which one more extraction is proposed; % of theory. */
    REEXTRACTION_GAIN(0, 100),
    /** Strength reckoned with for the volume of acid or base before an extraction; mol/L. */
    PH_SETTING_STRENGTH(0.01, 20),
    /** Carbon dioxide from which on a caution goes with that acid; 1 mmol is about 24 mL; mmol. */
    PH_SETTING_GAS(0, 100000),
    /** Band of a partition ratio measured in the solvent itself; factor. */
    PARTITION_SAME(1, 1000),
    /** Band of a partition ratio taken from another solvent; factor. */
    PARTITION_OTHER(1, 1000),
    /** Band of a partition ratio taken from octanol; factor. */
    PARTITION_OCTANOL(1, 1000),
    /** Distance that leaves 0.6 % of the other form, proposed for an extraction; 1. */
    PH_BEYOND_PKA(0, 7),
    /** Acids with a smaller pKa; first constant of carbonic acid, textbook 6.35; pKa. */
    TAKEN_UP_BY_HYDROGENCARBONATE(0, 14),
    /** Amounts that differ by less leave the limiting reagent open; standard uncertainties. */
    LIMITING_TOLD_APART(0.5, 20),
    /** A typed molar mass that differs more from the formula is noted; fraction. */
    MOLAR_MASS_DIFFERS(0, 1),
    /** A typed molar mass that differs more from the formula is a stop; fraction. */
    MOLAR_MASS_WRONG(0, 1),
    /** Agent over what binds the water at best, for a plan; ratio. */
    AGENT_LEAST(1, 20),
    /** Agent over what binds the water at worst, for a plan; ratio. */
    AGENT_MOST(1, 20),
    /** Agent over what binds the water, below which it is a check; ratio. */
    AGENT_SHORT(0, 20),
    /** Boiling point below which a product is lost with the solvent; C. */
    VOLATILE_BELOW(-50, 400),
    /** Runs of one series in one book from which they are judged as a class; runs. */
    CLASS_RUNS(3, 1000),
    /** Aqueous layers below this count as acid; pH. */
    ACIDIC_BELOW(0, 7),
    /** Aqueous layers above this count as base; pH. */
    BASIC_ABOVE(7, 14),
    /** A solvent dissolved in a layer brings its material classes from this share on; mass %. */
    LEAST_CLASS_SHARE(0, 100),
    /** Heavy metal charged from which an organic liquid counts as one that holds it; mass %. */
    ORGANIC_METAL_LEAST(0, 100),
    /** Product taken as samples from which it is noted; % of theory. */
    ALIQUOTS_NOTE(0, 100),
    /** Product on a drying cake from which it is noted; % of theory. */
    CAKE_NOTE(0, 100),
    /** Cake over the drying agent on it, below which it weighs too little; ratio. */
    CAKE_LEAST(0, 1),
    /** Share in an extraction from which it is noted; % of the organic volume. */
    MISCIBLE_NOTE(0, 100),
    /** Share in an extraction from which it is a check; % of the organic volume. */
    MISCIBLE_CHECK(0, 100),
    /** Difference between titre and label from which it is a check; %. */
    TITRE_CHECK(0, 100),
    /** Second weighing that differs by less is the same mass; fraction. */
    CONSTANT_MASS(0, 1),
    /** Or by less than these; standard uncertainties. */
    CONSTANT_MASS_UNCERTAINTIES(0.5, 20),
    /** Assays above this are asked about; % w/w. */
    ASSAY_MOST(100, 200),
    /** Crude over theory from which a crude without an assay is asked about; %. */
    CRUDE_NEAR_THEORY(50, 200),
    /** Actual over planned amount, either way, above which one of them is worth a look; ratio. */
    FAR_FROM_PLAN(1, 1000),
    /** Equivalents of a reagent above which its coefficient is worth a look; equivalents. */
    LARGE_EXCESS(1, 100000),
    /** Share of an acid or base that is ionised from which it counts as an ion; fraction. */
    IONISED(0.5, 1),
    /** Content of a layer from which it is held against the pH; % of theory. */
    AGAINST_PH_LEAST(0, 100),
    /** Gas in one load from which it is noted; L. */
    GAS_NOTE(0, 1000),
    /** Organometallic reagent left over from which its by-product is noted; mmol. */
    EXCESS_NOTE(0, 1000000),
    /** A charge within this of a thousand times the plan is taken for a slip of the unit; fraction. */
    UNIT_SLIP_WITHIN(0, 0.9),
    /** Share of a distillate that its composition tells at least; mass %. */
    COMPOSITION_LEAST(0, 100),
    /** Bound of the largest of several readings of a layer up to which they may differ; share of the layer limit. */
    READINGS_APART(0, 1),
    /** Content of a layer from which its routes are compared; % of theory. */
    ROUTES_NOTE(0, 100),
    /** Product left in the water layer from which a shifted pKa is named; % of theory. */
    PKA_SHIFT_NOTE(0, 100),
    /** How many times the strength that a name tells a typed one may be, or the other way round. */
    STRENGTH_APART(1, 100),
    /** Product that a recrystallisation or a column usually loses to glassware; % of what was purified. */
    PURIFICATION_LOSS(0, 100),
    /** Beyond which more mass found than charged is a finding; standard uncertainties. */
    MASS_GAP(0.5, 20),
    /** Assays of a charge from this on count as pure; % w/w. */
    ASSAY_PURE(50, 100),
    /** Goods usually sold at this strength or stronger need no assay; % w/w. */
    NEARLY_PURE(0, 100),
    /** Rows with actual and planned amount alike from which a plan looks copied; rows. */
    PLAN_COPIED_LINES(1, 1000),
    /** Closures within this of a simple ratio suggest a coefficient; fraction. */
    COEFFICIENT_TOLERANCE(0, 0.5),
    /** Beyond which two readings of the pH of one layer are told; units of pH. */
    PH_READ_ALIKE(0, 14),
    /** From which they contradict each other on the two sides of neutral; units of pH. */
    PH_CONTRADICTS(0, 14),
    /** A partner that closes within this speaks for it; %. */
    COEFFICIENT_CLOSED(0, 100),
    /** Agreement of tares read to the milligram or finer; g. */
    TARE_FINE(0, 1000),
    /** Agreement of other tares; g. */
    TARE_COARSE(0, 1000),
    /** From which a closed funnel asks for care; kPa. */
    FUNNEL_PRESSURE(0, 200),
    /** Distance to the boiling point below which nothing is shaken; K. */
    SHAKEN_BELOW_BOILING(0, 200),
    /** Strength of acid or base from which a neutralisation is felt; mol/L. */
    HEAT_FROM(0, 20),
    /** Below which an organic azide is commonly not isolated; atoms. */
    AZIDE_RATIO(0, 20),
    /** pH up to which an acid with nitrogen in it may be an amino acid, neutral as a whole; pH. */
    ISOELECTRIC_MOST(0, 14),
    /** Acids with a larger pKa stay free beside amines and hydrogencarbonate; pKa. */
    WEAK_ACID_FROM(0, 14),
    /** Found over held above what a rough pipette and volumes that do not add up explain; ratio. */
    PORTION_FAR_MORE(1, 10),
    /** Part of the acid or base needed by which less of it was brought than volumes and strengths explain; %. */
    NEUTRALISATION_SHORT(0, 100),
    /** Of their difference, within which two readings of one thing agree; standard uncertainties. */
    READINGS_AGREE(0.5, 20),
    /** By which a reading without calibration may be off, or a strength judged by eye; factor. */
    SCREENING_OFF_BY(1, 1000),
    /** By which the eye tells two spots of a plate apart at best; factor. */
    SPOT_FACTOR(1, 100),
    /** Difference from the literature that neither thermometer nor an impure sample explains; K. */
    MELTING_POINT_FAR(0, 100),
    /** Volume up to which an unknown rest of 0.8 to 1.5 g/mL moves the density of a phase by less than 0.05 g/mL; fraction. */
    PHASE_UNKNOWN_MOST(0, 1),
    /** Volume of solvent and water from which the density of a phase is summed up from its parts; fraction. */
    PHASE_SOLVENT_LEAST(0, 1),
    /** Distance from every expected density beyond which mass or volume is wrong; tolerances. */
    DENSITY_FAR(1, 20),
    /** Excess of a substrate beyond which it was not taken on purpose; % of the charge. */
    SUBSTRATE_EXCESS_MOST(0, 100),
    /** Lost on glass without an explanation, where balances are reconciled; %. */
    TRANSFER_LOSS(0, 50),
    /** Amounts within this of each other give the same theory, whichever limits; %. */
    LIMITING_CLOSE(0, 100),
    /** Difference of a typed amount of substance that rounding on the way explains; fraction. */
    STATED_AMOUNT_ROUNDING(0, 1),
    /** Difference of a typed yield that rounding on the way explains; %. */
    STATED_YIELD_ROUNDING(0, 100),
    /** Within which a typed net mass is gross less tare; standard uncertainties. */
    NET_SAME(0.5, 20),
    /** Excess of a solvent in distillates over what went into the run from which it is asked about; %. */
    COMPOSITION_EXCESS(0, 1000),
    /** Share of a composition from which a solvent that nobody brought is asked about; mass %. */
    COMPOSITION_UNEXPECTED(0, 100),
    /** Least part of what went in that transfers, wet glass and mutual solubility leave; fraction. */
    LAYER_PART_LEAST(0, 1),
    /** Part of what went in that wet glass and mutual solubility usually leave; fraction. */
    LAYER_PART_USUAL(0, 1),
    /** A layer below this is not put together with one that is basic; pH. */
    POOLED_ACIDIC_BELOW(0, 7),
    /** A layer above this is not put together with one that is acidic; pH. */
    POOLED_BASIC_ABOVE(7, 14),
    /** Strong base is a salt in a layer below this: 1 mmol/L and less are left of it; pH. */
    STRONG_BASE_FROM(7, 14),
    /** Strong acid is a salt in a layer above this: 1 mmol/L and less are left of it; pH. */
    STRONG_ACID_UP_TO(0, 7),
    /** Carbonate, hydrogencarbonate and sulfide are gone from a layer below this; pH. */
    CARBONATE_FROM(0, 14),
    /** An amine is a salt in a layer below this, two units below the usual pKa of an alkylamine; pH. */
    AMINE_SALT_BELOW(0, 14),
    /** Of a wash of strong base, where none is entered; pH. */
    WASH_STRONG_BASE(7, 14),
    /** Of a wash of carbonate, where none is entered; pH. */
    WASH_CARBONATE(7, 14),
    /** Of a wash of hydrogencarbonate, where none is entered; pH. */
    WASH_HYDROGENCARBONATE(7, 14),
    /** Of a wash of strong acid, where none is entered; pH. */
    WASH_STRONG_ACID(0, 7),
    /** Of a wash of weak acid, where none is entered; pH. */
    WASH_WEAK_ACID(0, 7),
    /** Limit of detection where none of the method is known; mg/mL. */
    USUAL_DETECTION(0, 100),
    /** Least dry residue that an analytical balance tells in an aliquot of 5 mL, with a blank; mg/mL. */
    RESIDUE_LEAST(0, 100),
    /** Kept below a limit for the uncertainty of the result to come and of theory; factor. */
    TEST_GUARD(1, 2),
    /** Proposed for a composite sample; factor. */
    COMPOSITE_DILUTION(1, 1000),
    /** Smallest aliquot proposed for a composite sample; mL. */
    COMPOSITE_ALIQUOT_LEAST(0.001, 100),
    /** Water carried over as drops in an organic layer where no brine wash went before; mL/mL. */
    ENTRAINED_WATER(0, 1),
    /** Of the product that a cake of drying agent holds, what one rinse leaves; fraction. */
    LEFT_AFTER_RINSE(0, 1),
    /** Lost on glass and in transfers without putting an entry in doubt; %. */
    SUSPECT_TRANSFER_LOSS(0, 50),
    /** Of an organic solvent that may have gone into the air without putting an entry in doubt; fraction. */
    SUSPECT_EVAPORATED(0, 1),
    /** Of what went in, left open by volumes and densities beside their stated uncertainty; fraction. */
    SUSPECT_MASS_OPEN(0, 1),
    /** Of the volume of a contact, left open by its estimate; fraction. */
    SUSPECT_VOLUME_OPEN(0, 1),
    /** Of the mass of a phase beside solutes, left open by its estimate; fraction. */
    SUSPECT_PHASE_OPEN(0, 1),
    /** Scatter of amounts about their plan; fraction. */
    SUSPECT_PLAN_SCATTER(0.001, 1),
    /** Water and solution that a cake may hold for its agent; g/g. */
    SUSPECT_CAKE_GAIN(0.1, 20),
    /** Of the dry agent, what may be lacking on its cake; fraction. */
    SUSPECT_CAKE_LOST(0.001, 1),
    /** Of the lot it was made from, what a wet purified lot may hold more; fraction. */
    SUSPECT_WET_LOT(0.001, 1),
    /** By which a lot may come out of a purification less pure, wet as it is; mass %. */
    SUSPECT_LESS_PURE(0.1, 100),
    /** Of what went through a layer, what may be lost or stay unassayed without an explanation; fraction. */
    SUSPECT_THROUGH_LOST(0, 0.99),
    /** By which readings of two methods differ beside their stated uncertainty; fraction. */
    SUSPECT_METHODS_DIFFER(0, 1),
    /** By which densities of one liquid differ with temperature and table; fraction. */
    SUSPECT_DENSITY_SCATTER(0, 1);

    private final double least;
    private final double most;

    Threshold(double least, double most) {
        this.least = least;
        this.most = most;
    }

    /** Key of the row. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The threshold with a key. */
    static Optional<Threshold> ofKey(String key) {
        return Stream.of(values()).filter(t -> t.key().equals(key)).findFirst();
    }

    boolean allows(double value) {
        return value >= least && value <= most;
    }

    /** Words for a message about a figure out of range. */
    String range() {
        return "a number from " + least + " to " + most;
    }
}
