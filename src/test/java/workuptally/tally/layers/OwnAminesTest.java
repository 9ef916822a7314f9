package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.tally.amounts.Substances;

class OwnAminesTest {
    private static final Substances SUBSTANCES = SmallBook.substances();

    private static List<Present> of(SmallBook book) {
        return OwnAmines.of(book.run(), SUBSTANCES, SUBSTANCES.reference().reactivity());
    }

    private static SmallBook product(String name, String formula, String character) {
        return SmallBook.empty()
                .row("products", "Product", name, "Wanted", "yes", "Formula", formula, "Character", character);
    }

    @ParameterizedTest
    @CsvSource({
        "lorbamine, C9H11NO2, base, 1",
        "lorbamine, C9H11NO2, acid, 0",
        "lorbamine, C9H11NO2, '', 0",
        "lorbane, C9H11O2, base, 0",
        "lorbane, xyz, base, 0"
    })
    void aBaseThatHoldsNitrogenCountsAsAnAmine(String name, String formula, String character, int amines) {
        List<Present> found = of(product(name, formula, character));
        assertEquals(amines, found.size());
        found.forEach(p -> {
            assertEquals(name, p.name());
            assertEquals(true, p.is("amine"));
            assertEquals(true, p.prefersOrganic());
        });
    }

    @Test
    void oneThatIsAnAmineByItsNameKeepsItsClasses() {
        Present amine = of(product("benzylamine", "C7H9N", "base")).get(0);
        assertEquals(true, amine.is("amine"));
        Present listed = PortionContents.presents(
                        "benzylamine",
                        SUBSTANCES.material("benzylamine", "C7H9N"),
                        java.util.OptionalDouble.empty(),
                        java.util.Optional.empty())
                .get(0);
        assertEquals(listed.membership().classes(), amine.membership().classes());
    }

    @Test
    void oneThatWasChargedIsThereAlready() {
        SmallBook charged = product("lorbamine", "C9H11NO2", "base")
                .row("charges", "Material", "Lorbamine", "Role", "substrate", "Formula", "C9H11NO2")
                .but("charges", "Actual amount", "1")
                .but("charges", "Actual unit", "g");
        assertEquals(List.of(), of(charged));
    }
}
