package org.undercap.monitoring;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What counts say about the mites of a colony.
 *
 * @param date the day it holds for
 * @param mites all mites, on bees and under the cappings (mites)
 * @param mitesPer100Bees mites on bees (mites per 100 bees)
 * @param widthShares which share of the width of the 95 % interval of all mites comes from where
 *     (fractions that add up to 1; the strength of treatments only if there were any)
 * @param warnings what to know before using it
 * @param counts each count beside what the estimate expects of it, in the order given
 */
public record MiteEstimate(
    LocalDate date,
    MiteDistribution mites,
    MiteDistribution mitesPer100Bees,
    Map<WidthSource, Double> widthShares,
    Set<EstimateWarning> warnings,
    List<CountCheck> counts) {

  /**
   * Copies the collections.
   *
   * @param date the day it holds for
   * @param mites all mites (mites)
   * @param mitesPer100Bees mites on bees (mites per 100 bees)
   * @param widthShares shares of the width (fractions)
   * @param warnings what to know before using it
   * @param counts each count beside what the estimate expects of it
   */
  public MiteEstimate {
    widthShares = Collections.unmodifiableMap(new TreeMap<>(widthShares));
    warnings = Collections.unmodifiableSet(new TreeSet<>(warnings));
    counts = List.copyOf(counts);
  }
}
