package workuptally.reference;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * All reference tables, loaded and checked once; immutable.
 *
 * <p>Names are found without regard to case, spaces, hyphens, commas and brackets, by name, alias, key or registry number.
 */
public final class Reference {
    /** A number with per cent or molarity before or behind a name, in brackets or not. */
    private static final Pattern STRENGTH = Pattern.compile("^\\s*\\d+(?:[.,]\\d+)?\\s*(?:(?:wt\\.?\\s*)?%|M|N)(?=\\s)"
            + "|[\\s,(]+\\d+(?:[.,]\\d+)?\\s*(?:(?:wt\\.?\\s*)?%|M|N)\\s*\\)?\\s*$");

    private static final Pattern DRY_WORDS = Pattern.compile("(?i)[,\\s(]*\\b(?:anhydrous|anhyd\\.|anh\\.|dried)\\)?");

    private final Map<Table, TableFile> files;
    private final boolean packed;
    private final Map<String, Source> sources;
    private final List<AtomicWeight> atomicWeights;
    private final List<Solvent> solvents;
    private final List<Liquid> liquids;
    private final List<NameWord> nameWords;
    private final List<NameClass> nameClasses;
    private final List<AqueousDensity> aqueousDensities;
    private final List<Solute> solutes;
    private final List<Wash> washes;
    private final List<DryingAgent> dryingAgents;
    private final List<Oxidant> oxidants;
    private final List<Hazard> hazards;
    private final Map<String, List<ConcentrationLimit>> concentrationLimits;
    private final Map<String, HStatement> hStatements;
    private final List<MaterialRow> materials;
    private final Reactivity reactivity;
    private final List<Glassware> glassware;
    private final Map<Threshold, BenchRule> benchRules;
    private final Map<String, Metal> metals;
    private final Map<String, ClassBehaviour> classBehaviours;
    private final List<SaltForm> saltForms;
    private final List<AddedForm> addedForms;
    private final WasteStreams streams;
    private final List<RegulatoryLimit> regulatoryLimits;
    private final List<PartitionRow> partition;

    private final Map<String, AtomicWeight> atomicWeightsBySymbol = new LinkedHashMap<>();
    private final Map<String, Solvent> solventsByName = new LinkedHashMap<>();
    private final Map<String, Liquid> liquidsByName = new LinkedHashMap<>();
    private final Map<String, AqueousDensity> densitiesByName = new LinkedHashMap<>();
    private final Map<String, Solute> solutesByName = new LinkedHashMap<>();
    private final Map<String, Wash> washesByName = new LinkedHashMap<>();
    private final Map<String, DryingAgent> dryingAgentsByName = new LinkedHashMap<>();
    private final Map<String, Oxidant> oxidantsByName = new LinkedHashMap<>();
    private final Map<String, Hazard> hazardsByName = new LinkedHashMap<>();
    private final Map<String, MaterialRow> materialsByName = new LinkedHashMap<>();
    private final Map<String, List<PartitionRow>> partitionByCompound;
    private final Answers<Spelling> spellings = new Answers<>();
    private final Answers<Optional<Wash>> washesMeant = new Answers<>();
    private final Answers<Optional<Hazard>> hazardsMeant = new Answers<>();
    private final Answers<Optional<DryingAgent>> dryingAgentsMeant = new Answers<>();
    private final Answers<List<SolventShare>> blendsMeant = new Answers<>();

    private final Solutions solutions;
    private final WashNames washNames;
    private final SolventBlends blends;

