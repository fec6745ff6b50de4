package org.undercap.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.undercap.cli.CliRun;

/** Scenarios whose names try to break pages, calendars and sheets. */
final class AwkwardScenario {
  static final String MARKUP = "<script>alert('x')</script> & \"co\" <b>";

  /** As long as a name may be, without a place to break it. */
  static final String LONG = "W".repeat(80);

  static final String RIGHT_TO_LEFT =
      "\u0637\u0631\u064a\u0642\u0629 \u0627\u0644\u0635\u064a\u0641";
  static final String ABOUT = "</p></style><img src=x onerror=alert(1)> *not* [a](b) | `c`";

  private static final String TEXT =
      """
      undercap: 1
      name: "%s"
      about: "%s"
      study: %s
      site: {climate: central-european}
      colony: {date: 2026-08-08, bees: 18000, brood: 9000 cells}
      mites: {in-colony: 500}
      horizon: 270 days
      plans:
        - name: "%s"
          steps:
            - {date: 2026-08-10, treatment: thymol-gel}
            - {date: 2026-08-24, treatment: thymol-gel}
        - name: "%s"
          steps:
            - {date: 2026-12-18, treatment: oxalic-dribble}
      """;

  private AwkwardScenario() {}

  /** Answers a scenario in a folder of its own and gives the folder of the results. */
  static Path answered(Path folder, String title, boolean study, String plan, String... options) {
    Path file = in(folder, title, study, plan);
    Path results = file.resolveSibling("results");
    List<String> words =
        new ArrayList<>(List.of("compare", file.toString(), "--out=" + results.toString()));
    words.addAll(List.of(options));
    if (options.length == 0) {
      words.add("--members=20");
    }
    CliRun run = CliRun.of(words.toArray(String[]::new));
    assertEquals(0, run.exitCode(), run.err());
    return results;
  }

  /** Writes a scenario in a folder of its own. */
  static Path in(Path folder, String title, boolean study, String plan) {
    try {
      Path place = Files.createTempDirectory(folder, "scenario");
      String text = TEXT.formatted(quoted(title), quoted(ABOUT), study, quoted(plan), "Dribble");
      return Files.writeString(place.resolve("awkward.yaml"), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String quoted(String text) {
    return text.replace("\\", "\\\\").replace("\"", "\\\"");
  }
}
