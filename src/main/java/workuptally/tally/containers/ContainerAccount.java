package workuptally.tally.containers;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.material.Material;
import workuptally.measure.MeasuredValue;
import workuptally.model.Book;
import workuptally.model.Container;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Limit;
import workuptally.model.Transfer;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.containers.ContainerTally.Age;
import workuptally.tally.containers.ContainerTally.Reconciliation;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerFlow;
import workuptally.tally.layers.LayerMakeUp;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.NamedVolumes;

/** Ledgers of the waste containers: contents as stated at the weighing, transfers done since, transfers proposed. */
public final class ContainerAccount {
    private static final String WATER = "water";

    private final Book book;
    private final Map<String, RunTally> runs = new LinkedHashMap<>();
    private final Map<String, List<Transfer>> transfers = new LinkedHashMap<>();
    private final Substances substances;
    private final NamedVolumes volumes;
    private final IngredientAccount materials;

    /**
     * Ledgers of a book.
     *
     * @param book the entries
     * @param tallies results of its runs
     * @param substances reference data in force
     */
    public ContainerAccount(Book book, List<RunTally> tallies, Substances substances) {
        this.book = book;
        this.substances = substances;
        this.volumes = new NamedVolumes(substances);
        this.materials = new IngredientAccount(substances);
        tallies.forEach(t -> runs.put(t.run().id(), t));
        book.transfers()
                .forEach(t -> transfers
                        .computeIfAbsent(t.container(), id -> new ArrayList<>())
                        .add(t));
    }

    /** One ledger per container, in order of the table. */
    public List<ContainerTally> ledgers() {
        return book.containers().stream()
                .map(c -> ledger(c, transfers.getOrDefault(c.id(), List.of())))
                .toList();
    }

    /**
     * The ledger of a container.
     *
     * @param ofContainer transfers into it
     */
    public ContainerTally ledger(Container container, List<Transfer> ofContainer) {
        OptionalDouble capacity = value(container.capacityLitres());
        Map<String, Double> contents = new LinkedHashMap<>();
        for (Container.Content content : container.contentsThen()) {
            parts(content.substance(), content.massGrams())
                    .forEach((name, grams) -> contents.merge(name, grams, Double::sum));
        }
        ContainerState then = new ContainerState(contents, volumes.millilitres(contents), capacity);
        List<ContainerAddition> before = new ArrayList<>();
        List<ContainerAddition> done = new ArrayList<>();
        List<ContainerAddition> proposed = new ArrayList<>();
        for (Transfer transfer : ofContainer) {
            if (transfer.status() == Transfer.Status.PROPOSED) {
                proposed.add(addition(transfer));
            } else {
                (isInContentsThen(transfer, container) ? before : done).add(addition(transfer));
            }
        }
        ContainerState now = then;
        for (ContainerAddition addition : done) {
            now = now.plus(addition);
        }
        return new ContainerTally(
                container, then, before, done, proposed, now, reconciliation(container, then), age(container));
    }

    /** A transfer before the day of the weighing stands in the contents then; one on that day or undated counts as later. */
    private static boolean isInContentsThen(Transfer transfer, Container container) {
        return transfer.date()
                .flatMap(day -> container.weighedOn().map(day::isBefore))
                .orElse(false);
    }

