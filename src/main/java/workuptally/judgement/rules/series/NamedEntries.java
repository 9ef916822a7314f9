package workuptally.judgement.rules.series;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import workuptally.model.Amount;
import workuptally.model.Assay;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Container;
import workuptally.model.Field;
import workuptally.model.HistoryPoint;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.model.Lot;
import workuptally.model.NamedIn;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Transfer;
import workuptally.model.VesselTare;

/** The numbers of a book that a correction can mean by the words of its Record: a run with a row of it and a heading, or a container. */
final class NamedEntries {
    /** A row of a run by its kind and label. */
    private static final Pattern ROW = Pattern.compile("(?i)\\b(layer|lot|step)\\s+([\\p{L}\\p{N}_.-]*[\\p{L}\\p{N}])");

    private final Book book;
    private final NamedIn<Run> runs;
    private final NamedIn<Container> containers;
    private final NamedIn<String> others;

    NamedEntries(Book book) {
        this.book = book;
        this.runs = new NamedIn<>(book.runs(), Run::id);
        this.containers = new NamedIn<>(book.containers(), Container::id);
        this.others = new NamedIn<>(namesOutsideRuns(book), name -> name);
    }

    /**
     * An entry of the book.
     *
     * @param words words of a record that mean it, in small letters
     * @param field what it holds
     */
    record Entry(List<String> words, Field field) {
        private static Entry of(Field field, String... words) {
            return new Entry(List.of(words), field);
        }

        private boolean isNamedIn(String record) {
            return !NamedIn.labelsIn(record, words).isEmpty();
        }
    }

    /** The run that a record names first; that of a book with one run is meant where none is named. */
    Optional<Run> run(String record) {
        return runs.firstIn(record)
                .or(() -> book.runs().size() == 1 ? Optional.of(book.runs().get(0)) : Optional.empty());
    }

    /** What a record names that the book does not have, in words; empty where it names something of it. */
    Optional<String> missing(String record) {
        Optional<Run> run = run(record);
        if (run.isEmpty()) {
            return containers.firstIn(record).isPresent()
                            || others.firstIn(record).isPresent()
                    ? Optional.empty()
                    : Optional.of("no run of the book");
        }
        Matcher row = ROW.matcher(record);
        while (row.find()) {
            String kind = row.group(1).toLowerCase(Locale.ROOT);
            String label = row.group(2);
            boolean known = labels(run.get(), kind).anyMatch(label::equalsIgnoreCase);
            // "layer volume" names the heading, no label
            boolean labelled = label.chars().anyMatch(Character::isDigit);
            if (!known && labelled) {
                return Optional.of("a " + kind + " that " + run.get().id() + " does not have");
            }
        }
        return Optional.empty();
    }

    private static Stream<String> labels(Run run, String kind) {
        if (kind.equals("step")) {
            return run.steps().stream().map(Step::number);
        }
        return Stream.of(
                        run.layers().stream().map(Layer::label),
                        run.lots().stream().map(Lot::label),
                        run.assays().stream().map(Assay::sample),
                        run.steps().stream().flatMap(s -> s.gives().stream()))
                .flatMap(labels -> labels);
    }

    private static List<String> namesOutsideRuns(Book book) {
        return Stream.of(
                        book.vesselTares().stream().map(VesselTare::vessel),
                        book.transfers().stream().map(Transfer::id),
                        book.history().stream().map(HistoryPoint::series),
                        Stream.of(Limit.values()).map(Limit::title))
                .flatMap(names -> names)
                .toList();
    }

    /** The entries that a record means: those whose heading it names among the rows that it names; all of these rows where it names none. */
    List<Entry> of(String record) {
        List<Entry> rows = new ArrayList<>();
        run(record).ifPresent(run -> ofRun(run, record, rows));
        if (rows.isEmpty()) {
            containers
                    .in(record)
                    .forEach(c -> rows.addAll(List.of(
                            Entry.of(c.capacityLitres(), "capacity"),
                            Entry.of(c.tareGrams(), "tare"),
                            Entry.of(c.grossThenGrams(), "gross"))));
        }
        String small = record.toLowerCase(Locale.ROOT);
        List<Entry> named = rows.stream().filter(e -> e.isNamedIn(small)).toList();
        return named.isEmpty() ? List.copyOf(rows) : named;
    }

