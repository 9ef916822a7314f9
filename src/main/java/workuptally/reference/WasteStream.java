package workuptally.reference;

import java.util.List;
import java.util.Optional;

/**
 * Neutral waste stream with the codes a person may need to look up. Local rules and the waste officer decide.
 *
 * @param key key of the row
 * @param name full name
 * @param rule rule of thumb for what belongs here
 * @param keepOut what must stay out
 * @param europeanCode six digits, a star = hazardous
 * @param europeanText text of that entry
 * @param usCodes codes under 40 CFR 261
 * @param priority lower wins where several streams fit
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known: the weakest of its parts
 */
public record WasteStream(
        String key,
        String name,
        String rule,
        Optional<String> keepOut,
        Optional<String> europeanCode,
        Optional<String> europeanText,
        Optional<String> usCodes,
        int priority,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public WasteStream {
        sources = List.copyOf(sources);
    }

    static WasteStream of(Cells row) throws IllegalReferenceException {
        return new WasteStream(
                row.text("key"),
                row.text("name"),
                row.text("rule"),
                row.optionalText("keep out"),
                row.optionalText("european code"),
                row.optionalText("european text"),
                row.optionalText("us codes"),
                (int) row.number("priority", 1, 99),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "waste-streams";
    }
}
