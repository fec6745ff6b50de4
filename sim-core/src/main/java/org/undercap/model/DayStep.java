package org.undercap.model;

import java.util.Arrays;
import java.util.Locale;
import org.undercap.parameter.ParameterId;

/**
 * One day in the life of colonies, all lanes at once. A day is taken in two calls: {@link #begin}
 * looks at the colony at the start of the day, then whatever acts today is entered into {@link
 * #effects()}, and {@link #finish} takes the steps in their order: laying, 1 keeper's removal, 2
 * emergence, 3 brood ageing, 4 invasion, 5 mites on bees, 6 adults, 7 lost colonies. Nothing is
 * allocated after construction. One object serves one thread.
 */
public final class DayStep {
  private static final double LEDGER_TOLERANCE = 1e-6;
  private static final int ALIVE = -1;

  private final ColonyLanes colony;
  private final DayEffects effects;
  private final DayFlows flows;
  private final Laying laying;
  private final KeeperRemoval removal;
  private final Emergence emergence;
  private final BroodAgeing broodAgeing;
  private final CellInvasion invasion;
  private final PhoreticMites mites;
  private final AdultAgeing adults;
  private final double[] fullBroodIndex;
  private final double[] lostCold;
  private final double[] lostWarm;
  private final double[] coldBelow;
  private final double[] open;
  private final int[] lostOn;

  /**
   * Prepares to step colonies through the days.
   *
   * @param colony the colonies; changed by each step
   * @param parameters as many sets as there are colonies
   * @throws IllegalArgumentException if the numbers of colonies differ
   */
  public DayStep(ColonyLanes colony, ModelParameters parameters) {
    int lanes = colony.lanes();
    if (parameters.lanes() != lanes) {
      throw new IllegalArgumentException(
          lanes + " colonies, but " + parameters.lanes() + " parameter sets");
    }
    this.colony = colony;
    effects = new DayEffects(lanes);
    flows = new DayFlows(lanes);
    laying = new Laying(parameters);
    removal = new KeeperRemoval(lanes);
    emergence = new Emergence(parameters);
    broodAgeing = new BroodAgeing(parameters, colony);
    invasion = new CellInvasion(parameters);
    mites = new PhoreticMites(parameters);
    adults = new AdultAgeing(parameters);
    fullBroodIndex = parameters.perLane(ParameterId.AGEING_BROOD_INDEX_FULL);
    lostCold = parameters.perLane(ParameterId.LOST_ADULTS_COLD);
    lostWarm = parameters.perLane(ParameterId.LOST_ADULTS_WARM);
    coldBelow = parameters.perLane(ParameterId.LOST_COLD_BELOW);
    open = new double[lanes];
    lostOn = new int[lanes];
    Arrays.fill(lostOn, ALIVE);
    colony.mitesTo(flows.of(Flow.MITES_AFTER));
    colony.adultsTo(flows.of(Flow.ADULTS_AFTER));
  }

  /**
   * The colonies.
   *
   * @return the state, live
   */
  public ColonyLanes colony() {
    return colony;
  }

  /**
   * What acts on the colonies today; to be filled between {@link #begin} and {@link #finish}.
   *
   * @return today's effects, live
   */
  public DayEffects effects() {
    return effects;
  }

  /**
   * What happens today: adults and brood index after {@link #begin}, all of it after {@link
   * #finish}.
   *
   * @return today's flows, live
   */
  public DayFlows flows() {
    return flows;
  }

  /** Starts a day: counts bees and open brood, forgets yesterday's effects. */
  public void begin() {
    flows.startDay();
    effects.clear();
    double[] adultsNow = flows.of(Flow.ADULTS);
    double[] broodIndex = flows.of(Flow.BROOD_INDEX);
    Arrays.fill(open, 0.0);
    colony.workerLarvae.addTo(open);
    colony.droneLarvae.addTo(open);
    for (int lane = 0; lane < open.length; lane++) {
      double needed = Math.max(adultsNow[lane], Double.MIN_NORMAL) * fullBroodIndex[lane];
      broodIndex[lane] = Math.min(1.0, open[lane] / needed);
    }
  }

