package org.undercap.scenario.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.climate.Climate;
import org.undercap.climate.Hemisphere;
import org.undercap.monitoring.Board;
import org.undercap.monitoring.DroneCells;
import org.undercap.monitoring.Wash;
import org.undercap.monitoring.WashMethod;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Assumption;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Problem;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Method;
import org.undercap.treatment.PlanStep;
import org.undercap.treatment.PlanStep.Application;
import org.undercap.treatment.Release;
import org.undercap.treatment.Response;

class ScenarioReaderTest {

  private static final Path EVERYTHING = TestFiles.COMPLETE.resolve("everything.yaml");

  private static LocalDate day(String date) {
    return LocalDate.parse(date);
  }

  @Test
  void everyKeyHasItsMeaning() {
    Scenario scenario = ScenarioReader.read(EVERYTHING).orThrow();
    assertEquals("Everything", scenario.name());
    assertEquals("Two lines,\nno colony.", scenario.about());
    assertEquals(day("2026-02-20"), scenario.start());
    assertEquals(day("2026-02-20").plusDays(200), scenario.end());
    assertEquals(201, scenario.days());
    assertEquals(1.5, scenario.arrivalsOn(day("2026-07-01")));
    assertEquals(3, scenario.threshold().orElseThrow().mitesPer100Bees());
    assertEquals("usda-tucson", scenario.threshold().orElseThrow().source().orElseThrow().key());
    assertEquals(Map.of("amitraz", 0.2, "oxalic acid", 0.1), scenario.resistance());
    assertEquals(0.9, scenario.parameters().value(ParameterId.REPRODUCTION_WORKER));
    assertEquals(
        List.of(new PlanStep.LateFeeding(day("2026-02-01"), day("2026-02-10"))),
        scenario.feeding());
    assertTrue(scenario.study());
    assertTrue(scenario.humid());
    assertFalse(scenario.organic());
    assertEquals(
        List.of("my-strip", "oxalic-sublimation"),
        scenario.allowed().stream().map(Method::id).toList());
  }

  @Test
  void placesHaveTheMonthsOfTheirHemisphere() {
    Climate climate = ScenarioReader.read(EVERYTHING).orThrow().climate();
    assertEquals(Hemisphere.SOUTH, climate.hemisphere());
    assertEquals(1200, climate.potentialEggs(15));
    assertEquals(0.0125, climate.droneShare(15));
    assertEquals(17, climate.temperature().at(15));
    assertEquals(17, climate.temperature().at(45), 1e-12);
    assertEquals(15, climate.temperature().at(day("2026-02-20")), 1e-12);
    assertEquals(10, climate.temperature().at(day("2026-02-21")), 1e-12);
    assertEquals(12, climate.temperature().at(day("2026-04-15")));
  }

  @Test
  void hivesAreCountedInTheirFrames() {
    Scenario scenario = ScenarioReader.read(EVERYTHING).orThrow();
    assertEquals(1.5 * 12 * 2 * 1400, scenario.hive().bees());
    assertEquals(12 * 4500 / 11.2, scenario.hive().broodCells(), 1e-9);
    assertEquals(0.9, scenario.hive().queenQuality());
    assertTrue(scenario.hive().openFloor());
    assertTrue(scenario.hive().supersOn());
  }

  @Test
  void framesHoldWhatTheyAreFullOf() throws IOException {
    Scenario scenario = small("9000 cells}", "'3 frames, two thirds full', frame: national-deep}");
    assertEquals(2 * 2 * 2650, scenario.hive().broodCells(), 1e-9);
    assertTrue(
        scenario.assumptions().toString().contains("10600 cells; as full of brood as it says"),
        scenario.assumptions().toString());
  }

  @Test
  void doubtsAboutCountsStandAmongTheAssumptions() throws IOException {
    Scenario scenario =
        small(
            "in-colony: 500",
            "counts: [wash: {date: 2026-08-08, bees: 300, mites: 200, method: alcohol}]");
    assertTrue(
        scenario.assumptions().stream()
            .anyMatch(it -> it.field().equals("mites.counts") && it.text().contains("per 100")),
        scenario.assumptions().toString());
  }

