package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.judgement.Review;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.report.view.wording.Wording;

/**
 * An acid set free from its salt takes a proton for each hydroxide: 80 mL of 2 M sodium hydroxide are 160 mmol, 12 mL of 6 M hydrochloric
 * acid 72 mmol (n = c·V). Benzoic acid has pKa 4.2 (usual textbook value). Invented runs.
 */
class NeutralisationShortTest {
    private static final String CODE = "neutralisation-short";

    @TempDir
    Path folder;

    /** Methyl benzoate with 160 mmol sodium hydroxide, washed, acidified with 6 M hydrochloric acid, filtered. */
    static ExampleBook saponified(String acidMillilitres, String pHAfter) {
        return ExampleBook.clean()
                .table(
                        "products",
                        "Run,Product,Wanted,Formula,Coefficient,Skeleton,Character,pKa\n"
                                + "X1,benzoic acid,yes,C7H6O2,1,methyl benzoate 1,acid,4.2\n")
                .table(
                        "charges",
                        "Run,Material,Role,Formula,Coefficient,Actual amount,Actual unit,Assay (% w/w),Molarity (mol/L)\n"
                                + "X1,methyl benzoate,substrate,C8H8O2,1,13.62,g,99,\n"
                                + "X1,2 M NaOH,reagent,NaOH,1,80,mL,,2.0\nX1,methanol,solvent,,,60,mL,,\n")
                .table(
                        "workup",
                        "Run,Step,Operation,From,Material,Portions,Volume (mL),Molarity (mol/L),pH after,Lower layer,Checked by,"
                                + "Emulsion,Gives organic,Gives aqueous,Gives other\n"
                                + "X1,1,strip,RM,,,,,,,,,,,RM+D1\n"
                                + "X1,2,wash,RM,MTBE,1,50,,13,aqueous,density,none,O0,Q1,\n"
                                + "X1,3,acidify,Q1,6 M HCl,1," + acidMillilitres + ",6," + pHAfter + ",,,,,,S1\n"
                                + "X1,4,filter,S1,,,,,,,,,,,P1+ML1\n")
                .table(
                        "layers",
                        "Run,Layer,Phase,Volume (mL),Net (g),Status\nX1,D1,distillate,,48,kept\nX1,O0,organic,48,36,kept\n"
                                + "X1,ML1,mother liquor,95,99,kept\n")
                .table(
                        "assays",
                        "Run,Sample,Substance,Method,Result,Unit\nX1,O0,benzoic acid,HPLC,<0.05,mg/mL\n"
                                + "X1,ML1,benzoic acid,HPLC,0.9,mg/mL\n")
                .table(
                        "isolated",
                        "Run,Lot,Product,Stage,From,Gross (g),Tare (g),Assay (% w/w),Relative standard uncertainty (%),Identity by\n"
                                + "X1,P1,benzoic acid,crude,S1,62.000,50.000,99.0,1.0,melting point\n");
    }

    @ParameterizedTest
    @CsvSource({"12, 2, 1", "12, '', 1", "20, 2, 1", "22, 2, 0", "28, 2, 0", "12, 5.5, 0"})
    void lessAcidThanTheBaseTookIsSaid(String millilitres, String pH, int expected) throws Exception {
        List<Finding> found = saponified(millilitres, pH).findings(folder, CODE);
        assertEquals(expected, found.size(), found::toString);
    }

    @Test
    void theLiquorWaitsAndTheFiguresAreNamed() throws Exception {
        Review review = saponified("12", "2").review(folder);
        Finding found = review.findings().stream()
                .filter(f -> f.code().word().equals(CODE))
                .findFirst()
                .orElseThrow();
        assertEquals(Severity.HOLD, found.severity());
        assertTrue(
                Wording.POINT.of(found.seen()).contains("72.0 mmol of acid was brought for 160.0 mmol of strong base"),
                Wording.POINT.of(found.seen()));
        assertTrue(review.findings().stream()
                .anyMatch(f -> f.code().word().equals("layer-waits")
                        && f.subject().layers().contains("ML1")));
    }

