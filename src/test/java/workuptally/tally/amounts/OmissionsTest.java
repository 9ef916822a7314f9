package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class OmissionsTest {
    @Test
    void eachOmissionIsToldOnceInTheOrderMet() {
        Omissions omissions = new Omissions();
        omissions.addTheory("theory of P", "no molar mass", "Formula");
        omissions.add("mass of A1", "not weighed", "Net");
        omissions.add("mass of A1", "not weighed", "Net");
        omissions.add("mass of A1", "tare not recorded", "Tare");
        assertEquals(
                List.of(
                        new NotComputed("theory of P", "no molar mass", "Formula", true),
                        new NotComputed("mass of A1", "not weighed", "Net", false),
                        new NotComputed("mass of A1", "tare not recorded", "Tare", false)),
                omissions.list());
    }
}
