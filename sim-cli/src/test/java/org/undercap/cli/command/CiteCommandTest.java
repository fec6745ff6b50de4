package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.undercap.cli.CliRun;
import org.undercap.cli.output.ProgramVersion;

/** How to cite the program. */
class CiteCommandTest {
  @Test
  void bibtexNamesTheVersion() {
    CliRun run = CliRun.of("cite");
    assertEquals(0, run.exitCode());
    assertTrue(run.out().startsWith("@software{undercap,\n"), run.out());
    assertTrue(run.out().contains("version = {" + ProgramVersion.text() + "}"), run.out());
    assertTrue(run.out().endsWith("}\n"), run.out());
    assertEquals(
        run.out().chars().filter(c -> c == '{').count(),
        run.out().chars().filter(c -> c == '}').count());
  }

  @Test
  void citationFileHasTheRequiredKeys() throws IOException {
    CliRun run = CliRun.of("cite", "--cff");
    JsonNode file = new YAMLMapper().readTree(run.out());
    for (String key : new String[] {"cff-version", "message", "title", "authors"}) {
      assertTrue(file.has(key), key);
    }
    assertEquals(ProgramVersion.text(), file.get("version").asText());
    assertEquals("1.2.0", file.get("cff-version").asText());
    assertTrue(file.get("authors").get(0).has("name"));
  }
}
