package org.undercap.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.hive.ArrivalCatalogue;
import org.undercap.scenario.ApiaryColony;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ApiaryReader;
import org.undercap.scenario.io.ScenarioReader;

class YardTest {
  private static final String PLANS =
      """
      plans:
        - name: Strips
          steps:
            - {date: 2026-08-09, treatment: amitraz-strips}
        - name: Strips in October
          steps:
            - {date: 2026-10-05, treatment: amitraz-strips}
      """;
  @TempDir private Path folder;

  private Yard yard(Scenario site, int threads, String... rows) throws IOException {
    Path table = folder.resolve("colonies.csv");
    Files.writeString(
        table, "colony,bees,brood,wash_bees,wash_mites,method\n" + String.join("\n", rows) + "\n");
    List<ApiaryColony> colonies = ApiaryReader.read(table, site).orThrow();
    return Yard.of(site, colonies, Facts.settings(16, threads));
  }

  private static List<String> names(Yard yard) {
    return yard.colonies().stream().map(c -> c.colony().name()).toList();
  }

  @Test
  void theMostWorryingColonyComesFirst() throws IOException {
    Yard yard =
        yard(
            Facts.with(PLANS),
            1,
            "calm,9 frames,4 frames,300,2,soap",
            "unseen,9 frames,4 frames,,,",
            "bad,9 frames,4 frames,300,40,soap",
            "middling,9 frames,4 frames,300,8,soap");
    assertEquals(List.of("bad", "middling", "calm", "unseen"), names(yard));
    assertTrue(yard.colonies().get(3).estimate().isEmpty());
    assertEquals(
        List.of("Strips", "Strips in October", "Do nothing"),
        yard.plans().stream().map(p -> p.plan().name()).toList());
    YardPlan best = yard.plans().get(0);
    assertEquals(3, best.bestFor());
    assertTrue(best.low() <= best.meanHarm() && best.meanHarm() <= best.high());
    Together together = yard.together().orElseThrow();
    assertEquals(Together.Advice.ALL_ON_ONE_DAY, together.advice());
    assertEquals(1, together.aboveForSure());
    assertTrue(together.shareInWorstThird() > 0.5);
    assertTrue(together.harmByArrivals() > 0);
    Yard calm = yard(Facts.with(PLANS), 1, "a,9 frames,4 frames,300,40,soap");
    assertEquals(
        Together.Advice.ALL_ON_ONE_DAY,
        calm.together().orElseThrow().advice(),
        "a colony surely above the limit is a danger to its neighbours");
  }

  @Test
  void theBestPlanIsNeverOneThatIsRuledOut() throws IOException {
    Yard yard =
        yard(
            Facts.with("allowed: [oxalic-dribble]\n" + PLANS),
            1,
            "one,9 frames,4 frames,300,40,soap",
            "two,9 frames,4 frames,300,8,soap");
    YardPlan first = yard.plans().get(0);
    assertEquals("Strips", first.plan().name());
    assertTrue(first.ruledOut().get(0).contains("not on your list"), first.toString());
    assertEquals(0, first.bestFor());
    assertEquals("Do nothing", yard.best().orElseThrow().plan().name());
    assertEquals(2, yard.best().orElseThrow().bestFor());
  }

  @Test
  void aCleanYardIsCountedAgain() throws IOException {
    Yard yard =
        yard(
            Facts.with(PLANS),
            1,
            "one,9 frames,4 frames,300,0,soap",
            "two,9 frames,4 frames,300,0,soap");
    assertEquals(Together.Advice.NONE_NOW, yard.together().orElseThrow().advice());
  }

  @Test
  void withoutForeignMitesLowColoniesMayWait() throws IOException {
    Scenario alone = Facts.with(PLANS).withArrivals(ArrivalCatalogue.shipped().get("none"));
    Yard yard =
        yard(alone, 1, "one,9 frames,4 frames,300,0,soap", "two,9 frames,4 frames,300,6,soap");
    assertEquals(Together.Advice.LOW_ONES_MAY_WAIT, yard.together().orElseThrow().advice());
    assertEquals(0, yard.together().get().harmByArrivals(), 1e-12);
  }

  @Test
  void theShippedTableGoesWithItsScenario() {
    Path shipped = Path.of("..", "scenarios");
    Scenario site = ScenarioReader.read(shipped.resolve("tall-sedge-yard.yaml")).orThrow();
    Path table = shipped.resolve("tall-sedge-yard-colonies.csv");
    List<ApiaryColony> colonies = ApiaryReader.read(table, site).orThrow();
    Yard yard = Yard.of(site, colonies, Facts.settings(8, 2));
    assertEquals(8, yard.colonies().size());
    assertEquals("Sedge 3", yard.colonies().get(0).colony().name());
  }

  @Test
  void aYardWithoutCountsCannotBeJudged() throws IOException {
    Yard yard = yard(Facts.with(PLANS), 1, "one,9 frames,4 frames,,,");
    assertTrue(yard.plans().isEmpty() && yard.together().isEmpty());
  }

  @Test
  void threadsDoNotMatter() throws IOException {
    String[] rows = {"a,9 frames,4 frames,300,9,soap", "b,12 frames,5 frames,300,2,soap"};
    assertEquals(
        yard(Facts.with(PLANS), 1, rows).plans(), yard(Facts.with(PLANS), 2, rows).plans());
  }
}
