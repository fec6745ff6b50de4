package org.undercap.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;
import org.undercap.cli.SmallScenario;
import org.undercap.scenario.io.ApiaryReader;
import org.undercap.scenario.io.DesignReader;
import org.undercap.scenario.io.ObservationReader;

/** The dictionary of columns holds every column that is written or read, and no other. */
class ColumnsTest {
  private static final Map<String, List<String>> TABLES = new TreeMap<>();

  @TempDir private static Path folder;

  private static void run(String... words) {
    CliRun run = CliRun.of(words);
    assertEquals(0, run.exitCode(), run.err());
  }

  /** Notes the columns of a file; some tables have others in other runs. */
  private static void header(String table, String file) throws IOException {
    List<String> all = new ArrayList<>(TABLES.getOrDefault(table, List.of()));
    for (String name : Files.readAllLines(folder.resolve(file)).get(0).split(",", -1)) {
      if (!all.contains(name)) {
        all.add(name);
      }
    }
    TABLES.put(table, all);
  }

  @BeforeAll
  static void write() throws IOException {
    String scenario = SmallScenario.in(folder, "small.yaml");
    String out = "--out=" + folder;
    run(
        "simulate",
        scenario,
        "--plan=Dribble",
        out + "/s",
        "--trace=" + folder + "/trace.csv",
        "--ledger=" + folder + "/ledger.csv");
    header("simulate daily.csv", "s/daily.csv");
    header("simulate --trace", "trace.csv");
    header("simulate --ledger", "ledger.csv");
    run("compare", scenario, "--members=3", out + "/c");
    header("compare curves.csv", "c/curves.csv");
    header("compare outcomes.csv", "c/outcomes.csv");
    plans(out);
    research(scenario, out);
    run("lesson", "four-dates", out + "/l");
    header("lesson data", "l/four-dates.csv");
    Path washes = folder.resolve("w.csv");
    Files.writeString(washes, "date,bees,mites\n2026-07-05,300,4\n2026-08-02,300,6\n");
    run("lesson", "class", "--counts=" + washes, "--members=50", out + "/lc");
    header("lesson class.csv", "lc/class.csv");
    TABLES.put("lesson --counts", List.of("date", "bees", "mites"));
    Path yard =
        Files.writeString(folder.resolve("y.csv"), "colony,wash_bees,wash_mites\nA,300,4\n");
    run("apiary", yard.toString(), "--scenario=" + scenario, "--members=3", out + "/a");
    header("apiary colonies.csv", "a/colonies.csv");
    header("apiary plans.csv", "a/plans.csv");
    Path design = Files.writeString(folder.resolve("design.csv"), "mites\n5\n");
    run("batch", design.toString(), "--scenario=" + scenario, "--columns=all", out + "/b");
    header("batch runs", "b/runs.csv");
    header("batch daily", "b/daily.csv");
    run("resistance", scenario, "--years=1", "--share=thymol=1 %", out + "/r");
    header("resistance years.csv", "r/years.csv");
    TABLES.put("batch DESIGN", DesignReader.COLUMNS);
    TABLES.put("apiary TABLE", ApiaryReader.COLUMNS);
    TABLES.put(
        "efficacy --counts",
        List.of("colony", "group", "before_mites", "before_bees", "after_mites", "after_bees"));
  }

  private static void research(String scenario, String out) throws IOException {
    Path counts = folder.resolve("counts.csv");
    Files.writeString(
        counts,
        """
        colony,date,bees,brood,plan,wash_bees,wash_mites,method,board_days,board_mites
        A,2026-08-08,,,,300,6,alcohol,,
        A,2026-08-22,,,,300,9,alcohol,7,60
        B,2026-08-08,15000,8000 cells,"Gel, twice",300,7,alcohol,,
        B,2026-08-22,,,,300,2,alcohol,7,150
        """);
    String free = "--free=treatment.strength";
    run("fit", scenario, "--counts=" + counts, free, "--starts=1", out + "/f");
    header("fit counts.csv", "f/counts.csv");
    TABLES.put("fit --counts", ObservationReader.COLUMNS);
    String plan = "--plan=Gel, twice";
    for (String method : List.of("morris", "sobol")) {
      String to = out + "/" + method;
      String by = "--method=" + method;
      run("sensitivity", scenario, plan, "--vary=bees,mites", "--size=4", by, to);
      header("sensitivity sensitivity.csv", method + "/sensitivity.csv");
    }
  }

  /** With and without midwinter in the run. */
  private static void plans(String out) throws IOException {
    for (String days : List.of("150", "60")) {
      String text = SmallScenario.TEXT.replace("horizon: 150", "horizon: " + days);
      Path other = folder.resolve(days + ".yaml");
      Files.writeString(other, text.replaceAll("(?s)  - name: Dribble.*", ""));
      run("timing", other.toString(), "--method=thymol-gel", "--members=3", out + "/t" + days);
      run("plan", other.toString(), "--schedules=30", "--members=3", out + "/p" + days);
      header("timing starts.csv", "t" + days + "/starts.csv");
      header("timing broodless.csv", "t" + days + "/broodless.csv");
      header("plan schedules.csv", "p" + days + "/schedules.csv");
    }
  }

  @Test
  void everyColumnIsExplained() {
    List<String> unexplained = new ArrayList<>();
    TABLES.forEach(
        (table, columns) ->
            columns.stream()
                .filter(column -> Columns.find(table, column).isEmpty())
                .forEach(column -> unexplained.add(table + ": " + column)));
    assertEquals(List.of(), unexplained);
  }

  @Test
  void nothingElseIs() {
    List<String> unknown = new ArrayList<>();
    for (Columns.Column entry : Columns.all()) {
      for (String table : entry.tables()) {
        if (!table.equals("any") && !explainsOneOf(table, entry)) {
          unknown.add(table + ": " + entry.name());
        }
      }
    }
    assertEquals(List.of(), unknown);
    assertEquals(new TreeSet<>(TABLES.keySet()), new TreeSet<>(Columns.tables()));
  }

  private static boolean explainsOneOf(String table, Columns.Column entry) {
    return TABLES.getOrDefault(table, List.of()).stream()
        .anyMatch(column -> Columns.find(table, column).map(entry::equals).orElse(false));
  }

  @Test
  void commandPrintsThem() {
    CliRun all = CliRun.of("columns");
    assertEquals(0, all.exitCode());
    for (Columns.Column column : Columns.all()) {
      assertTrue(all.out().contains(column.name()), column.name());
    }
    assertTrue(CliRun.of("columns", "ledger").out().contains("mites_born"));
    assertTrue(CliRun.of("columns", "--json", "ledger").out().contains("\"mites_born\""));
    assertEquals(2, CliRun.of("columns", "nonsense").exitCode());
  }
}
