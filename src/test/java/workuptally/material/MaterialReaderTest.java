package workuptally.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.chemistry.Formula;
import workuptally.reference.Reference;
import workuptally.reference.solutions.Wash;

/** Mistakes that a name must make impossible, each with what it would cost; readings are common practice of the trade. */
class MaterialReaderTest {
    private static final Reference REFERENCE = Reference.load();
    private static final MaterialReader READER = MaterialReader.packed();

    private static Set<String> heavyMetals(String written) {
        return READER.read(written).parts().stream()
                .flatMap(part -> part.heavyMetals().stream())
                .collect(Collectors.toSet());
    }

    @ParameterizedTest
    @ValueSource(strings = {"hydrazide", "benzhydrazide", "isonicotinic hydrazide", "Benzhydrazid"})
    void aHydrazideIsNoAzide(String written) {
        Set<String> classes = READER.read(written).classes();
        assertTrue(classes.stream().noneMatch(c -> c.contains("azide")), classes.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"zinc azide", "KN3", "Zn(N3)2", "Kaliumazid", "lithium azide"})
    void anAzideThatNoTableListsIsTreatedAsOne(String written) {
        assertTrue(READER.read(written).is("azide"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"MgCl2", "magnesium chloride", "lithium carbonate", "Li2CO3", "lithium chloride", "LiBr"})
    void aSaltOfAnActiveMetalIsNoOrganometallic(String written) {
        assertFalse(READER.read(written).is("organometallic"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"LiOtBu", "lithium tert-butoxide", "lithium methoxide", "NaOMe", "sodium tert-amylate", "LiOiPr"
            })
    void anAlkoxideIsABaseAndNoOrganometallic(String written) {
        assertTrue(READER.read(written).is("strong-base"));
        assertFalse(READER.read(written).is("organometallic"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"halogen-free solvent", "halogen-free waste", "chlorine-free water"})
    void freeOfHalogenIsNotHalogenated(String written) {
        Set<String> classes = READER.read(written).classes();
        assertTrue(classes.stream().noneMatch(c -> c.startsWith("halogen")), classes.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"EDC", "DMS", "EDA", "cocl2", "COCL2", "na", "Co", "Hf"})
    void aNameOfSeveralMeaningsIsAskedAboutAndNeverGuessed(String written) {
        Material material = READER.read(written);
        assertTrue(material.isAmbiguous());
        assertEquals(State.UNLISTED, material.state());
    }

    @Test
    void theFormulaBesideTheNameDecides() {
        assertEquals("1,2-Dichloroethane", read("EDC", "C2H4Cl2").main().name());
        assertEquals("EDC hydrochloride", read("EDC", "C8H17N3.HCl").main().name());
        assertEquals("Dimethyl sulfide", read("DMS", "C2H6S").main().name());
        assertEquals(State.UNLISTED, read("DMS", "C6H6").state());
    }

    private static Material read(String written, String formula) {
        return READER.read(written, Optional.of(Formula.parse(formula)));
    }

    @Test
    void aFormulaDescribesAMassAndNoReactivity() {
        Material material = read("ketone 7", "C14H18O3");
        assertEquals(State.DESCRIBED, material.state());
        assertTrue(material.classes().isEmpty());
    }

    @Test
    void anInorganicFormulaUnderAnotherNameIsThatMaterial() {
        assertEquals("Potassium carbonate", read("the base", "K2CO3").main().name());
    }

    @ParameterizedTest
    @CsvSource({
        "Pd/C, Pd",
        "Pd(OAc)2, Pd",
        "CuI, Cu",
        "NiCl2(dppp), Ni",
        "[Rh(nbd)2]BF4, Rh",
        "Kupfersulfat, Cu",
        "tin foil, Sn",
        "Na2WO4·2H2O, W",
        "mercuric thing, Hg"
    })
    void heavyMetalsAreFoundByNameAndByFormula(String written, String symbol) {
        assertEquals(Set.of(symbol), heavyMetals(written));
    }

    @ParameterizedTest
    @ValueSource(strings = {"palmitic acid", "leadership", "tincture of time", "Co-evaporated toluene", "copolymer"})
    void aWordThatOnlyBeginsLikeAMetalIsNone(String written) {
        assertEquals(Set.of(), heavyMetals(written));
    }

    @Test
    void strengthDecidesWhatSulfuricAcidIs() {
        assertTrue(READER.read("H2SO4").is("conc-sulfuric"));
        assertTrue(READER.read("konz. Schwefelsäure").is("conc-sulfuric"));
        assertFalse(READER.read("1.7 % H2SO4").is("conc-sulfuric"));
        assertFalse(READER.read("verd. Schwefelsäure").is("conc-sulfuric"));
        assertTrue(READER.read("1 M H2SO4").is("acid"));
    }

    @Test
    void aSaltOfABaseIsNoBase() {
        assertTrue(READER.read("aniline").is("base"));
        assertFalse(READER.read("aniline hydrochloride").is("base"));
        assertFalse(READER.read("Et3N·HCl").is("base"));
    }

    /** Protons and constants of the solute tables: phosphate takes two down to its dihydrogen salt, hydrochloric acid gives one. */
    @Test
    void capacityComesWithItsPart() {
        assertEquals(1, READER.read("2 N HCl").main().acidMolesPerMole().orElseThrow());
        assertEquals(2, READER.read("2 N HCl").main().molesPerLitre().orElseThrow(), 1e-9);
        assertEquals(2, READER.read("1 M K3PO4").main().baseMolesPerMole().orElseThrow());
        assertEquals(0.25, READER.read("0.5 N H2SO4").main().molesPerLitre().orElseThrow(), 1e-6);
    }

    @Test
    void whatIsDissolvedIsWhatCounts() {
        Material iodine = READER.read("iodine in dichloromethane");
        assertTrue(iodine.main().classes().contains("halogen"));
        assertEquals("dcm", iodine.carrierSolvent().orElseThrow().key());
        assertTrue(iodine.oxidant().isPresent());
    }

    /** Aqueous strengths by the density tables of the handbook, read as the washes name them. */
    @ParameterizedTest
    @CsvSource({
        "brine, brine",
        "water, water",
        "cold water, water",
        "ice water, water",
        "sat. NaCl, brine",
        "saturated aqueous NaCl, brine",
        "sat. NaHCO3, sat-nahco3",
        "sat NaHCO₃ (aq), sat-nahco3",
        "saturated sodium bicarbonate solution, sat-nahco3",
        "saturated aqueous NH4Cl, sat-nh4cl",
        "1M HCl, 1m-hcl",
        "'HCl, 1 M', 1m-hcl",
        "2 N NaOH, 2m-naoh",
        "10 wt% Na2S2O3, 10-na2s2o3",
        "10 % sodium thiosulfate, 10-na2s2o3",
        "10% aq. Na2S2O3, 10-na2s2o3",
        "sat. NaHSO3, sat-nahso3",
        "Rochelle salt, sat-rochelle",
        "sat. aq. Rochelle salt, sat-rochelle",
        "5 % LiCl, 5-licl",
        "half-saturated brine, half-brine",
        "half sat. brine, half-brine",
        "half-saturated NH4Cl, derived",
        "8 wt% NaHCO3, derived",
        "6 M NaOH, derived",
        "'0,5 M HCl', derived",
        "20% K2CO3 (aq), derived",
        "sat. CaCl2, derived",
        "sat'd NaHCO3, sat-nahco3",
        "'ges. NaCl-Lösung', brine",
        "ges. NaHCO3, sat-nahco3",
        "ice-cold brine, brine",
        "conc. HCl, conc-hcl",
        "HCl conc., conc-hcl",
        "conc. H2SO4, conc-h2so4",
        "85 % H3PO4, conc-h3po4",
        "conc. HNO3, conc-hno3",
        "25 % NH3, conc-nh3",
        "50% NaOH, derived",
        "5 % KHSO4, 5-khso4",
        "1 M LiOH, derived",
        "1 N oxalic acid, derived",
        "0.1 M EDTA, derived"
    })
    void washesAreFoundByNameOrSoluteAndStrength(String written, String key) {
        assertEquals(Optional.of(key), READER.read(written).wash().map(Wash::key));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"30 wt% NaHCO3", "40 M HCl", "8 wt% unobtainium", "sat. unobtainium", "HCl", "NaHCO3 solution"})
    void aStrengthBeyondTheTablesOrNotToldIsNoWash(String written) {
        assertTrue(READER.read(written).wash().isEmpty());
    }

    @ParameterizedTest
    @CsvSource({
        "hexane/EtOAc 4:1, n-hexane 0.8 ethyl-acetate 0.2",
        "EtOAc:heptane (1:4), ethyl-acetate 0.2 n-heptane 0.8",
        "9:1 hexanes/EtOAc, n-hexane 0.9 ethyl-acetate 0.1",
        "DCM-MeOH 95:5, dcm 0.95 methanol 0.05",
        "5 % MeOH in DCM, methanol 0.05 dcm 0.95",
        "ethanol (96 %), ethanol 0.96 water 0.04",
        "hexane/EtOAc, ''",
        "hexane/unobtainium 4:1, ''",
        "hexane 4:1, ''",
        "10 % hexane, ''",
        "THF, ''"
    })
    void mixturesOfSolventsAreByVolume(String written, String shares) {
        assertEquals(
                shares,
                READER.read(written).blend().stream()
                        .map(s -> s.solvent().key() + " " + Math.round(s.volumeFraction() * 1000) / 1000.0)
                        .collect(Collectors.joining(" ")));
    }

    @Test
    void aNearNameIsASuggestionAndAllEquallyNearOnesAreNamed() {
        assertEquals(List.of("Sodium sulfate", "Sodium sulfite"), READER.nearest("sodium sulfte"));
        assertEquals(List.of(), READER.nearest("1,1-dichloroethane"));
        assertEquals(List.of(), READER.nearest("MgCl2"));
        assertEquals(List.of(), READER.nearest("product 7"));
    }

    @Test
    void aNameIsReadOnce() {
        assertSame(READER.read("2.5 M n-BuLi in hexanes"), READER.read("2.5 M n-BuLi in hexanes"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "(",
                "((((",
                "%",
                "5 %",
                "4:1",
                "M",
                " in ",
                "/",
                "a/b/c/d/e",
                ";;;",
                "·",
                "1 M",
                "sat.",
                "1.2.3 M HCl",
                "1,2,3",
                "9.9.9",
                "12345678901234567890 % X",
                "5 % 6 % 7 % foo"
            })
    void oddTextsAreUnlistedAndNoFault(String written) {
        assertEquals(State.UNLISTED, READER.read(written).state());
    }

    /** Names of the tables are read as their own row, so that no row is out of reach; shared ones are asked about. */
    @Test
    void everyListedNameIsFound() {
        List<String> lost = Stream.of(
                        REFERENCE.materials().stream().map(row -> row.names().name()),
                        REFERENCE.hazards().stream().map(row -> row.name()),
                        REFERENCE.solvents().stream().map(row -> row.name()),
                        REFERENCE.liquids().stream().map(row -> row.name()),
                        REFERENCE.solutes().stream().map(row -> row.name()),
                        REFERENCE.dryingAgents().stream().map(row -> row.name()),
                        REFERENCE.oxidants().stream().map(row -> row.name()))
                .flatMap(names -> names)
                .filter(name -> READER.read(name).state() != State.LISTED)
                .distinct()
                .toList();
        assertEquals(List.of(), lost);
    }
}
