package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.tally.layers.Meeting.Occasion;

/** What comes together along the steps, and what is told of it. */
class MeetingTest {
    private static SmallBook charged(String... materials) {
        SmallBook book = SmallBook.reaction();
        for (String material : materials) {
            book.row("charges", "Material", material, "Role", "reagent", "Actual amount", "20", "Actual unit", "mmol");
        }
        return book;
    }

    private static SmallBook step(SmallBook book, String number, String operation, String from, String material) {
        return book.row("workup", "Step", number, "Operation", operation, "From", from, "Material", material)
                .but("workup", "Volume", material.isEmpty() ? "" : "50");
    }

    private static Meetings meetings(SmallBook book) {
        return book.tally().evidence().meetings();
    }

    private static Optional<Meeting> between(SmallBook book, String one, String other) {
        return meetings(book).list().stream()
                .filter(m -> m.with().containsAll(List.of(one, other)))
                .findFirst();
    }

    @Test
    void anAccidentOfTheWorkupHoldsItsPortions() {
        SmallBook book = step(charged("KCN"), "1", "wash", "RM", "1 M HCl")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
        Meeting meeting = between(book, "KCN", "1 M HCl").orElseThrow();
        assertEquals("1", meeting.place());
        assertEquals(Occasion.STEP, meeting.occasion());
        assertTrue(meeting.isForbidden());
        assertTrue(meeting.holdsItsPortions());
        assertTrue(meeting.isCritical());
        assertEquals("critical", meeting.severity());
        assertEquals("never", meeting.inWorkup());
        assertTrue(meeting.where().contains("funnel"));
        assertEquals("HCN", meeting.gas());
        assertTrue(meeting.lasting());
        assertEquals(List.of("O1", "A1"), meeting.portions());
        assertEquals(List.of(meeting), meetings(book).carriedBy("A1"));
        assertEquals(List.of(), meetings(book).carriedBy("RM"));
    }

    @Test
    void whatWasChargedTogetherIsTheReactionUnlessOneIsASolvent() {
        Meeting reagents = between(charged("sodium azide", "dichloromethane"), "sodium azide", "dichloromethane")
                .orElseThrow();
        assertEquals("charge", reagents.place());
        assertEquals(Occasion.CHARGED, reagents.occasion());
        assertFalse(reagents.holdsItsPortions());
        SmallBook solvent = charged("sodium azide", "dichloromethane").but("charges", "Role", "solvent");
        Meeting inIt = between(solvent, "sodium azide", "dichloromethane").orElseThrow();
        assertEquals(Occasion.CHARGED_AS_SOLVENT, inIt.occasion());
        assertTrue(inIt.isForbidden());
        assertTrue(inIt.holdsItsPortions());
    }

    @Test
    void everyLayerOfTheRunMayCarryOnWhatWasChargedTogether() {
        SmallBook book = charged("sodium azide", "dichloromethane").but("charges", "Role", "solvent");
        step(book, "1", "wash", "RM", "water")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
        step(book, "2", "dry", "O1", "").but("workup", "Gives other", "O2");
        assertEquals(
                List.of("O1", "A1", "O2"),
                between(book, "sodium azide", "dichloromethane").orElseThrow().portions());
    }

    @Test
    void portionsAreThoseDownstreamOfTheStep() {
        SmallBook book = step(charged("KCN"), "1", "wash", "RM", "water")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
        step(book, "2", "acidify", "A1", "1 M HCl").but("workup", "Gives other", "A2");
        step(book, "3", "dilute", "A2", "water").but("workup", "Gives other", "A3");
        assertEquals(
                List.of("A2", "A3"),
                between(book, "KCN", "1 M HCl").orElseThrow().portions());
        SmallBook without = step(charged("KCN"), "1", "wash", "RM", "water")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
        step(without, "2", "acidify", "A1", "1 M HCl");
        assertEquals(
                List.of("A1"), between(without, "KCN", "1 M HCl").orElseThrow().portions());
    }

    @Test
    void twoPortionsThatAreCombinedMeet() {
        SmallBook book = SmallBook.reaction()
                .row("layers", "Layer", "X1", "Phase", "aqueous", "Net", "50", "Status", "consumed")
                .but("layers", "Composition", "potassium cyanide 5 %; water 95 %")
                .row("layers", "Layer", "X2", "Phase", "aqueous", "Net", "50", "Status", "consumed")
                .but("layers", "Composition", "hydrogen chloride 5 %; water 95 %");
        step(book, "1", "combine", "X1+X2", "").but("workup", "Gives other", "X3");
        Meeting meeting =
                between(book, "potassium cyanide", "hydrogen chloride").orElseThrow();
        assertEquals(List.of("X3"), meeting.portions());
        // what both hold has met before
        assertTrue(meetings(book).list().stream().noneMatch(m -> m.with().equals(List.of("water", "water"))));
    }

