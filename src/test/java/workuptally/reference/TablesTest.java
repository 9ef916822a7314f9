package workuptally.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import workuptally.chemistry.AtomicWeights;
import workuptally.chemistry.Formula;
import workuptally.material.MaterialReader;
import workuptally.published.ReferenceWeights;
import workuptally.reference.hazards.Hazard;
import workuptally.reference.hazards.Reactivity;
import workuptally.reference.hazards.ReactivityGroup;
import workuptally.reference.hazards.ReactivityPair;
import workuptally.reference.solutions.AqueousDensity;
import workuptally.reference.solutions.PartitionRow;
import workuptally.reference.solutions.Solute;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.AtomicWeightRow;
import workuptally.reference.substances.DryingAgent;
import workuptally.reference.substances.Liquid;
import workuptally.reference.substances.MaterialRow;
import workuptally.reference.substances.Solvent;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.KnownTable;
import workuptally.reference.tables.Names;
import workuptally.reference.tables.ReferenceTable;

class TablesTest {
    private static final MaterialReader NAMES = MaterialReader.packed();
    private static final Reference REFERENCE = Reference.load();
    private static final double NORMAL_PRESSURE_KILOPASCALS = 101.325;

    static Stream<ReferenceTable> tables() {
        return REFERENCE.tables().stream();
    }

    private static List<String> column(ReferenceTable table, String name) {
        int index = table.columns().indexOf(name);
        return index < 0
                ? List.of()
                : table.rows().stream().map(row -> row.get(index)).toList();
    }

    @Test
    void everyTableIsLoaded() {
        assertEquals(
                Stream.of(KnownTable.values()).map(KnownTable::title).toList(),
                REFERENCE.tables().stream().map(ReferenceTable::name).toList());
        REFERENCE.tables().forEach(table -> assertFalse(table.rows().isEmpty(), table.name()));
    }