  private static Scenario small(String part, String instead) throws IOException {
    byte[] text = TestFiles.SMALL.replace(part, instead).getBytes(StandardCharsets.UTF_8);
    return ScenarioReader.read("small.yaml", new ByteArrayInputStream(text)).orThrow();
  }

  @Test
  void countsComeInTheOrderOfTheirDates() {
    assertEquals(
        List.of(
            new DroneCells(day("2026-02-15"), 50, 4),
            new Board(day("2026-02-19"), 3, 20),
            new Wash(day("2026-02-20"), 300, 6, WashMethod.ALCOHOL)),
        ScenarioReader.read(EVERYTHING).orThrow().counts());
  }

  @Test
  void plansBecomeStepsOnDates() {
    List<Plan> plans = ScenarioReader.read(EVERYTHING).orThrow().plans();
    assertEquals(
        List.of("Do nothing", "Substances", "Measures"), plans.stream().map(Plan::name).toList());
    List<PlanStep> substances = plans.get(1).steps();
    assertEquals(
        List.of(day("2026-02-22"), day("2026-03-01"), day("2026-03-08"), day("2026-03-15")),
        substances.stream().map(PlanStep::date).toList());
    assertEquals(2, ((Application) substances.get(0)).dose());
    assertEquals(
        List.of(
            new PlanStep.DroneFrame(day("2026-02-20"), day("2026-03-01"), 3),
            new PlanStep.LayingStop(day("2026-02-21"), 24, true),
            new PlanStep.DroneCombRemoval(day("2026-03-01"), 0.9),
            new PlanStep.BroodRemoval(day("2026-03-02"), 0.5),
            new PlanStep.ShookSwarm(day("2026-03-03")),
            new PlanStep.Split(day("2026-03-04"), 0.5, 0.4, 28),
            new PlanStep.Split(day("2026-03-05"), 0.1, 0, 0),
            new PlanStep.LateFeeding(day("2026-03-06"), day("2026-03-19")),
            new PlanStep.LayingStop(day("2026-04-01"), 20, false)),
        plans.get(2).steps());
  }

  @Test
  void ownMethodsAreProfilesLikeTheShippedOnes() {
    Method method = ScenarioReader.read(EVERYTHING).orThrow().ownMethods().get(0);
    assertEquals(new Release.Plateau(42, 3), method.profile().release());
    assertEquals(new Response.Constant(0.1), method.profile().response());
    assertEquals(0.1, method.profile().inCellRatio());
    assertEquals(0.1, method.profile().sideEffects().laying());
    assertEquals(42, method.carrierDays());
    assertEquals(10, method.coolLimit().orElseThrow(), 1e-12);
    assertEquals(35, method.hotLimit().orElseThrow());
    assertEquals(List.of("strips", "records"), method.cautions());
  }

  @Test
  void jsonIsReadAsYaml() {
    Path json = TestFiles.COMPLETE.resolve("everything.json");
    assertEquals(ScenarioReader.read(EVERYTHING).orThrow(), ScenarioReader.read(json).orThrow());
  }

  @Test
  void whatIsNotSaidIsAssumedAloud() {
    Scenario scenario = TestFiles.read(TestFiles.SMALL).orThrow();
    assertEquals(day("2027-04-01"), scenario.end());
    assertEquals("low", scenario.arrivals().id());
    assertEquals(List.of(Plan.doNothing()), scenario.plans());
    assertEquals(Optional.empty(), scenario.threshold());
    assertEquals(1, scenario.hive().queenQuality());
    List<String> fields = scenario.assumptions().stream().map(Assumption::field).toList();
    assertEquals(
        List.of(
            "site.hemisphere",
            "site.monthly-temperatures",
            "colony.queen-quality",
            "colony.floor",
            "colony.supers",
            "horizon",
            "site.humid",
            "arrivals",
            "threshold",
            "resistance"),
        fields);
  }

