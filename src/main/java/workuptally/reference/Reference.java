package workuptally.reference;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import workuptally.reference.bench.BenchRule;
import workuptally.reference.bench.BenchTables;
import workuptally.reference.bench.Glassware;
import workuptally.reference.bench.Threshold;
import workuptally.reference.hazards.ConcentrationLimit;
import workuptally.reference.hazards.FlashPoint;
import workuptally.reference.hazards.HStatement;
import workuptally.reference.hazards.Hazard;
import workuptally.reference.hazards.HazardTables;
import workuptally.reference.hazards.Reactivity;
import workuptally.reference.solutions.AqueousDensity;
import workuptally.reference.solutions.PartitionRow;
import workuptally.reference.solutions.Solute;
import workuptally.reference.solutions.Solutions;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.AddedForm;
import workuptally.reference.substances.AtomicWeightRow;
import workuptally.reference.substances.ClassBehaviour;
import workuptally.reference.substances.DryingAgent;
import workuptally.reference.substances.Liquid;
import workuptally.reference.substances.MaterialRow;
import workuptally.reference.substances.Metal;
import workuptally.reference.substances.NameClass;
import workuptally.reference.substances.NameWord;
import workuptally.reference.substances.Oxidant;
import workuptally.reference.substances.SaltForm;
import workuptally.reference.substances.Solvent;
import workuptally.reference.substances.SubstanceTables;
import workuptally.reference.tables.Bibliography;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.KnownTable;
import workuptally.reference.tables.NamedTable;
import workuptally.reference.tables.ReferenceTable;
import workuptally.reference.tables.Source;
import workuptally.reference.tables.TableFile;
import workuptally.reference.tables.TableFiles;
import workuptally.reference.waste.RegulatoryLimit;
import workuptally.reference.waste.WasteStreams;

/**
 * All reference tables, loaded and checked once; immutable. What a written name means is not asked here: that is read in one place, and
 * rests on the rows of these tables.
 */
public final class Reference {
    private final Map<KnownTable, TableFile> files;
    private final boolean packed;
    private final NamedTable<Source> sources;
    private final SubstanceTables substances;
    private final Solutions solutions;
    private final NamedTable<PartitionRow> partition;
    private final HazardTables hazards;
    private final BenchTables bench;
    private final WasteStreams streams;
    private final List<RegulatoryLimit> regulatoryLimits;

    private Reference(Map<KnownTable, TableFile> files, boolean packed) throws IllegalReferenceException {
        this.files = files;
        this.packed = packed;
        sources = Bibliography.of(files);
        substances = SubstanceTables.of(files);
        solutions = Solutions.of(files);
        partition = PartitionRow.all(files);
        hazards = HazardTables.of(files);
        bench = BenchTables.of(files);
        streams = WasteStreams.of(files);
        regulatoryLimits = RegulatoryLimit.all(files);
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
    public List<AtomicWeightRow> atomicWeights() {
        return substances.atomicWeights();
    }

    /** All solvents. */
    public List<Solvent> solvents() {
        return substances.solvents();
    }

    /** All liquid reagents and products. */
    public List<Liquid> liquids() {
        return substances.liquids();
    }

    /** The words that stand around names of materials. */
    public List<NameWord> nameWords() {
        return substances.nameWords();
    }

    /** The words in a name that tell a class. */
    public List<NameClass> nameClasses() {
        return substances.nameClasses();
    }

    /** All metals that are collected apart. */
    public List<Metal> metals() {
        return substances.metals();
    }

    /** Solutions in water at any strength that the tables know. */
    public Solutions solutions() {
        return solutions;
    }

    /** All density tables, by any name or formula of their solute. */
    public NamedTable<AqueousDensity> aqueousDensities() {
        return solutions.densities();
    }

    /** All solutes, by name, alias or formula. */
    public NamedTable<Solute> solutes() {
        return solutions.solutes();
    }

    /** All named washes. */
    public List<Wash> washes() {
        return solutions.washes();
    }

    /** All oxidants. */
    public List<Oxidant> oxidants() {
        return substances.oxidants();
    }

    /** All drying agents. */
    public List<DryingAgent> dryingAgents() {
        return substances.dryingAgents();
    }

    /** Strengths at which solutions of a material carry its statements, by the key of its hazards. */
    public NamedTable<ConcentrationLimit> concentrationLimits() {
        return hazards.concentrationLimits();
    }

    /** Flash points of the mixtures of a solvent with water, in order of strength, by the key of its hazards. */
    public NamedTable<FlashPoint> flashPoints() {
        return hazards.flashPoints();
    }

    /** All materials with hazards listed. */
    public List<Hazard> hazards() {
        return hazards.hazards();
    }

    /** All hazard statements, by their code, for example {@code H225}. */
    public NamedTable<HStatement> hStatements() {
        return hazards.hStatements();
    }

    /** All materials. */
    public List<MaterialRow> materials() {
        return substances.materials();
    }

    /** Classes of materials and what happens where they meet. */
    public Reactivity reactivity() {
        return hazards.reactivity();
    }

    /** The glassware table. */
    public List<Glassware> glassware() {
        return bench.glassware();
    }

    /** A figure of the bench, in the unit of its row. */
    public double value(Threshold threshold) {
        return bench.rules().get(threshold).value();
    }

    /** The row of a figure of the bench. */
    public BenchRule benchRule(Threshold threshold) {
        return bench.rules().get(threshold);
    }

    /** Every figure of the bench, in the order in which the program names them. */
    public List<BenchRule> benchRules() {
        return List.copyOf(bench.rules().values());
    }

    /** What becomes of materials in a workup, by their class. */
    public NamedTable<ClassBehaviour> classBehaviours() {
        return substances.classBehaviours();
    }

    /** What forms of a substance hold beyond one another, in order of the table. */
    public List<AddedForm> addedForms() {
        return substances.addedForms();
    }

    /** The form that a name or note speaks of, the first of the table. */
    public Optional<SaltForm> saltForm(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        return substances.saltForms().stream().filter(form -> form.isIn(lower)).findFirst();
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
