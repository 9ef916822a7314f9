package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Place;
import workuptally.tally.containers.ContainerAccount;
import workuptally.tally.containers.ContainerTally;
import workuptally.tally.suspects.ContainerSuspects;
import workuptally.tally.suspects.Suspect;
import workuptally.tally.suspects.UsualSlip;

/**
 * Slips in invented waste containers, each sound but for what is changed: 412 g of bottle, 5200 g of acetone, ethyl acetate, methanol, heptane
 * and water stated on its label, 5612 g on the balance.
 */
class ContainerSuspectsTest {
    private static final int BOOKS = Integer.getInteger("slips.containers", 40);
    private static final String CONTENTS =
            "acetone 1950 g; ethyl acetate 1640 g; methanol 800 g; heptane 560 g; water 250 g";

    private static SmallBook container(String tare, String gross, String contents) {
        return SmallBook.reaction()
                .row("containers", "Container", "W-1", "Waste stream", "non-halogenated solvents", "Capacity", "10")
                .but("containers", "Tare", tare)
                .but("containers", "Weighed on", "2026-03-02")
                .but("containers", "Gross then", gross)
                .but("containers", "Contents then", contents);
    }

    private static SmallBook poured(String amount) {
        return container("412", "5612", CONTENTS)
                .row("transfers", "Run", "", "Transfer", "T1", "Material", "acetone", "Container", "W-1")
                .but("transfers", "Amount", amount)
                .but("transfers", "Status", "done")
                .but("transfers", "Date", "2026-02-27");
    }

    private static List<Suspect> suspects(SmallBook book) {
        return book.review().containers().get(0).suspects().list();
    }

    private static void named(Suspect suspect, String place, String suggested, UsualSlip slip) {
        assertEquals(place, suspect.place().inWords());
        assertEquals(suggested, suspect.suggested());
        assertEquals(slip, suspect.slip());
    }

    @Test
    void aSoundContainerNamesNoCell() {
        assertEquals(List.of(), suspects(container("412", "5612", CONTENTS)));
        assertEquals(List.of(), suspects(container("412", "5560", CONTENTS)));
        assertEquals(List.of(), suspects(container("412", "", CONTENTS)));
        assertEquals(List.of(), suspects(poured("900")));
    }

    @Test
    void grossAndTareOfOneWeighingAreNamedTogether() {
        Suspect swapped = suspects(container("412", "6512", CONTENTS)).get(0);
        named(swapped, "containers.csv line 2, Gross then", "5612", UsualSlip.DIGITS_SWAPPED);
        assertEquals(
                List.of("containers.csv line 2, Tare"),
                swapped.together().stream().map(Place::inWords).toList());
        named(
                suspects(container("0.412", "5612", CONTENTS)).get(0),
                "containers.csv line 2, Tare",
                "412",
                UsualSlip.MILLIGRAMS_FOR_GRAMS);
        named(
                suspects(container("4120", "5612", CONTENTS)).get(0),
                "containers.csv line 2, Tare",
                "412",
                UsualSlip.DECIMAL_POINT);
    }

    @Test
    void aPartOfTheContentsIsNamed() {
        named(
                suspects(container("412", "5612", CONTENTS.replace("1640", "6140")))
                        .get(0),
                "containers.csv line 2, Contents then",
                "1640",
                UsualSlip.DIGITS_SWAPPED);
        Suspect tenth = suspects(container("412", "5612", CONTENTS.replace("800", "80")))
                .get(0);
        named(tenth, "containers.csv line 2, Contents then", "800", UsualSlip.DECIMAL_POINT);
        assertEquals("methanol in container W-1", tenth.what());
    }

    @Test
    void whatWasPouredInBeforeTheWeighingCannotBeMoreThanItHeld() {
        named(suspects(poured("9000")).get(0), "transfers.csv line 2, Amount", "900", UsualSlip.DECIMAL_POINT);
    }

    @Test
    void anAmountIsNamedWhereNoContentsAreStated() {
        SmallBook book = container("412", "1712", "")
                .row("transfers", "Run", "", "Transfer", "T1", "Material", "acetone", "Container", "W-1")
                .but("transfers", "Amount", "90")
                .but("transfers", "Status", "done")
                .but("transfers", "Date", "2026-02-27")
                .row("transfers", "Run", "", "Transfer", "T2", "Material", "heptane", "Container", "W-1")
                .but("transfers", "Amount", "400")
                .but("transfers", "Status", "done")
                .but("transfers", "Date", "2026-02-27");
        named(suspects(book).get(0), "transfers.csv line 2, Amount", "900", UsualSlip.DECIMAL_POINT);
    }

    @Test
    void theFindingStandsAtTheCellAndAnotherGapNamesNone() {
        Review review = container("412", "6512", CONTENTS).review();
        assertEquals(
                1,
                review.findings().stream()
                        .filter(f -> f.code() == FindingCode.ENTRY_SUSPECT)
                        .count());
        // 700 g more than stated, and no figure that a slip makes of another one
        Review gap = container("412", "6312", CONTENTS).review();
        assertTrue(gap.findings().stream().anyMatch(f -> f.code() == FindingCode.CONTAINER_WEIGHING_DIFFERS));
        assertTrue(gap.findings().stream().noneMatch(f -> f.code() == FindingCode.ENTRY_SUSPECT));
    }

