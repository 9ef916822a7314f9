package workuptally.report.view.wording;

import java.util.List;
import java.util.stream.Stream;
import workuptally.model.Finding;
import workuptally.model.Subject;

/** What findings are about, by short names. */
public final class SubjectNames {
    private SubjectNames() {}

    /** The names of what findings are about, each once, in their order. */
    public static List<String> of(List<Finding> findings) {
        return findings.stream()
                .map(Finding::subject)
                .flatMap(SubjectNames::names)
                .distinct()
                .toList();
    }

    private static Stream<String> names(Subject subject) {
        if (!subject.step().isEmpty()) {
            return Stream.of("step\u00A0" + subject.step());
        }
        if (!subject.layers().isEmpty()) {
            return subject.layers().stream();
        }
        return Stream.of(subject.lot(), subject.substance(), subject.transfer()).filter(name -> !name.isEmpty());
    }
}
