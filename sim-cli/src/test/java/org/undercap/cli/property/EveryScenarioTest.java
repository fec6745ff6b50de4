package org.undercap.cli.property;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;

/**
 * What holds for every valid scenario, through the whole command line. The property {@code
 * scenarios.drawn} says how many are drawn; the same ones each time.
 */
class EveryScenarioTest {
  private static final int DRAWN = Integer.getInteger("scenarios.drawn", 300);

  /** A comparison takes longer than all else: it is made of three scenarios of fifteen. */
  private static final int TURNS = 15;

  private static final int COMPARISONS = 3;
  private static final int REFUSED = 4;
  private static final Pattern NO_NUMBER = Pattern.compile("NaN|Infinity|\\bnull\\b");

  /** A mite that enters a cell is shut in for so long: more mites cannot mean fewer before. */
  private static final int SHUT_IN_DAYS = 11;

  /** What an answer may say of the plan to take, and the outcome that must bear it out. */
  private static final Map<String, String> CLAIMS =
      Map.of(
          "leaves the fewest weakened bees", "weakened_winter_bees_fraction",
          "protects the winter bees best", "winter_brood_parasitised_fraction",
          "it harms the fewest", "winter_brood_parasitised_fraction",
          "leaves the fewest mites", "mites_on_last_day");

  @TempDir private Path folder;
  private Path scenario;

  @BeforeEach
  void nameFile() {
    scenario = folder.resolve("drawn.yaml");
  }

  private String in(String text) {
    try {
      return Files.writeString(scenario, text).toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private CliRun run(String text, String... words) {
    String[] all = new String[words.length + 1];
    System.arraycopy(words, 0, all, 0, words.length);
    all[words.length] = in(text);
    CliRun run = CliRun.of(all);
    assertTrue(run.exitCode() == 0 || run.exitCode() == REFUSED, () -> run.err() + "\n" + text);
    return run;
  }

  private CliRun compare(String text) {
    return run(text, "compare", "--json", "--members=3", "--threads=1");
  }

  @Test
  void drawnScenariosHoldWhatIsPromised() throws IOException {
    int compared = 0;
    for (long seed = 1; seed <= DRAWN; seed++) {
      RandomScenario drawn = new RandomScenario(seed, false);
      assertEquals(0, run(drawn.text(), "check").exitCode(), drawn.text());
      int turn = (int) (seed % TURNS);
      if (turn < COMPARISONS) {
        compared += comparisonHolds(turn, seed, drawn) ? 1 : 0;
      } else if (turn % 3 == 0) {
        ledgerCloses(seed, drawn.text());
      } else if (turn % 3 == 1) {
        CliRun run = run(drawn.text(), "simulate");
        assertEquals(run, run(new RandomScenario(seed, true).text(), "simulate"), drawn.text());
      } else if (!drawn.countsKnown()) {
        moreLeaveNoFewer(seed, drawn);
      }
    }
    assertTrue(compared > DRAWN / TURNS, compared + " of " + DRAWN + " were compared");
  }

  /** Whether a comparison was made and not declined. */
  private boolean comparisonHolds(int turn, long seed, RandomScenario drawn) throws IOException {
    String text = drawn.text();
    CliRun run = compare(text);
    assertFalse(NO_NUMBER.matcher(run.out()).find(), text);
    headlineHolds(run, text);
    if (turn == 0) {
      assertEquals(run, compare(text), text);
    } else if (turn == 1) {
      String other = new RandomScenario(seed, true).text();
      assertNotEquals(text, other);
      assertEquals(withoutWords(run), withoutWords(compare(other)), text + other);
    } else if (run.exitCode() == 0) {
      assertEquals(outcomes(run), outcomes(compare(drawn.reversed())), text);
    }
    return run.exitCode() == 0;
  }

  /** The answer claims nothing of all plans that its own table denies. */
  private static void headlineHolds(CliRun run, String text) throws IOException {
    JsonNode said = new ObjectMapper().readTree(run.out());
    String answer = said.path("advice").path("answer").asText();
    for (Map.Entry<String, String> claim : CLAIMS.entrySet()) {
      if (answer.contains(claim.getKey())) {
        double least = Double.POSITIVE_INFINITY;
        double chosen = Double.NaN;
        for (JsonNode plan : said.path("plans")) {
          if (plan.path("ruledOut").isEmpty()) {
            double value = middle(plan, claim.getValue());
            least = Math.min(least, value);
            chosen = plan.path("name").equals(said.path("advice").path("plan")) ? value : chosen;
          }
        }
        assertEquals(least, chosen, answer + "\n" + text);
      }
    }
  }

  private static double middle(JsonNode plan, String outcome) {
    for (JsonNode values : plan.path("outcomes")) {
      if (values.path("outcome").asText().equals(outcome)) {
        return values.path("p50").asDouble();
      }
    }
    return Double.POSITIVE_INFINITY; // No colony lived to have it.
  }

  /** What a comparison says, without what the user wrote. */
  private static String withoutWords(CliRun run) throws IOException {
    ObjectNode said = (ObjectNode) new ObjectMapper().readTree(run.out());
    said.remove("assumptions");
    return said.toString();
  }

  /** The outcomes of each plan by its name. */
  private static Map<String, String> outcomes(CliRun run) throws IOException {
    Map<String, String> outcomes = new TreeMap<>();
    for (JsonNode plan : new ObjectMapper().readTree(run.out()).path("plans")) {
      outcomes.put(plan.path("name").asText(), plan.path("outcomes").toString());
    }
    assertTrue(outcomes.size() > 1, run.out());
    return outcomes;
  }

  private void ledgerCloses(long seed, String text) throws IOException {
    Path ledger = folder.resolve("ledger-" + seed + ".csv");
    CliRun run = run(text, "simulate", "--ledger=" + ledger);
    assertFalse(NO_NUMBER.matcher(run.out()).find(), text);
    List<String> lines = Files.readAllLines(ledger);
    assertTrue(lines.size() > 1, text);
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      double before = Double.parseDouble(cells[2]);
      double difference = Double.parseDouble(cells[cells.length - 1]);
      assertTrue(Math.abs(difference) <= 1e-6 * Math.max(1, before), line + "\n" + text);
    }
  }

  private void moreLeaveNoFewer(long seed, RandomScenario drawn) throws IOException {
    double[] few = mites(folder.resolve("few-" + seed + ".csv"), drawn.text());
    double[] many = mites(folder.resolve("many-" + seed + ".csv"), drawn.withMoreMites());
    for (int day = 0; day < SHUT_IN_DAYS; day++) {
      assertTrue(many[day] >= few[day], "day " + day + "\n" + drawn.text());
    }
  }

  /** All mites of the colony by day, without treatment. */
  private double[] mites(Path trace, String text) throws IOException {
    assertEquals(0, run(text, "simulate", "--plan=Do nothing", "--trace=" + trace).exitCode());
    List<String> lines = Files.readAllLines(trace);
    List<String> names = List.of(lines.get(0).split(",", -1));
    double[] mites = new double[lines.size() - 1];
    for (int day = 0; day < mites.length; day++) {
      String[] cells = lines.get(day + 1).split(",", -1);
      for (String column :
          List.of("mites_on_bees", "mites_in_worker_cells", "mites_in_drone_cells")) {
        mites[day] += Double.parseDouble(cells[names.indexOf(column)]);
      }
    }
    return mites;
  }
}
