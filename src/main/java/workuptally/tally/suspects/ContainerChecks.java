package workuptally.tally.suspects;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import workuptally.model.Container;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.Substances;
import workuptally.tally.containers.ContainerAddition;
import workuptally.tally.containers.ContainerTally;

/**
 * Everything in which the entries of a container must agree: what it gained on the balance against what is stated or was poured in, what was
 * poured in before the weighing against what it held then, its contents against its size, and its tare against the register.
 */
final class ContainerChecks {
    private static final double ANYTHING = 1e9;

    /**
     * Parts of what needs no look between ledger and bottle: what a book that agrees leaves open, and the standard uncertainty beside it, so
     * that the whole of it is off by 2.6 (common practice).
     */
    private static final double AGREES = 0.25;

    private static final double UNCERTAIN = 0.29;

    /** Volumes of mixed solvents and the size that is printed on a bottle, as a part of that (common practice). */
    private static final double SIZE_LEFT_OPEN = 0.05;

    private final Substances substances;
    private final EntryChecks entries;

    ContainerChecks(Substances substances, EntryChecks entries) {
        this.substances = substances;
        this.entries = entries;
    }

    /** The checks of a ledger by their names; those of which a part is missing are not there. */
    Map<String, Check> of(ContainerTally ledger) {
        Container container = ledger.container();
        String id = container.id();
        List<Check> all = new ArrayList<>();
        OptionalDouble weighed = weighedGrams(container);
        double before = ledger.before().stream()
                .mapToDouble(ContainerAddition::totalGrams)
                .sum();
        double stated = ledger.then().totalGrams();
        double allowed = Math.max(
                substances.value(Threshold.CONTAINER_WEIGHING_RELATIVE) * Math.max(weighed.orElse(0), stated),
                substances.value(Threshold.CONTAINER_WEIGHING_LEAST));
        if (weighed.isPresent() && stated > 0) {
            all.add(bothWays(
                    "weighed gain of " + id + " against its contents",
                    weighed.getAsDouble() - stated,
                    allowed,
                    stated));
        } else if (weighed.isPresent() && before > 0) {
            all.add(bothWays(
                    "weighed gain of " + id + " against what was poured in",
                    weighed.getAsDouble() - before,
                    allowed,
                    before));
        }
        if (stated > 0 && before > 0) {
            all.add(atMost(
                    "pours into " + id + " before its weighing against its contents",
                    before - stated,
                    allowed,
                    stated));
        }
        for (ContainerAddition pour : ledger.before()) {
            if (pour.transfer().layers().isEmpty() && stated > 0) {
                pour.grams()
                        .forEach((name, grams) -> all.add(atMost(
                                "pour " + pour.transfer().id() + " against " + name + " in " + id,
                                grams - ledger.then().grams().getOrDefault(name, 0.0),
                                allowed,
                                stated)));
            }
        }
        ledger.now()
                .capacityLitres()
                .ifPresent(litres -> all.add(new Check(
                        "contents of " + id + " against its size",
                        ledger.now().litres() - litres,
                        -ANYTHING,
                        SIZE_LEFT_OPEN * litres,
                        SIZE_LEFT_OPEN / 2 * litres,
                        litres)));
        entries.tare("container " + id, id, container.tareGrams()).ifPresent(all::add);
        return CheckAccount.byName(all);
    }

    private static OptionalDouble weighedGrams(Container container) {
        OptionalDouble gross = value(container.grossThenGrams());
        OptionalDouble tare = value(container.tareGrams());
        return gross.isPresent() && tare.isPresent()
                ? OptionalDouble.of(gross.getAsDouble() - tare.getAsDouble())
                : OptionalDouble.empty();
    }

    private static OptionalDouble value(Field field) {
        return field.entered().map(Entered::value).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static Check bothWays(String name, double residual, double allowed, double scale) {
        return new Check(name, residual, -AGREES * allowed, AGREES * allowed, UNCERTAIN * allowed, scale);
    }

    private static Check atMost(String name, double residual, double allowed, double scale) {
        return new Check(name, residual, -ANYTHING, AGREES * allowed, UNCERTAIN * allowed, scale);
    }
}
