package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The folder {@code reports} holds what the program writes today about the folder {@code
 * scenarios}. Pictures depend on the fonts and the libraries of the machine: of these only size and
 * ink are looked at.
 */
class ReportsTest {
  private static final Path SCENARIOS = Path.of("..", "scenarios");
  private static final Path REPORTS = Path.of("..", "reports");

  private static final String MAKE_ANEW =
      "; make the reports anew: sim-cli/undercap compare scenarios/*.yaml --out reports"
          + " --if-exists=overwrite";

  @Test
  void areWhatTheProgramWrites(@TempDir Path folder) throws IOException {
    Map<String, String> shipped = SmallScenario.files(REPORTS);
    copyCharts(folder);
    CliRun run = CliRun.of(compare(folder));
    assertEquals(4, run.exitCode(), run.err()); // for one of them there is no advice
    Map<String, String> written = SmallScenario.files(folder);
    List<String> outOfDate =
        written.keySet().stream()
            .filter(name -> !written.get(name).equals(shipped.get(name)))
            .toList();
    assertEquals(List.of(), outOfDate, "files in reports are out of date" + MAKE_ANEW);
    TreeSet<String> left = new TreeSet<>(shipped.keySet());
    left.removeAll(written.keySet());
    left.removeIf(name -> name.startsWith("lessons-")); // held to date by LessonReportsTest
    left.remove("index.html"); // see GalleryTest
    left.remove("published-checks.md"); // made and held to date by the command evidence
    left.remove("model-description.md"); // by the command describe
    left.removeIf(name -> name.startsWith("plot-7/")); // see Plot7ReportTest
    assertEquals(List.of(), List.copyOf(left), "files in reports that nothing writes: remove them");
  }

  @Test
  void chartsAreDrawn() throws IOException {
    List<Path> charts = charts();
    assertTrue(charts.size() > scenarios().size(), "the folder was found");
    charts.forEach(PngImages::assertDrawn);
  }

  /** The documented command, but charts that are there already are kept, which saves time. */
  private static String[] compare(Path folder) throws IOException {
    List<String> words = new ArrayList<>(List.of("compare"));
    words.addAll(scenarios());
    words.addAll(List.of("--out=" + folder, "--if-exists=skip"));
    return words.toArray(String[]::new);
  }

  private static void copyCharts(Path folder) throws IOException {
    for (Path chart : charts()) {
      Path copy = folder.resolve(REPORTS.relativize(chart));
      Files.createDirectories(copy.getParent());
      Files.copy(chart, copy);
    }
  }

  private static List<String> scenarios() throws IOException {
    try (Stream<Path> files = Files.list(SCENARIOS)) {
      return files.map(Path::toString).filter(name -> name.endsWith(".yaml")).sorted().toList();
    }
  }

  private static List<Path> charts() throws IOException {
    try (Stream<Path> files = Files.walk(REPORTS)) {
      return files.filter(file -> file.toString().endsWith(".png")).sorted().toList();
    }
  }
}
