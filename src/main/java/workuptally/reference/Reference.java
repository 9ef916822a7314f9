package workuptally.reference;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All reference tables, loaded and checked once; immutable. What a written name means is not asked here: that is read in one place, and
 * rests on the rows of these tables.
 */
public final class Reference {
    private final Map<KnownTable, TableFile> files;
    private final boolean packed;
    private final NamedTable<Source> sources;
    private final List<AtomicWeight> atomicWeights;
    private final List<Solvent> solvents;
    private final List<Liquid> liquids;
    private final List<NameWord> nameWords;
    private final List<NameClass> nameClasses;
    private final NamedTable<AqueousDensity> aqueousDensities;
    private final NamedTable<Solute> solutes;
    private final List<Wash> washes;
    private final List<DryingAgent> dryingAgents;
    private final List<Oxidant> oxidants;
    private final List<Hazard> hazards;
    private final NamedTable<ConcentrationLimit> concentrationLimits;
    private final NamedTable<FlashPoint> flashPoints;
    private final NamedTable<HStatement> hStatements;
    private final List<MaterialRow> materials;
    private final Reactivity reactivity;
    private final List<Glassware> glassware;
    private final Map<Threshold, BenchRule> benchRules;
    private final List<Metal> metals;
    private final NamedTable<ClassBehaviour> classBehaviours;
    private final List<SaltForm> saltForms;
    private final List<AddedForm> addedForms;
    private final WasteStreams streams;
    private final List<RegulatoryLimit> regulatoryLimits;
    private final NamedTable<PartitionRow> partition;

    private final Solutions solutions;

    private Reference(Map<KnownTable, TableFile> files, boolean packed) throws IllegalReferenceException {
        this.files = files;
        this.packed = packed;
        sources = Bibliography.of(files);
        atomicWeights = files.get(KnownTable.ATOMIC_WEIGHTS).each(AtomicWeight::of);
        solvents = files.get(KnownTable.SOLVENTS).each(Solvent::of);
        liquids = files.get(KnownTable.LIQUIDS).each(Liquid::of);
        nameWords = files.get(KnownTable.NAME_WORDS).each(NameWord::of);
        nameClasses = files.get(KnownTable.NAME_CLASSES).each(NameClass::of);
        aqueousDensities = NamedTable.spelledFreely(AqueousDensity.ofAll(files.get(KnownTable.AQUEOUS_DENSITIES)))
                .by(AqueousDensity::formula)
                .by(AqueousDensity::solute);
        solutes = NamedTable.spelledFreely(files.get(KnownTable.SOLUTES).each(Solute::of))
                .by(Solute::formula)
                .by(Solute::name)
                .byEach(Solute::aliases);
        nameDensitiesAsSolutes();
        washes = files.get(KnownTable.WASHES).each(Wash::of);
        dryingAgents = files.get(KnownTable.DRYING_AGENTS).each(DryingAgent::of);
        oxidants = files.get(KnownTable.OXIDANTS).each(Oxidant::of);
        hazards = files.get(KnownTable.HAZARDS).each(Hazard::of);
        concentrationLimits = NamedTable.keyed(
                files.get(KnownTable.CONCENTRATION_LIMITS).each(ConcentrationLimit::of), ConcentrationLimit::hazard);
        flashPoints = NamedTable.keyed(FlashPoint.byStrength(files.get(KnownTable.FLASH_POINTS)), FlashPoint::hazard);
        hStatements = NamedTable.keyed(files.get(KnownTable.H_STATEMENTS).each(HStatement::of), HStatement::code);
        materials = files.get(KnownTable.MATERIALS).each(MaterialRow::of);
        reactivity = new Reactivity(
                files.get(KnownTable.REACTIVITY_GROUPS).each(ReactivityGroup::of),
                files.get(KnownTable.REACTIVITY_PAIRS).each(ReactivityPair::of),
                files.get(KnownTable.REACTIVITY_STRENGTHS).each(ReactivityStrength::of));
        glassware = files.get(KnownTable.GLASSWARE).each(Glassware::of);
        benchRules = thresholds(files.get(KnownTable.BENCH_RULES).each(BenchRule::of));
        metals = files.get(KnownTable.METALS).each(Metal::of);
        classBehaviours = NamedTable.keyed(
                files.get(KnownTable.CLASS_BEHAVIOURS).each(ClassBehaviour::of), ClassBehaviour::materialClass);
        saltForms = files.get(KnownTable.SALT_FORMS).each(SaltForm::of);
        addedForms = files.get(KnownTable.FORM_DIFFERENCES).each(AddedForm::of);
        streams = WasteStreams.of(files);
        regulatoryLimits = files.get(KnownTable.REGULATORY_LIMITS).each(RegulatoryLimit::of);
        partition = NamedTable.spelledFreely(files.get(KnownTable.PARTITION).each(PartitionRow::of))
                .by(PartitionRow::compound)
                .by(PartitionRow::cas);
        solutions = new Solutions(washes, solutes, aqueousDensities);
    }

    /**
     * The tables packed with the program; read at the first call.
     *
     * @throws ExceptionInInitializerError if they are damaged, which is a fault of the build
     */
    public static Reference load() {
        return Packed.TABLES;
    }

    private static final class Packed {
        static final Reference TABLES = read();

        private static Reference read() {
            try {
                return new Reference(TableFiles.packed(), true);
            } catch (IllegalReferenceException e) {
                throw new IllegalStateException(e.getMessage(), e);
            }
        }
    }

