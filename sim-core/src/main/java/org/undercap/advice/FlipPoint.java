package org.undercap.advice;

/**
 * The smallest change that would turn the advice round.
 *
 * @param what what changes: mites, brood, temperature, arrivals or start
 * @param change the change in words, as in {@code 2.1 times as many mites}
 * @param reverses true if the second plan comes before the first from there on; false if not even
 *     the largest change tried does that
 */
public record FlipPoint(String what, String change, boolean reverses) {}