    private ContainerAddition addition(Transfer transfer) {
        if (transfer.layers().isEmpty()) {
            double grams = value(transfer.massGrams()).orElse(0);
            Map<String, Double> material = parts(transfer.material(), grams);
            List<String> unweighed =
                    transfer.massGrams().entered().isPresent() ? List.of() : List.of(transfer.material());
            return new ContainerAddition(transfer, material, volumes.millilitres(material), 0, unweighed);
        }
        Map<String, Double> parts = new LinkedHashMap<>();
        double millilitres = 0;
        double source = 0;
        List<String> unweighed = new ArrayList<>();
        for (String label : transfer.layers()) {
            Optional<RunTally> run = Optional.ofNullable(runs.get(transfer.run()));
            Optional<LayerMakeUp> makeUp = run.flatMap(r -> r.makeUp(label));
            Optional<Double> weighed = run.flatMap(r -> r.layer(label))
                    .flatMap(LayerTally::massGrams)
                    .map(MeasuredValue::value);
            double ofLayer =
                    weighed.or(() -> makeUp.map(LayerMakeUp::totalGrams)).orElse(0.0);
            if (weighed.isEmpty()) {
                unweighed.add(label);
            }
            source += ofLayer;
            if (makeUp.isPresent()) {
                makeUp.get().grams().forEach((name, grams) -> parts.merge(name, grams, Double::sum));
                millilitres += makeUp.get().millilitres() > 0
                        ? makeUp.get().millilitres()
                        : volumes.millilitres(makeUp.get().grams());
            } else if (ofLayer > 0) {
                parts.merge(LayerFlow.UNSTATED, ofLayer, Double::sum);
                millilitres += ofLayer;
            }
        }
        double amount = positive(transfer.massGrams()).orElse(source);
        if (source <= 0) {
            return new ContainerAddition(transfer, Map.of(LayerFlow.UNSTATED, amount), amount, 0, unweighed);
        }
        double share = amount / source;
        parts.replaceAll((name, grams) -> grams * share);
        return new ContainerAddition(transfer, parts, millilitres * share, source, unweighed);
    }

    /** An amount of 0 is none: what is proposed is then taken to be all of the layer. */
    private static OptionalDouble positive(Field field) {
        OptionalDouble value = value(field);
        return value.isPresent() && value.getAsDouble() > 0 ? value : OptionalDouble.empty();
    }

    private Optional<Reconciliation> reconciliation(Container container, ContainerState then) {
        OptionalDouble gross = value(container.grossThenGrams());
        OptionalDouble tare = value(container.tareGrams());
        if (gross.isEmpty() || tare.isEmpty() || container.contentsThen().isEmpty()) {
            return Optional.empty();
        }
        double weighed = gross.getAsDouble() - tare.getAsDouble();
        return Optional.of(new Reconciliation(
                then.totalGrams(),
                weighed,
                Math.max(
                        substances.value(Threshold.CONTAINER_WEIGHING_RELATIVE) * weighed,
                        substances.value(Threshold.CONTAINER_WEIGHING_LEAST))));
    }

    private Optional<Age> age(Container container) {
        Optional<LocalDate> asOf = book.limits().day(Limit.AS_OF);
        if (container.opened().isEmpty() || asOf.isEmpty()) {
            return Optional.empty();
        }
        LocalDate opened = container.opened().get();
        OptionalDouble days = book.limits().optional(Limit.CONTAINER_DAYS);
        Optional<LocalDate> due = days.isPresent()
                ? Optional.of(opened.plusDays((long) Math.floor(days.getAsDouble())))
                : Optional.empty();
        return Optional.of(new Age(
                asOf.get(),
                ChronoUnit.DAYS.between(opened, asOf.get()),
                due,
                due.map(ContainerAccount::workingDayUpTo)));
    }

    private static LocalDate workingDayUpTo(LocalDate day) {
        DayOfWeek weekday = day.getDayOfWeek();
        return weekday == DayOfWeek.SATURDAY ? day.minusDays(1) : weekday == DayOfWeek.SUNDAY ? day.minusDays(2) : day;
    }

    private String fullName(String name) {
        return materials
                .solventName(name)
                .or(() -> substances.solute(name).map(s -> s.name()))
                .orElse(name)
                .intern();
    }

    /** A material by its full name; a solution in water whose strength its name tells as what is dissolved and water. */
    private Map<String, Double> parts(String name, double grams) {
        Material material = substances.material(name);
        OptionalDouble percent = material.massPercentInWater();
        Map<String, Double> parts = new LinkedHashMap<>();
        double share = percent.orElse(100) / 100;
        boolean solution = share < 1 && material.solute().isPresent();
        parts.put(
                solution ? material.solute().get().name().intern() : fullName(name), solution ? share * grams : grams);
        if (solution) {
            parts.merge(WATER, (1 - share) * grams, Double::sum);
        }
        return parts;
    }

    private static OptionalDouble value(Field field) {
        return field.entered().map(Entered::value).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
