package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;
import org.undercap.cli.SmallScenario;
import org.undercap.comparison.Comparison;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.PlanResult;
import org.undercap.ensemble.StartMites;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ScenarioReader;

/** The document of {@code compare --json}. */
class CompareJsonTest {
  private static final int MEMBERS = 12;
  private static final long SEED = 5;

  @TempDir private Path folder;

  @Test
  void isOneDocumentWithNothingBesideIt() throws IOException {
    CliRun run = json();
    assertEquals(0, run.exitCode());
    assertEquals("", run.err());
    JsonNode document = document(run.out());
    assertEquals("undercap-comparison", document.get("schema").textValue());
    assertEquals(MEMBERS, document.get("members").intValue());
    assertEquals(SEED, document.get("seed").longValue());
    assertEquals("About this report", document.at("/cautions/0/title").textValue());
    assertEquals(1, SmallScenario.files(folder).size(), "no file was asked for");
  }

  @Test
  void holdsTheNumbersOfTheLibraryWithAllFigures() throws IOException {
    JsonNode document = document(json().out());
    Comparison comparison = comparison();
    assertEquals(comparison.mites(), document.get("mitesOnFirstDay").doubleValue());
    assertEquals(3, document.get("plans").size());
    for (int rank = 0; rank < 3; rank++) {
      int place = comparison.ranking().get(rank);
      PlanResult result = comparison.results().get(place);
      JsonNode plan = document.get("plans").get(rank);
      assertEquals(result.plan().name(), plan.get("name").textValue());
      assertEquals(rank + 1, plan.get("rank").intValue());
      checkOutcomes(comparison, result, plan.get("outcomes"));
      for (JsonNode other : plan.get("lessHarmToWinterBeesThan")) {
        int otherPlace = place(comparison, other.get("plan").textValue());
        double share = comparison.betterIn(place, otherPlace);
        assertEquals(share, other.get("shareOfRuns").doubleValue());
      }
    }
  }

  private static void checkOutcomes(Comparison comparison, PlanResult result, JsonNode outcomes) {
    List<Outcome> told = List.of(Outcome.values()).stream().filter(comparison::tells).toList();
    assertEquals(told.size(), outcomes.size());
    for (int i = 0; i < told.size(); i++) {
      Outcome outcome = told.get(i);
      double[] quantiles = result.outcomes().quantiles(outcome, 0.1, 0.5, 0.9);
      JsonNode entry = outcomes.get(i);
      assertEquals(outcome.header(), entry.get("outcome").textValue());
      assertEquals(result.outcomes().mean(outcome), entry.get("mean").doubleValue());
      assertEquals(quantiles[0], entry.get("p10").doubleValue());
      assertEquals(quantiles[1], entry.get("p50").doubleValue());
      assertEquals(quantiles[2], entry.get("p90").doubleValue());
    }
  }

  @Test
  void isTheSameInTheFile() throws IOException {
    CliRun run = json("--out=" + folder.resolve("results"));
    assertEquals(0, run.exitCode(), run.err());
    assertEquals(run.out(), Files.readString(folder.resolve("results/comparison.json")));
    assertTrue(run.err().startsWith("wrote "), run.err());
  }

  @Test
  void refusalIsADocumentToo() throws IOException {
    CliRun run = CliRun.of("compare", "../scenarios/serra-do-ipe-roxo.yaml", "--json");
    assertEquals(4, run.exitCode());
    assertEquals("", run.err());
    JsonNode document = document(run.out());
    assertEquals("undercap-refusal", document.get("schema").textValue());
    assertTrue(document.get("answer").textValue().startsWith("No advice. "), run.out());
    assertTrue(document.get("notTestedFor").size() > 0, run.out());
  }

  @Test
  void isRefusedForSeveralScenarios() {
    String other = SmallScenario.in(folder, "other.yaml");
    CliRun run = json(other, "--out=" + folder.resolve("results"));
    assertEquals(2, run.exitCode());
    assertEquals("", run.out());
    assertTrue(run.err().startsWith("--json prints one document"), run.err());
  }

  @Test
  void vectorChartsNeedAFolder() {
    CliRun run = json("--svg");
    assertEquals(2, run.exitCode());
    assertEquals("", run.out());
    assertTrue(run.err().contains("give --out=DIR too"), run.err());
  }

  private CliRun json(String... options) {
    String[] words = new String[options.length + 5];
    words[0] = "compare";
    words[1] = SmallScenario.in(folder, "small.yaml");
    words[2] = "--json";
    words[3] = "--members=" + MEMBERS;
    words[4] = "--seed=" + SEED;
    System.arraycopy(options, 0, words, 5, options.length);
    return CliRun.of(words);
  }

  private Comparison comparison() {
    Scenario scenario = ScenarioReader.read(folder.resolve("small.yaml")).orThrow();
    StartMites mites = StartMites.of(scenario);
    EnsembleSettings settings = new EnsembleSettings(MEMBERS, SEED, 1);
    return Comparison.of(scenario, mites.median(), mites.belief(), settings, done -> {});
  }

  private static int place(Comparison comparison, String plan) {
    List<String> names = comparison.results().stream().map(r -> r.plan().name()).toList();
    return names.indexOf(plan);
  }

  private static JsonNode document(String text) throws IOException {
    return new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).readTree(text);
  }
}