    private static void ofRun(Run run, String record, List<Entry> rows) {
        run.layers().stream()
                .filter(l -> names(record, l.label()))
                .forEach(l -> rows.addAll(List.of(
                        Entry.of(l.volumeMillilitres(), "volume"),
                        Entry.of(l.weighing().grossGrams(), "gross"),
                        Entry.of(l.weighing().tareGrams(), "tare"),
                        Entry.of(l.weighing().netGrams(), "net", "mass"),
                        Entry.of(l.temperatureCelsius(), "temperature"),
                        Entry.of(l.pH(), "ph"))));
        run.lots().stream()
                .filter(l -> names(record, l.label()))
                .forEach(l -> rows.addAll(List.of(
                        Entry.of(l.weighing().grossGrams(), "gross"),
                        Entry.of(l.weighing().tareGrams(), "tare"),
                        Entry.of(l.weighing().netGrams(), "net", "mass"),
                        Entry.of(l.assayPercent(), "assay"),
                        Entry.of(l.weighing().secondGrossGrams(), "second weighing"),
                        Entry.of(l.statedYieldPercent(), "yield"))));
        run.charges().stream().filter(c -> names(record, c.material())).forEach(c -> ofCharge(c, rows));
        run.products().stream().filter(p -> names(record, p.name())).forEach(p -> ofProduct(p, rows));
        run.steps().stream()
                .filter(s -> names(record, "step " + s.number()))
                .forEach(s -> rows.addAll(List.of(
                        Entry.of(s.added().volumeMillilitres(), "volume"),
                        Entry.of(s.added().massGrams(), "mass"),
                        Entry.of(s.added().molarityMolesPerLitre(), "molarity"),
                        Entry.of(s.added().densityGramsPerMillilitre(), "density"),
                        Entry.of(s.added().portions(), "portions"),
                        Entry.of(s.funnel().millilitres(), "funnel"),
                        Entry.of(s.funnel().loads(), "loads"),
                        Entry.of(s.temperatureCelsius(), "temperature"),
                        Entry.of(s.pHAfter(), "ph"))));
        run.assays().stream()
                .filter(a -> names(record, a.sample()))
                .forEach(a -> rows.addAll(List.of(
                        Entry.of(a.result(), "result", "assay", "content"),
                        Entry.of(a.aliquotMillilitres(), "aliquot"),
                        Entry.of(a.residueMilligrams(), "residue"))));
        if (names(record, "conversion")) {
            rows.add(Entry.of(run.head().conversionPercent(), "conversion"));
        }
    }

    private static void ofCharge(Charge charge, List<Entry> rows) {
        Stream.of(charge.quantity().actual(), charge.quantity().planned())
                .flatMap(Optional::stream)
                .map(Amount::value)
                .forEach(amount -> rows.add(Entry.of(amount, "amount", "mass", "volume", "gross", "net")));
        rows.addAll(List.of(
                Entry.of(charge.molarMassGramsPerMole(), "molar mass"),
                Entry.of(charge.coefficient(), "coefficient"),
                Entry.of(charge.goods().assayPercent(), "assay"),
                Entry.of(charge.goods().molarityMolesPerLitre(), "molarity"),
                Entry.of(charge.goods().titreMolesPerLitre(), "titre", "titer"),
                Entry.of(charge.goods().densityGramsPerMillilitre(), "density")));
    }

    private static void ofProduct(Product product, List<Entry> rows) {
        rows.addAll(List.of(
                Entry.of(product.molarMassGramsPerMole(), "molar mass"),
                Entry.of(product.coefficient(), "coefficient"),
                Entry.of(product.partitioning().pKa(), "pka")));
    }

    private static boolean names(String record, String label) {
        return !NamedIn.labelsIn(record, List.of(label)).isEmpty();
    }
}
