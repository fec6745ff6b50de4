package org.undercap.scenario.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.monitoring.MitePosterior;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;

/** The scenarios in the top-level folder {@code scenarios}. */
class ShippedScenariosTest {

  static List<Path> files() {
    return TestFiles.in(TestFiles.SHIPPED, ".yaml", ".json");
  }

  @ParameterizedTest
  @MethodSource("files")
  void readWithoutAProblem(Path file) {
    Scenario scenario = ScenarioReader.read(file).orThrow();
    assertEquals(Plan.DO_NOTHING, scenario.plans().get(0).name());
    int plans = scenario.plans().size() - 1;
    assertTrue(plans >= 2 && plans <= 5, plans + " plans");
  }

  @ParameterizedTest
  @MethodSource("files")
  void countsTellAPlausibleNumberOfMites(Path file) {
    Scenario scenario = ScenarioReader.read(file).orThrow();
    MitePosterior posterior =
        MitePosterior.of(scenario.countedColony(), scenario.countsAtStart(), 1);
    double perBee = posterior.mites().median() / scenario.hive().bees();
    assertTrue(perBee > 0.001 && perBee < 1, perBee + " mites per bee");
  }

  @Test
  void haveNamesOfTheirOwn() {
    Set<String> names = new HashSet<>();
    for (Path file : files()) {
      assertTrue(names.add(ScenarioReader.read(file).orThrow().name()), file.toString());
    }
    assertTrue(names.size() >= 8, "the folder was found");
  }
}
