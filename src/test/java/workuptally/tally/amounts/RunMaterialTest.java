package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;

/** Materials of a run whose substrate S and product P no table has. */
class RunMaterialTest {
    private static List<RunMaterial> of(SmallBook book) {
        return RunMaterial.ofBook(book.book(), SmallBook.substances()).get("X1");
    }

    private static SmallBook charged(String material) {
        return SmallBook.reaction().row("charges", "Material", material, "Role", "reagent");
    }

    private static RunMaterial charge(String material) {
        return of(charged(material)).get(1);
    }

    private static SmallBook washed(String material, String volume) {
        return SmallBook.reaction()
                .row(
                        "workup",
                        "Step",
                        "1",
                        "Operation",
                        "wash",
                        "From",
                        "reaction",
                        "Material",
                        material,
                        "Volume",
                        volume);
    }

    private static RunMaterial wash(String material, String volume) {
        return of(washed(material, volume)).get(1);
    }

    @Test
    void substrateAndProductsAreTheGroupsOwnWhereNoTableHasThem() {
        RunMaterial substrate = of(SmallBook.reaction()).get(0);
        assertEquals("S", substrate.written());
        assertTrue(substrate.own());
        assertFalse(substrate.isUnjudged());
        assertTrue(charge(" p ").own(), "the product by another hand");
        assertTrue(wash("P", "").own());
        assertFalse(wash("unobtainium", "").own());
        assertFalse(of(SmallBook.reaction().but("charges", "Material", "aniline"))
                .get(0)
                .own());
    }

    @Test
    void whatNoTableHasIsNotJudged() {
        RunMaterial unlisted = charge("unobtainium dust");
        assertFalse(unlisted.own());
        assertTrue(unlisted.isUnjudged());
        assertEquals("unlisted", unlisted.state());
        RunMaterial listed = charge("MeOH");
        assertFalse(listed.isUnjudged());
        assertEquals("listed", listed.state());
    }

    @Test
    void namesAreThoseOfTheTables() {
        RunMaterial solution = charge("n-BuLi 2.5 M in hexanes");
        assertEquals(2, solution.meaning().size());
        assertEquals(solution.mainName(), solution.meaning().get(0));
        assertTrue(solution.means(solution.meaning().get(1).toUpperCase(Locale.ROOT)));
        assertFalse(solution.means("methanol"));
        assertEquals("unobtainium", charge("unobtainium").mainName());
    }

    @Test
    void washIsMeantByTheNameOfWhatIsDissolvedToo() {
        RunMaterial acid = wash("1 M HCl", "20");
        assertTrue(acid.means("Hydrogen chloride"));
        assertFalse(acid.means("sodium chloride"));
        assertTrue(acid.isSolution());
        assertTrue(charge("n-BuLi 2.5 M in hexanes").isSolution());
        assertFalse(charge("methanol").isSolution());
    }

    @Test
    void hazardStatementsAreHeldOfListedMaterials() {
        assertTrue(charge("methanol").isHeld("Methanol"));
        assertTrue(charge("water").isHeld("Water"), "it needs none");
        assertFalse(charge("methanol").isHeld("toluene"));
        assertFalse(charge("unobtainium").isHeld("unobtainium"));
    }

    @Test
    void waterDestroysAnAcidChlorideAndNoAlcohol() {
        assertTrue(charge("acetyl chloride").isDestroyedByWater());
        assertFalse(charge("methanol").isDestroyedByWater());
    }

    @Test
    void classesAreThoseOfTheName() {
        assertTrue(charge("DCM").classes().contains("dcm"));
        assertEquals(List.of(), charge("unobtainium").classes());
    }

    @Test
    void saltsGoWithWater() {
        assertTrue(charge("aniline hydrochloride").salt());
        assertFalse(charge("copper sulfate pentahydrate").salt(), "water of crystallisation makes no salt of a base");
        assertFalse(charge("aniline").salt());
        assertTrue(wash("aniline hydrochloride", "").salt());
    }

    @Test
    void liquidsOfTheWorkupHaveAVolume() {
        assertTrue(wash("unobtainium solution", "20").stepLiquid());
        assertFalse(wash("unobtainium solution", "").stepLiquid());
        assertFalse(charge("unobtainium solution").stepLiquid());
    }

    @Test
    void eachNameStandsOnceWhereItIsFirstWritten() {
        SmallBook book = charged("MeOH").row("charges", "Material", "meoh ").row("charges", "Material", "");
        List<RunMaterial> materials = of(book);
        assertEquals(
                List.of("S", "MeOH"),
                materials.stream().map(RunMaterial::written).toList());
        assertEquals("line 3, Material", materials.get(1).place().cell());
        assertEquals("line 2, Material", wash("brine", "20").place().cell());
    }
}
