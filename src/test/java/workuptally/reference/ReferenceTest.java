package workuptally.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.material.Material;
import workuptally.material.MaterialReader;
import workuptally.reference.bench.Threshold;
import workuptally.reference.hazards.Hazard;
import workuptally.reference.hazards.Reactivity;
import workuptally.reference.hazards.ReactivityPair;
import workuptally.reference.solutions.PartitionRow;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.DryingAgent;
import workuptally.reference.substances.Liquid;
import workuptally.reference.substances.MaterialRow;
import workuptally.reference.substances.Solvent;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.IllegalReferenceException;

class ReferenceTest {
    private static final MaterialReader NAMES = MaterialReader.packed();
    private static final String RULE_HEADINGS = "key,name,value,unit,meaning,source,basis\n";
    private final Reference reference = Reference.load();

    @ParameterizedTest
    @CsvSource({
        "EtOAc, ethyl-acetate",
        "ethyl acetate, ethyl-acetate",
        "Ethyl-Acetate, ethyl-acetate",
        "CH₂Cl₂, dcm",
        "dichloromethane, dcm",
        "'N,N-dimethylformamide', dmf",
        "2-MeTHF, 2-methf",
        "Et2O, diethyl-ether",
        "t-BuOH, tert-butanol",
        "MTBE, mtbe"
    })
    void solventsAreFoundByNameOrAlias(String typed, String key) {
        assertEquals(Optional.of(key), NAMES.read(typed).solvent().map(Solvent::key));
    }

    @ParameterizedTest
    @CsvSource({
        "benzyl bromide, benzyl-bromide",
        "TMSCl, tmscl",
        "POCl3, phosphoryl-chloride",
        "'acetic anhydride (distilled)', acetic-anhydride",
        "Benzoylchlorid, benzoyl-chloride",
        "BF3·OEt2, bf3-oet2"
    })
    void liquidsAreFoundByNameOrAlias(String typed, String key) {
        assertEquals(Optional.of(key), NAMES.read(typed).liquid().map(Liquid::key));
    }

