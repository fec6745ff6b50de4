/**
 * Counts of mites and what they say about the colony. Start with {@link
 * org.undercap.monitoring.Count}; {@link org.undercap.monitoring.MiteEstimate} goes from counts to
 * the number of mites.
 */
package org.undercap.monitoring;
