package org.undercap.calibration;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.undercap.internal.Randoms;
import org.undercap.monitoring.Board;
import org.undercap.monitoring.Count;
import org.undercap.monitoring.Wash;
import org.undercap.monitoring.WashMethod;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.parameter.ParameterSpace;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ScenarioReader;
import org.undercap.treatment.Interventions;

/** The research set "Plot 7": how its counts were made. */
final class Plot7 {
  static final Path SCENARIO = Path.of("..", "scenarios", "research", "plot-7.yaml");
  static final Path TABLE = Path.of("..", "scenarios", "research", "plot-7-counts.csv");
  static final int COLONIES = 40;
  static final long SEED = 7;
  static final CountErrors ERRORS = new CountErrors(0.01, 0.08, 0.2);
  static final ParameterSpace FREE =
      ParameterSpace.empty()
          .withSpreadOf(
              ParameterId.REPRODUCTION_WORKER,
              ParameterId.TREATMENT_STRENGTH,
              ParameterId.COUNT_CAPTURE_BOARD);
  static final double[] TRUTH = {0.92, 0.8, 0.82};
  static final ParameterSet TRUE_VALUES = FREE.withValues(TRUTH);
  private static final int VISITS = 9;
  private static final int TREATED = 12;

  private Plot7() {}

  private record Facts(String name, int bees, int brood, double mites, Plan plan) {}

  private static List<Facts> facts(Scenario site, int colonies, long seed) {
    UniformRandomProvider random = Randoms.of(seed, "colonies of the plot");
    ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
    List<Facts> facts = new ArrayList<>();
    for (int i = 0; i < colonies; i++) {
      int bees = 100 * (int) StrictMath.rint(130 + 80 * random.nextDouble());
      int brood = 100 * (int) StrictMath.rint(bees / 100.0 * (1.1 + 0.4 * random.nextDouble()));
      double mites = 70 * StrictMath.exp(0.6 * normal.sample());
      boolean treated = (i + 1) * TREATED / COLONIES > i * TREATED / COLONIES;
      Plan plan = site.plans().get(treated ? 1 : 0);
      facts.add(new Facts(String.format(Locale.ROOT, "P%02d", i + 1), bees, brood, mites, plan));
    }
    return facts;
  }

  /** The first colonies of a plot with their counts. */
  static List<ObservedColony> counted(ParameterSet truth, int colonies, long seed) {
    Scenario site = ScenarioReader.read(SCENARIO).orThrow();
    List<ObservedColony> counted = new ArrayList<>();
    for (Facts facts : facts(site, colonies, seed)) {
      ObservedColony empty =
          new ObservedColony(
              facts.name,
              new ObservedColony.Start(
                  site.climate(),
                  site.start(),
                  facts.bees,
                  facts.brood,
                  site.hive().queenQuality()),
              site::arrivalsOn,
              List.copyOf(Interventions.of(site.stepsUnder(facts.plan), site.circumstances())),
              places(site.start()),
              List.of());
      counted.add(CountSimulator.simulate(empty, truth, facts.mites, ERRORS, seed));
    }
    return counted;
  }

  private static List<Count> places(LocalDate start) {
    List<Count> places = new ArrayList<>();
    for (int visit = 1; visit <= VISITS; visit++) {
      LocalDate date = start.plusDays(14L * visit);
      places.add(new Wash(date, 300, 0, WashMethod.ALCOHOL));
      places.add(new Board(date, 7, 0));
    }
    return places;
  }

  /** The table that ships. */
  static String table() {
    Scenario site = ScenarioReader.read(SCENARIO).orThrow();
    List<Facts> facts = facts(site, COLONIES, SEED);
    List<ObservedColony> colonies = counted(TRUE_VALUES, COLONIES, SEED);
    StringBuilder table =
        new StringBuilder(
            "colony,date,bees,brood,plan,wash_bees,wash_mites,method,board_days,board_mites\n");
    for (int i = 0; i < COLONIES; i++) {
      List<Count> counts = colonies.get(i).counts();
      for (int visit = 0; visit < VISITS; visit++) {
        Wash wash = (Wash) counts.get(2 * visit);
        Board board = (Board) counts.get(2 * visit + 1);
        Facts colony = facts.get(i);
        String start =
            visit == 0 ? colony.bees + "," + colony.brood + " cells," + colony.plan.name() : ",,";
        table.append(
            String.join(
                ",",
                colony.name,
                wash.date().toString(),
                start,
                Integer.toString(wash.bees()),
                Integer.toString(wash.mites()),
                "alcohol",
                Integer.toString(board.days()),
                Integer.toString((int) board.mites())));
        table.append('\n');
      }
    }
    return table.toString();
  }
}
