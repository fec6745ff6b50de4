/**
 * Counts of mites and what they say about the colony. Start with {@link
 * org.undercap.monitoring.Count}; {@link org.undercap.monitoring.MiteEstimate} goes from counts to
 * the number of mites, and {@link org.undercap.monitoring.ExactIntervals} tells how much a count
 * can say.
 */
package org.undercap.monitoring;