    /** What could have taken the base up, set acid free or gone another way: nothing is said. */
    @Test
    void whatCannotBeToldIsNotSaid() throws Exception {
        String step = "X1,3,acidify,Q1,6 M HCl,1,12,6,2,,,,,,S1\n";
        ExampleBook chloride = saponified("12", "2").plus("charges", "X1,benzyl chloride,reagent,C7H7Cl,1,3.0,g,99,");
        ExampleBook ammonium = saponified("12", "2").plus("charges", "X1,ammonium chloride,additive,NH4Cl,,5.0,g,99,");
        ExampleBook unlisted = saponified("12", "2").plus("charges", "X1,unobtainium dust,additive,,,5.0,g,99,");
        ExampleBook split = saponified("12", "2").with("workup", "O0,Q1,\n", "O0,Q1+Q2,\n");
        ExampleBook unknownAcid = saponified("12", "2").with("workup", "6 M HCl,1,12,6", "sulfamic acid,1,12,");
        ExampleBook twice = saponified("12", "2")
                .with("workup", step, step.replace(",,S1", ",,Q3") + "X1,3b,acidify,Q3,6 M HCl,1,16,6,2,,,,,,S1\n");
        ExampleBook neutral = saponified("12", "").with("products", "acid,4.2", "neutral,");
        for (ExampleBook book : List.of(chloride, ammonium, unlisted, split, unknownAcid, twice, neutral)) {
            List<Finding> found = book.findings(folder, CODE);
            assertEquals(List.of(), found, found::toString);
        }
    }

    /** 50 mL of 2 M hydrochloric acid are 100 mmol, 20 mL of 2 M sodium hydroxide 40 mmol. */
    @ParameterizedTest
    @CsvSource({"20, '', 1", "20, 12, 1", "48, 12, 0", "55, 12, 0"})
    void aBaseIsHeldAgainstTheAcidOfTheWorkup(String millilitres, String pH, int expected) throws Exception {
        ExampleBook book = ExampleBook.clean()
                .table(
                        "products",
                        "Run,Product,Wanted,Formula,Coefficient,Skeleton,Character,pKa\n"
                                + "X1,benzylamine,yes,C7H9N,1,benzaldehyde oxime 1,base,9.3\n")
                .table(
                        "charges",
                        "Run,Material,Role,Formula,Coefficient,Actual amount,Actual unit,Assay (% w/w)\n"
                                + "X1,benzaldehyde oxime,substrate,C7H7NO,1,4.84,g,99\nX1,ethyl acetate,solvent,,,60,mL,\n")
                .table(
                        "workup",
                        "Run,Step,Operation,From,Material,Portions,Volume (mL),pH after,Lower layer,Checked by,Emulsion,"
                                + "Gives organic,Gives aqueous,Gives other\n"
                                + "X1,1,back-extract,RM,2 M HCl,1,50,1,aqueous,density,none,O1,A1,\n"
                                + "X1,2,basify,A1,2 M NaOH,1," + millilitres + "," + pH + ",,,,,,A1b\n"
                                + "X1,3,extract,A1b,MTBE,1,40,,aqueous,density,none,O2,A2,\n"
                                + "X1,4,concentrate,O2,,,,,,,,,,D1+CR1\n")
                .table("layers", "Run,Layer,Phase,Volume (mL),Net (g),Status\nX1,A2,aqueous,72,75,kept\n")
                .table("assays", "Run,Sample,Substance,Method,Result,Unit\nX1,A2,benzylamine,HPLC,<0.1,mg/mL\n")
                .table(
                        "isolated",
                        "Run,Lot,Product,Stage,From,Gross (g),Tare (g),Assay (% w/w),Identity by\n"
                                + "X1,CR1,benzylamine,crude,O2,53.900,50.000,99.0,1H NMR\n");
        assertEquals(expected, book.findings(folder, CODE).size());
    }
}
