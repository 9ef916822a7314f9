package workuptally.judgement.layers;

import java.util.List;
import java.util.stream.Stream;
import workuptally.model.Assay;
import workuptally.model.Layer;
import workuptally.model.Notes;
import workuptally.model.Run;

/** What stands in the notes of a layer and of its assays and was not understood: a person reads it beside what the evidence amounts to. */
final class UnreadNotes {
    private UnreadNotes() {}

    static List<String> of(String layer, Run run) {
        Stream<Notes> ofLayer = run.layer(layer).map(Layer::notes).stream();
        Stream<Notes> ofAssays = run.assays().stream()
                .filter(assay -> assay.samples().contains(layer))
                .map(Assay::notes);
        return Stream.concat(ofLayer, ofAssays)
                .filter(Notes::unread)
                .map(Notes::text)
                .distinct()
                .toList();
    }
}
