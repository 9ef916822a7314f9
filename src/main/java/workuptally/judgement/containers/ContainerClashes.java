package workuptally.judgement.containers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import workuptally.judgement.containers.ProposalFit.Clash;
import workuptally.reference.hazards.Reactivity;
import workuptally.reference.hazards.ReactivityPair;
import workuptally.reference.hazards.ReactivityPair.InWorkup;
import workuptally.reference.substances.MaterialClass;

/** What must not meet in a waste container, by the classes of the reference data. */
final class ContainerClashes {
    private final Reactivity reactivity;

    ContainerClashes(Reactivity reactivity) {
        this.reactivity = reactivity;
    }

    /**
     * What an addition must not meet.
     *
     * @param brought what it brings
     * @param present what is in the container
     * @param earlier what the proposals before it bring, by transfer
     */
    List<Clash> with(List<Carried> brought, List<Carried> present, Map<String, List<Carried>> earlier) {
        Map<String, Clash> clashes = new LinkedHashMap<>();
        Set<String> there = new LinkedHashSet<>();
        brought.forEach(c -> there.addAll(c.membership().classes()));
        present.forEach(c -> there.addAll(c.membership().classes()));
        earlier.values()
                .forEach(list -> list.forEach(c -> there.addAll(c.membership().classes())));
        clashes(brought, present, "", there, clashes);
        earlier.forEach((transfer, list) -> clashes(brought, list, transfer, there, clashes));
        return List.copyOf(clashes.values());
    }

    private void clashes(
            List<Carried> brought,
            List<Carried> present,
            String transfer,
            Set<String> there,
            Map<String, Clash> clashes) {
        for (Carried incoming : brought) {
            for (Carried other : present) {
                if (incoming.material().equals(other.material())
                        || isWater(other) && holdsWater(brought)
                        || isWater(incoming) && holdsWater(present)) {
                    continue;
                }
                for (ReactivityPair pair : reactivity.between(incoming.membership(), other.membership(), there)) {
                    boolean little = incoming.minor() || other.minor();
                    if (little ? staysDangerous(pair) : concernsContainer(pair)) {
                        Clash clash = new Clash(
                                pair,
                                incoming.material(),
                                other.material(),
                                transfer,
                                incoming.shown() && other.shown());
                        clashes.merge(pair.key(), clash, (first, next) -> first.shownPresent() ? first : next);
                    }
                }
            }
        }
    }

    /** What stands in water already meets nothing new in the water of a container. */
    private static boolean holdsWater(List<Carried> portion) {
        return portion.stream().anyMatch(ContainerClashes::isWater);
    }

    private static boolean isWater(Carried carried) {
        return carried.membership().classes().contains(MaterialClass.WATER);
    }

    /** Whatever is not ordinary, and what sets gas free in a closed bottle; the published chart where it is grave. */
    private static boolean concernsContainer(ReactivityPair pair) {
        if (pair.inWorkup() == InWorkup.ORDINARY) {
            return !pair.ofChart() && !pair.gases().isEmpty();
        }
        return !pair.ofChart() || pair.severity() != ReactivityPair.Severity.CAUTION;
    }

    /**
     * What stands together in a container already though it never should. Heat and gas of a neutralisation are past; what goes on forming
     * toxic gas or explosives is not. What the table calls grave but not critical is ordinary in diluted acids and bases.
     *
     * @param present what is in the container
     */
    List<Clash> within(List<Carried> present) {
        Map<String, Clash> met = new LinkedHashMap<>();
        Set<String> there = new LinkedHashSet<>();
        present.forEach(c -> there.addAll(c.membership().classes()));
        List<Carried> before = new ArrayList<>();
        Map<String, Carried> each = new LinkedHashMap<>();
        present.forEach(c -> each.putIfAbsent(c.material() + c.shown(), c));
        for (Carried later : each.values()) {
            for (Carried earlier : before) {
                if (!later.material().equals(earlier.material()) && later.shown() && earlier.shown()) {
                    reactivity.between(later.membership(), earlier.membership(), there).stream()
                            .filter(ContainerClashes::staysDangerous)
                            .forEach(pair -> met.putIfAbsent(
                                    pair.key(), new Clash(pair, later.material(), earlier.material(), "", true)));
                }
            }
            before.add(later);
        }
        return List.copyOf(met.values());
    }

    private static boolean staysDangerous(ReactivityPair pair) {
        return !pair.ofChart()
                && pair.inWorkup() == InWorkup.NEVER
                && pair.severity() == ReactivityPair.Severity.CRITICAL;
    }
}
