package workuptally.tally.amounts;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import workuptally.model.Run;
import workuptally.tally.amounts.Theory.ProductTheory;

/**
 * Wanted products that compete for one partner, as the two nitrophenols for phenol: each may take all of it, so that their theories must
 * not be added. Two halves of a resolution or two fragments of one molecule do not compete. Found by their skeletons: competing is what
 * would together take more of a partner than was charged.
 */
public final class CompetingProducts {
    /** More than the last digits of an amount. */
    private static final double MORE_THAN_CHARGED = 1.01;

    private CompetingProducts() {}

    /**
     * The wanted products of a run in groups: those of one group compete, those of different groups add up.
     *
     * @param amounts what was charged
     * @param theory their theories
     */
    public static List<List<ProductTheory>> of(Run run, List<ChargeAmount> amounts, Theory theory) {
        Skeletons skeletons = new Skeletons(run, amounts);
        List<ProductTheory> wanted =
                theory.products().stream().filter(p -> p.product().wanted()).toList();
        Set<ProductTheory> competing = new LinkedHashSet<>();
        for (String partner : skeletons.partners()) {
            List<ProductTheory> takers = wanted.stream()
                    .filter(p -> skeletons.units(p.product().name(), partner) > 0)
                    .toList();
            double taken = takers.stream()
                    .mapToDouble(p -> skeletons.units(p.product().name(), partner)
                            * p.amountMillimoles().value())
                    .sum();
            boolean tooMuch = skeletons
                    .chargedMillimoles(partner)
                    .filter(charged -> taken > MORE_THAN_CHARGED * charged.value())
                    .isPresent();
            if (takers.size() > 1 && tooMuch) {
                competing.addAll(takers);
            }
        }
        List<List<ProductTheory>> groups = new ArrayList<>();
        if (!competing.isEmpty()) {
            groups.add(List.copyOf(competing));
        }
        wanted.stream().filter(p -> !competing.contains(p)).map(List::of).forEach(groups::add);
        return groups;
    }
}