    private Reference(Map<Table, TableFile> files, boolean packed) throws IllegalReferenceException {
        this.files = files;
        this.packed = packed;
        sources = byKey(each(files, Table.SOURCES, Source::of), Source::key);
        checkSources(files);
        atomicWeights = each(files, Table.ATOMIC_WEIGHTS, AtomicWeight::of);
        solvents = each(files, Table.SOLVENTS, Solvent::of);
        liquids = each(files, Table.LIQUIDS, Liquid::of);
        nameWords = each(files, Table.NAME_WORDS, NameWord::of);
        nameClasses = each(files, Table.NAME_CLASSES, NameClass::of);
        aqueousDensities = densities(files.get(Table.AQUEOUS_DENSITIES));
        solutes = each(files, Table.SOLUTES, Solute::of);
        washes = each(files, Table.WASHES, Wash::of);
        dryingAgents = each(files, Table.DRYING_AGENTS, DryingAgent::of);
        oxidants = each(files, Table.OXIDANTS, Oxidant::of);
        hazards = each(files, Table.HAZARDS, Hazard::of);
        concentrationLimits = each(files, Table.CONCENTRATION_LIMITS, ConcentrationLimit::of).stream()
                .collect(Collectors.groupingBy(ConcentrationLimit::hazard));
        hStatements = byKey(each(files, Table.H_STATEMENTS, HStatement::of), HStatement::code);
        materials = each(files, Table.MATERIALS, MaterialRow::of);
        reactivity = new Reactivity(
                each(files, Table.REACTIVITY_GROUPS, ReactivityGroup::of),
                each(files, Table.REACTIVITY_PAIRS, ReactivityPair::of),
                each(files, Table.REACTIVITY_STRENGTHS, ReactivityStrength::of));
        glassware = each(files, Table.GLASSWARE, Glassware::of);
        benchRules = thresholds(each(files, Table.BENCH_RULES, BenchRule::of));
        metals = byKey(each(files, Table.METALS, Metal::of), Metal::element);
        classBehaviours = byKey(each(files, Table.CLASS_BEHAVIOURS, ClassBehaviour::of), ClassBehaviour::materialClass);
        saltForms = each(files, Table.SALT_FORMS, SaltForm::of);
        addedForms = each(files, Table.FORM_DIFFERENCES, AddedForm::of);
        streams = WasteStreams.of(files);
        regulatoryLimits = each(files, Table.REGULATORY_LIMITS, RegulatoryLimit::of);
        partition = each(files, Table.PARTITION, PartitionRow::of);
        partitionByCompound = new LinkedHashMap<>(partitionBy(PartitionRow::compound));
        partitionBy(PartitionRow::cas).forEach(partitionByCompound::putIfAbsent);
        indexNames();
        solutions = new Solutions(washes, washesByName, solutesByName, densitiesByName);
        washNames = new WashNames(washes, washesByName, solutesByName, densitiesByName);
        blends = new SolventBlends(this::solvent);
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

    interface RowReader<T> {
        T read(Cells row) throws IllegalReferenceException;
    }

    static <T> List<T> each(Map<Table, TableFile> files, Table table, RowReader<T> reader)
            throws IllegalReferenceException {
        List<T> read = new ArrayList<>();
        for (Cells row : files.get(table).rows()) {
            read.add(reader.read(row));
        }
        return List.copyOf(read);
    }

    private static <T> Map<String, T> byKey(List<T> rows, Function<T, String> key) {
        Map<String, T> map = new LinkedHashMap<>();
        rows.forEach(row -> map.put(key.apply(row), row));
        return map;
    }

    private void checkSources(Map<Table, TableFile> files) throws IllegalReferenceException {
        for (Map.Entry<Table, TableFile> entry : files.entrySet()) {
            if (entry.getKey() != Table.SOURCES) {
                for (Cells row : entry.getValue().rows()) {
                    for (String key : row.sources("source")) {
                        if (!sources.containsKey(key)) {
                            throw row.wrong("source", key, "a key of sources.csv");
                        }
                    }
                }
            }
        }
    }

    private static Map<Threshold, BenchRule> thresholds(List<BenchRule> rows) {
        Map<Threshold, BenchRule> rules = new EnumMap<>(Threshold.class);
        rows.forEach(row -> Threshold.ofKey(row.key()).ifPresent(threshold -> rules.put(threshold, row)));
        return rules;
    }

    private Map<String, List<PartitionRow>> partitionBy(Function<PartitionRow, String> name) {
        return partition.stream()
                .collect(Collectors.groupingBy(
                        row -> Names.plain(name.apply(row)), LinkedHashMap::new, Collectors.toUnmodifiableList()));
    }

    private static List<AqueousDensity> densities(TableFile file) throws IllegalReferenceException {
        Map<String, List<Cells>> bySolute = new LinkedHashMap<>();
        for (Cells row : file.rows()) {
            bySolute.computeIfAbsent(row.text("solute"), solute -> new ArrayList<>())
                    .add(row);
        }
        List<AqueousDensity> read = new ArrayList<>();
        for (List<Cells> rows : bySolute.values()) {
            read.add(AqueousDensity.of(rows));
        }
        return List.copyOf(read);
    }

    private void indexNames() {
        atomicWeights.forEach(row -> atomicWeightsBySymbol.put(row.symbol(), row));
        solvents.forEach(row -> index(solventsByName, row, row.key(), row.name(), row.aliases()));
        liquids.forEach(row -> index(liquidsByName, row, row.key(), row.name(), row.aliases()));
        aqueousDensities.forEach(row -> index(densitiesByName, row, row.solute(), row.formula(), List.of()));
        solutes.forEach(row -> {
            index(solutesByName, row, row.name(), row.formula(), row.aliases());
            AqueousDensity table = densitiesByName.get(Names.plain(row.name()));
            if (table != null) {
                index(densitiesByName, table, row.name(), row.formula(), row.aliases());
            }
        });
        washes.forEach(row -> index(washesByName, row, row.key(), row.name(), row.aliases()));
        oxidants.forEach(row -> index(oxidantsByName, row, row.key(), row.name(), row.aliases()));
        dryingAgents.forEach(row -> {
            index(dryingAgentsByName, row, row.key(), row.name(), row.aliases());
            index(dryingAgentsByName, row, row.key(), withoutDry(row.name()), List.of());
        });
        materials.forEach(row -> {
            materialsByName.put(Names.plain(row.name()), row);
            row.aliases().forEach(alias -> materialsByName.putIfAbsent(Names.plain(alias), row));
        });
        materials.forEach(row -> materialsByName.putIfAbsent(Names.plain(row.key()), row));
        hazards.forEach(row -> index(hazardsByName, row, row.key(), row.name(), row.aliases()));
        indexNumbers(solventsByName, solvents, row -> row.cas().orElse(""));
        indexNumbers(liquidsByName, liquids, Liquid::cas);
        indexNumbers(solutesByName, solutes, Solute::cas);
        indexNumbers(dryingAgentsByName, dryingAgents, DryingAgent::cas);
        indexNumbers(hazardsByName, hazards, row -> row.cas().orElse(""));
    }

    /** Registry numbers, where one row alone has it: hydrogen chloride and its solutions share theirs. */
    private static <T> void indexNumbers(Map<String, T> map, List<T> rows, Function<T, String> number) {
        Map<String, List<T>> byNumber = rows.stream().collect(Collectors.groupingBy(number));
        byNumber.forEach((cas, same) -> {
            if (same.size() == 1 && !cas.isEmpty()) {
                map.putIfAbsent(Names.plain(cas), same.get(0));
            }
        });
    }

    private static <T> void index(Map<String, T> map, T row, String key, String name, List<String> aliases) {
        map.put(Names.plain(name), row);
        map.putIfAbsent(Names.plain(key), row);
        aliases.forEach(alias -> map.putIfAbsent(Names.plain(alias), row));
    }

    private static String withoutDry(String name) {
        return DRY_WORDS.matcher(name).replaceAll(" ").strip();
    }

    private <T> Optional<T> find(Map<String, T> map, String name) {
        Spelling spelling = spellings.of(name, Spelling::of);
        return Optional.ofNullable(map.get(spelling.plain()))
                .or(() -> Optional.ofNullable(map.get(spelling.withoutState())));
    }

    /** The two forms under which a name is looked up. */
    private record Spelling(String plain, String withoutState) {
        static Spelling of(String name) {
            return new Spelling(Names.plain(name), Names.plain(Names.withoutState(name)));
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

    /** The bibliography entry with a key. */
    public Optional<Source> source(String key) {
        return Optional.ofNullable(sources.get(key));
    }

    /** The whole bibliography, in order of key. */
    public List<Source> sources() {
        return List.copyOf(sources.values());
    }

    /** Standard atomic weight of an element by its symbol, case-sensitive. */
    public Optional<AtomicWeight> atomicWeight(String symbol) {
        return Optional.ofNullable(atomicWeightsBySymbol.get(symbol));
    }

    /** All atomic weights, in order of atomic number. */
    public List<AtomicWeight> atomicWeights() {
        return atomicWeights;
    }

    /** The solvent a name means; words such as dry, cold or glacial may stand or not. */
    public Optional<Solvent> solvent(String name) {
        return find(solventsByName, name);
    }

    /**
     * The listed solvents of a mixture made up by volume: {@code hexane/EtOAc 4:1}, {@code 5 % MeOH in DCM}, {@code 95 % ethanol}.
     *
     * @return shares that sum to 1; empty for a single solvent and for a mixture without a ratio or with an unknown part
     */
    public List<SolventShare> solventBlend(String name) {
        return blendsMeant.of(name, blends::find);
    }

    /** All solvents. */
    public List<Solvent> solvents() {
        return solvents;
    }

    /** The liquid reagent or product a name means; solvents have a table of their own. */
    public Optional<Liquid> liquid(String name) {
        return find(liquidsByName, name);
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
        return List.copyOf(metals.values());
    }

    /** Solutions in water at any strength that the tables know. */
    public Solutions solutions() {
        return solutions;
    }

    /** Density table of the solute a name or formula means. */
    public Optional<AqueousDensity> aqueousDensity(String solute) {
        return find(densitiesByName, solute);
    }

    /** All density tables. */
    public List<AqueousDensity> aqueousDensities() {
        return aqueousDensities;
    }

    /** The solute a name or formula means. */
    public Optional<Solute> solute(String name) {
        return find(solutesByName, name);
    }

    /** All solutes. */
    public List<Solute> solutes() {
        return solutes;
    }

    /**
     * The wash a name means: a named one ({@code brine}, {@code sat. NaHCO3}), or a solute at a strength ({@code 8 wt% NaHCO3},
     * {@code 6 M NaOH}, {@code 0.5 N HCl}) worked out from the density table at 20 °C, then with the key {@code derived}.
     *
     * @return empty where neither the name nor a solute and strength within the tables is understood
     */
    public Optional<Wash> wash(String name) {
        return washesMeant.of(name, washNames::find);
    }

    /** All named washes. */
    public List<Wash> washes() {
        return washes;
    }

    /** The oxidant a name means. */
    public Optional<Oxidant> oxidant(String name) {
        return find(oxidantsByName, name);
    }

    /** All oxidants. */
    public List<Oxidant> oxidants() {
        return oxidants;
    }

    /** The drying agent a name means; words like anhydrous may stand or not. */
    public Optional<DryingAgent> dryingAgent(String name) {
        return dryingAgentsMeant.of(
                name, n -> find(dryingAgentsByName, n).or(() -> find(dryingAgentsByName, withoutDry(n))));
    }

    /** All drying agents. */
    public List<DryingAgent> dryingAgents() {
        return dryingAgents;
    }

    /**
     * Hazards of the material a name means; a grade behind a comma or a strength may stand or not: {@code acetic acid, glacial},
     * {@code 10 % Pd/C}, {@code nBuLi 2.5 M}.
     */
    public Optional<Hazard> hazard(String name) {
        return hazardsMeant.of(name, this::findHazard);
    }

    private Optional<Hazard> findHazard(String name) {
        int comma = name.indexOf(", ");
        return find(hazardsByName, name)
                .or(() -> find(hazardsByName, comma < 1 ? name : name.substring(0, comma)))
                .or(() -> find(
                        hazardsByName, STRENGTH.matcher(name).replaceAll(" ").strip()));
    }

    /** Strengths at which solutions of a material carry its statements, by the key of its hazards; empty where none are listed. */
    public List<ConcentrationLimit> concentrationLimits(String hazard) {
        return concentrationLimits.getOrDefault(hazard, List.of());
    }

    /** All materials with hazards listed. */
    public List<Hazard> hazards() {
        return hazards;
    }

    /** Wording of a hazard statement, for example {@code H225}. */
    public Optional<HStatement> hStatement(String code) {
        return Optional.ofNullable(hStatements.get(code));
    }

    /** All hazard statements. */
    public List<HStatement> hStatements() {
        return List.copyOf(hStatements.values());
    }

    /** The material a name, alias or key means; a name that several rows share means none. */
    public Optional<MaterialRow> material(String name) {
        return find(materialsByName, name);
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

    /** What becomes of a class of materials in a workup; empty where nothing is known of it. */
    public Optional<ClassBehaviour> classBehaviour(String materialClass) {
        return Optional.ofNullable(classBehaviours.get(materialClass));
    }

    /** All classes whose behaviour is known. */
    public List<ClassBehaviour> classBehaviours() {
        return List.copyOf(classBehaviours.values());
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

    /** Partition rows of a compound, in all solvents. */
    public List<PartitionRow> partition(String compound) {
        return partitionByCompound.getOrDefault(Names.plain(compound), List.of());
    }

    /** All partition rows. */
    public List<PartitionRow> partition() {
        return partition;
    }
}
