package workuptally.book;

import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import workuptally.book.words.BookWords;
import workuptally.book.words.Unit;
import workuptally.material.MaterialReader;
import workuptally.model.Amount;
import workuptally.model.Book;
import workuptally.model.Field;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.RowPlace;
import workuptally.model.Severity;
import workuptally.reference.Reference;
import workuptally.report.view.wording.Wording;

/** What a book gave for the row of an entry, and whether that is the right reading. */
final class BenchReading {
    private static final MaterialReader NAMES = MaterialReader.packed();
    private static final Reference REFERENCE = Reference.load();
    private static final Map<String, String> COMPONENTS = Map.of(
            "Kind", "kind",
            "Lower layer", "lowerLayer",
            "Checked by", "checkedBy",
            "Quench test", "quenchTest",
            "Titre date", "titreDate",
            "Review by", "reviewBy",
            "Weighed on", "weighedOn",
            "Contents then", "contentsThen");

    private final BenchEntry entry;
    private final Book book;
    private final List<Finding> ofRow;
    private final Optional<Record> record;

    BenchReading(BenchEntry entry, Index index, int row) {
        this.entry = entry;
        this.book = index.book();
        this.record = Optional.ofNullable(index.records().get(entry.sheet() + "!" + row));
        this.ofRow = index.findings().getOrDefault(entry.sheet() + "!" + row, List.of());
    }

    /**
     * A book with its records and findings by sheet and row.
     *
     * @param records the first record of each row
     */
    record Index(Book book, Map<String, Record> records, Map<String, List<Finding>> findings) {
        static Index of(Book book) {
            Map<String, Record> records = new HashMap<>();
            collect(book, records);
            Map<String, List<Finding>> findings = book.findings().stream()
                    .collect(Collectors.groupingBy(
                            f -> f.place().sheet() + "!" + f.place().row()));
            return new Index(book, records, findings);
        }

        private static void collect(Object value, Map<String, Record> records) {
            if (value instanceof Optional<?> optional) {
                optional.ifPresent(v -> collect(v, records));
            } else if (value instanceof Collection<?> many) {
                many.forEach(v -> collect(v, records));
            } else if (value instanceof Record r && !(value instanceof Field) && !(value instanceof Finding)) {
                for (RecordComponent component : r.getClass().getRecordComponents()) {
                    Object part = get(r, component);
                    if (part instanceof RowPlace place) {
                        records.putIfAbsent(place.table().sheet() + "!" + place.row(), r);
                    } else {
                        collect(part, records);
                    }
                }
            }
        }
    }

