package org.undercap.scenario;

import java.util.Optional;
import org.undercap.source.Source;

/**
 * The infestation at which the user wants to act.
 *
 * @param mitesPer100Bees limit (mites per 100 bees)
 * @param source where it comes from, if the user named a source of the bibliography
 */
public record ChosenThreshold(double mitesPer100Bees, Optional<Source> source) {}
