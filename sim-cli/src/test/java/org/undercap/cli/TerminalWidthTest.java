package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is printed for a person fits a terminal of 80 columns. */
class TerminalWidthTest {
  private static final int COLUMNS = 80;

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--help",
        "methods",
        "methods thymol-gel",
        "climates",
        "climates cool-oceanic",
        "thresholds",
        "parameters",
        "parameters reproduction.worker",
        "sources",
        "sources fries-1994",
        "growth",
        "columns",
        "efficacy --before 13/300 --after 2/310",
        "help topics",
        "lesson",
        "estimate SCENARIO",
        "simulate SCENARIO",
        "timing SCENARIO --method thymol-gel --members=20",
        "plan SCENARIO --members=20",
        "compare SCENARIO --members=20 --out=OUT"
      })
  void linesFit(String command) throws Exception {
    String scenario = Path.of("..", "scenarios", "saltmere-garth.yaml").toString();
    String out = folder.resolve("out").toString();
    CliRun run =
        CliRun.of(command.replace("SCENARIO", scenario).replace("OUT", out).split(" ", -1));
    assertEquals(0, run.exitCode(), run.err());
    assertTrue(!run.out().isBlank(), command);
    List<String> wide = run.out().lines().filter(line -> line.length() > COLUMNS).toList();
    assertEquals(List.of(), wide);
  }
}
