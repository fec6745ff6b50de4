package org.undercap.monitoring;

/**
 * A cause of a poor result and how well it fits the count.
 *
 * @param cause the cause
 * @param weight probability of the cause if all those tried were equally likely before the count
 *     (fraction); all weights add up to 1
 * @param expected mean count after the treatment if this is the cause
 * @param range where the count would lie in 8 of 10 such colonies
 * @param probability how often such colonies would give a count at least as far out as the one
 *     found, on either side (fraction)
 */
public record RankedCause(
    FailureCause cause, double weight, double expected, Interval range, double probability) {}
