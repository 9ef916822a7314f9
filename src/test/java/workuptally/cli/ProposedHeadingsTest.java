package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is proposed for lists whose headings are easily misread; invented lists. */
class ProposedHeadingsTest {
    @TempDir
    private Path folder;

    private String json = "";

    /** What the terminal says of a list, its spaces and line breaks as one space. */
    private String proposed(String list) throws IOException {
        Path file = Files.writeString(folder.resolve("list.csv"), list);
        Call call = Call.of("headings", file);
        assertEquals(0, call.code(), call::err);
        json = Files.readString(folder.resolve("list-headings.json"));
        return call.out().replaceAll("\\s+", " ");
    }

    @Test
    void aVolumeBehindAHeadingThatIsNotUnderstoodIsAskedAbout() throws IOException {
        String out = proposed("Nr.;Edukt;Einwaage (g);Reagenz;Zebra;V (ml);Produkt;Auswaage (g)\n"
                + "S-1;Vanillin;2,9;Iodmethan;Aceton;29;Veratrumaldehyd;2,2\n");
        assertTrue(
                out.contains("'V (ml)': volume of the reagent, or of 'Zebra', which stands between and was not"
                        + " understood?"),
                out);
        assertFalse(json.contains("\"Actual amount\": \"V (ml)\""), json);
    }

    @Test
    void aVolumeBehindASecondReagentIsAskedAbout() throws IOException {
        String out = proposed("No,SM,mg,Reagent,mmol,Reagent,mL,Product,g\nS-1,a,500,b,3,c,20,d,0.3\n");
        assertTrue(out.contains("'mL': volume of the reagent, or of 'Reagent #2'"), out);
    }

    @Test
    void theVolumeIsThatOfTheSolventWhereItsHeadingIsKnown() throws IOException {
        String out = proposed(
                "Nr.;Edukt;Einwaage (g);Reagenz;\u00c4quivalente Reagenz;L\u00f6semittel;V (ml);Produkt;Auswaage (g)\n"
                        + "S-1;Vanillin;2,9;Iodmethan;1,2;Aceton;29;Veratrumaldehyd;2,2\n");
        assertTrue(out.contains("V (ml) volume of the solvent, by its place"), out);
        assertTrue(out.contains("\u00c4quivalente Reagenz equivalents of the reagent"), out);
    }

    @Test
    void aSecondStartingMaterialInEquivalentsIsAReagent() throws IOException {
        String out = proposed("Nr.;Edukt 1;mmol;Edukt 2;\u00c4quiv.;Produkt;Auswaage [mg]\nA;a;5;b;1,2;c;800\n");
        assertTrue(out.contains("\u00c4quiv. equivalents of the substrate 2"), out);
        assertTrue(json.contains("\"Role\": \"= reagent\""), json);
    }

    @Test
    void partnersAndReagentsByTheirNames() throws IOException {
        String out = proposed(
                "Expt,Acid,Acid MW,Acid (mg),Amine,Amine (mg),eq amine,HATU (eq),DIPEA (mL),DMF (mL),Product,crude (mg)\n"
                        + "M-1,nicotinic acid,123.11,246,morpholine,209,1.2,1.2,1.05,8,amide,410\n");
        assertFalse(out.contains("Not understood"), out);
        assertTrue(out.contains("the acid as the starting material"), out);
        assertTrue(json.contains("\"Material\": \"= HATU\""), json);
        assertTrue(
                json.contains("\"Material\": \"= DMF\", \"Role\": \"= solvent\"")
                        || json.contains("\"= DMF\"") && json.contains("\"= solvent\""),
                json);
    }

    @Test
    void aClassWithMaterialsInItsHeadings() throws IOException {
        String out = proposed(
                "Student,benzaldehyde (g),ethanol (mL),dibenzalacetone crude (g),dibenzalacetone pure (g),% yield\n"
                        + "Ann,2.05,20,1.95,1.56,69\n");
        assertFalse(out.contains("Not understood"), out);
        assertFalse(out.contains("as that of the purified product"), out);
        assertTrue(out.contains("no starting material, since no heading says which it is"), out);
        assertTrue(json.contains("\"Product\": \"= dibenzalacetone\""), json);
    }

    @Test
    void aYieldAloneIsNoWeight() throws IOException {
        String out = proposed("Student,Date,Zebra (g),% yield\nAnn,2026-04-15,2.05,69\n");
        assertFalse(out.contains("the weight of"), out);
    }

    @Test
    void inputAndOutputOfAKiloLaboratory() throws IOException {
        String out = proposed(
                "Batch No.,Start,Input (kg),Input material,Input MW,Output (kg),Product,Wet/Dry,KF %,Yield %th\n"
                        + "K-1,2026-02-02,1.25,4-nitrophenol,139.11,1.43,ester,dry,0.2,87.8\n");
        assertTrue(out.contains("Output (kg) mass of the product"), out);
        assertFalse(out.contains("Not understood"), out);
    }
}