    @ParameterizedTest
    @MethodSource("tables")
    void noCellIsBlankAndEveryRowHasAllColumns(ReferenceTable table) {
        assertFalse(table.notes().isEmpty(), table.name());
        for (List<String> row : table.rows()) {
            assertEquals(table.columns().size(), row.size(), row.toString());
            assertTrue(row.stream().noneMatch(String::isBlank), row.toString());
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void everyColumnOfSourcesNamesTheBibliography(ReferenceTable table) {
        for (String name : table.columns()) {
            if (name.equals("source") || name.endsWith(" source")) {
                for (String cell : column(table, name)) {
                    for (String key : cell.equals("-") ? new String[0] : cell.split(";")) {
                        assertTrue(REFERENCE.sources().find(key).isPresent(), table.name() + ": " + key);
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void everyColumnOfBasesHoldsAKnownWord(ReferenceTable table) {
        for (String name : table.columns()) {
            if (name.equals("basis") || name.endsWith(" basis")) {
                for (String cell : column(table, name)) {
                    assertTrue(cell.equals("-") || Basis.of(cell).isPresent(), table.name() + ": " + cell);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void registryNumbersHaveTheirCheckDigit(ReferenceTable table) {
        // Rule of the CAS registry: the last digit is the sum of the others, each times its place from the right,
        // modulo 10.
        for (String cas : column(table, "cas")) {
            if (!cas.equals("-")) {
                assertTrue(cas.matches("\\d{2,7}-\\d\\d-\\d"), cas);
                String digits = cas.replace("-", "");
                int sum = 0;
                for (int i = 0; i < digits.length() - 1; i++) {
                    sum += (digits.charAt(i) - '0') * (digits.length() - 1 - i);
                }
                assertEquals(digits.charAt(digits.length() - 1) - '0', sum % 10, cas);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void molarMassesFollowFromTheFormulas(ReferenceTable table) {
        List<String> formulas = column(table, "formula");
        List<String> masses = column(table, "molar mass (g/mol)");
        AtomicWeights weights = ReferenceWeights.load();
        for (int i = 0; i < masses.size(); i++) {
            if (!masses.get(i).equals("-")) {
                double computed =
                        Formula.parse(formulas.get(i)).molarMass(weights).gramsPerMole();
                assertEquals(computed, Double.parseDouble(masses.get(i)), 0.001 * computed, formulas.get(i));
            }
        }
    }

    @Test
    void noNameMeansTwoRowsOfATable() {
        Map<String, String> seen = new HashMap<>();
        for (Solvent row : REFERENCE.solvents()) {
            List<String> names = new ArrayList<>(row.aliases());
            names.add(row.name());
            for (String name : names) {
                String other = seen.putIfAbsent(Names.plain(name), row.key());
                assertTrue(other == null || other.equals(row.key()), name + ": " + other + ", " + row.key());
                assertEquals(Optional.of(row.key()), NAMES.read(name).solvent().map(Solvent::key), name);
            }
        }
    }

    @Test
    void washesAndHazardsAreFoundByTheirOwnNames() {
        for (Wash row : REFERENCE.washes()) {
            assertEquals(Optional.of(row.key()), NAMES.read(row.name()).wash().map(Wash::key), row.name());
        }
        for (Hazard row : REFERENCE.hazards()) {
            assertEquals(Optional.of(row.key()), NAMES.read(row.name()).hazard().map(Hazard::key), row.name());
        }
    }

    @Test
    void abridgedAtomicWeightsLieInThePublishedValueOrInterval() {
        ReferenceTable table = REFERENCE.table("atomic-weights").orElseThrow();
        for (int i = 0; i < table.rows().size(); i++) {
            AtomicWeightRow row = REFERENCE.atomicWeights().get(i);
            String published = column(table, "published value (g/mol)").get(i);
            if (published.equals("-")) {
                double low =
                        Double.parseDouble(column(table, "interval low (g/mol)").get(i));
                double high = Double.parseDouble(
                        column(table, "interval high (g/mol)").get(i));
                assertTrue(row.weightGramsPerMole() >= low - row.halfWidthGramsPerMole(), row.symbol());
                assertTrue(row.weightGramsPerMole() <= high + row.halfWidthGramsPerMole(), row.symbol());
            } else {
                assertEquals(
                        Double.parseDouble(published),
                        row.weightGramsPerMole(),
                        row.halfWidthGramsPerMole(),
                        row.symbol());
            }
        }
    }

    @Test
    void antoineSetsGiveNormalPressureAtTheBoilingPoint() {
        int checked = 0;
        for (Solvent row : REFERENCE.solvents()) {
            if (row.volatility().antoine().isPresent()) {
                Solvent.Antoine set = row.volatility().antoine().get();
                double pressure =
                        Math.pow(10, set.a() - set.b() / (row.volatility().boilingPointCelsius() + 273.15 + set.c()));
                assertEquals(NORMAL_PRESSURE_KILOPASCALS, pressure, 0.03 * NORMAL_PRESSURE_KILOPASCALS, row.key());
                assertTrue(set.fromCelsius() < set.toCelsius(), row.key());
                checked++;
            }
        }
        assertEquals(46, checked);
    }

    @Test
    void densitiesRiseOrFallWithoutJumpsAlongEachTable() {
        for (AqueousDensity table : REFERENCE.aqueousDensities()) {
            double before = AqueousDensity.WATER_GRAMS_PER_MILLILITRE;
            double percent = 0;
            for (AqueousDensity.Point point : table.points()) {
                double slope = (point.gramsPerMillilitre() - before) / (point.massPercent() - percent);
                assertTrue(slope > -0.006 && slope < 0.025, table.solute() + " at " + point.massPercent());
                before = point.gramsPerMillilitre();
                percent = point.massPercent();
            }
            assertTrue(table.points().size() >= 8, table.solute());
        }
    }

    @Test
    void washRowsAgreeWithTheDensityTables() {
        for (Wash wash : REFERENCE.washes()) {
            Optional<AqueousDensity> table = wash.solute().flatMap(REFERENCE.aqueousDensities()::find);
            if (table.isPresent() && wash.concentration().massPercent().isPresent()) {
                double density = table.get()
                        .densityGramsPerMillilitre(
                                wash.concentration().massPercent().getAsDouble())
                        .orElseThrow();
                assertEquals(
                        density,
                        wash.concentration().densityGramsPerMillilitre().orElseThrow(),
                        0.002,
                        wash.key());
            }
        }
    }

    @Test
    void washCapacityIsMolarityTimesTheSolutesEquivalents() {
        for (Wash wash : REFERENCE.washes()) {
            Optional<Solute> solute = wash.solute().flatMap(REFERENCE.solutes()::find);
            if (solute.isPresent()
                    && wash.concentration().molarityMolesPerLitre().isPresent()) {
                double molarity = wash.concentration().molarityMolesPerLitre().getAsDouble();
                assertEquals(
                        molarity * solute.get().acidBase().acidMolesPerMole(),
                        wash.acidMillimolesPerMillilitre().orElseThrow(),
                        0.002,
                        wash.key());
                assertEquals(
                        molarity * solute.get().acidBase().baseMolesPerMole(),
                        wash.baseMillimolesPerMillilitre().orElseThrow(),
                        0.002,
                        wash.key());
            }
        }
    }

    @Test
    void theoreticalUptakeFollowsFromTheHydrate() {
        AtomicWeights weights = ReferenceWeights.load();
        double water = Formula.parse("H2O").molarMass(weights).gramsPerMole();
        for (DryingAgent row : REFERENCE.dryingAgents()) {
            if (row.dryForm().formula().isPresent()) {
                double dry = Formula.parse(row.dryForm().formula().get())
                        .molarMass(weights)
                        .gramsPerMole();
                double wet =
                        Formula.parse(row.uptake().hydrate()).molarMass(weights).gramsPerMole();
                assertEquals((wet - dry) / dry, row.uptake().theoreticalGramsPerGram(), 0.001, row.key());
                double molecules = (wet - dry) / water;
                assertEquals(Math.rint(2 * molecules), 2 * molecules, 0.01, row.key());
            }
            assertTrue(row.uptake().practicalLowGramsPerGram() <= row.uptake().practicalHighGramsPerGram(), row.key());
            assertTrue(
                    row.uptake().practicalHighGramsPerGram() <= row.uptake().theoreticalGramsPerGram() + 0.005,
                    row.key());
        }
    }

    @Test
    void everyStatementCodeHasItsWording() {
        Set<String> used = new HashSet<>();
        REFERENCE.hazards().forEach(row -> {
            used.addAll(row.statements());
            used.addAll(row.classification().furtherSupplierStatements());
        });
        REFERENCE.solvents().forEach(row -> used.addAll(row.hazards().statements()));
        assertTrue(used.size() > 50);
        used.forEach(code -> assertTrue(REFERENCE.hStatements().find(code).isPresent(), code));
    }

    /**
     * Source: Regulation (EC) 1272/2008, Annex I, table 2.6.1: flash point below 23 °C and boiling up to 35 °C category 1 (H224), below 23 °C
     * category 2 (H225), up to 60 °C category 3 (H226). A graver statement than the table asks for is left alone.
     */
    @Test
    void everySolventThatFlashesSaysSo() {
        int flammable = 0;
        for (Solvent solvent : REFERENCE.solvents()) {
            Set<String> codes = new HashSet<>(
                    NAMES.read(solvent.name()).hazard().orElseThrow().statements());
            if (solvent.hazards().flashesBelow(60.01)) {
                // flash points of different sources lie some kelvin apart: n-butyl acetate, 22 °C here, is category 3
                // in Annex VI
                Set<String> asked = !solvent.hazards().flashesBelow(20)
                        ? Set.of("H224", "H225", "H226")
                        : solvent.volatility().boilingPointCelsius() <= 35 ? Set.of("H224") : Set.of("H224", "H225");
                assertTrue(codes.stream().anyMatch(asked::contains), solvent.name() + " " + codes);
                flammable++;
            }
            boolean hydrocarbon = NAMES.read(solvent.name()).is("hydrocarbon");
            assertTrue(
                    !hydrocarbon || codes.contains("H304"), solvent.name() + ": a thin hydrocarbon, into the airways");
        }
        assertTrue(flammable > 40);
    }

    /** Note P of Annex VI: carcinogen and mutagen only where there is 0.1 % benzene or more, which suppliers keep it below. */
    @Test
    void statementsThatHoldWithAnImpurityAreNotSaidOfTheSolvent() {
        for (Hazard hazard : REFERENCE.hazards()) {
            if (hazard.classification()
                    .note()
                    .filter(n -> n.contains("note P") || n.contains("notes P"))
                    .isPresent()) {
                assertEquals(List.of("H225", "H304", "H315", "H336", "H411"), hazard.statements(), hazard.key());
                assertTrue(hazard.classification().note().get().contains("H350"), "said beside it");
            }
        }
    }

    @Test
    void everyUsualWasteStreamExists() {
        REFERENCE
                .hazards()
                .forEach(row -> assertTrue(
                        REFERENCE.streams().find(row.usualWasteStream()).isPresent(), row.key()));
    }

    @Test
    void everyClassOfAMaterialIsKnown() {
        Reactivity reactivity = REFERENCE.reactivity();
        for (MaterialRow row : REFERENCE.materials()) {
            Stream.concat(row.behaviour().classes().stream(), row.behaviour().parentClasses().stream())
                    .forEach(name ->
                            assertTrue(reactivity.group(name).isPresent(), row.key() + " is of the class " + name));
            assertFalse(
                    row.behaviour().classes().stream().anyMatch(name -> name.startsWith(ReactivityPair.CHART)),
                    row.key());
        }
    }

    @Test
    void noClassIsAboveItself() {
        for (ReactivityGroup group : REFERENCE.reactivity().groups()) {
            Set<String> above = REFERENCE.reactivity().ancestors(group.key());
            assertFalse(above.contains(group.key()), group.key());
            assertTrue(above.containsAll(group.parentClasses()), group.key());
            group.laboratoryClasses()
                    .forEach(name ->
                            assertTrue(REFERENCE.reactivity().group(name).isPresent(), group.key() + " holds " + name));
        }
    }

    @Test
    void aPairStandsOnceInEitherOrder() {
        Map<String, String> seen = new HashMap<>();
        for (ReactivityPair pair : REFERENCE.reactivity().pairs()) {
            List<String> classes =
                    Stream.of(pair.classA(), pair.classB()).sorted().toList();
            String key = classes + pair.thirdClass().orElse("");
            assertEquals(null, seen.put(key, pair.key()), key);
            pair.thirdClass()
                    .ifPresent(third ->
                            assertTrue(REFERENCE.reactivity().group(third).isPresent(), third));
            assertEquals(pair.classA().startsWith("epa-"), pair.classB().startsWith("epa-"), key);
        }
    }

    @Test
    void everyClassOfAPairIsThatOfAMaterialOrAStep() {
        Set<String> there = new HashSet<>(Set.of("evaporation", "non-halogenated"));
        for (MaterialRow row : REFERENCE.materials()) {
            there.addAll(REFERENCE
                    .reactivity()
                    .membership(row, OptionalDouble.empty(), OptionalDouble.empty())
                    .classes());
        }
        for (ReactivityPair pair : REFERENCE.reactivity().pairs()) {
            if (!pair.ofChart()) {
                assertTrue(there.contains(pair.classA()), pair.classA());
                assertTrue(there.contains(pair.classB()), pair.classB());
            }
        }
    }

    @Test
    void aNameMeansOneMaterialSaveTheSharedOnes() {
        Map<String, String> seen = new HashMap<>();
        Map<String, Integer> shared = new HashMap<>();
        for (MaterialRow row : REFERENCE.materials()) {
            row.names().sharedAliases().forEach(alias -> shared.merge(Names.plain(alias), 1, Integer::sum));
        }
        for (MaterialRow row : REFERENCE.materials()) {
            for (String name : Stream.concat(Stream.of(row.names().name()), row.names().aliases().stream())
                    .toList()) {
                String other = seen.putIfAbsent(Names.plain(name), row.key());
                assertTrue(other == null || other.equals(row.key()), name + ": " + other + ", " + row.key());
                assertFalse(shared.containsKey(Names.plain(name)), name);
                assertEquals(
                        Optional.of(row.key()), NAMES.read(name).main().row().map(MaterialRow::key), name);
            }
        }
        shared.forEach((alias, rows) -> assertTrue(rows > 1, alias));
    }

    @Test
    void aMaterialAgreesWithTheOtherTables() {
        for (MaterialRow row : REFERENCE.materials()) {
            row.hazards().ifPresent(key -> {
                assertTrue(REFERENCE.hazards().stream().anyMatch(h -> h.key().equals(key)), key);
                assertTrue(row.rememberedStatements().isEmpty(), row.key());
            });
            row.rememberedStatements()
                    .forEach(code ->
                            assertTrue(REFERENCE.hStatements().find(code).isPresent(), row.key() + ": " + code));
            for (Solute solute : REFERENCE.solutes()) {
                if (row.names().cas().equals(Optional.of(solute.cas()))) {
                    assertEquals(
                            solute.acidBase().acidMolesPerMole(),
                            row.behaviour().acidMolesPerMole().orElseThrow(),
                            0,
                            row.key());
                    assertEquals(
                            solute.acidBase().baseMolesPerMole(),
                            row.behaviour().baseMolesPerMole().orElseThrow(),
                            0,
                            row.key());
                }
            }
        }
        for (Hazard hazard : REFERENCE.hazards()) {
            assertTrue(
                    REFERENCE.materials().stream().anyMatch(row -> row.hazards().equals(Optional.of(hazard.key()))),
                    hazard.key());
        }
    }

    @Test
    void ionisableCompoundsHaveAConstantAndNeutralOnesNone() {
        for (PartitionRow row : REFERENCE.partition()) {
            boolean neutral = row.character() == PartitionRow.Character.NEUTRAL;
            assertEquals(neutral, row.pKa().isEmpty(), row.compound());
            assertTrue(
                    row.character() != PartitionRow.Character.AMPHOLYTE
                            || row.pKa().size() == 2,
                    row.compound());
        }
    }

    @Test
    void wordingNeverTellsAnyoneToLetGoOfWaste() {
        for (ReferenceTable table : REFERENCE.tables()) {
            for (List<String> row : table.rows()) {
                String text = String.join(" ", row).toLowerCase(java.util.Locale.ROOT);
                assertFalse(text.matches(".*(discard|dispos|safe to|throw|bin it).*"), text);
            }
        }
    }

    /** Riddick, Bunger, Sakano, Organic Solvents, 4th ed., densities at 20 °C (memory): a second source beside the rows' own. */
    @ParameterizedTest
    @CsvSource({
        "ethyl acetate, 0.9006",
        "toluene, 0.8669",
        "acetone, 0.7900",
        "methanol, 0.7913",
        "chloroform, 1.4891",
        "cyclohexane, 0.7785",
        "1-butanol, 0.8097",
        "pyridine, 0.9832"
    })
    void densitiesAgreeWithASecondSource(String name, double gramsPerMillilitre) {
        assertEquals(
                gramsPerMillilitre,
                NAMES.read(name).solvent().orElseThrow().density().gramsPerMillilitre(),
                0.002);
    }

    /** Perry's Chemical Engineers' Handbook (DIPPR 105) and VDI Heat Atlas, correlations worked out at 20 °C: a second source. */
    @ParameterizedTest
    @CsvSource({
        "acetic anhydride, 1.0811",
        "aniline, 1.0202",
        "benzaldehyde, 1.0455",
        "bromobenzene, 1.4936",
        "iodobenzene, 1.8300",
        "nitrobenzene, 1.2035",
        "bromine, 3.1215",
        "bromoethane, 1.4587",
        "acetophenone, 1.0274",
        "cyclohexanone, 0.9470",
        "cyclohexene, 0.8110",
        "styrene, 0.9049",
        "diethylamine, 0.7078",
        "diisopropylamine, 0.7176",
        "ethylenediamine, 0.8975",
        "piperidine, 0.8627",
        "phenylhydrazine, 1.0965",
        "furfural, 1.1594",
        "thiophenol, 1.0775",
        "phosphorus trichloride, 1.5755",
        "carbon disulfide, 1.2632",
        "glycerol, 1.2612",
        "methyl benzoate, 1.0886"
    })
    void densitiesOfLiquidsAgreeWithASecondSource(String name, double gramsPerMillilitre) {
        Liquid liquid = NAMES.read(name).liquid().orElseThrow();
        assertEquals(
                gramsPerMillilitre,
                liquid.densityGramsPerMillilitre(),
                2 * liquid.standardUncertaintyGramsPerMillilitre());
    }

    /** Half the last figure at least, and no more than one part in fifty. */
    @Test
    void uncertaintiesOfLiquidsAreOfTheRightSize() {
        for (Liquid liquid : REFERENCE.liquids()) {
            double relative = liquid.standardUncertaintyGramsPerMillilitre() / liquid.densityGramsPerMillilitre();
            assertTrue(relative >= (liquid.basis() == Basis.MEMORY ? 0.01 : 0.003), liquid.key());
            assertTrue(relative < 0.02, liquid.key());
        }
    }

    /** Lange's Handbook of Chemistry, vapour pressures at 20 °C in kPa (memory): water 2.339, acetone 24.7, methanol 13.0, ether 58.9. */
    @ParameterizedTest
    @CsvSource({"water, 2.339", "acetone, 24.7", "methanol, 13.0", "diethyl ether, 58.9", "toluene, 2.9"})
    void vapourPressuresAgreeWithASecondSource(String name, double kilopascals) {
        Solvent.Antoine set =
                NAMES.read(name).solvent().orElseThrow().volatility().antoine().orElseThrow();
        double pressure = Math.pow(10, set.a() - set.b() / (20 + 273.15 + set.c()));
        assertEquals(kilopascals, pressure, 0.02 * kilopascals);
    }

    /** Perry's Chemical Engineers' Handbook, densities of aqueous solutions at 20 °C (memory). */
    @ParameterizedTest
    @CsvSource({
        "NaCl, 10, 1.0707",
        "NaCl, 20, 1.1478",
        "NaOH, 10, 1.1089",
        "NaOH, 20, 1.2191",
        "HCl, 10, 1.0474",
        "HCl, 20, 1.0980",
        "H2SO4, 10, 1.0661",
        "NH4Cl, 10, 1.0286",
        "Na2CO3, 10, 1.1029"
    })
    void solutionDensitiesAgreeWithASecondSource(String solute, double massPercent, double gramsPerMillilitre) {
        assertEquals(
                gramsPerMillilitre,
                REFERENCE
                        .aqueousDensities()
                        .find(solute)
                        .orElseThrow()
                        .densityGramsPerMillilitre(massPercent)
                        .orElseThrow(),
                0.001);
    }

    @Test
    void interpolationInvertsAndStopsAtTheEndsOfTheTable() {
        AqueousDensity table =
                REFERENCE.aqueousDensities().find("sodium bicarbonate").orElseThrow();
        double molarity = table.molarityMolesPerLitre(7.3).orElseThrow();
        assertEquals(7.3, table.massPercentAt(molarity).orElseThrow(), 1e-9);
        assertEquals(8.73, table.strongestMassPercent(), 1e-9);
        assertTrue(table.densityGramsPerMillilitre(8.74).isEmpty());
        assertTrue(table.densityGramsPerMillilitre(-0.01).isEmpty());
        assertTrue(table.massPercentAt(2).isEmpty());
        assertTrue(table.massPercentAt(-1).isEmpty());
        assertEquals(0.9982, table.densityGramsPerMillilitre(0).orElseThrow(), 1e-12);
    }
}
