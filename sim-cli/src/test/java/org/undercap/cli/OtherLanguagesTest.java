package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The examples of README.md in R and Python read the tables of a batch, where these are installed.
 */
class OtherLanguagesTest {
  private static final int FIGURES = 5;

  @TempDir private Path folder;

  /** Most mites of the only run of each plan. */
  private final Map<String, Double> peaks = new TreeMap<>();

  @BeforeEach
  void runBatch() throws IOException {
    String scenario = SmallScenario.in(folder, "small.yaml");
    Path design = Files.writeString(folder.resolve("design.csv"), "plan\nDo nothing\nDribble\n");
    CliRun run =
        CliRun.of(
            "batch",
            design.toString(),
            "--scenario=" + scenario,
            "--out=" + folder.resolve("results"));
    assertEquals(0, run.exitCode(), run.err());
    for (String line : Files.readAllLines(folder.resolve("results/daily.csv"))) {
      String[] cells = line.split(",", -1);
      if (!cells[0].equals("run")) {
        double mites = 0;
        for (int column = 6; column < 9; column++) {
          mites += Double.parseDouble(cells[column]);
        }
        peaks.merge(cells[0].equals("1") ? "Do nothing" : "Dribble", mites, Math::max);
      }
    }
  }

  private static String block(String language) throws IOException {
    Matcher block =
        Pattern.compile("```" + language + "\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(Path.of("..", "README.md")));
    assertTrue(block.find(), language);
    return block.group(1);
  }

  /** What a program prints; empty if it is not there or fails. */
  private Optional<String> output(String... words) throws IOException, InterruptedException {
    Path out = folder.resolve("out.txt");
    ProcessBuilder builder =
        new ProcessBuilder(words)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(out.toFile());
    builder.environment().put("LC_ALL", "C.UTF-8");
    try {
      int exitCode = builder.start().waitFor();
      return exitCode == 0 ? Optional.of(Files.readString(out)) : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private void assertTells(String printed) {
    peaks.forEach(
        (plan, mites) -> {
          String figures = String.format(Locale.ROOT, "%.3f", mites).substring(0, FIGURES);
          assertTrue(
              printed.matches("(?s).*" + plan + " +" + Pattern.quote(figures) + ".*"),
              plan + " " + figures + " in:\n" + printed);
        });
  }

  @Test
  void readsTablesInR() throws Exception {
    assumeTrue(output("Rscript", "--version").isPresent(), "R is not installed");
    Files.writeString(folder.resolve("example.R"), block("r"));
    assertTells(output("Rscript", "example.R").orElseGet(this::printed));
  }

  @Test
  void readsTablesInPython() throws Exception {
    Optional<String> python = Optional.empty();
    for (String name : List.of("python3", "/usr/bin/python3")) {
      if (python.isEmpty() && output(name, "-c", "import pandas").isPresent()) {
        python = Optional.of(name);
      }
    }
    assumeTrue(python.isPresent(), "pandas is not installed");
    Files.writeString(folder.resolve("example.py"), block("python"));
    assertTells(output(python.get(), "example.py").orElseGet(this::printed));
  }

  private String printed() {
    try {
      return Files.readString(folder.resolve("out.txt"));
    } catch (IOException e) {
      return e.toString();
    }
  }
}
