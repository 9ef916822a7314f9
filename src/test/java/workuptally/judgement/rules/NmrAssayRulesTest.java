package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.report.view.wording.Wording;

/**
 * What an internal-standard NMR assay is held against: the assay of the lot, and its standard's molar mass. Molar masses of the standards
 * are those of the open identifier tables: maleic acid 116.07, 1,3,5-trimethoxybenzene 168.19, dimethyl sulfone 94.13 g/mol.
 */
class NmrAssayRulesTest {
    private static final String HEADINGS =
            "Run,Sample,Substance,Standard,Standard molar mass (g/mol),Standard purity (%),"
                    + "Standard mass (mg),Sample mass (mg),Standard integral,Standard nuclei,Substance integral,Substance nuclei,"
                    + "Relative standard uncertainty (%)\n";

    @TempDir
    Path folder;

    /** Fraction of acetanilide: area/3 over 3.00/3, times 135.166/168.19, times 10.00/20.00 mg, times 99.5 %. */
    private static ExampleBook withArea(String standard, String molarMass, String area) {
        return ExampleBook.clean()
                .table(
                        "nmr-assays",
                        HEADINGS + "X1,CR1,acetanilide,\"" + standard + "\"," + molarMass + ",99.5,10.00,20.00,3.00,3,"
                                + area + ",3,1.0\n");
    }

    /** 0.9907: area 7.44. 0.900: area 6.75. The lot's assay is 99.1 % ± 1.5 %; k is that of the table of rules. */
    @ParameterizedTest
    @CsvSource({"7.44, 0", "7.30, 0", "6.75, 1", "9.00, 1"})
    void theAssayOfALotIsHeldAgainstItsNmrAssay(String area, int expected) throws Exception {
        List<Finding> found =
                withArea("1,3,5-trimethoxybenzene", "168.19", area).findings(folder, "lot-assay-differs");
        assertEquals(expected, found.size(), found::toString);
    }

    /** An assay that fits nothing of the run counts nowhere, and is told as any other. */
    @ParameterizedTest
    @CsvSource({
        "CR1, acetanilide, assay-sample-unknown, 0",
        "XX9, acetanilide, assay-sample-unknown, 1",
        "CR1, acetanilide, assay-substance-unknown, 0",
        "CR1, unobtainium, assay-substance-unknown, 1"
    })
    void anNmrAssayThatFitsNothingIsTold(String sample, String substance, String code, int expected) throws Exception {
        List<Finding> found = withArea("maleic acid", "116.07", "7.44")
                .with("nmr-assays", "X1,CR1,acetanilide", "X1," + sample + "," + substance)
                .findings(folder, code);
        assertEquals(expected, found.size(), found::toString);
    }

    @Test
    void bothFiguresAreNamed() throws Exception {
        Finding found = withArea("1,3,5-trimethoxybenzene", "168.19", "6.75")
                .findings(folder, "lot-assay-differs")
                .get(0);
        assertEquals(
                "lot CR1: assay 99.1 % in Isolated, 90.0 % by NMR assays; the first is used",
                Wording.POINT.of(found.seen()));
    }

    @ParameterizedTest
    @CsvSource({
        "maleic acid, 168.19, 1",
        "'1,3,5-trimethoxybenzene', 116.07, 1",
        "Maleinsäure, 94.13, 1",
        "maleic acid, 116.07, 0",
        "'1,3,5-trimethoxybenzene', 168.19, 0",
        "DMSO2, 94.13, 0",
        "a standard of our own, 168.19, 0"
    })
    void theMolarMassOfAStandardIsThatOfItsName(String standard, String molarMass, int expected) throws Exception {
        List<Finding> found = withArea(standard, molarMass, "7.44").findings(folder, "molar-mass-mismatch");
        assertEquals(expected, found.size(), found::toString);
        for (Finding finding : found) {
            assertEquals(Severity.STOP, finding.severity());
            assertTrue(
                    finding.place().inWords().contains("Standard molar mass"),
                    finding.place().inWords());
            assertTrue(Wording.POINT.of(finding.action()).contains("figure as typed is used"), finding::toString);
        }
    }
}
