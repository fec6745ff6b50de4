package org.undercap.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.undercap.cli.output.Numbers;
import org.undercap.hive.ArrivalLevel;
import org.undercap.monitoring.Count;
import org.undercap.scenario.HiveFacts;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Method;

/** The facts that an answer was made of, so that a printed page can be checked against the hive. */
final class FactWords {
  private static final int FIGURES = 3;

  private FactWords() {}

  /** One fact a line; what was assumed about them stands elsewhere. */
  static List<String> items(Scenario scenario) {
    List<String> items = new ArrayList<>();
    items.add("Place: " + scenario.climate().description());
    items.add("Day of these facts: " + DateWords.day(scenario.start()));
    items.add(hive(scenario.hive()));
    items.add(supers(scenario));
    scenario
        .mitesInColony()
        .ifPresent(mites -> items.add("Mites in the colony: " + Numbers.rounded(mites, FIGURES)));
    items.addAll(scenario.counts().stream().map(FactWords::count).toList());
    items.add("Mites from other colonies: " + arrivals(scenario.arrivals()));
    if (!scenario.feeding().isEmpty()) {
      items.add(
          "Syrup: "
              + scenario.feeding().stream()
                  .map(fed -> DateWords.day(fed.date()) + " to " + DateWords.day(fed.until()))
                  .collect(Collectors.joining("; ")));
    }
    if (!scenario.done().steps().isEmpty()) {
      items.add("Done already: " + new PlanWords(new Plan("", scenario.done().steps())).phrase());
    }
    if (!scenario.allowed().isEmpty()) {
      items.add(
          "May be used: "
              + scenario.allowed().stream().map(Method::name).collect(Collectors.joining(", ")));
    }
    if (scenario.organic()) {
      items.add("Organic scheme: yes");
    }
    return items;
  }

  private static String hive(HiveFacts hive) {
    return "Bees about "
        + Numbers.rounded(hive.bees(), FIGURES)
        + ", brood of all ages about "
        + Numbers.rounded(hive.broodCells(), FIGURES)
        + " cells, floor "
        + (hive.openFloor() ? "open" : "closed");
  }

  private static String supers(Scenario scenario) {
    return "Honey supers: "
        + scenario
            .supersUntil(Plan.doNothing())
            .map(day -> "on until " + DateWords.day(day))
            .orElse(scenario.hive().supersOn() ? "on, not said until when" : "off");
  }

  private static String arrivals(ArrivalLevel level) {
    return level.sourceKeys().isEmpty()
        ? level.description()
        : level.id() + " (" + level.description() + ")";
  }

  private static String count(Count count) {
    return "Count of "
        + DateWords.day(count.date())
        + ", "
        + CountWords.kind(count)
        + ": "
        + CountWords.found(count);
  }
}
