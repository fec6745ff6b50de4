package org.undercap.advice;

import java.util.Optional;

/**
 * The smallest change that would turn the advice round.
 *
 * @param what what changes: mites, brood, temperature, arrivals, floor, humid or start
 * @param change the change in words, as in {@code 2.1 times as many mites}; the largest tried if
 *     none turns the advice round
 * @param instead name of the plan that then comes first; empty if not even the largest change tried
 *     does that
 */
public record FlipPoint(String what, String change, Optional<String> instead) {}
