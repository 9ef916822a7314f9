package workuptally.book.tables;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import workuptally.model.Container;
import workuptally.model.FindingCode;
import workuptally.model.Severity;
import workuptally.model.Transfer;

/** Reads the Transfers table; Containers are read before it. What is wrong with a row is about the transfer, not about the run of its layer. */
public final class TransferRows {
    private TransferRows() {}

    public static List<Transfer> read(TableRows rows, RunIndex runs, ContainerRows containers) {
        List<Transfer> transfers = new ArrayList<>();
        Map<String, Transfer> named = new HashMap<>();
        rows.forEach(row -> read(row, runs, containers).ifPresent(transfer -> {
            Optional.of(transfer.id().toLowerCase(Locale.ROOT))
                    .filter(id -> !id.isEmpty())
                    .map(id -> named.putIfAbsent(id, transfer))
                    .ifPresent(first -> reportTwice(row, first));
            transfers.add(transfer);
        }));
        return transfers;
    }

    private static Optional<Transfer> read(TableRow row, RunIndex runs, ContainerRows containers) {
        String typedRun = row.text("Run");
        Optional<RunAssembly> run = runs.find(typedRun);
        if (!typedRun.isEmpty() && run.isEmpty()) {
            RunIndex.reportUnknown(row, typedRun);
            return Optional.empty();
        }
        List<String> layers =
                row.labels("Layer", label -> run.filter(r -> r.knows(label)).isPresent());
        String material = row.text("Material");
        if (layers.isEmpty() && material.isEmpty()) {
            return leftOut(row, "Layer", "a layer of a run, or a free material");
        }
        if (!layers.isEmpty() && run.isEmpty()) {
            return leftOut(row, "Run", "the run of the layer");
        }
        return row.key("Container").map(container -> transfer(row, run, layers, material, container, containers));
    }

    /** Both count: a container that is fuller than its account would be worse than one that is not. */
    private static void reportTwice(TableRow row, Transfer first) {
        row.report(
                FindingCode.TRANSFER_DUPLICATE,
                Severity.CHECK,
                "Transfer",
                "read transfer '" + first.id() + "' a second time; it stands in row "
                        + first.row().row() + " already, and both count",
                "each transfer once, under a name of its own",
                "Take the second one out, or give it a name of its own, and run again.");
    }

    private static Optional<Transfer> leftOut(TableRow row, String heading, String expected) {
        row.report(
                heading.equals("Run") ? FindingCode.RUN_MISSING : FindingCode.KEY_MISSING,
                Severity.STOP,
                heading,
                "read an empty cell in a row with other entries",
                expected,
                "Fill the cell or empty the row, then run again; the row was left out.");
        return Optional.empty();
    }

    private static Transfer transfer(
            TableRow row,
            Optional<RunAssembly> run,
            List<String> layers,
            String material,
            String container,
            ContainerRows containers) {
        Optional<Container> known = containers.find(container);
        if (known.isEmpty()) {
            row.report(
                    FindingCode.CONTAINER_UNKNOWN,
                    Severity.STOP,
                    "Container",
                    "read '" + container + "'",
                    "a container of the Containers table",
                    "Correct the name or add the container, then run again.");
        }
        return new Transfer(
                row.text("Transfer"),
                run.map(RunAssembly::id).orElse(""),
                run.map(found -> found.spelling(layers)).orElse(layers),
                material,
                known.map(Container::id).orElse(container),
                row.number("Amount"),
                row.choice("Status", Transfer.Status.values()).orElse(Transfer.Status.PROPOSED),
                row.text("By"),
                row.date("Date"),
                row.place());
    }
}
