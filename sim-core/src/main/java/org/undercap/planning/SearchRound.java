package org.undercap.planning;

/**
 * A round of a search.
 *
 * @param what what was tried, in words
 * @param schedules number of schedules
 * @param members members on which each was tried
 * @param complete whether these were all schedules of their kind
 */
public record SearchRound(String what, int schedules, int members, boolean complete) {}