  /**
   * Takes the steps of the day.
   *
   * @param season the day's drivers
   * @param day number of the day in this run, for messages and for the day a colony is lost
   * @return number of colonies lost on this day
   * @throws ModelException if the account of mites does not close or a number cannot be
   */
  public int finish(DayDrivers season, int day) {
    laying.lay(colony, season, effects, flows);
    adults.speed(season, flows);
    removal.remove(colony, effects, flows);
    emergence.emerge(colony, flows);
    broodAgeing.age(colony, laying, effects);
    invasion.invade(colony, broodAgeing, effects, flows);
    mites.liveOn(colony, emergence.returned, season, effects, flows);
    adults.age(colony, effects, flows);
    colony.mitesTo(flows.of(Flow.MITES_AFTER));
    colony.adultsTo(flows.of(Flow.ADULTS_AFTER));
    closeLedger(day);
    return loseColonies(season, day);
  }

  /**
   * Before + born + arrived = after + lost at emergence + natural deaths + killed on bees + killed
   * in cells + removed.
   */
  private void closeLedger(int day) {
    double[] before = flows.of(Flow.MITES_BEFORE);
    double[] born = flows.of(Flow.BORN);
    double[] arrived = flows.of(Flow.ARRIVED);
    double[] after = flows.of(Flow.MITES_AFTER);
    double[] lost = flows.of(Flow.LOST_AT_EMERGENCE);
    double[] natural = flows.of(Flow.DIED_NATURALLY);
    double[] onBees = flows.of(Flow.KILLED_ON_BEES);
    double[] inCells = flows.of(Flow.KILLED_IN_CELLS);
    double[] removed = flows.of(Flow.REMOVED);
    double[] difference = open;
    for (int lane = 0; lane < difference.length; lane++) {
      difference[lane] =
          after[lane] + lost[lane] + natural[lane] + onBees[lane] + inCells[lane] + removed[lane];
    }
    for (int lane = 0; lane < difference.length; lane++) {
      double in = before[lane] + born[lane] + arrived[lane];
      difference[lane] = Math.abs(in - difference[lane]) / Math.max(1.0, in);
    }
    for (int lane = 0; lane < difference.length; lane++) {
      if (!(difference[lane] <= LEDGER_TOLERANCE)) {
        throw new ModelException(
            String.format(
                Locale.ROOT,
                "the account of mites does not close on day %d, colony %d: off by %s of %s mites and %s born, %s bees",
                day,
                lane,
                difference[lane],
                before[lane],
                born[lane],
                flows.of(Flow.ADULTS, lane)));
      }
    }
  }

  private int loseColonies(DayDrivers season, int day) {
    int lost = 0;
    double[] bees = flows.of(Flow.ADULTS_AFTER);
    for (int lane = 0; lane < bees.length; lane++) {
      if (!(bees[lane] >= 0 && bees[lane] < Double.POSITIVE_INFINITY)) {
        throw new ModelException(
            "on day " + day + " colony " + lane + " has " + bees[lane] + " adult bees");
      }
      double least = season.temperature[lane] < coldBelow[lane] ? lostCold[lane] : lostWarm[lane];
      if (bees[lane] < least && lostOn[lane] == ALIVE) {
        lostOn[lane] = day;
        lost++;
      }
    }
    return lost;
  }

  /**
   * Takes the bees, brood and mites out of a lost colony, so that its lane stays empty from now on.
   *
   * @param lane the colony
   */
  public void bury(int lane) {
    colony.clearLane(lane);
    flows.of(Flow.MITES_AFTER)[lane] = 0;
    flows.of(Flow.ADULTS_AFTER)[lane] = 0;
  }

  /**
   * Whether a colony is lost.
   *
   * @param lane the colony
   * @return true from the end of the day on which it had too few bees
   */
  public boolean isLost(int lane) {
    return lostOn[lane] != ALIVE;
  }

  /**
   * The day on which a colony was lost.
   *
   * @param lane the colony
   * @return number of the day, or -1 while it lives
   */
  public int lostOn(int lane) {
    return lostOn[lane];
  }
}