    /**
     * The tables packed with the program, with a laboratory's own rows over them.
     *
     * @param overrideDirectory folder of CSV files named and headed like the packed ones; a row with a known key replaces, any other is
     *     added; files with other endings are passed over
     * @throws IllegalReferenceException if a file is unknown, too large (4 MB), not UTF-8, malformed, or holds a value out of range
     */
    public static Reference load(Path overrideDirectory) throws IllegalReferenceException {
        return new Reference(TableFiles.overriddenBy(overrideDirectory), false);
    }

    /** True for the tables packed with the program, which are read once; false with a laboratory's own rows over them. */
    public boolean isPacked() {
        return packed;
    }

    private static Map<Threshold, BenchRule> thresholds(List<BenchRule> rows) {
        Map<Threshold, BenchRule> rules = new EnumMap<>(Threshold.class);
        rows.forEach(row -> Threshold.ofKey(row.key()).ifPresent(threshold -> rules.put(threshold, row)));
        return rules;
    }

    /** A density table goes by every name of its solute. */
    private void nameDensitiesAsSolutes() {
        for (Solute solute : solutes) {
            aqueousDensities.find(solute.name()).ifPresent(table -> {
                aqueousDensities.add(solute.formula(), table);
                solute.aliases().forEach(alias -> aqueousDensities.add(alias, table));
            });
        }
    }

    /** Every table as text, for showing; in a fixed order. */
    public List<ReferenceTable> tables() {
        return files.values().stream().map(TableFile::asText).toList();
    }

    /** One table as text, by its name, for example {@code solvents}. */
    public Optional<ReferenceTable> table(String name) {
        return tables().stream().filter(table -> table.name().equals(name)).findFirst();
    }

    /** The whole bibliography, by key. */
    public NamedTable<Source> sources() {
        return sources;
    }

    /** All atomic weights, in order of atomic number. */
    public List<AtomicWeight> atomicWeights() {
        return atomicWeights;
    }

    /** All solvents. */
    public List<Solvent> solvents() {
        return solvents;
    }

    /** All liquid reagents and products. */
    public List<Liquid> liquids() {
        return liquids;
    }

    /** The words that stand around names of materials. */
    public List<NameWord> nameWords() {
        return nameWords;
    }

    /** The words in a name that tell a class. */
    public List<NameClass> nameClasses() {
        return nameClasses;
    }

    /** All metals that are collected apart. */
    public List<Metal> metals() {
        return metals;
    }

    /** Solutions in water at any strength that the tables know. */
    public Solutions solutions() {
        return solutions;
    }

    /** All density tables, by any name or formula of their solute. */
    public NamedTable<AqueousDensity> aqueousDensities() {
        return aqueousDensities;
    }

    /** All solutes, by name, alias or formula. */
    public NamedTable<Solute> solutes() {
        return solutes;
    }

    /** All named washes. */
    public List<Wash> washes() {
        return washes;
    }

    /** All oxidants. */
    public List<Oxidant> oxidants() {
        return oxidants;
    }

    /** All drying agents. */
    public List<DryingAgent> dryingAgents() {
        return dryingAgents;
    }

    /** Strengths at which solutions of a material carry its statements, by the key of its hazards. */
    public NamedTable<ConcentrationLimit> concentrationLimits() {
        return concentrationLimits;
    }

    /** Flash points of the mixtures of a solvent with water, in order of strength, by the key of its hazards. */
    public NamedTable<FlashPoint> flashPoints() {
        return flashPoints;
    }

    /** All materials with hazards listed. */
    public List<Hazard> hazards() {
        return hazards;
    }

    /** All hazard statements, by their code, for example {@code H225}. */
    public NamedTable<HStatement> hStatements() {
        return hStatements;
    }

    /** All materials. */
    public List<MaterialRow> materials() {
        return materials;
    }

    /** Classes of materials and what happens where they meet. */
    public Reactivity reactivity() {
        return reactivity;
    }

    /** The glassware table. */
    public List<Glassware> glassware() {
        return glassware;
    }

    /** A figure of the bench, in the unit of its row. */
    public double value(Threshold threshold) {
        return benchRules.get(threshold).value();
    }

    /** The row of a figure of the bench. */
    public BenchRule benchRule(Threshold threshold) {
        return benchRules.get(threshold);
    }

    /** Every figure of the bench, in the order in which the program names them. */
    public List<BenchRule> benchRules() {
        return List.copyOf(benchRules.values());
    }

    /** What becomes of materials in a workup, by their class. */
    public NamedTable<ClassBehaviour> classBehaviours() {
        return classBehaviours;
    }

    /** What forms of a substance hold beyond one another, in order of the table. */
    public List<AddedForm> addedForms() {
        return addedForms;
    }

    /** The form that a name or note speaks of, the first of the table. */
    public Optional<SaltForm> saltForm(String text) {
        return saltForms.stream().filter(form -> form.isIn(text)).findFirst();
    }

    /** Waste streams, and what decides which one a layer or a container belongs to. */
    public WasteStreams streams() {
        return streams;
    }

    /** All limits of regulations. */
    public List<RegulatoryLimit> regulatoryLimits() {
        return regulatoryLimits;
    }

    /** All partition rows, by name or CAS number of the compound; a compound has one for each solvent. */
    public NamedTable<PartitionRow> partition() {
        return partition;
    }
}
