package workuptally.reference.waste;

import java.util.List;
import java.util.Optional;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

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
 * @param family streams that may share a container unless acid meets base; {@code ask first} where none does by itself
 * @param alsoTakes keys of cheaper streams that may go in
 * @param impliedClasses material classes that such a container is taken to hold
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
        Optional<String> family,
        List<String> alsoTakes,
        List<String> impliedClasses,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    private static final String ASK = "ask first";
    private static final String AQUEOUS = "aqueous-";

    /** Copies the lists. */
    public WasteStream {
        alsoTakes = List.copyOf(alsoTakes);
        impliedClasses = List.copyOf(impliedClasses);
        sources = List.copyOf(sources);
    }

    static WasteStream of(ReferenceCells row) throws IllegalReferenceException {
        return new WasteStream(
                row.text("key"),
                row.text("name"),
                row.text("rule"),
                row.optionalText("keep out"),
                row.optionalText("european code"),
                row.optionalText("european text"),
                row.optionalText("us codes"),
                row.optionalText("family"),
                row.list("also takes"),
                row.list("implies classes"),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    /** True for what is mostly water, by the first word of its key. */
    public boolean isAqueous() {
        return key.startsWith(AQUEOUS);
    }

    /** True for a stream that fits no container by itself: the people responsible are asked first. */
    public boolean asksFirst() {
        return family.filter(ASK::equals).isPresent();
    }

    @Override
    public String table() {
        return "waste-streams";
    }
}
