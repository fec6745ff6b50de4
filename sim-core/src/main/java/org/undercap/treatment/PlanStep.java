package org.undercap.treatment;

import java.time.LocalDate;
import org.undercap.internal.Checks;

/**
 * One thing that a plan says the keeper does. What it means on each day is made by {@link
 * Interventions}.
 */
public sealed interface PlanStep {
  /**
   * The day on which it is done or begins.
   *
   * @return first day
   */
  LocalDate date();

  /**
   * The last day on which it acts directly.
   *
   * @return last day, not before the first
   */
  LocalDate until();

  /**
   * What it is, in a few words for charts and tables.
   *
   * @return words
   */
  String words();

  /**
   * The same step on other days.
   *
   * @param days how many days later (days); negative is earlier
   * @return the moved step
   */
  default PlanStep moved(long days) {
    if (this instanceof Application a) {
      return new Application(a.date.plusDays(days), a.method, a.dose);
    } else if (this instanceof LayingStop s) {
      return new LayingStop(s.date.plusDays(days), s.days, s.caged);
    } else if (this instanceof DroneCombRemoval r) {
      return new DroneCombRemoval(r.date.plusDays(days), r.share);
    } else if (this instanceof DroneFrame f) {
      return new DroneFrame(f.date.plusDays(days), f.until.plusDays(days), f.factor);
    } else if (this instanceof BroodRemoval r) {
      return new BroodRemoval(r.date.plusDays(days), r.share);
    } else if (this instanceof ShookSwarm s) {
      return new ShookSwarm(s.date.plusDays(days));
    } else if (this instanceof Split s) {
      return new Split(s.date.plusDays(days), s.beesLeaving, s.broodLeaving, s.daysWithoutLaying);
    } else if (this instanceof LateFeeding f) {
      return new LateFeeding(f.date.plusDays(days), f.until.plusDays(days));
    }
    throw new IllegalStateException("unknown step " + this);
  }

  /**
   * One application of a treatment.
   *
   * @param date day of application
   * @param method the treatment
   * @param dose amount against the method's full amount (ratio)
   */
  record Application(LocalDate date, Method method, double dose) implements PlanStep {
    /**
     * Checks the dose.
     *
     * @param date day of application
     * @param method the treatment
     * @param dose at least 0
     * @throws IllegalArgumentException if the dose is out of range
     */
    public Application {
      Checks.notNegative(dose, "dose");
    }

    @Override
    public LocalDate until() {
      return date.plusDays(method.profile().release().days() - 1L);
    }

    @Override
    public String words() {
      return method.name();
    }
  }

  /**
   * The queen does not lay: caged, or a new one is awaited.
   *
   * @param date first day without laying
   * @param days days without laying (days)
   * @param caged true if the queen is caged, false if a new queen is awaited
   */
  record LayingStop(LocalDate date, int days, boolean caged) implements PlanStep {
    /**
     * Checks the days.
     *
     * @param date first day without laying
     * @param days at least 1 (days)
     * @param caged true if the queen is caged
     * @throws IllegalArgumentException if the days are out of range
     */
    public LayingStop {
      Checks.positive(days, "days without laying");
    }

    @Override
    public LocalDate until() {
      return date.plusDays(days - 1L);
    }

    @Override
    public String words() {
      return caged ? "queen caged" : "no laying queen";
    }
  }

  /**
   * Drone comb is cut out or a drone frame is taken away.
   *
   * @param date the day
   * @param share share of the drone brood taken (fraction)
   */
  record DroneCombRemoval(LocalDate date, double share) implements PlanStep {
    /**
     * Checks the share.
     *
     * @param date the day
     * @param share 0 to 1
     * @throws IllegalArgumentException if the share is out of range
     */
    public DroneCombRemoval {
      Checks.share(share, "share of drone brood removed");
    }

    @Override
    public LocalDate until() {
      return date;
    }

    @Override
    public String words() {
      return "drone comb removed";
    }
  }

  /**
   * A frame of drone comb hangs in the brood nest and draws more eggs into drone cells.
   *
   * @param date day on which it is hung in
   * @param until last day in the hive
   * @param factor factor on the share of eggs laid into drone cells (ratio)
   */
  record DroneFrame(LocalDate date, LocalDate until, double factor) implements PlanStep {
    /**
     * Checks days and factor.
     *
     * @param date day on which it is hung in
     * @param until not before the first day
     * @param factor at least 0
     * @throws IllegalArgumentException if the days are reversed or the factor is out of range
     */
    public DroneFrame {
      ordered(date, until);
      Checks.notNegative(factor, "drone share factor");
    }

    @Override
    public String words() {
      return "drone frame";
    }
  }

  /**
   * Brood is taken out.
   *
   * @param date the day
   * @param share share of worker and drone brood taken (fraction)
   */
  record BroodRemoval(LocalDate date, double share) implements PlanStep {
    /**
     * Checks the share.
     *
     * @param date the day
     * @param share 0 to 1
     * @throws IllegalArgumentException if the share is out of range
     */
    public BroodRemoval {
      Checks.share(share, "share of brood removed");
    }

    @Override
    public LocalDate until() {
      return date;
    }

    @Override
    public String words() {
      return "brood removed";
    }
  }

  /**
   * All bees are shaken on to new comb; all brood is taken out.
   *
   * @param date the day
   */
  record ShookSwarm(LocalDate date) implements PlanStep {
    @Override
    public LocalDate until() {
      return date;
    }

    @Override
    public String words() {
      return "shook swarm";
    }
  }

  /**
   * The colony is split; what leaves is not followed.
   *
   * @param date the day
   * @param beesLeaving share of the adult bees that leaves (fraction)
   * @param broodLeaving share of the brood that leaves (fraction)
   * @param daysWithoutLaying days until a new queen lays (days); 0 if the queen stays
   */
  record Split(LocalDate date, double beesLeaving, double broodLeaving, int daysWithoutLaying)
      implements PlanStep {
    /**
     * Checks the numbers.
     *
     * @param date the day
     * @param beesLeaving 0 to 1
     * @param broodLeaving 0 to 1
     * @param daysWithoutLaying at least 0 (days)
     * @throws IllegalArgumentException if a number is out of range
     */
    public Split {
      Checks.share(beesLeaving, "share of bees leaving");
      Checks.share(broodLeaving, "share of brood leaving");
      Checks.notNegative(daysWithoutLaying, "days without laying");
    }

    @Override
    public LocalDate until() {
      return date.plusDays(Math.max(0, daysWithoutLaying - 1));
    }

    @Override
    public String words() {
      return "split";
    }
  }

  /**
   * Thin syrup is fed late in the season and keeps the queen laying.
   *
   * @param date first day of feeding
   * @param until last day of feeding
   */
  record LateFeeding(LocalDate date, LocalDate until) implements PlanStep {
    /**
     * Checks the days.
     *
     * @param date first day of feeding
     * @param until not before the first day
     * @throws IllegalArgumentException if the days are reversed
     */
    public LateFeeding {
      ordered(date, until);
    }

    @Override
    public String words() {
      return "syrup";
    }
  }

  private static void ordered(LocalDate from, LocalDate until) {
    if (until.isBefore(from)) {
      throw new IllegalArgumentException(
          "last day " + until + " lies before the first day " + from);
    }
  }
}
