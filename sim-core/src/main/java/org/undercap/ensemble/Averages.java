package org.undercap.ensemble;

/** Means and medians of the outcomes of a plan, as {@link OutcomeTable} and weighted members. */
public interface Averages {
  /**
   * The median of an outcome over the members that have it.
   *
   * @param outcome which
   * @return its median; unit as {@link Outcome} says; NaN if no member has it
   */
  double median(Outcome outcome);

  /**
   * The mean of an outcome over the members that have it.
   *
   * @param outcome which
   * @return its mean; unit as {@link Outcome} says; NaN if no member has it
   */
  double mean(Outcome outcome);
}
