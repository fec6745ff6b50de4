package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names that are a script to a browser or a formula to a spreadsheet stay names in every file. */
class HostileNamesTest {
  private static final String FORMULA = "=HYPERLINK(1)";
  private static final String TAG = "<script>alert(1)</script>";

  /** A cell that a spreadsheet would run; numbers may begin with a sign. */
  private static final Pattern RUNS = Pattern.compile("(?m)(^|,)\"?([=@]|[+-](?![0-9.E-]+(,|$)))");

  @TempDir private Path folder;

  private String scenario() throws IOException {
    String text =
        SmallScenario.TEXT
            .replace("Small yard", "'" + FORMULA + TAG + "'")
            .replace("name: Dribble", "name: '@SUM(A1)" + TAG + "'")
            .replace("name: Gel, twice", "name: '+1" + TAG + "'");
    return Files.writeString(folder.resolve("small.yaml"), text).toString();
  }

  private void assertHarmless(String... words) {
    CliRun run = CliRun.of(words);
    assertEquals(0, run.exitCode(), run.err());
    int named = 0;
    for (Map.Entry<String, String> file : SmallScenario.files(folder.resolve("out")).entrySet()) {
      String name = file.getKey();
      String text = file.getValue();
      if (name.endsWith(".csv")) {
        assertFalse(RUNS.matcher(text).find(), () -> name + "\n" + text);
      }
      if (name.endsWith(".html") || name.endsWith(".svg")) {
        assertFalse(text.contains("<script>alert"), name);
      }
      named += text.contains("alert(1)") ? 1 : 0;
    }
    assertTrue(named > 0, "the names are in the files");
  }

  @Test
  void patternNoticesAFormula() {
    assertTrue(RUNS.matcher("a,b\n1,=2\n").find());
    assertTrue(RUNS.matcher("a,b\n\"@x\",2\n").find());
    assertFalse(RUNS.matcher("a,b\n-1.5,'=2\n").find());
  }

  @Test
  void comparison() throws IOException {
    assertHarmless("compare", scenario(), "--members=4", "--svg", "--out=" + folder + "/out");
  }

  @Test
  void apiary() throws IOException {
    Path yard =
        Files.writeString(
            folder.resolve("yard.csv"),
            "colony,wash_bees,wash_mites\n" + FORMULA + TAG + ",300,4\n-B,300,5\n");
    assertHarmless(
        "apiary",
        yard.toString(),
        "--scenario=" + scenario(),
        "--members=4",
        "--out=" + folder + "/out");
  }

  @Test
  void batch() throws IOException {
    Path design =
        Files.writeString(folder.resolve("design.csv"), "label,mites\n" + FORMULA + TAG + ",5\n");
    assertHarmless(
        "batch", design.toString(), "--scenario=" + scenario(), "--out=" + folder + "/out");
  }

  @Test
  void simulation() throws IOException {
    assertHarmless("simulate", scenario(), "--svg", "--out=" + folder + "/out");
  }

  @Test
  void lessonsInAnotherLanguage() throws IOException {
    Path words =
        Files.writeString(
            folder.resolve("words.txt"), "lesson.year.title = " + FORMULA + TAG + "\n");
    assertHarmless(
        "lesson", "all", "--svg", "--language-file=" + words, "--out=" + folder.resolve("out"));
  }
}
