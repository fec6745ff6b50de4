package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** Man pages and completion know every command and option that the program knows. */
class ManualFilesTest {
  @TempDir private static Path folder;

  @BeforeAll
  static void make() throws IOException {
    ManualFiles.main(new String[] {folder.toString()});
  }

  private static List<CommandLine> commands() {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    List<CommandLine> all = new ArrayList<>();
    all.add(Main.commandLine(nowhere, nowhere, false, CliRun.REPORT));
    for (int i = 0; i < all.size(); i++) {
      all.addAll(all.get(i).getSubcommands().values());
    }
    return all;
  }

  private static String page(CommandLine command) throws IOException {
    String name = command.getCommandSpec().qualifiedName("-");
    return Files.readString(folder.resolve("man/man1/" + name + ".1"));
  }

  private static String script(String shell) throws IOException {
    return Files.readString(folder.resolve("completion/undercap." + shell));
  }

  @Test
  void everyCommandHasAPageAndNoOther() throws IOException {
    Set<String> expected =
        commands().stream()
            .map(command -> command.getCommandSpec().qualifiedName("-") + ".1")
            .collect(Collectors.toCollection(TreeSet::new));
    assertTrue(expected.contains("undercap-lesson-class.1"), expected::toString);
    try (Stream<Path> files = Files.list(folder.resolve("man/man1"))) {
      assertEquals(
          expected,
          files
              .map(file -> file.getFileName().toString())
              .collect(Collectors.toCollection(TreeSet::new)));
    }
  }

  @Test
  void pagesTellEveryOptionAndWhatItDoes() throws IOException {
    for (CommandLine command : commands()) {
      String page = page(command).replace("\\-", "-");
      for (OptionSpec option : command.getCommandSpec().options()) {
        String term = "\\fB" + String.join(", ", option.names());
        assertTrue(page.contains(term), command.getCommandName() + ": " + term);
        assertFalse(
            page.contains(term + "\\fR\n.TP"), command.getCommandName() + ": no words on " + term);
      }
    }
  }

  @Test
  void pagesBeginWithNameAndPurpose() throws IOException {
    for (CommandLine command : commands()) {
      assertTrue(
          page(command)
              .matches("(?s)\\.TH \"UNDERCAP[^\n]*\n.*\n\\.SH NAME\nundercap[^ ]* \\\\- [A-Z].*"),
          page(command));
    }
  }

  @Test
  void pagesHoldNoLineThatManWouldTakeForAnOrder() throws IOException {
    Set<String> known = Set.of("TH", "nh", "ad", "SH", "nf", "fi", "TP", "PP");
    for (CommandLine command : commands()) {
      page(command)
          .lines()
          .filter(line -> line.startsWith(".") || line.startsWith("'"))
          .forEach(line -> assertTrue(known.contains(line.substring(1).split(" ", -1)[0]), line));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"bash", "fish"})
  void scriptsNameEveryOption(String shell) throws IOException {
    String script = script(shell);
    for (CommandLine command : commands()) {
      for (OptionSpec option : command.getCommandSpec().options()) {
        String name = option.longestName();
        String wanted = shell.equals("fish") ? " -l " + name.substring(2) + " " : name;
        assertTrue(script.contains(wanted), command.getCommandName() + " " + name);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"bash,bash", "zsh,bash", "fish,fish"})
  void shellsReadTheirScripts(String shell, String script) throws Exception {
    assumeTrue(installed(shell), shell + " is not installed");
    Path file = folder.resolve("completion/undercap." + script);
    Process check =
        new ProcessBuilder(shell, "-n", file.toString()).redirectErrorStream(true).start();
    assertEquals("", new String(check.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
    assertEquals(0, check.waitFor());
  }

  @Test
  void bashCompletes() throws Exception {
    assumeTrue(installed("bash"), "bash is not installed");
    String ask =
        """
        source "$1"
        COMP_WORDS=(undercap compare --if)
        COMP_CWORD=2
        _complete_undercap
        echo "${COMPREPLY[@]}"
        """;
    Process bash =
        new ProcessBuilder(
                "bash", "-c", ask, "ask", folder.resolve("completion/undercap.bash").toString())
            .start();
    assertEquals(
        "--if-exists\n", new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
  }

  @Test
  void commandPrintsTheScripts() throws IOException {
    assertEquals(script("bash"), CliRun.of("completion", "bash").out());
    assertEquals(script("bash"), CliRun.of("completion", "zsh").out());
    assertEquals(script("fish"), CliRun.of("completion", "fish").out());
    assertEquals(2, CliRun.of("completion", "tcsh").exitCode());
  }

  private static boolean installed(String program) {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
        .anyMatch(place -> Files.isExecutable(Path.of(place, program)));
  }
}
