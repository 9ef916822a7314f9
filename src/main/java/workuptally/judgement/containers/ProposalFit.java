package workuptally.judgement.containers;

import java.util.List;
import java.util.Optional;
import workuptally.reference.hazards.ReactivityPair;
import workuptally.reference.hazards.ReactivityPair.InWorkup;
import workuptally.tally.HeldOnCake;
import workuptally.tally.containers.ContainerAddition;
import workuptally.tally.containers.ContainerState;

/**
 * How one proposed transfer fits its container, the proposals before it in the table added first.
 *
 * @param addition what it would bring
 * @param streamFit whether its stream is the container's
 * @param waitsForPhase true where the streams could be compared, but which phase its layer is has not been shown
 * @param streamName stream that its make-up suggests
 * @param clashes materials that must not meet
 * @param cakes what drying cakes that it brings may hold
 * @param unassayedSolids labels of solids that it brings, which nobody assayed while the balance of their run is open
 * @param after contents with the proposals that fit before it, and itself
 * @param fillLimitPercent largest fill, %
 * @param crossesFill true where this proposal, and none before it, takes the container over that fill
 */
public record ProposalFit(
        ContainerAddition addition,
        StreamFit streamFit,
        boolean waitsForPhase,
        String streamName,
        List<Clash> clashes,
        List<HeldOnCake> cakes,
        List<String> unassayedSolids,
        ContainerState after,
        double fillLimitPercent,
        boolean crossesFill) {
    /** Copies the lists. */
    public ProposalFit {
        clashes = List.copyOf(clashes);
        cakes = List.copyOf(cakes);
        unassayedSolids = List.copyOf(unassayedSolids);
    }

    /** True where it is added before the next one is looked at: no other stream, and nothing hazardous that meets. */
    public boolean fits() {
        return streamFit != StreamFit.OTHER
                && streamFit != StreamFit.ASK_FIRST
                && clashes.stream().noneMatch(Clash::isHazardous);
    }

    /** True where the container would stand above its limit with this proposal. */
    public boolean isOver() {
        return after.fillPercent().isPresent() && after.fillPercent().getAsDouble() > fillLimitPercent;
    }

    /** Whether the stream of the addition is the container's. */
    public enum StreamFit {
        /** The same, or both aqueous without acid meeting base. */
        SAME,
        /** Allowed, at the price of the dearer stream. */
        DEARER,
        /** Another stream. */
        OTHER,
        /** A stream that asks first. */
        ASK_FIRST,
        /** The stream of the container or of the addition is not known, or rests on a phase that has not been shown. */
        UNKNOWN
    }

    /**
     * Two materials that must not meet.
     *
     * @param row the pair in the reference data
     * @param incoming class or material of the addition
     * @param present class or material it would meet
     * @param earlierTransfer the earlier proposal that brings that, empty where it is in the container
     * @param shownPresent false where the material was charged and no test shows that it is gone
     */
    public record Clash(
            ReactivityPair row, String incoming, String present, String earlierTransfer, boolean shownPresent) {
        /** What happens where they meet. */
        public String consequence() {
            return row.consequence();
        }

        /** The gas set free, if one is. */
        public Optional<String> gas() {
            return row.gases().isEmpty() ? Optional.empty() : Optional.of(String.join(", ", row.gases()));
        }

        /** The gas in brackets behind a blank, without what the consequence has named; empty where nothing is left to say. */
        public String gasInBrackets() {
            return row.gasInBrackets();
        }

        /** The same in a word or two. */
        public String dangerInAWord() {
            return row.dangerInAWord();
        }

        /** Whether it sets deadly gas free, burns or explodes. */
        public boolean isCritical() {
            return isHazardous() && row.severity() == ReactivityPair.Severity.CRITICAL;
        }

        /** True where gas, toxic or strong heat is to be feared; false for a caution. */
        public boolean isHazardous() {
            boolean grave = row.severity() != ReactivityPair.Severity.CAUTION;
            return row.inWorkup() == InWorkup.ORDINARY
                    ? !row.gases().isEmpty()
                    : grave || !row.gases().isEmpty();
        }
    }
}