    @Test
    void aThirdMaterialBringsTwoTogether() {
        // zinc and arsenite stood beside each other; acid makes arsine of them
        SmallBook book = charged("zinc", "sodium arsenite");
        assertTrue(between(book, "zinc", "sodium arsenite")
                .filter(Meeting::isForbidden)
                .isEmpty());
        step(book, "1", "acidify", "RM", "1 M HCl").but("workup", "Gives other", "A1");
        Optional<Meeting> arsine = meetings(book).list().stream()
                .filter(m -> m.gas().contains("AsH3"))
                .findFirst();
        assertTrue(arsine.isPresent(), meetings(book).list().toString());
        assertEquals("1", arsine.get().place());
    }

    @Test
    void evaporationMeetsWhatMustNotBeConcentrated() {
        SmallBook book = charged("hydrogen peroxide", "acetone");
        step(book, "1", "concentrate", "RM", "").but("workup", "Gives other", "O1");
        List<Meeting> concentrated = meetings(book).list().stream()
                .filter(m -> m.occasion() == Occasion.CONCENTRATION)
                .toList();
        assertFalse(concentrated.isEmpty());
        Meeting peroxide = concentrated.get(0);
        assertEquals(List.of("hydrogen peroxide", "evaporation"), peroxide.with());
        assertTrue(peroxide.concernsPlace());
        assertTrue(peroxide.lasting());
        assertEquals(peroxide.isCritical(), peroxide.isForbidden());
        SmallBook filtered = charged("hydrogen peroxide", "acetone");
        step(filtered, "1", "filter", "RM", "").but("workup", "Gives other", "O1");
        assertTrue(meetings(filtered).list().stream().noneMatch(m -> m.occasion() == Occasion.CONCENTRATION));
    }

    @Test
    void gasIsThatOfTheAmountWhereThePairNamesIt() {
        // 20 mmol of sodium hydride give 20 mmol of hydrogen: 0.48 L at 24.06 L/mol
        SmallBook book = charged("sodium hydride");
        step(book, "1", "quench", "RM", "water").but("workup", "Gives other", "A1");
        Meeting quench = between(book, "sodium hydride", "water").orElseThrow();
        assertEquals(0.481, quench.gasLitres().orElseThrow(), 0.002);
        assertFalse(quench.lasting());
        assertFalse(quench.isForbidden());
        // a weight without a molar mass tells no amount
        SmallBook unknown = SmallBook.reaction()
                .row(
                        "charges",
                        "Material",
                        "sodium hydride",
                        "Role",
                        "reagent",
                        "Actual amount",
                        "",
                        "Actual unit",
                        "g");
        step(unknown, "1", "quench", "RM", "water").but("workup", "Gives other", "A1");
        assertTrue(between(unknown, "sodium hydride", "water")
                .orElseThrow()
                .gasLitres()
                .isEmpty());
    }

    @Test
    void ordinaryWashesTellNothingAmongTheCharges() {
        assertEquals(List.of(), meetings(charged("sodium chloride", "water")).list());
    }

    @Test
    void ordinaryPairsAreToldOfAStepThatIsTheirPlaceAndHeldByNoLayer() {
        SmallBook book = step(charged("sodium carbonate"), "1", "wash", "RM", "1 M HCl")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
        Optional<Meeting> gas = between(book, "sodium carbonate", "1 M HCl");
        assertTrue(gas.isPresent());
        assertFalse(gas.get().isForbidden());
        assertFalse(gas.get().isCritical());
        assertFalse(gas.get().consequence().isBlank());
        // 20 mmol of the same charged together are the reaction itself
        assertTrue(between(charged("sodium carbonate", "hydrogen chloride"), "sodium carbonate", "hydrogen chloride")
                .filter(m -> m.inWorkup().equals("ordinary"))
                .isEmpty());
    }

    @Test
    void onlyLayersThatHoldOneOfTheTwoCarryItOn() {
        SmallBook book = step(charged("KCN", "toluene"), "1", "wash", "RM", "1 M HCl")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
        step(book, "2", "wash", "O1", "water")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2");
        step(book, "3", "wash", "O2", "water")
                .but("workup", "Gives organic", "O3")
                .but("workup", "Gives aqueous", "A3");
        List<String> portions = between(book, "KCN", "1 M HCl").orElseThrow().portions();
        assertTrue(portions.containsAll(List.of("O1", "A1")));
        assertFalse(portions.contains("O3"), portions.toString());
        assertFalse(portions.contains("A3"), portions.toString());
    }

