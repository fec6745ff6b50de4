package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;
import org.undercap.cli.PngImages;
import org.undercap.cli.SmallScenario;

/** Growth, fit, sensitivity, and parameters of one's own. */
class ResearchCommandsTest {
  private static final String FREE = "reproduction.worker=0.5:1.5,emergence.loss.mother.worker";

  @TempDir private Path folder;

  private static void refused(int code, String message, String... words) {
    CliRun run = CliRun.of(words);
    assertEquals(code, run.exitCode(), run.out() + run.err());
    assertEquals("", run.out());
    assertTrue(run.err().contains(message), run.err());
  }

  @Test
  void growthInOneClimateShowsMonthsParametersAndPublishedRates() {
    CliRun run = CliRun.of("growth", "--climate", "central-european");
    assertEquals(0, run.exitCode(), run.err());
    assertEquals("", run.err());
    for (String part :
        List.of(
            "0.02508",
            "season:",
            "held:",
            "15 Jun",
            "reproduction.worker",
            "Published",
            "0.021 +- 0.004")) {
      assertTrue(run.out().contains(part), part + " in\n" + run.out());
    }
    CliRun json = CliRun.of("growth", "--climate=central-european", "--json");
    assertTrue(json.out().contains("\"schema\": \"undercap-growth\""), json.out());
    assertTrue(json.out().contains("\"elasticityBeesHeld\""), json.out());
  }

  @Test
  void growthRefusesWhatItCannotDo() {
    refused(2, "central-european", "growth", "--climate", "centraleuropean");
    String scenario = SmallScenario.in(folder, "small.yaml");
    refused(2, "not both", "growth", scenario, "--climate", "cool-oceanic");
  }

  @Test
  void aFitToAGrowthRateMeetsItAndOtherCommandsTakeItsFile() throws IOException {
    String out = folder.resolve("fitted").toString();
    CliRun fit =
        CliRun.of(
            "fit",
            "--growth=0.021",
            "--growth-interval=0.017:0.025",
            "--free=" + FREE,
            "--starts=1",
            "--out=" + out);
    assertEquals(0, fit.exitCode(), fit.err());
    assertTrue(fit.out().contains("The mites now grow by 0.02100 per day"), fit.out());
    assertTrue(fit.out().contains("martin-2001"), "sources are named");
    String words = fit.out().replaceAll("\\s+", " ");
    for (String part :
        List.of(
            "was thought equally likely",
            "The data tell nothing about emergence.loss.mother.worker",
            "The value of reproduction.worker leans on that belief",
            "the higher the one, the higher the other must be")) {
      assertTrue(words.contains(part), part + " in\n" + fit.out());
    }
    assertTrue(fit.err().contains("next: undercap growth --parameters "), fit.err());
    String file = out + "/parameters.yaml";
    CliRun growth = CliRun.of("growth", "--climate=central-european", "--parameters=" + file);
    assertTrue(growth.out().contains("0.02100"), growth.out());
    for (String name : List.of("fit.md", "fit.html", "fit.json", "manifest.json")) {
      assertTrue(Files.size(Path.of(out, name)) > 100, name);
    }
    refused(
        2,
        "--if-exists",
        "fit",
        "--growth=0.021",
        "--growth-interval=0.02:0.03",
        "--free=" + FREE,
        "--out=" + out);
    manifestNamesTheFile(file);
  }

  private void manifestNamesTheFile(String parameters) throws IOException {
    String scenario = SmallScenario.in(folder, "small.yaml");
    String out = folder.resolve("compared").toString();
    CliRun compare =
        CliRun.of("compare", scenario, "--members=3", "--parameters", parameters, "--out=" + out);
    assertEquals(0, compare.exitCode(), compare.err());
    String manifest = Files.readString(Path.of(out, "manifest.json"));
    assertTrue(manifest.contains("\"file\": \"parameters.yaml\""), manifest);
    assertTrue(manifest.contains("reproduction.worker = 0."), manifest);
  }

  @Test
  void badParameterFilesAreToldWithAllTheirProblems() throws IOException {
    Path file = folder.resolve("p.yaml");
    Files.writeString(
        file,
        """
        undercap-parameters: 1
        values:
          reproduction.wroker: 1
          invasion.worker: -3
        """);
    CliRun run = CliRun.of("growth", "--parameters", file.toString());
    assertEquals(3, run.exitCode());
    assertTrue(run.err().contains(file + ":3:3: error:"), run.err());
    assertTrue(run.err().contains("reproduction.worker"), run.err());
    assertTrue(run.err().contains("invasion.worker is -3.0"), run.err());
    assertTrue(run.err().contains("2 problems"), run.err());
  }

