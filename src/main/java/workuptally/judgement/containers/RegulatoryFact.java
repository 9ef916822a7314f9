package workuptally.judgement.containers;

/**
 * A limit of a regulation that may bear on a container, shown as a fact. It says nothing about whether the regulation applies; that
 * determination is made by trained people, and the local rule always wins.
 *
 * @param key key of the row in the reference data
 * @param text what it limits, with its value
 * @param source keys of the bibliography, joined by {@code ;}
 * @param citation what those keys stand for
 */
public record RegulatoryFact(String key, String text, String source, String citation) {
    /** Containers of one stream share their facts. */
    public RegulatoryFact {
        text = text.intern();
        source = source.intern();
        citation = citation.intern();
    }
}
