package org.undercap.study;

import java.util.Optional;
import org.undercap.internal.Checks;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.Prior;

/**
 * Something that a study varies.
 *
 * @param kind what it is
 * @param name the parameter, or the method of a treatment; empty for the other kinds
 * @param prior how it is spread (unit as the kind says)
 */
public record StudyAxis(Kind kind, String name, Prior prior) {
  /** Kinds of things that can be varied. */
  public enum Kind {
    /** A parameter of the model, in its unit. */
    PARAMETER(""),
    /** Strength of one treatment: factor on its hazard (ratio). */
    STRENGTH("strength"),
    /** All dates of the plan, moved together (days). */
    DATES("dates"),
    /** Days warmer than usual (C). */
    WEATHER("weather"),
    /** Place in what is believed about the mites of the first day (share). */
    MITES("mites"),
    /** Factor on the bees of the first day (ratio). */
    BEES("bees"),
    /** Factor on the brood of the first day (ratio). */
    BROOD("brood"),
    /** Factor on the mites that arrive (ratio). */
    ARRIVALS("arrivals");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /**
     * The word that names it.
     *
     * @return a word; empty for parameters, which have names of their own
     */
    public String word() {
      return word;
    }

    /** The parameter whose spread in ensembles is that of this kind, if there is one. */
    Optional<ParameterId> spreadOf() {
      return switch (this) {
        case STRENGTH -> Optional.of(ParameterId.TREATMENT_STRENGTH);
        case WEATHER -> Optional.of(ParameterId.WEATHER_OFFSET);
        case BEES, BROOD -> Optional.of(ParameterId.COLONY_SIZE);
        case ARRIVALS -> Optional.of(ParameterId.ARRIVALS_SPREAD);
        case PARAMETER, DATES, MITES -> Optional.empty();
      };
    }
  }

  /**
   * Checks bounds that mean something.
   *
   * @param kind what it is
   * @param name the parameter or method
   * @param prior how it is spread
   * @throws IllegalArgumentException if a factor may be negative or a share leaves 0 to 1
   */
  public StudyAxis {
    if (kind == Kind.MITES) {
      Checks.share(prior.low(), "lower bound of mites, a share of what is believed,");
      Checks.share(prior.high(), "upper bound of mites, a share of what is believed,");
    } else if (kind != Kind.PARAMETER && kind != Kind.DATES && kind != Kind.WEATHER) {
      Checks.notNegative(prior.low(), "lower bound of " + kind.word());
    }
  }

  /**
   * The name that a user knows.
   *
   * @return for example {@code invasion.worker}, {@code strength:thymol-gel} or {@code weather}
   */
  public String words() {
    return kind == Kind.PARAMETER ? name : name.isEmpty() ? kind.word : kind.word + ":" + name;
  }
}
