/**
 * Counts of mites and what they say.
 *
 * <p>From counts to a colony: a {@link org.undercap.monitoring.Count} is what a keeper found, a
 * {@link org.undercap.monitoring.CountedColony} the colony it was found in; start with {@link
 * org.undercap.monitoring.MitePosterior}, which makes a {@link
 * org.undercap.monitoring.MiteEstimate} of them. {@link org.undercap.monitoring.ExactIntervals}
 * tells how much a count can say by itself.
 *
 * <p>Did a treatment work? {@link org.undercap.monitoring.Efficacy} reckons it from counts before
 * and after, {@link org.undercap.monitoring.PoorResult} ranks what may lie behind a poor result,
 * and {@link org.undercap.monitoring.Recheck} tells beforehand which count would be good news.
 */
package org.undercap.monitoring;
