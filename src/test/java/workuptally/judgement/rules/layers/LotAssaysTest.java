package workuptally.judgement.rules.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.FindingCode;
import workuptally.report.view.wording.Wording;

/** Assay in Isolated beside an internal standard: w = (Ix/Is)·(Ns/Nx)·(Mx/Ms)·(ms/m)·Ps with M 200 and 100 g/mol, 10 mg in 20 mg, Ps 1: w = Ix/Is. */
class LotAssaysTest {
    private static List<String> told(String assay, String integral) {
        return SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "RM", "Net", "18.00")
                .but("isolated", "Assay", assay)
                .but("isolated", "Relative standard uncertainty", "1")
                .row("nmr-assays", "Sample", "C1", "Substance", "P", "Standard", "T", "Standard molar mass", "100")
                .but("nmr-assays", "Standard purity", "100")
                .but("nmr-assays", "Standard mass", "10.00")
                .but("nmr-assays", "Sample mass", "20.00")
                .but("nmr-assays", "Standard integral", "1")
                .but("nmr-assays", "Standard nuclei", "1")
                .but("nmr-assays", "Substance integral", integral)
                .but("nmr-assays", "Substance nuclei", "1")
                .but("nmr-assays", "Relative standard uncertainty", "1")
                .review()
                .findings()
                .stream()
                .filter(f -> f.code() == FindingCode.LOT_ASSAY_DIFFERS)
                .map(f -> Wording.POINT.of(f.seen()))
                .toList();
    }

    /** 98.4 and 90.0 % are 8.4 % apart, 2u is 2.7 %. */
    @Test
    void twoAssaysOfALotThatDoNotAgree() {
        List<String> said = told("98.4", "0.900");
        assertEquals(1, said.size());
        assertTrue(said.get(0).contains("98.4 % in Isolated, 90.0 % by NMR"), said.get(0));
    }

    @Test
    void whatIsRoundedOrTypedOnceIsNoFinding() {
        assertEquals(List.of(), told("98.4", "0.9838"));
        assertEquals(List.of(), told("98.4", "0.970"));
        assertEquals(List.of(), told("", "0.900"));
    }
}