  @Test
  void fitRefusesWhatItCannotDo() {
    refused(2, "nothing to fit to", "fit", "--free", "reproduction.worker");
    refused(2, "go together", "fit", "--free=reproduction.worker", "--growth=0.02");
    refused(
        2,
        "two numbers",
        "fit",
        "--free=reproduction.worker",
        "--growth=0.02",
        "--growth-interval=0.01");
    refused(
        2,
        "must lie inside its interval",
        "fit",
        "--free=reproduction.worker",
        "--growth=0.02",
        "--growth-interval=0.03:0.04");
    refused(
        2,
        "reproduction.worker",
        "fit",
        "--free=reproduction.wroker",
        "--growth=0.02",
        "--growth-interval=0.01:0.03");
    String scenario = SmallScenario.in(folder, "small.yaml");
    refused(2, "no counts that begin", "fit", scenario, "--free=reproduction.worker");
  }

  @Test
  void countsOfATableAreFittedForetoldAndDrawn() throws IOException {
    String scenario = SmallScenario.in(folder, "small.yaml");
    Path table = folder.resolve("counts.csv");
    Files.writeString(
        table,
        """
        colony,date,bees,brood,plan,wash_bees,wash_mites,method,board_days,board_mites
        A,2026-08-08,,,,300,6,alcohol,,
        A,2026-08-22,,,,300,9,alcohol,7,60
        A,2026-09-05,,,,300,15,alcohol,7,90
        B,2026-08-08,15000,8000 cells,"Gel, twice",300,7,alcohol,,
        B,2026-08-22,,,,300,2,alcohol,7,150
        B,2026-09-05,,,,300,1,alcohol,7,40
        """);
    String out = folder.resolve("fitted").toString();
    CliRun fit =
        CliRun.of(
            "fit",
            scenario,
            "--counts=" + table,
            "--free=treatment.strength",
            "--starts=1",
            "--hold-out=2026-09-01",
            "--out=" + out);
    assertEquals(0, fit.exitCode(), fit.err());
    assertTrue(fit.out().contains("which the fit has not seen: 4 counts"), fit.out());
    assertTrue(fit.out().contains("treatment.strength"), fit.out());
    PngImages.assertDrawn(Path.of(out, "wash.png"));
    assertEquals(11, Files.readAllLines(Path.of(out, "counts.csv")).size());
  }

  @Test
  void badTablesOfCountsAreToldWithAllTheirProblems() throws IOException {
    String scenario = SmallScenario.in(folder, "small.yaml");
    Path table = folder.resolve("counts.csv");
    Files.writeString(
        table,
        """
        colony,date,plan,wash_bees,wash_mites,board_days,board_mites
        A,2026-08-32,,300,6,,
        A,2026-08-22,,300,,,
        B,2025-01-01,,300,5,,
        C,2026-08-10,Strips,,,7,20
        """);
    CliRun run = CliRun.of("fit", scenario, "--counts=" + table, "--free=reproduction.worker");
    assertEquals(3, run.exitCode());
    for (String part :
        List.of(
            ":2:3: error: date:",
            "needs wash_mites",
            "outside the run",
            "no plan \"Strips\"",
            "put in before the run begins")) {
      assertTrue(run.err().contains(part), part + " in\n" + run.err());
    }
  }

  @Test
  void sensitivityByBothMethodsNamesWhatMattersMost() throws IOException {
    String scenario = SmallScenario.in(folder, "small.yaml");
    String out = folder.resolve("study").toString();
    String vary = "--vary=strength:thymol-gel,weather,dates=0:20,arrivals,reproduction.worker";
    CliRun morris =
        CliRun.of("sensitivity", scenario, "--plan=Gel, twice", vary, "--size=4", "--out=" + out);
    assertEquals(0, morris.exitCode(), morris.err());
    assertTrue(morris.out().contains("24 runs"), morris.out());
    PngImages.assertDrawn(Path.of(out, "sensitivity.png"));
    CliRun one = sobol(scenario, "1");
    CliRun two = sobol(scenario, "2");
    assertEquals(0, one.exitCode(), one.err());
    assertEquals(one.out(), two.out(), "threads change nothing");
    assertTrue(one.out().contains("\"total\""), one.out());
  }

  private static CliRun sobol(String scenario, String threads) {
    return CliRun.of(
        "sensitivity",
        scenario,
        "--plan=do nothing",
        "--vary=bees,reproduction.worker",
        "--method=sobol",
        "--size=16",
        "--json",
        "--threads=" + threads,
        "--outcome=mites_at_midwinter");
  }

  @Test
  void sensitivityRefusesWhatItCannotDo() {
    String scenario = SmallScenario.in(folder, "small.yaml");
    String plan = "--plan=Gel, twice";
    refused(2, "needs bounds", "sensitivity", scenario, plan, "--vary=dates");
    refused(2, "leave the run", "sensitivity", scenario, plan, "--vary=dates=-30:0");
    refused(2, "no treatment", "sensitivity", scenario, plan, "--vary=strength:gel");
    refused(2, "write strength:METHOD", "sensitivity", scenario, plan, "--vary=strength");
    refused(2, "outcomes: ", "sensitivity", scenario, plan, "--vary=mites", "--outcome=mites");
    refused(2, "morris or sobol", "sensitivity", scenario, plan, "--vary=bees", "--method=x");
    refused(2, "at least one thing", "sensitivity", scenario, plan, "--vary=bees,bees");
  }
}
