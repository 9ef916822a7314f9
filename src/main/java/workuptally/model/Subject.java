package workuptally.model;

import java.util.List;

/**
 * What a finding is about, by the names of the book; empty where no such thing is concerned.
 *
 * @param run run id
 * @param step number of the step
 * @param layers labels of layers, in their order
 * @param lot label of the lot
 * @param substance charge or product
 * @param transfer id of the transfer
 * @param container id of the container
 */
public record Subject(
        String run, String step, List<String> layers, String lot, String substance, String transfer, String container) {
    /** Nothing that has a name. */
    public static final Subject NONE = new Subject("", "", List.of(), "", "", "", "");

    /** Copies the list. */
    public Subject {
        layers = List.copyOf(layers);
    }

    /** A run as a whole. */
    public static Subject ofRun(String run) {
        return run.isEmpty() ? NONE : new Subject(run, "", List.of(), "", "", "", "");
    }

    /** A step of the run. */
    public Subject withStep(String number) {
        return new Subject(run, number, layers, lot, substance, transfer, container);
    }

    /** Layers of the run. */
    public Subject withLayers(List<String> labels) {
        return new Subject(run, step, labels, lot, substance, transfer, container);
    }

    /** A lot of the run. */
    public Subject withLot(String label) {
        return new Subject(run, step, layers, label, substance, transfer, container);
    }

    /** A charge or product of the run. */
    public Subject withSubstance(String name) {
        return new Subject(run, step, layers, lot, name, transfer, container);
    }

    /** A transfer, with the container it goes to. */
    public Subject withTransfer(String id, String to) {
        return new Subject(run, step, layers, lot, substance, id, to);
    }

    /** A container. */
    public Subject withContainer(String id) {
        return new Subject(run, step, layers, lot, substance, transfer, id);
    }

    /** True where more is known than the run. */
    public boolean isNamed() {
        return !(step.isEmpty()
                && layers.isEmpty()
                && lot.isEmpty()
                && substance.isEmpty()
                && transfer.isEmpty()
                && container.isEmpty());
    }
}