    @Test
    void aSwappedLayerHoldsWhatTheOtherPhaseHolds() {
        SmallBook book = charged("sodium chloride");
        book.row("charges", "Material", "toluene", "Role", "solvent", "Actual amount", "100", "Actual unit", "mL");
        step(book, "1", "wash", "RM", "water")
                .but("workup", "Volume", "100")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "100", "Net", "101.50", "Status", "kept")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", "88.00", "Status", "kept");
        assertTrue(meetings(book).in("O1").stream().anyMatch(p -> p.name().equals("sodium chloride")));
        assertTrue(meetings(book).in("A1").stream().anyMatch(p -> p.name().equals("toluene")));
        assertFalse(meetings(book).in("A1").stream().anyMatch(p -> p.name().equals("sodium chloride")));
    }

    @Test
    void bothPhasesKeepWhatIsTheirsWhereTheDensitiesAgreeWithTheRecord() {
        SmallBook book = charged("sodium chloride");
        book.row("charges", "Material", "toluene", "Role", "solvent", "Actual amount", "100", "Actual unit", "mL");
        step(book, "1", "wash", "RM", "water")
                .but("workup", "Volume", "100")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "100", "Net", "88.00", "Status", "kept")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", "101.50", "Status", "kept");
        assertTrue(meetings(book).in("O1").stream().anyMatch(p -> p.name().equals("toluene")));
        assertTrue(meetings(book).in("A1").stream().anyMatch(p -> p.name().equals("sodium chloride")));
        assertFalse(meetings(book).in("O1").stream()
                .anyMatch(p -> p.name().equals("sodium chloride") && p.share() == Present.Share.MAIN));
    }

    @Test
    void whatMetBeforeIsNotToldAgainByTheNextStep() {
        SmallBook book = step(charged("KCN", "hydrogen chloride"), "1", "dilute", "RM", "water")
                .but("workup", "Gives other", "R2");
        assertTrue(between(book, "KCN", "hydrogen chloride").isPresent());
        assertTrue(meetings(book).list().stream()
                .filter(m -> m.with().containsAll(List.of("KCN", "hydrogen chloride")))
                .allMatch(m -> m.place().equals("charge")));
    }

    @Test
    void acidThatStoodBesideZincMakesArsineOfWhatIsAdded() {
        SmallBook book = step(charged("zinc", "hydrogen chloride"), "1", "dilute", "RM", "sodium arsenite")
                .but("workup", "Gives other", "R2");
        assertTrue(meetings(book).list().stream()
                .anyMatch(m -> m.place().equals("1") && m.gas().contains("AsH3")));
        SmallBook later = step(book, "2", "dilute", "R2", "water").but("workup", "Gives other", "R3");
        assertTrue(meetings(later).list().stream()
                .noneMatch(m -> m.place().equals("2") && m.gas().contains("AsH3")));
    }

    @Test
    void whatTwoPortionsBothHoldHasMetInThem() {
        SmallBook book = SmallBook.reaction()
                .row("layers", "Layer", "X1", "Phase", "aqueous", "Net", "50", "Status", "consumed")
                .but("layers", "Composition", "potassium cyanide 5 %; water 95 %")
                .row("layers", "Layer", "X2", "Phase", "aqueous", "Net", "50", "Status", "consumed")
                .but("layers", "Composition", "potassium cyanide 5 %; hydrogen chloride 5 %; water 90 %");
        step(book, "1", "combine", "X1+X2", "").but("workup", "Gives other", "X3");
        assertTrue(between(book, "potassium cyanide", "hydrogen chloride").isEmpty());
    }

    @Test
    void neitherTheMixtureNorALotIsAPortionToHold() {
        SmallBook book = step(charged("KCN"), "1", "acidify", "RM", "1 M HCl");
        assertEquals(List.of(), between(book, "KCN", "1 M HCl").orElseThrow().portions());
        SmallBook filtered = step(charged("KCN"), "1", "acidify", "RM", "1 M HCl")
                .but("workup", "Gives other", "A1")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "A1", "Net", "5.00");
        assertEquals(
                List.of("A1"), between(filtered, "KCN", "1 M HCl").orElseThrow().portions());
    }
}