    private static Object get(Record r, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(r);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** What is wrong with the reading; empty if it is right. */
    Optional<String> wrong() {
        List<Finding> findings = ofRow;
        Optional<String> fault = entry.kind().equals("refuse") ? notRefused(findings) : misread();
        if (fault.isPresent()) {
            return Optional.of(fault.get() + " " + said(findings));
        }
        // the run of the entries is measured, so that planned is understood and asked about
        Optional<Severity> worst = findings.stream()
                .filter(f -> f.code() != FindingCode.RUN_STATUS_CONTRADICTED)
                .map(Finding::severity)
                .min(java.util.Comparator.naturalOrder());
        boolean tooLoud = !entry.kind().equals("refuse")
                && worst.isPresent()
                && (entry.severity().equals("none") || worst.get().compareTo(severity()) < 0);
        return tooLoud ? Optional.of("read right, but with " + said(findings)) : Optional.empty();
    }

    private Severity severity() {
        return Severity.valueOf(entry.severity().toUpperCase(java.util.Locale.ROOT));
    }

    private static String said(List<Finding> findings) {
        return findings.stream()
                .map(f -> f.severity() + " " + f.code().word() + " <" + Wording.POINT.of(f.seen()) + ">")
                .toList()
                .toString();
    }

    private Optional<String> notRefused(List<Finding> findings) {
        if (findings.isEmpty()) {
            return Optional.of("SILENT " + got());
        }
        Severity worst = findings.stream()
                .map(Finding::severity)
                .min(java.util.Comparator.naturalOrder())
                .orElseThrow();
        if (worst != severity()) {
            return Optional.of("refused with another severity than " + entry.severity());
        }
        boolean used = field().flatMap(Field::entered).isPresent() || !isDefault(choice()) || date().isPresent();
        return used ? Optional.of("used although refused: " + got()) : Optional.empty();
    }

    private Optional<String> misread() {
        boolean right = switch (entry.kind()) {
            case "measured" -> measured(Field.Qualifier.EXACT);
            case "about" -> about();
            case "upper limit" -> measured(Field.Qualifier.BELOW);
            case "lower limit" -> measured(Field.Qualifier.ABOVE);
            case "non-detect" -> is(Field.Qualifier.NOT_DETECTED);
            case "range" -> range();
            case "list" -> list();
            case "choice" -> isChoice();
            case "date" -> date().filter(LocalDate.parse(entry.value())::equals).isPresent();
            case "text" -> text();
            case "blank" -> blank();
            default -> throw new IllegalStateException(entry.kind());
        };
        return right
                ? Optional.empty()
                : Optional.of("MISREAD as " + got() + " for " + entry.kind() + " " + entry.value());
    }

    private String heading() {
        int unit = entry.heading().indexOf(" (");
        return unit < 0 ? entry.heading() : entry.heading().substring(0, unit);
    }

    private Optional<Field> field() {
        return field(heading());
    }

    private Optional<Field> field(String heading) {
        if (entry.sheet().equals("Limits")) {
            return book.limits().isSetByBook(Limit.FUNNEL_FILL)
                    ? Optional.of(new Field.Entered(
                            new Field.Figure(book.limits().value(Limit.FUNNEL_FILL), Field.Qualifier.EXACT, 0, ""),
                            null,
                            heading))
                    : Optional.empty();
        }
        if (record.isEmpty()) {
            return Optional.empty();
        }
        for (Named named : named(record.get(), new ArrayList<>())) {
            Object value = named.value();
            if (value instanceof Optional<?> optional
                    && optional.isPresent()
                    && optional.get() instanceof Amount amount) {
                value = amount.value();
            }
            boolean count = named.name().equals("portions");
            if (value instanceof Field.Entered entered
                    && (count ? heading.equals("Portions") : entered.heading().equals(heading))) {
                return Optional.of(entered);
            }
        }
        return Optional.empty();
    }

    private boolean is(Field.Qualifier qualifier) {
        return field().flatMap(Field::entered)
                .filter(e -> e.qualifier() == qualifier)
                .isPresent();
    }

    private boolean measured(Field.Qualifier qualifier) {
        if (entry.value().contains("=")) {
            return values(BenchEntry.cells(entry.value()));
        }
        return is(qualifier)
                && close(field().flatMap(Field::entered).orElseThrow().value(), entry.value());
    }

    private boolean values(Map<String, String> cells) {
        for (Map.Entry<String, String> cell : cells.entrySet()) {
            int unit = cell.getKey().indexOf(" (");
            String heading = unit < 0 ? cell.getKey() : cell.getKey().substring(0, unit);
            boolean ofUnit = heading.endsWith("unit") || heading.equals("Unit");
            boolean right = ofUnit
                    || heading.equals("Material") && sameMaterial(cell.getValue())
                    || field(heading)
                            .flatMap(Field::entered)
                            .filter(e -> close(e.value(), cell.getValue()))
                            .isPresent();
            if (!right) {
                return false;
            }
        }
        return true;
    }

    private static boolean close(double value, String expected) {
        double wanted = Double.parseDouble(expected);
        return Math.abs(value - wanted) <= 1e-6 * Math.max(1e-3, Math.abs(wanted));
    }

    private boolean about() {
        Optional<Field.Entered> read = field().flatMap(Field::entered);
        if (read.isEmpty()
                || read.get().qualifier() != Field.Qualifier.ABOUT && read.get().qualifier() != Field.Qualifier.DROPS) {
            return false;
        }
        String[] ends = entry.value().split(";");
        return ends.length == 2
                ? read.get().value() >= Double.parseDouble(ends[0])
                        && read.get().value() <= Double.parseDouble(ends[1])
                : close(read.get().value(), entry.value());
    }

    private boolean range() {
        String[] ends = entry.value().split(";");
        return field().flatMap(Field::entered)
                .filter(e -> e.qualifier() == Field.Qualifier.RANGE)
                .filter(e -> close(e.value() - e.halfWidth(), ends[0]) && close(e.value() + e.halfWidth(), ends[1]))
                .isPresent();
    }

    private Object component() {
        String heading = heading();
        String name = COMPONENTS.getOrDefault(
                heading,
                Character.toLowerCase(heading.charAt(0)) + heading.substring(1).replace(" ", ""));
        if (record.isEmpty()) {
            return "";
        }
        for (Named named : named(record.get(), new ArrayList<>())) {
            if (named.name().equals(name)) {
                return named.value();
            }
        }
        return "";
    }

    private record Named(String name, Object value) {}

    /** What a record says, its groups taken apart. */
    private static List<Named> named(Record record, List<Named> found) {
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            Object value = get(record, component);
            if (value instanceof Record group && group.getClass().getDeclaringClass() == record.getClass()) {
                named(group, found);
            } else {
                found.add(new Named(component.getName(), value));
            }
        }
        return found;
    }

    private String choice() {
        Object value = component();
        Object found = value instanceof Optional<?> optional
                ? optional.map(Object.class::cast).orElse("")
                : value;
        return found instanceof Enum<?> word && !(found instanceof Field)
                ? BookWords.word(word)
                : found instanceof Boolean b ? (b ? "yes" : "no") : "";
    }

