package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.Book;
import workuptally.model.Container;
import workuptally.model.Transfer;
import workuptally.tally.containers.ContainerAccount;
import workuptally.tally.containers.ContainerTally;

/** A bottle of 412 g with 3000 g of acetone and 2000 g of heptane by its label, 5612 g on the balance: 5200 g. */
class ContainerChecksTest {
    private static final double EPSILON = 1e-9;

    private static SmallBook container(String contents) {
        return SmallBook.reaction()
                .row("containers", "Container", "W-1", "Waste stream", "non-halogenated solvents", "Capacity", "10")
                .but("containers", "Tare", "412")
                .but("containers", "Weighed on", "2026-03-02")
                .but("containers", "Gross then", "5612")
                .but("containers", "Contents then", contents);
    }

    private static SmallBook labelled() {
        return container("acetone 3000 g; heptane 2000 g");
    }

    private static SmallBook poured(SmallBook book, String amount, String date) {
        return book.row("transfers", "Run", "", "Transfer", "T1", "Material", "acetone", "Container", "W-1")
                .but("transfers", "Amount", amount)
                .but("transfers", "Status", "done")
                .but("transfers", "Date", date);
    }

    private static Map<String, Check> checks(SmallBook small) {
        Book book = small.book();
        ContainerTally ledger = new ContainerAccount(book, List.of(), SmallBook.substances())
                .ledgers()
                .get(0);
        TareRegister register = new TareRegister(book.vesselTares());
        return new ContainerChecks(SmallBook.substances(), new EntryChecks(book, SmallBook.substances(), register))
                .of(ledger);
    }

    /** A quarter of what needs no look either way, known to 0.29 of it. */
    private static void assertBothWays(double residual, double allowed, double scale, Check check) {
        assertEquals(residual, check.residual(), EPSILON);
        assertEquals(-0.25 * allowed, check.low(), EPSILON);
        assertEquals(0.25 * allowed, check.high(), EPSILON);
        assertEquals(0.29 * allowed, check.standardUncertainty(), EPSILON);
        assertEquals(scale, check.scale(), EPSILON);
    }

    @Test
    void aGainOnTheBalanceIsWhatTheLabelStates() {
        // 2 % of the larger, 5200 g, and 20 g at least need no look
        assertBothWays(200, 104, 5000, checks(labelled()).get("weighed gain of W-1 against its contents"));
        Map<String, Check> more = checks(container("acetone 6000 g"));
        assertBothWays(-800, 120, 6000, more.get("weighed gain of W-1 against its contents"));
        Map<String, Check> little = checks(container("acetone 400 g").but("containers", "Gross then", "822"));
        assertBothWays(10, 20, 400, little.get("weighed gain of W-1 against its contents"));
    }

    @Test
    void withoutALabelAGainIsWhatWasPouredIn() {
        Map<String, Check> checks = checks(poured(container(""), "5000", "2026-02-27"));
        assertBothWays(200, 104, 5000, checks.get("weighed gain of W-1 against what was poured in"));
        assertFalse(checks.containsKey("weighed gain of W-1 against its contents"));
        assertFalse(checks.containsKey("pours into W-1 before its weighing against its contents"));
    }

    @Test
    void whatWasPouredInBeforeIsNoMoreThanWhatTheLabelStates() {
        Map<String, Check> checks = checks(poured(labelled(), "3500", "2026-02-27"));
        Check all = checks.get("pours into W-1 before its weighing against its contents");
        assertEquals(-1500, all.residual(), EPSILON);
        assertEquals(-1e9, all.low(), 0);
        assertEquals(26, all.high(), EPSILON);
        Check acetone = checks.get("pour T1 against acetone in W-1");
        assertEquals(500, acetone.residual(), EPSILON);
        assertEquals(5000, acetone.scale(), EPSILON);
        assertFalse(checks.containsKey("weighed gain of W-1 against what was poured in"));
        // after the weighing it is none of what was weighed
        assertFalse(checks(poured(labelled(), "3500", "2026-03-05")).containsKey("pour T1 against acetone in W-1"));
    }

    @Test
    void withoutAWeighingNothingWasGained() {
        Map<String, Check> checks = checks(labelled().but("containers", "Gross then", ""));
        assertTrue(checks.keySet().stream().noneMatch(n -> n.startsWith("weighed gain")));
        checks = checks(labelled().but("containers", "Tare", ""));
        assertTrue(checks.keySet().stream().noneMatch(n -> n.startsWith("weighed gain")));
    }

