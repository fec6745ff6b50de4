package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/**
 * The examples in README.md hold. Its blocks of code are run by {@code DocumentsTest}, shell lines
 * by {@code PackedProgramIT} too.
 */
class ReadmeTest {
  private static final Path README = Path.of("..", "README.md");
  private static final Pattern INLINE_CODE = Pattern.compile("`([^`\n]+)`");

  @Test
  void scenarioIsGoodAndCanBeCompared(@TempDir Path folder) throws IOException {
    Path scenario = folder.resolve("my-colony.yaml");
    Files.writeString(scenario, block("yaml"));
    CliRun check = CliRun.of("check", scenario.toString());
    assertEquals(0, check.exitCode(), check.err());
    assertEquals(scenario + ": good: My colony, 2 plans, 2026-09-24 to 2027-04-01\n", check.out());
    CliRun compare =
        CliRun.of("compare", scenario.toString(), "--members=3", "--out=" + folder + "/results");
    assertEquals(0, compare.exitCode(), compare.err());
  }

  /** In the tables and the text: {@code undercap check --assumptions} and the like. */
  @Test
  void commandsAndOptionsThatItNamesExist() throws IOException {
    CommandLine program =
        Main.commandLine(
            new PrintWriter(new StringWriter()),
            new PrintWriter(new StringWriter()),
            false,
            CliRun.REPORT);
    Set<String> options = new HashSet<>();
    for (CommandLine command : program.getSubcommands().values()) {
      for (OptionSpec option : command.getCommandSpec().options()) {
        options.addAll(List.of(option.names()));
      }
    }
    int commands = 0;
    Matcher code = INLINE_CODE.matcher(Files.readString(README));
    while (code.find()) {
      List<String> words = List.of(code.group(1).split("[ =]", -1));
      if (words.get(0).equals("undercap")) {
        assertTrue(program.getSubcommands().containsKey(words.get(1)), code.group());
        commands++;
      }
      words.stream()
          .filter(word -> word.startsWith("--"))
          .forEach(word -> assertTrue(options.contains(word), code.group()));
    }
    assertTrue(commands > 5, "the table of commands was found");
  }

  @Test
  void isShort() throws IOException {
    assertTrue(Files.readAllLines(README).size() < 250);
  }

  /** The only block of code in this language. */
  private static String block(String language) throws IOException {
    Matcher block =
        Pattern.compile("```" + language + "[^\n]*\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(README));
    assertTrue(block.find(), language);
    String text = block.group(1);
    assertTrue(!block.find(), "README.md has two blocks in " + language);
    return text;
  }
}
