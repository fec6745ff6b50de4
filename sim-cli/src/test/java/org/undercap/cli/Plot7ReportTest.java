package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.undercap.cli.output.Digests;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.io.ParameterFile;

/**
 * The report on the research set "Plot 7" is of the files that ship, and its intervals hold the
 * values with which the counts were made. The fit takes minutes, so it is not made anew here.
 */
class Plot7ReportTest {
  private static final Path REPORT = Path.of("..", "reports", "plot-7");
  private static final Path INPUTS = Path.of("..", "scenarios", "research");

  @Test
  void itIsMadeFromTheFilesThatShip() throws IOException {
    String manifest = Files.readString(REPORT.resolve("manifest.json"));
    Matcher file =
        Pattern.compile("\"file\": \"([^\"]+)\",\\s+\"sha256\": \"(\\w+)\"").matcher(manifest);
    int files = 0;
    while (file.find()) {
      Path inputs = INPUTS.resolve(file.group(1));
      Path path = Files.exists(inputs) ? inputs : REPORT.resolve(file.group(1));
      if (!path.toString().endsWith(".png")) {
        assertEquals(file.group(2), Digests.of(path), path + " is not the one of the report");
      }
      files++;
    }
    assertTrue(files > 8, manifest);
  }

  @Test
  void theTrueValuesLieInItsIntervals() throws IOException {
    String json = Files.readString(REPORT.resolve("fit.json"));
    Map<String, Double> truth =
        Map.of(
            "reproduction.worker", 0.92,
            "treatment.strength", 0.8,
            "count.capture.board", 0.82,
            "correlation in washes", 0.01,
            "variance of boards beyond Poisson", 0.08);
    truth.forEach(
        (name, value) -> {
          Matcher found =
              Pattern.compile(
                      "\"name\": \""
                          + Pattern.quote(name)
                          + "\",\\s+\"value\": [^,]+,\\s+\"low95\": ([^,]+),\\s+\"high95\": ([^,]+),")
                  .matcher(json);
          assertTrue(found.find(), name);
          double low = Double.parseDouble(found.group(1));
          double high = Double.parseDouble(found.group(2));
          assertTrue(low <= value && value <= high, name + ": " + low + " to " + high);
        });
  }

  @Test
  void itsFileOfParametersIsAccepted() {
    assertTrue(
        ParameterFile.read(REPORT.resolve("parameters.yaml"))
            .orThrow()
            .values()
            .containsKey(ParameterId.REPRODUCTION_WORKER));
  }
}
