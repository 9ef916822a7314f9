package workuptally.report.view.labels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.book.files.UnreadableBookException;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.reference.Reference;
import workuptally.report.view.lines.ProposalLine;
import workuptally.report.view.wording.ReadableNumbers;

/**
 * Labels of containers whose contents no run of the book used, and what layers take along into them. Classes of the contents: Regulation (EC)
 * 1272/2008, Annex VI, entries of hydrogen chloride, sodium hydroxide, nitric acid, ammonia, hydrogen peroxide, chloroform (from memory);
 * a strong acid or base of pH 2 or less, 11.5 or more is corrosive, Annex I, 3.2.3.1.2 (from memory).
 */
class LabelsOfContainersTest {
    private static final String BURNS = "Causes severe skin burns and eye damage.";
    private static Review review;

    @BeforeAll
    static void read(@TempDir Path folder) throws IOException, UnreadableBookException {
        write(folder, "Runs", """
                Run,Date,Chemist,Reaction,Kind,Status
                AM,2026-05-05,C1,coupling washed with ammonia,reaction,in workup
                NI,2026-05-05,C1,nitration in acetic acid,reaction,in workup
                CN,2026-05-05,C1,displacement with sodium cyanide,reaction,in workup
                """);
        write(folder, "Products", """
                Run,Product,Wanted,Formula,Coefficient,Character
                AM,4-methylbiphenyl,yes,C13H12,1,neutral
                NI,methyl 3-nitrobenzoate,yes,C8H7NO4,1,neutral
                CN,nonanenitrile,yes,C9H17N,1,neutral
                """);
        write(folder, "Charges", """
                Run,Material,Role,Formula,Molar mass (g/mol),Coefficient,Actual amount,Actual unit,Assay (% w/w),Density (g/mL)
                AM,4-bromotoluene,substrate,C7H7Br,171.03,1,1.71,g,99,
                AM,toluene,solvent,,,,50,mL,,0.867
                NI,methyl benzoate,substrate,C8H8O2,136.15,1,6.81,g,99,
                NI,nitric acid 65 %,reagent,,,,25,mL,,1.39
                CN,1-bromooctane,substrate,C8H17Br,193.12,1,9.65,g,99,
                CN,sodium cyanide,reagent,NaCN,49.01,1,6.00,g,99,
                CN,ethanol,solvent,,,,40,mL,,0.789
                """);
        write(folder, "Workup", """
                Run,Step,Operation,From,Material,Portions,Volume (mL),Funnel (mL),Loads,pH after,Lower layer,Checked by,Emulsion,Gives organic,Gives aqueous,Gives other
                AM,1,wash,RM,ammonia 25 %,1,40,250,1,11.8,aqueous,density,none,O1,A1,
                NI,1,quench,RM,ice water,1,60,,,,,,,,,RM
                NI,2,extract,RM,toluene,1,60,500,1,,aqueous,density,none,O1,A1,
                CN,1,dilute,RM,water,1,100,,,,,,,,,RM
                CN,2,extract,RM,heptane,1,60,500,1,11,aqueous,density,none,O1,A1,
                """);
        write(folder, "Layers", """
                Run,Layer,Phase,Vessel,Volume (mL),Net (g),pH,Status,Made on
                AM,A1,aqueous,E-01,41,37,11.8,kept,2026-05-05
                NI,A1,aqueous,E-02,85,97,<1,kept,2026-05-05
                CN,A1,aqueous,E-03,140,140,11,kept,2026-05-05
                """);
        write(folder, "Containers", """
                Container,Waste stream,Capacity (L),Tare (g),Weighed on,Gross then (g),Contents then,Opened,Location,Contact
                ACID,"aqueous, acidic",10,400,2026-05-04,5400,water 4400 g; hydrogen chloride 600 g,2026-04-01,H,s
                STRONG,"aqueous, acidic",10,400,2026-05-04,2400,hydrochloric acid 37 % 1000 g; water 1000 g,2026-04-01,H,s
                WEAK,"aqueous, acidic",10,400,2026-05-04,5400,water 4830 g; hydrogen chloride 170 g,2026-04-01,H,s
                BASE,"aqueous, basic",10,400,2026-05-04,5400,water 4600 g; sodium hydroxide 400 g,2026-04-01,H,s
                BLEACH,aqueous oxidisers,5,300,2026-05-04,2300,water 1800 g; sodium hypochlorite 200 g,2026-04-01,H,s
                NITRIC,nitric acid waste,2.5,300,2026-05-04,1300,nitric acid 600 g; water 400 g,2026-04-01,H,s
                AMMONIA,"aqueous, basic",5,300,2026-05-04,1300,water 900 g; ammonia 100 g,2026-04-01,H,s
                PEROXIDE,oxidisers,5,300,2026-05-04,1300,water 700 g; hydrogen peroxide 300 g,2026-04-01,H,s
                CHROME,heavy metals,5,300,2026-05-04,1300,water 900 g; chromium trioxide 60 g; sulfuric acid 40 g,2026-04-01,H,s
                HAL,halogenated solvents,10,400,2026-05-04,4400,dichloromethane 3000 g; chloroform 1000 g,2026-04-01,H,s
                SOLV,non-halogenated solvents,10,400,2026-05-04,4400,acetone 3000 g; ethanol 1000 g,2026-04-01,H,s
                CYAN,cyanide,5,300,2026-05-04,1300,water 950 g; sodium cyanide 40 g; sodium hydroxide 10 g,2026-04-01,H,s
                ODD,"aqueous, neutral",5,300,2026-05-04,1300,water 950 g; unobtainium lye 50 g,2026-04-01,H,s
                NONE,"aqueous, neutral",5,300,2026-05-04,1300,,2026-04-01,H,s
                DONE,"aqueous, basic",5,300,2026-05-04,1300,water 1000 g,2026-04-01,H,s
                """);
        write(folder, "Transfers", """
                Transfer,Run,Layer,Material,Container,Amount (g),Status,By,Date
                T1,AM,A1,,BLEACH,37,proposed,C1,2026-05-07
                T2,NI,A1,,SOLV,97,proposed,C1,2026-05-07
                T3,CN,A1,,ACID,140,proposed,C1,2026-05-07
                T4,,,hydrogen chloride,CYAN,20,proposed,C1,2026-05-07
                T5,CN,A1,,DONE,10,done,C1,2026-05-07
                """);
        review = new ReviewBuilder(Reference.load(), "test").review(new BookReader().read(folder));
    }