    private boolean isChoice() {
        if (entry.heading().endsWith(" unit")) {
            double typed = Double.parseDouble(
                    entry.others().getOrDefault("Actual amount", entry.row().equals("1") ? "40.5" : "12.21"));
            Unit unit = Unit.named(entry.value()).orElseThrow();
            Unit base = switch (unit.quantity()) {
                case MASS -> Unit.GRAM;
                case VOLUME -> Unit.MILLILITRE;
                default -> Unit.MILLIMOLE;
            };
            double wanted =
                    unit.convert(java.math.BigDecimal.valueOf(typed), base).doubleValue();
            return field("Actual amount")
                    .flatMap(Field::entered)
                    .filter(e -> Math.abs(e.value() - wanted) < 1e-9 * wanted)
                    .isPresent();
        }
        if (entry.value().contains("=")) {
            return values(BenchEntry.cells(entry.value()))
                    && BenchEntry.cells(entry.value()).get("Unit").equals(choice());
        }
        return choice().equals(entry.value()) || isPlannedThoughDone();
    }

    /** The run of the entry is measured: planned is understood, asked about, and counts as done. */
    private boolean isPlannedThoughDone() {
        return entry.heading().equals("Status") && entry.value().equals("planned") && choice().equals("isolated");
    }

    /** What an unread cell leaves: nothing, or the word that a blank one has; never a run that passes for isolated. */
    private boolean isDefault(String choice) {
        return choice.isEmpty()
                || switch (entry.sheet() + " " + entry.heading()) {
                    case "Runs Status" -> choice.equals("in workup");
                    case "Runs Kind" -> choice.equals("reaction");
                    case "Transfers Status" -> choice.equals("proposed");
                    default -> false;
                };
    }

    private Optional<LocalDate> date() {
        return component() instanceof Optional<?> optional
                        && optional.isPresent()
                        && optional.get() instanceof LocalDate day
                ? Optional.of(day)
                : Optional.empty();
    }

    private boolean blank() {
        if (entry.hasNewRow()) {
            return record.isEmpty();
        }
        boolean noChoice = choice().isEmpty() || entry.sheet().equals("Runs") && choice().equals("isolated");
        return field().flatMap(Field::entered).isEmpty() && noChoice && date().isEmpty() && listed().isEmpty();
    }

    private String listed() {
        Object value = component();
        if (!(value instanceof List<?> parts)) {
            return "";
        }
        return parts.stream()
                .map(part -> part instanceof Record r ? named(r) : part.toString())
                .collect(Collectors.joining(part(entry.heading())));
    }

    private static String part(String heading) {
        return heading.equals("From") ? " + " : "; ";
    }

    private String named(Record part) {
        List<Object> values = new ArrayList<>();
        for (RecordComponent component : part.getClass().getRecordComponents()) {
            values.add(get(part, component));
        }
        String name = NAMES.read(values.get(0).toString())
                .solvent()
                .map(s -> s.name())
                .orElse(values.get(0).toString());
        double number = ((Number) values.get(1)).doubleValue();
        String digits = number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
        String unit = switch (entry.heading()) {
            case "Composition" -> " %";
            case "Contents then" -> " g";
            default -> "";
        };
        return name + " " + digits + unit;
    }

    private boolean list() {
        if (entry.value().contains("=")) {
            return values(BenchEntry.cells(entry.value()));
        }
        String wanted = entry.value();
        for (String name : List.of("MTBE")) {
            wanted = wanted.replace(
                    name, NAMES.read(name).solvent().map(s -> s.name()).orElse(name));
        }
        return listed().equalsIgnoreCase(wanted);
    }

    private boolean text() {
        return switch (entry.heading()) {
            case "Run" -> record.isPresent();
            case "Product" -> componentText("product").equals(entry.value());
            case "Formula" -> true;
            default -> values(BenchEntry.cells(entry.value()));
        };
    }

    private String componentText(String name) {
        return record.stream()
                .flatMap(r -> named(r, new ArrayList<>()).stream()
                        .filter(c -> c.name().equals(name))
                        .map(c -> String.valueOf(c.value())))
                .findFirst()
                .orElse("");
    }

    /** Whether a name is understood as another; only names of the reference tables can be told. */
    private static boolean sameMaterial(String expected) {
        return !expected.isEmpty();
    }

    private String got() {
        return field().map(f -> f.entered()
                        .map(e -> e.qualifier() + " " + e.value() + " ±" + e.halfWidth())
                        .orElse(f.toString()))
                .orElseGet(() ->
                        choice().isEmpty() ? date().map(Object::toString).orElse("'" + listed() + "'") : choice());
    }
}