    @Test
    void everyLiquidIsAMaterialAndNoSolvent() {
        for (Liquid liquid : reference.liquids()) {
            List<String> names = new ArrayList<>(liquid.aliases());
            names.add(liquid.name());
            for (String name : names) {
                Material read = NAMES.read(name);
                assertTrue(read.solvent().isEmpty(), name);
                if (read.isAmbiguous()) {
                    assertTrue(
                            reference.materials().stream()
                                    .anyMatch(row -> row.names().sharedAliases().contains(name)),
                            name);
                } else {
                    assertTrue(read.main().row().isPresent(), name);
                    assertEquals(Optional.of(liquid), read.liquid(), name);
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "1 M LiOH, 0, 1.0",
        "2 M Natronlauge, 0, 2.0",
        "'0,5 M Salzsäure', 0.5, 0",
        "1 M NaHSO4, 1.0, 0",
        "1 M sodium bisulfate, 1.0, 0",
        "1 M tartaric acid, 2.0, 0",
        "1 N oxalic acid, 1.0, 0",
        "1 M K3PO4, 0, 2.0",
        "0.1 M EDTA, 0.1, 0",
        "sat. KF, 0, 0"
    })
    void capacityOfAWashIsThatOfItsSolute(String typed, double acid, double base) {
        Wash wash = NAMES.read(typed).wash().orElseThrow();
        assertEquals(acid, wash.acidMillimolesPerMillilitre().orElseThrow(), 0.001);
        assertEquals(base, wash.baseMillimolesPerMillilitre().orElseThrow(), 0.001);
    }

    @Test
    void soluteWithoutADensityTableGivesItsCapacityAndNoMass() {
        Wash wash = NAMES.read("1 M Rochelle salt").wash().orElseThrow();
        assertEquals(1.0, wash.concentration().molarityMolesPerLitre().orElseThrow());
        assertTrue(wash.concentration().densityGramsPerMillilitre().isEmpty());
        assertTrue(wash.concentration().massPercent().isEmpty());
        Wash byMass = NAMES.read("20 % Rochelle salt").wash().orElseThrow();
        assertTrue(byMass.concentration().molarityMolesPerLitre().isEmpty());
        assertTrue(byMass.baseMillimolesPerMillilitre().isEmpty());
    }

    @Test
    void basisOfAWashIsThatOfThePointsBesideIt() {
        assertEquals(
                Basis.COMMON_PRACTICE,
                NAMES.read("10 % KF").wash().orElseThrow().basis());
        assertEquals(Basis.MEMORY, NAMES.read("45 % KF").wash().orElseThrow().basis());
    }

    @Test
    void unknownNamesAreEmpty() {
        assertTrue(NAMES.read("unobtainium").solvent().isEmpty());
        assertTrue(NAMES.read("my special wash").wash().isEmpty());
        assertTrue(NAMES.read("8 wt% unobtainium").wash().isEmpty());
        assertTrue(NAMES.read("sat. unobtainium").wash().isEmpty());
        assertTrue(NAMES.read("sand").dryingAgent().isEmpty());
        assertTrue(NAMES.read("sand").hazard().isEmpty());
    }

    @ParameterizedTest
    @CsvSource({
        "brine, brine",
        "water, water",
        "sat. NaCl, brine",
        "saturated aqueous NaCl, brine",
        "sat. NaHCO3, sat-nahco3",
        "sat NaHCO₃ (aq), sat-nahco3",
        "saturated sodium bicarbonate solution, sat-nahco3",
        "sat. NH4Cl, sat-nh4cl",
        "saturated aqueous NH4Cl, sat-nh4cl",
        "1 M HCl, 1m-hcl",
        "1M HCl, 1m-hcl",
        "'HCl, 1 M', 1m-hcl",
        "2 N NaOH, 2m-naoh",
        "10 wt% Na2S2O3, 10-na2s2o3",
        "10 % sodium thiosulfate, 10-na2s2o3",
        "10% aq. Na2S2O3, 10-na2s2o3",
        "10 % citric acid, 10-citric",
        "sat. NaHSO3, sat-nahso3",
        "Rochelle salt, sat-rochelle",
        "5 % LiCl, 5-licl",
        "half-saturated brine, half-brine",
        "8 wt% NaHCO3, derived",
        "6 M NaOH, derived",
        "'0,5 M HCl', derived",
        "20% K2CO3 (aq), derived",
        "sat. CaCl2, derived",
        "ice water, water",
        "cold water, water",
        "sat'd NaHCO3, sat-nahco3",
        "'ges. NaCl-Lösung', brine",
        "ges. NaHCO3, sat-nahco3",
        "ice-cold brine, brine",
        "half sat. brine, half-brine",
        "half-saturated NH4Cl, derived",
        "conc. HCl, conc-hcl",
        "HCl conc., conc-hcl",
        "conc. H2SO4, conc-h2so4",
        "85 % H3PO4, conc-h3po4",
        "conc. HNO3, conc-hno3",
        "25 % NH3, conc-nh3",
        "50% NaOH, derived",
        "5 % KHSO4, 5-khso4",
        "sat. aq. Rochelle salt, sat-rochelle"
    })
    void washesAreFoundByNameOrSoluteAndStrength(String typed, String key) {
        assertEquals(Optional.of(key), NAMES.read(typed).wash().map(Wash::key));
    }

    @ParameterizedTest
    @CsvSource({
        "dry THF, thf",
        "'THF, anhydrous', thf",
        "DCM (dry), dcm",
        "abs. EtOH, ethanol",
        "glacial AcOH, acetic-acid",
        "cold ether, diethyl-ether",
        "hot 2-PrOH, 2-propanol",
        "Essigester, ethyl-acetate"
    })
    void stateOfASolventDoesNotHideItsName(String typed, String key) {
        assertEquals(Optional.of(key), NAMES.read(typed).solvent().map(Solvent::key));
    }

    @Test
    void dryIceIsNotWater() {
        assertTrue(NAMES.read("dry ice").solvent().isEmpty());
    }

    @Test
    void abbreviationOfTheCarbodiimideIsNotReadAsASolvent() {
        // Common practice in amide couplings: EDC is the carbodiimide.
        assertTrue(NAMES.read("EDC").solvent().isEmpty());
        assertTrue(NAMES.read("EDC").hazard().isEmpty());
    }

    @ParameterizedTest
    @CsvSource({
        "hexane/EtOAc 4:1, n-hexane 0.8 ethyl-acetate 0.2",
        "EtOAc:heptane (1:4), ethyl-acetate 0.2 n-heptane 0.8",
        "9:1 hexanes/EtOAc, n-hexane 0.9 ethyl-acetate 0.1",
        "DCM-MeOH 95:5, dcm 0.95 methanol 0.05",
        "DCM/MeOH/Et3N 94:5:1, dcm 0.94 methanol 0.05 triethylamine 0.01",
        "5 % MeOH in DCM, methanol 0.05 dcm 0.95",
        "95% EtOH, ethanol 0.95 water 0.05",
        "ethanol (96 %), ethanol 0.96 water 0.04"
    })
    void mixturesByVolumeAreTakenApart(String typed, String shares) {
        assertEquals(
                shares,
                NAMES.read(typed).blend().stream()
                        .map(s -> s.solvent().key() + " " + Math.round(s.volumeFraction() * 1000) / 1000.0)
                        .collect(java.util.stream.Collectors.joining(" ")));
    }

    @ParameterizedTest
    @CsvSource({"hexane/EtOAc", "hexane/unobtainium 4:1", "hexane 4:1", "5 % unobtainium in DCM", "10 % hexane", "THF"})
    void mixtureWithoutRatioOrWithAnUnknownPartIsNotGuessed(String typed) {
        assertTrue(NAMES.read(typed).blend().isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"10 % Pd/C, pd-c", "Pd/C (10 %), pd-c", "2.5 M n-BuLi, nbuli", "30 % H2O2, h2o2"})
    void hazardIsFoundWhateverTheStrength(String typed, String key) {
        assertEquals(Optional.of(key), NAMES.read(typed).hazard().map(Hazard::key));
    }

    @Test
    void concentratedAcidsAreAsStrongAsTheirLabels() {
        // From memory of supplier labels: HCl 37 % 12.0, H2SO4 96 % 18.0, HNO3 65 % 14.4, H3PO4 85 % 14.7, NH3 25 %
        // 13.4 mol/L.
        assertEquals(
                12.0,
                NAMES.read("conc. HCl")
                        .wash()
                        .orElseThrow()
                        .concentration()
                        .molarityMolesPerLitre()
                        .orElseThrow(),
                0.1);
        assertEquals(
                18.0,
                NAMES.read("conc. H2SO4")
                        .wash()
                        .orElseThrow()
                        .concentration()
                        .molarityMolesPerLitre()
                        .orElseThrow(),
                0.1);
        assertEquals(
                14.4,
                NAMES.read("conc. HNO3")
                        .wash()
                        .orElseThrow()
                        .concentration()
                        .molarityMolesPerLitre()
                        .orElseThrow(),
                0.1);
        assertEquals(
                14.7,
                NAMES.read("85% H3PO4")
                        .wash()
                        .orElseThrow()
                        .concentration()
                        .molarityMolesPerLitre()
                        .orElseThrow(),
                0.1);
        assertEquals(
                13.4,
                NAMES.read("conc. NH3")
                        .wash()
                        .orElseThrow()
                        .concentration()
                        .molarityMolesPerLitre()
                        .orElseThrow(),
                0.15);
    }

    @Test
    void halfSaturatedIsAsMuchWaterAgain() {
        // 5.485 mol/L NH4Cl and its own volume of water make 2.74 mol/L where volumes add.
        assertEquals(
                2.74,
                NAMES.read("half-sat. NH4Cl")
                        .wash()
                        .orElseThrow()
                        .concentration()
                        .molarityMolesPerLitre()
                        .orElseThrow(),
                0.04);
    }

    @Test
    void strengthOutsideTheTableGivesNoWash() {
        assertTrue(NAMES.read("30 wt% NaHCO3").wash().isEmpty());
        assertTrue(NAMES.read("40 M HCl").wash().isEmpty());
    }

    @Test
    void eightPercentBicarbonateIsWorkedOutFromTheTables() {
        // Common practice: 8 % NaHCO3 is about 1 mol/L.
        Wash wash = NAMES.read("8 wt% NaHCO3").wash().orElseThrow();
        assertEquals(1.055, wash.concentration().densityGramsPerMillilitre().orElseThrow(), 0.003);
        assertEquals(1.005, wash.concentration().molarityMolesPerLitre().orElseThrow(), 0.005);
        assertEquals(1.005, wash.baseMillimolesPerMillilitre().orElseThrow(), 0.005);
        assertEquals("CO2", wash.gas().orElseThrow().formula());
        assertTrue(wash.sources().contains("crc-concentrative"));
    }

    @Test
    void normalityCountsEquivalents() {
        // Common practice: 2 N sulfuric acid is 1 mol/L.
        Wash wash = NAMES.read("0.5 N H2SO4").wash().orElseThrow();
        assertEquals(0.25, wash.concentration().molarityMolesPerLitre().orElseThrow(), 1e-6);
        assertEquals(0.5, wash.acidMillimolesPerMillilitre().orElseThrow(), 1e-6);
    }

    @Test
    void sixMolarHydroxideSinksInTheTable() {
        // Lange's Handbook, memory: 20 % NaOH is 1.219 g/mL at 20 °C, 6.09 mol/L.
        Wash wash = NAMES.read("6 M NaOH").wash().orElseThrow();
        assertEquals(19.7, wash.concentration().massPercent().orElseThrow(), 0.2);
        assertEquals(1.216, wash.concentration().densityGramsPerMillilitre().orElseThrow(), 0.004);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "MgSO4",
                "magnesium sulfate",
                "magnesium sulfate, anhydrous",
                "anhydrous MgSO4",
                "Magnesium sulphate (anhydrous)",
                "dried MgSO4"
            })
    void dryingAgentsAreFoundWithOrWithoutAnhydrous(String typed) {
        assertEquals(Optional.of("mgso4"), NAMES.read(typed).dryingAgent().map(DryingAgent::key));
    }

    @Test
    void hazardsAndStatementsAreFound() {
        Hazard hazard = NAMES.read("DCM").hazard().orElseThrow();
        assertTrue(hazard.statements().contains("H351"));
        assertTrue(reference.hStatements().find("H225").orElseThrow().phrase().contains("flammable"));
    }

    @Test
    void aPairIsFoundInEitherOrderAndTheFinestClassFirst() {
        Reactivity reactivity = reference.reactivity();
        Reactivity.Membership azide = reactivity.membership(List.of("azide"), List.of());
        Reactivity.Membership dcm = reactivity.membership(List.of("dcm"), List.of("organic"));
        Reactivity.Membership citric = reactivity.membership(List.of("organic-acid"), List.of("organic"));
        Reactivity.Membership acrylate = reactivity.membership(List.of("michael-acceptor"), List.of("organic"));
        assertEquals(List.of("azide | dcm"), keys(reactivity.between(azide, dcm, Set.of())));
        assertEquals(List.of("azide | dcm"), keys(reactivity.between(dcm, azide, Set.of())));
        assertEquals(List.of("organic-acid | michael-acceptor"), keys(reactivity.between(citric, acrylate, Set.of())));
    }

    @Test
    void aThirdClassHasToBeThere() {
        Reactivity reactivity = reference.reactivity();
        Reactivity.Membership chloroform = reactivity.membership(List.of("chloroform"), List.of());
        Reactivity.Membership acetone = reactivity.membership(List.of("ketone"), List.of());
        assertTrue(reactivity.between(chloroform, acetone, Set.of()).stream().allMatch(ReactivityPair::ofChart));
        assertEquals(
                List.of("chloroform | ketone | strong-base"),
                keys(reactivity.between(chloroform, acetone, Set.of("strong-base"))));
    }

    @Test
    void strengthTellsConcentratedAcidFromAWash() {
        Reactivity reactivity = reference.reactivity();
        MaterialRow sulfuric = NAMES.read("sulfuric acid").main().row().orElseThrow();
        OptionalDouble unknown = OptionalDouble.empty();
        assertTrue(reactivity.membership(sulfuric, unknown, unknown).classes().contains("conc-sulfuric"));
        assertEquals(
                Set.of("acid"),
                reactivity.membership(sulfuric, OptionalDouble.of(1.7), unknown).classes());
        assertEquals(
                Set.of("acid"),
                reactivity.membership(sulfuric, unknown, OptionalDouble.of(2)).classes());
    }

    private static List<String> keys(List<ReactivityPair> pairs) {
        return pairs.stream().map(ReactivityPair::key).toList();
    }

    @Test
    void absentVapourPressureIsEmptyNotZero() {
        assertTrue(NAMES.read("petroleum ether")
                .solvent()
                .orElseThrow()
                .volatility()
                .antoine()
                .isEmpty());
        assertTrue(NAMES.read("petroleum ether")
                .solvent()
                .orElseThrow()
                .molarMassGramsPerMole()
                .isEmpty());
    }

    @Test
    void partitionRowsOfACompoundCoverItsSolvents() {
        assertTrue(reference.partition().findAll("benzoic acid").size() >= 4);
        PartitionRow row = reference.partition().findAll("Acetic acid").get(0);
        assertEquals(PartitionRow.Character.ACID, row.character());
        assertEquals(4.757, row.pKa().get(0), 1e-9);
    }

    @Test
    void laboratoryRowsReplaceAndAdd(@TempDir Path folder) throws IOException {
        Files.writeString(
                folder.resolve("bench-rules.csv"),
                RULE_HEADINGS + "expansion,Expansion,0.0011,1/K,house rule,local,local\n");
        Files.writeString(folder.resolve("readme.txt"), "not a table");
        Reference own = Reference.load(folder);
        assertEquals(0.0011, own.value(Threshold.EXPANSION), 0);
        assertEquals(Basis.LOCAL, own.benchRule(Threshold.EXPANSION).basis());
        assertEquals(reference.benchRules().size(), own.benchRules().size());
        assertEquals(
                "house rule",
                own.table("bench-rules").orElseThrow().rows().get(0).get(4));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bench-rules.csv | a,A,x,1,m,local,local | line 2: value reads 'x'",
                "bench-rules.csv | a,A,1e9,1,m,local,local | a number from",
                "bench-rules.csv | a,A,NaN,1,m,local,local | a number from",
                "bench-rules.csv | a,A,1,1,m,local,local | no figure of the program has this one",
                "bench-rules.csv | expansion,A,0.5,1,m,local,local | a number from 0.0 to 0.01",
                "bench-rules.csv | a,A,1,,m,local,local | unit is blank",
                "bench-rules.csv | a,A,1,1,m,nowhere,local | a key of sources.csv",
                "bench-rules.csv | a,A,1,1,m,local,guess | local, common practice or memory",
                "bench-rules.csv | a,A,1,1,m,local | 6 cells",
                "bench-rules.csv | 'a,A,1,1,m,local,local\na,A,2,1,m,local,local' | stands twice",
                "surprise.csv | a,A,1,1,m,local,local | is no reference table"
            })
    void damagedFilesAreRefusedWithOneSentence(String file, String row, String message, @TempDir Path folder)
            throws IOException {
        Files.writeString(folder.resolve(file), RULE_HEADINGS + row + "\n");
        IllegalReferenceException thrown = assertThrows(IllegalReferenceException.class, () -> Reference.load(folder));
        assertTrue(thrown.getMessage().contains(message), thrown.getMessage());
        assertTrue(thrown.getMessage().startsWith(file), thrown.getMessage());
    }

    @Test
    void wrongHeadingsAreRefused(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("bench-rules.csv"), "key,name,source,basis\na,A,local,local\n");
        IllegalReferenceException thrown = assertThrows(IllegalReferenceException.class, () -> Reference.load(folder));
        assertTrue(thrown.getMessage().contains("the headings must be those of"), thrown.getMessage());
    }

    @Test
    void fileThatIsNotUtf8IsRefused(@TempDir Path folder) throws IOException {
        Files.write(folder.resolve("bench-rules.csv"), new byte[] {(byte) 0xC3, (byte) 0x28});
        assertThrows(IllegalReferenceException.class, () -> Reference.load(folder));
    }

    @Test
    void oversizedFileIsRefused(@TempDir Path folder) throws IOException {
        Files.write(folder.resolve("bench-rules.csv"), new byte[4_000_001]);
        IllegalReferenceException thrown = assertThrows(IllegalReferenceException.class, () -> Reference.load(folder));
        assertTrue(thrown.getMessage().contains("larger than"), thrown.getMessage());
    }

    @Test
    void missingFolderIsRefused(@TempDir Path folder) {
        assertThrows(IllegalReferenceException.class, () -> Reference.load(folder.resolve("none")));
    }
}
