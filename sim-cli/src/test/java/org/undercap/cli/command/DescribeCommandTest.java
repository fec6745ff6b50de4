package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.undercap.cli.CliRun;
import org.undercap.cli.output.Numbers;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;

/** The description of the model holds what the catalogues hold, and so does the shipped page. */
class DescribeCommandTest {
  private static final Path SHIPPED = Path.of("..", "reports", "model-description.md");
  private static final Pattern DOTTED = Pattern.compile("\\b[a-z][A-Za-z]*(\\.[a-z][A-Za-z]*)+\\b");

  private static String page() {
    CliRun run = CliRun.of("describe");
    assertEquals(0, run.exitCode(), run.err());
    assertEquals("", run.err());
    return run.out();
  }

  @Test
  void shippedPageIsWhatTheProgramPrints() throws IOException {
    assertEquals(
        Files.readString(SHIPPED),
        page(),
        "make it anew: sim-cli/undercap describe > reports/model-description.md");
  }

  @Test
  void everyParameterHasOneRowWithItsValueUnitAndSources() {
    List<String> lines = page().lines().toList();
    for (Parameter parameter : ParameterCatalogue.shipped().all()) {
      List<String> rows =
          lines.stream().filter(l -> l.startsWith("| `" + parameter.id().id() + "` |")).toList();
      assertEquals(1, rows.size(), parameter.id().id());
      List<String> cells = List.of(rows.get(0).split(" \\| "));
      assertEquals(Numbers.exact(parameter.values()), cells.get(1));
      assertEquals(
          parameter.unit().equals("-") ? "none" : parameter.unit().replace(";", "; "),
          cells.get(3));
      parameter.sourceKeys().forEach(key -> assertTrue(cells.get(6).contains(key), rows.get(0)));
    }
  }

  @Test
  void everySourceOfAParameterIsListed() {
    String page = page();
    String list = page.substring(page.indexOf("## 8. Sources"));
    for (Parameter parameter : ParameterCatalogue.shipped().all()) {
      parameter.sourceKeys().forEach(key -> assertTrue(list.contains("\n- " + key + ": "), key));
    }
  }

  @Test
  void formulasNameParametersThatExist() {
    List<String> formulas = page().lines().filter(line -> line.startsWith("    ")).toList();
    List<String> unknown =
        formulas.stream()
            .flatMap(line -> DOTTED.matcher(line).results())
            .map(found -> found.group())
            .filter(name -> ParameterCatalogue.shipped().find(name).isEmpty())
            .toList();
    assertTrue(formulas.size() > 30, formulas.toString());
    assertEquals(List.of(), unknown);
  }

  @Test
  void headingsFollowTheProtocol() {
    List<String> headings =
        page().lines().filter(l -> l.startsWith("## ")).map(l -> l.substring(6)).toList();
    assertEquals(
        List.of(
            "Purpose and patterns",
            "Entities, state variables and scales",
            "Process overview and scheduling",
            "Design concepts",
            "Initialisation",
            "Input data",
            "Submodels",
            "Sources"),
        headings);
  }
}
