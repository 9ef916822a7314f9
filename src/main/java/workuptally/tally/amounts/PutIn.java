package workuptally.tally.amounts;

import java.util.List;

/**
 * What was put into a run: into the reaction, and into the workup.
 *
 * @param charges charges as amounts, in order of the table
 * @param additions what the steps of the workup add, in their order
 */
public record PutIn(List<ChargeAmount> charges, List<Addition> additions) {
    /** Copies the lists. */
    public PutIn {
        charges = List.copyOf(charges);
        additions = List.copyOf(additions);
    }
}