  @Test
  void southernRunsEndInOctober() {
    String text = TestFiles.SMALL.replace("central-european", "southern-temperate");
    assertEquals(day("2026-10-01"), TestFiles.read(text).orThrow().end());
  }

  @Test
  void aLatitudeChoosesTheNearestClimate() {
    String text = TestFiles.SMALL.replace("climate: central-european", "latitude: -38");
    Scenario scenario = TestFiles.read(text).orThrow();
    assertEquals("southern-temperate", scenario.climate().id());
    assertTrue(
        scenario.assumptions().stream()
            .anyMatch(
                it -> it.field().equals("site.climate") && it.text().contains("latitude -38")));
  }

  @Test
  void feedingGoesWithEveryPlan() {
    Scenario scenario = ScenarioReader.read(EVERYTHING).orThrow();
    int everywhere = scenario.feeding().size() + scenario.done().steps().size();
    List<PlanStep> untreated = scenario.stepsUnder(scenario.plans().get(0));
    assertEquals(scenario.feeding(), untreated.subList(0, 1));
    assertEquals(scenario.stepsOfEveryPlan(), untreated);
    assertEquals(everywhere, untreated.size());
    assertEquals(everywhere + 4, scenario.stepsUnder(scenario.plans().get(1)).size());
  }

  @Test
  void marksAndLineEndsOfOtherSystemsAreAccepted() {
    Scenario expected = TestFiles.read(TestFiles.SMALL).orThrow();
    String text = "\uFEFF" + TestFiles.SMALL.replace("\n", "\r\n");
    assertEquals(expected, TestFiles.read(text).orThrow());
  }

  @Test
  void hugeFilesAreNotRead(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("huge.yaml");
    try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
      huge.setLength(100_000_000);
    }
    assertEquals(
        """
        huge.yaml: error: is larger than the 200 000 bytes that are accepted
          hint: is this the right file?
        """,
        TestFiles.texts(ScenarioReader.read(file).problems(), folder));
  }

  @Test
  void missingFilesAreProblems(@TempDir Path folder) {
    Reading<Scenario> reading = ScenarioReader.read(folder.resolve("nowhere.yaml"));
    assertEquals(
        """
        nowhere.yaml: error: there is no such file
          hint: check the name and the folder
        """,
        TestFiles.texts(reading.problems(), folder));
  }

  @Test
  void foldersAreProblems(@TempDir Path folder) {
    Problem problem = ScenarioReader.read(folder).problems().get(0);
    assertEquals("is a folder, not a file", problem.message());
  }

  @Test
  void streamsCannotNameOtherFiles(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("t.csv"), "date,temperature_c\n2026-08-08,20\n");
    String text = TestFiles.SMALL.replace("site: {", "site: {daily-temperatures: t.csv, ");
    List<Problem> problems = TestFiles.read(text).problems();
    assertEquals("\"t.csv\" cannot be looked for", problems.get(0).message());
    Path file = folder.resolve("t.yaml");
    Files.writeString(file, text, StandardCharsets.UTF_8);
    assertEquals(
        20, ScenarioReader.read(file).orThrow().climate().temperature().at(day("2026-08-08")));
  }

  @Test
  void aTemperatureFileMustCoverADayOfTheRun(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("t.csv"), "date,temperature_c\n2025-08-08,20\n");
    Path file = folder.resolve("t.yaml");
    Files.writeString(
        file, TestFiles.SMALL.replace("site: {", "site: {daily-temperatures: t.csv, "));
    Problem problem = ScenarioReader.read(file).problems().get(0);
    assertEquals(
        "holds no day of the run, which lasts from 2026-08-08 to 2027-04-01", problem.message());
    assertEquals(3, problem.line());
    assertEquals(28, problem.column());
  }
}
