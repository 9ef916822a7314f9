package workuptally.tally.suspects;

import java.util.ArrayList;
import java.util.List;
import workuptally.tally.suspects.Entry.Sort;

/**
 * Two numbers in each other's cells: of one column and one kind in neighbouring rows, two tares of any two vessels, or volume and mass of one
 * layer.
 */
final class Exchanges {
    private final List<Entry> entries;

    Exchanges(List<Entry> entries) {
        this.entries = entries;
    }

    List<Hypothesis> list() {
        List<Hypothesis> all = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            for (int j = i + 1; j < entries.size(); j++) {
                Entry one = entries.get(i);
                Entry other = entries.get(j);
                if (isExchangeable(one, other)
                        && one.number().value() != other.number().value()) {
                    all.add(exchange(one, other));
                }
            }
        }
        return all;
    }

    private static boolean isExchangeable(Entry one, Entry other) {
        boolean volumeAndMass = one.cell().isIn(other.row())
                && one.sort() == Sort.VOLUME
                && other.sort() == Sort.NET
                && one.vessel().equals(other.vessel());
        return volumeAndMass
                || one.sort() == other.sort()
                        && one.sort() != Sort.MOLAR_MASS
                        && (one.isNeighbourOf(other) || one.sort() == Sort.TARE && one.isInColumnOf(other));
    }

    private Hypothesis exchange(Entry one, Entry other) {
        double alternatives = one.isNeighbourOf(other)
                ? 1
                : entries.stream().filter(e -> e.sort() == one.sort()).count();
        return new Hypothesis(
                Changes.of(List.of(
                        Slips.change(one, other.number().figure()),
                        Slips.change(other, one.number().figure()))),
                UsualSlip.CELLS_SWAPPED,
                List.of(one.cell().place(), other.cell().place()),
                one.row(),
                one.what() + " and " + other.what(),
                one.number().asTyped() + " and " + other.number().asTyped(),
                other.number().asTyped() + " and " + one.number().asTyped(),
                alternatives);
    }
}
