package workuptally.judgement.containers;

import workuptally.judgement.containers.ProposalFit.StreamFit;
import workuptally.tally.containers.ContainerAddition;

/**
 * A transfer that has been made.
 *
 * @param addition what it brought
 * @param streamFit whether its stream is the container's
 * @param streamName stream that its make-up suggests
 */
public record MadeTransfer(ContainerAddition addition, StreamFit streamFit, String streamName) {}