    private static void write(Path folder, String table, String text) throws IOException {
        Files.writeString(folder.resolve(table.toLowerCase(java.util.Locale.ROOT) + ".csv"), text);
    }

    private static LabelText label(String container) {
        return LabelText.ofContainers(review, new ReadableNumbers('.')).stream()
                .filter(l -> l.name().equals(container))
                .findFirst()
                .orElseThrow();
    }

    private static String hazards(String container) {
        return label(container).hazards();
    }

    private static ProposalLine proposal(String id) {
        return ProposalLine.of(review).stream()
                .filter(l -> l.transfer().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void acidsAndBasesThatNoRunUsedSayThatTheyBurn() {
        for (String id : List.of("ACID", "WEAK", "BASE", "BLEACH", "NITRIC", "AMMONIA", "CHROME")) {
            assertTrue(hazards(id).contains(BURNS), id + ": " + hazards(id));
        }
    }

    @Test
    void theStrengthOfASolutionIsCounted() {
        assertTrue(
                label("STRONG").contents().contains("hydrogen chloride 18.5\u00A0%"),
                label("STRONG").contents());
    }

    /** A quarter of chloroform, toxic if inhaled: 3 mg/L / 0.25 = 12 mg/L, from 10 to 20 harmful (Annex I, 3.1.3.6.1, tables 3.1.1 and 3.1.2). */
    @Test
    void oxidantsPoisonsAndSolventsSayWhatTheyAre() {
        assertTrue(hazards("PEROXIDE").contains("eye damage"), hazards("PEROXIDE"));
        assertTrue(hazards("HAL").contains("Harmful if swallowed or if inhaled"), hazards("HAL"));
        assertTrue(hazards("CYAN").contains("Fatal if swallowed"), hazards("CYAN"));
        assertTrue(hazards("SOLV").contains("Highly flammable"), hazards("SOLV"));
    }

    @Test
    void whatNoTableKnowsAndWhatNobodyRecordedIsSaid() {
        assertTrue(hazards("ODD").contains("No hazard note is held for unobtainium lye"), hazards("ODD"));
        assertTrue(hazards("NONE").contains("Contents not recorded"), hazards("NONE"));
    }

    @Test
    void aLayerTakesWhatItMayHoldAlongIntoTheContainer() {
        assertTrue(hazards("DONE").contains("From CN A1"), hazards("DONE"));
        assertTrue(hazards("DONE").contains("sodium cyanide"), hazards("DONE"));
    }

    /** Chloramines: Prudent Practices in the Laboratory, table of incompatible chemicals (from memory). */
    @Test
    void anAmmoniaLayerIntoBleachIsNamedWithItsGas() {
        ProposalLine line = proposal("T1");
        assertEquals(ProposalLine.Group.DO_NOT, line.group());
        assertTrue(
                line.reasons().toString().contains("chloramines"),
                line.reasons().toString());
    }

    /** Nitric acid and acetone: Prudent Practices in the Laboratory, table of incompatible chemicals (from memory). */
    @Test
    void aLayerOfANitrationIntoAcetoneIsAStop() {
        ProposalLine line = proposal("T2");
        assertEquals(ProposalLine.Group.DO_NOT, line.group());
        assertTrue(line.reasons().toString().contains("acetone"), line.reasons().toString());
    }

    @Test
    void acidIntoACyanideContainerSetsNoHydrazoicAcidFree() {
        String reasons = proposal("T4").reasons().toString();
        assertTrue(reasons.contains("hydrogen cyanide"), reasons);
        assertFalse(reasons.contains("hydrazoic"), reasons);
        assertTrue(proposal("T3").reasons().toString().contains("hydrogen cyanide"));
    }
}
