package workuptally.judgement.rules.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.FindingCode;
import workuptally.report.view.wording.Wording;

/** Two rows of one substance in a lot: what is said of them holds, in whatever order they stand. Theory is 20.00 g. */
class CountedTwiceTest {
    private static final Set<FindingCode> CODES = Set.of(
            FindingCode.COMPONENT_COUNTED_TWICE,
            FindingCode.ASSAYS_DISAGREE,
            FindingCode.LOT_ASSAY_DIFFERS,
            FindingCode.ASSAY_SUM_IMPOSSIBLE,
            FindingCode.CRUDE_ABOVE_THEORY);

    private static SmallBook lot(String net, String typed, String substance, String one, String other) {
        SmallBook book = SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "RM", "Net", net)
                .but("isolated", "Assay", typed == null ? "" : typed)
                .but("isolated", "Relative standard uncertainty", "1");
        for (String result : List.of(one, other)) {
            book = book.row("assays", "Sample", "C1", "Substance", substance, "Method", "qNMR", "Unit", "% w/w")
                    .but("assays", "Result", result)
                    .but("assays", "Relative standard uncertainty", "1");
        }
        return book;
    }

    private static String told(SmallBook book) {
        return book.review().findings().stream()
                .filter(f -> CODES.contains(f.code()))
                .map(f -> f.severity().name() + " " + f.code().word())
                .sorted()
                .collect(Collectors.joining(", "));
    }

    @ParameterizedTest
    @CsvSource({
        "18.00, 98.6, P, 98.6, 60.0, 'CHECK lot-assay-differs, NOTE component-counted-twice'",
        "18.00, 98.6, P, 98.0, 99.2, NOTE component-counted-twice",
        "18.00, 98.6, P, 98.6, 98.6, NOTE component-counted-twice",
        "18.00, '', P, 98.6, 60.0, HOLD assays-disagree",
        "18.00, '', P, 98.6, 98.4, NOTE component-counted-twice",
        "18.00, 97.0, S, 0.5, 8.0, CHECK assays-disagree",
        "18.00, 97.0, S, 0.2, 0.3, NOTE component-counted-twice",
        "18.00, 97.0, S, 8.0, 8.1, 'CHECK assay-sum-impossible, NOTE component-counted-twice'",
        "22.00, 90.0, S, 1.0, 10.0, 'CHECK assays-disagree, CHECK crude-above-theory'"
    })
    void orderOfTheRowsDecidesNothing(
            String net, String typed, String substance, String one, String other, String told) {
        assertEquals(told, told(lot(net, typed, substance, one, other)));
        assertEquals(told, told(lot(net, typed, substance, other, one)));
    }

    @ParameterizedTest
    @CsvSource({
        "98.6, P, 98.0, 99.2, its assay in Isolated counts",
        "'', P, 98.6, 98.4, 'which agree; their mean counts, with the larger of both bounds'",
        "97.0, S, 0.2, 0.3, which differ by more than their uncertainties explain; the larger counts"
    })
    void whatCountsIsSaid(String typed, String substance, String one, String other, String said) {
        String seen = lot("18.00", typed, substance, one, other).review().findings().stream()
                .filter(f -> f.code() == FindingCode.COMPONENT_COUNTED_TWICE)
                .map(f -> Wording.POINT.of(f.seen()))
                .findFirst()
                .orElseThrow();
        assertEquals(said, seen.substring(seen.length() - said.length()));
    }
}
