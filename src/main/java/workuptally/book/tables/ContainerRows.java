package workuptally.book.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.book.words.BookWords;
import workuptally.book.words.Unit;
import workuptally.model.Container;
import workuptally.model.Field;
import workuptally.model.FindingCode;
import workuptally.model.Severity;

/** Reads the Containers table. */
public final class ContainerRows {
    private final Map<String, Container> containers = new LinkedHashMap<>();

    public void read(TableRows rows) {
        rows.forEach(row -> row.key("Container").ifPresent(id -> read(row, id)));
    }

    public List<Container> all() {
        return List.copyOf(containers.values());
    }

    Optional<Container> find(String id) {
        return Optional.ofNullable(containers.get(BookWords.loose(id)));
    }

    private void read(TableRow row, String id) {
        Optional<Container> first = find(id);
        if (first.isPresent()) {
            row.report(
                    FindingCode.CONTAINER_DUPLICATE,
                    Severity.STOP,
                    "Container",
                    "read container '" + id + "' a second time; it stands in row "
                            + first.get().row().row() + " already",
                    "each container once",
                    "Remove or rename the second and run again; only the first was read.");
            return;
        }
        Field tare = row.number("Tare");
        containers.put(
                BookWords.loose(id),
                new Container(
                        id,
                        row.text("Waste stream"),
                        row.number("Capacity"),
                        tare,
                        row.date("Weighed on"),
                        GrossAboveTare.of(row, "Gross then", row.number("Gross then"), tare),
                        row.parts("Contents then", Unit.GRAM, "acetone 1950 g; water 250 g", Optional.empty()).stream()
                                .map(part -> new Container.Content(part.name(), part.value()))
                                .toList(),
                        row.date("Opened"),
                        row.text("Location"),
                        row.text("Contact"),
                        row.place()));
    }
}
