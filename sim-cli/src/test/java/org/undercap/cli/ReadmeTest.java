package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
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
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** The examples in README.md hold. Its shell lines are run by {@code PackedProgramIT}. */
class ReadmeTest {
  private static final Path README = Path.of("..", "README.md");
  private static final Pattern INLINE_CODE = Pattern.compile("`([^`\n]+)`");

  @Test
  void scenarioIsGoodAndCanBeCompared(@TempDir Path folder) throws IOException {
    Path scenario = folder.resolve("my-colony.yaml");
    Files.writeString(scenario, block("yaml"));
    CliRun check = CliRun.of("check", scenario.toString());
    assertEquals(0, check.exitCode(), check.err());
    assertEquals(scenario + ": good: My colony, 1 plan, 2026-09-24 to 2027-04-01\n", check.out());
    CliRun compare =
        CliRun.of("compare", scenario.toString(), "--members=3", "--out=" + folder + "/results");
    assertEquals(0, compare.exitCode(), compare.err());
  }

  @Test
  void programCompilesAgainstTheLibrary(@TempDir Path folder) throws IOException {
    Path source = folder.resolve("Example.java");
    Files.writeString(
        source,
        """
        import java.nio.file.Path;
        import org.undercap.comparison.*;
        import org.undercap.scenario.*;
        import org.undercap.scenario.io.*;
        import org.undercap.simulation.*;

        class Example {
          public static void main(String[] args) {
        %s
          }
        }
        """
            .formatted(block("java")));
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    assertNotNull(compiler, "tests need a JDK");
    StringWriter messages = new StringWriter();
    boolean compiled =
        compiler
            .getTask(
                messages,
                null,
                null,
                List.of("-Xlint:all", "-proc:none", "-d", folder.toString()),
                null,
                compiler
                    .getStandardFileManager(null, null, null)
                    .getJavaFileObjects(source.toFile()))
            .call();
    assertTrue(compiled, messages::toString);
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
  void filesThatItLinksToExist() throws IOException {
    Matcher link = Pattern.compile("]\\(([^)#]+)\\)").matcher(Files.readString(README));
    int links = 0;
    while (link.find()) {
      if (!link.group(1).startsWith("http")) {
        assertTrue(Files.exists(README.resolveSibling(link.group(1))), link.group());
        links++;
      }
    }
    assertTrue(links > 1, "links were found");
  }

  /** The only block of code in this language. */
  private static String block(String language) throws IOException {
    Matcher block =
        Pattern.compile("```" + language + "\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(README));
    assertTrue(block.find(), language);
    String text = block.group(1);
    assertTrue(!block.find(), "README.md has two blocks in " + language);
    return text;
  }
}