    @Test
    void contentsFitTheSizeOfTheContainer() {
        // acetone 0.790 and heptane 0.684 g/mL: 3.8 and 2.9 L
        Check size = checks(labelled()).get("contents of W-1 against its size");
        assertEquals(3000 / 790.0 + 2000 / 684.0 - 10, size.residual(), 0.02);
        assertEquals(-1e9, size.low(), 0);
        assertEquals(0.5, size.high(), EPSILON);
        assertEquals(0.25, size.standardUncertainty(), EPSILON);
        assertEquals(10, size.scale(), EPSILON);
        assertFalse(
                checks(labelled().but("containers", "Capacity", "")).containsKey("contents of W-1 against its size"));
    }

    @Test
    void aTareIsThatOfTheRegister() {
        SmallBook book = labelled().row("vessels", "Vessel", "W-1", "Date", "2026-01-01", "Clean dry tare", "421");
        assertEquals(
                -9,
                checks(book).get("tare of container W-1 against the register").residual(),
                EPSILON);
    }

    private static List<Entry> entries(SmallBook small) {
        Book book = small.book();
        return ContainerEntries.of(book.containers().get(0), book.transfers());
    }

    @Test
    void aContainerRestsOnItsWeighingEachPartAndWhatWasPouredIn() {
        List<Entry> all = entries(poured(container("acetone 1950.5 g; heptane 2000 g"), "900", "2026-02-27"));
        assertEquals(
                List.of(
                        "tare of container W-1 TARE 412 W-1",
                        "gross of container W-1 GROSS 5612 W-1",
                        "acetone in container W-1 NET 1950.5 ",
                        "heptane in container W-1 NET 2000 ",
                        "amount of transfer T1 NET 900 "),
                all.stream()
                        .map(e -> e.what() + " " + e.sort() + " " + e.number().asTyped() + " " + e.vessel())
                        .toList());
        assertEquals(
                List.of(0, 0, 1, 0, 0),
                all.stream().map(e -> e.number().decimals()).toList());
        assertEquals(3, entries(labelled().but("containers", "Tare", "")).size());
    }

    @Test
    void oneNumberOfAContainerIsReadOtherwiseAndNothingElse() {
        Book book = poured(labelled(), "900", "2026-02-27").book();
        Container container = book.containers().get(0);
        Transfer transfer = book.transfers().get(0);
        List<Entry> all = ContainerEntries.of(container, List.of(transfer));
        for (Entry typed : all) {
            Changes changes = Slips.nudged(typed, 1);
            List<Entry> read = ContainerEntries.of(
                    ContainerEntries.changed(container, changes), List.of(ContainerEntries.changed(transfer, changes)));
            assertEquals(
                    all.stream()
                            .map(e -> e.number().value() + (e == typed ? 1 : 0))
                            .toList(),
                    read.stream().map(e -> e.number().value()).toList());
        }
        assertEquals(container, ContainerEntries.changed(container, Changes.NONE));
        assertEquals(transfer, ContainerEntries.changed(transfer, Changes.NONE));
    }

    private static RunSuspects suspects(SmallBook small) {
        Book book = small.book();
        ContainerTally ledger = new ContainerAccount(book, List.of(), SmallBook.substances())
                .ledgers()
                .get(0);
        return new ContainerSuspects(book, List.of(), SmallBook.substances()).of(ledger);
    }

    @Test
    void theFigureOfAContainerThatSettlesItIsNamed() {
        RunSuspects suspects =
                suspects(container("acetone 3000 g; heptane 22000 g").but("containers", "Gross then", "5612"));
        assertTrue(
                suspects.off().contains("weighed gain of W-1 against its contents"),
                suspects.off().toString());
        RunSuspects tenth = suspects(container("acetone 3000 g; heptane 22000 g"));
        assertEquals("2200", tenth.list().get(0).suggested());
        assertEquals("heptane in container W-1", tenth.list().get(0).what());
    }

    @Test
    void whatIsOnlyProposedWasNotPouredIn() {
        SmallBook proposed = poured(container("acetone 3000 g; heptane 2200 g"), "30000", "2026-02-27");
        assertFalse(suspects(proposed).off().isEmpty());
        assertEquals("3000", suspects(proposed).list().get(0).suggested());
        assertEquals(
                List.of(),
                suspects(proposed.but("transfers", "Status", "proposed")).off());
    }

    @Test
    void aMissingTareIsAskedForAlsoWhereNothingIsOff() {
        RunSuspects suspects = suspects(labelled().but("containers", "Tare", ""));
        assertEquals(List.of(), suspects.off());
        assertEquals(UsualSlip.MISSING_ENTRY, suspects.list().get(0).slip());
    }
}
