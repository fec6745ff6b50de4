package org.undercap.calibration;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.monitoring.Board;
import org.undercap.monitoring.Count;
import org.undercap.monitoring.Wash;
import org.undercap.monitoring.WashMethod;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.parameter.ParameterSpace;

/** An invented study: colonies with a wash and a board every four weeks from June to September. */
final class Apiary {
  static final LocalDate START = LocalDate.of(2026, Month.JUNE, 1);
  static final double[] MITES = {60, 120, 250};
  static final CountErrors ERRORS = new CountErrors(0, 0.05, 0.2);
  static final ParameterSpace REPRODUCTION =
      ParameterSpace.empty().withSpreadOf(ParameterId.REPRODUCTION_WORKER);
  static final String WORKER = "reproduction.worker";

  private Apiary() {}

  /** Places for counts; what they found is to be simulated. */
  static ObservedColony colony(String name) {
    List<Count> counts = new ArrayList<>();
    for (int day = 0; day <= 112; day += 28) {
      counts.add(new Wash(START.plusDays(day), 300, 0, WashMethod.ALCOHOL));
      counts.add(new Board(START.plusDays(day + 7), 7, 0));
    }
    return new ObservedColony(
        name,
        new ObservedColony.Start(
            ClimateCatalogue.shipped().get("central-european"), START, 22_000, 28_000, 1),
        date -> 0,
        List.of(),
        counts,
        List.of());
  }

  /** Counts of a study in which mites have a given number of daughters. */
  static List<ObservedColony> counted(double daughters, CountErrors errors, long seed) {
    ParameterSet truth = ParameterSet.shipped().with(ParameterId.REPRODUCTION_WORKER, daughters);
    List<ObservedColony> colonies = new ArrayList<>();
    for (int i = 0; i < MITES.length; i++) {
      colonies.add(
          CountSimulator.simulate(colony("hive " + (i + 1)), truth, MITES[i], errors, seed));
    }
    return colonies;
  }
}