    @Test
    void aTareThatIsMissingIsSaid() {
        List<Finding> findings = container("", "5612", CONTENTS).review().findings();
        assertTrue(findings.stream()
                .anyMatch(f -> f.code() == FindingCode.TARE_MISSING
                        && f.place().inWords().equals("containers.csv line 2, Tare")));
        assertEquals(
                UsualSlip.MISSING_ENTRY,
                suspects(container("", "5612", CONTENTS)).get(0).slip());
    }

    /** One slip in one figure of an invented container; which cell it is in. */
    private static final class Invented {
        final long[] parts;
        long tare;
        long gross;
        String spoilt = "";

        Invented(Random random) {
            parts = new long[3 + random.nextInt(3)];
            long sum = 0;
            for (int i = 0; i < parts.length; i++) {
                parts[i] = 10 * (10 + random.nextInt(250));
                sum += parts[i];
            }
            tare = 200 + random.nextInt(600);
            // what evaporated, and what the balance and the label round off
            gross = tare + Math.round(sum * (1 + 0.002 * random.nextGaussian()));
        }

        long stated() {
            long sum = 0;
            for (long part : parts) {
                sum += part;
            }
            return sum;
        }

        void spoil(Random random) {
            int at = random.nextInt(parts.length + 2);
            long before = at == 0 ? gross : at == 1 ? tare : parts[at - 2];
            long after = slipped(before, random);
            if (at == 0) {
                gross = after;
            } else if (at == 1) {
                tare = after;
            } else {
                parts[at - 2] = after;
            }
            spoilt = at == 0 ? "Gross then" : at == 1 ? "Tare" : "Contents then";
        }

        private static long slipped(long typed, Random random) {
            StringBuilder digits = new StringBuilder(Long.toString(typed));
            if (random.nextBoolean()) {
                return random.nextBoolean() && typed % 10 == 0 ? typed / 10 : typed * 10;
            }
            int at = random.nextInt(digits.length() - 1);
            char first = digits.charAt(at);
            digits.setCharAt(at, digits.charAt(at + 1));
            digits.setCharAt(at + 1, first);
            return new BigDecimal(digits.toString()).longValue();
        }

        /** True where the weighing and the contents differ by more than needs no look, 2 % and 20 g at least, and the reader takes the weighing. */
        boolean matters() {
            double allowed = Math.max(20, 0.02 * Math.max(gross - tare, stated()));
            return gross > tare && Math.abs(gross - tare - stated()) > allowed;
        }

        String contents() {
            String[] names = {"acetone", "ethyl acetate", "methanol", "heptane", "water"};
            List<String> all = new ArrayList<>();
            for (int i = 0; i < parts.length; i++) {
                all.add(String.format(Locale.ROOT, "%s %d g", names[i], parts[i]));
            }
            return String.join("; ", all);
        }
    }

    private static List<Suspect> suspects(Invented invented) {
        Book book = container(Long.toString(invented.tare), Long.toString(invented.gross), invented.contents())
                .but("containers", "Capacity", "")
                .book();
        ContainerTally ledger = new ContainerAccount(book, List.of(), SmallBook.substances())
                .ledgers()
                .get(0);
        return new ContainerSuspects(book, List.of(), SmallBook.substances())
                .of(ledger)
                .list();
    }

    @Test
    void aPlantedSlipIsFoundASoundContainerAndMostUnrecordedPoursNameNone() {
        Random random = new Random(11);
        int planted = 0;
        int first = 0;
        int amongThree = 0;
        int ofSound = 0;
        int ofUnrecorded = 0;
        for (int i = 0; i < BOOKS; i++) {
            Invented invented = new Invented(random);
            ofSound += suspects(invented).isEmpty() ? 0 : 1;
            long gross = invented.gross;
            invented.gross += 300 + random.nextInt(900);
            ofUnrecorded += suspects(invented).isEmpty() ? 0 : 1;
            invented.gross = gross;
            invented.spoil(random);
            if (invented.matters()) {
                List<Suspect> suspects = suspects(invented);
                planted++;
                first += suspects.stream().limit(1).anyMatch(s -> names(s, invented)) ? 1 : 0;
                amongThree += suspects.stream().anyMatch(s -> names(s, invented)) ? 1 : 0;
            }
        }
        String counts = first + " first, " + amongThree + " among three of " + planted + "; sound " + ofSound
                + ", unrecorded " + ofUnrecorded + " of " + BOOKS;
        if (Boolean.getBoolean("slips.report")) {
            System.out.println("containers: " + counts);
        }
        assertTrue(planted > BOOKS / 3, counts);
        assertTrue(first >= 0.8 * planted && amongThree >= 0.95 * planted, counts);
        assertEquals(0, ofSound, counts);
        assertTrue(ofUnrecorded <= 0.3 * BOOKS, counts);
    }

    private static boolean names(Suspect suspect, Invented invented) {
        return suspect.place().cell().endsWith(invented.spoilt)
                || suspect.together().stream().anyMatch(p -> p.cell().endsWith(invented.spoilt));
    }
}
