package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** The examples at the end of the help of each command are right uses of it. */
class HelpExamplesTest {
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  static Stream<String> examples() {
    List<String> examples = new ArrayList<>();
    for (CommandLine command : program().getSubcommands().values()) {
      List<String> footer = List.of(command.getCommandSpec().usageMessage().footer());
      footer.stream()
          .map(String::strip)
          .filter(s -> s.startsWith("undercap "))
          .forEach(examples::add);
    }
    assertTrue(examples.size() > 10, examples.toString());
    return examples.stream();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void exampleIsUnderstood(String example) {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(example.replaceAll(" [>|].*", ""));
    while (word.find()) {
      words.add(word.group(1) == null ? word.group(2) : word.group(1));
    }
    try {
      program().parseArgs(words.subList(1, words.size()).toArray(String[]::new));
    } catch (ParameterException e) {
      fail(example, e);
    }
  }

  private static CommandLine program() {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    return Main.commandLine(nowhere, nowhere, false, CliRun.REPORT);
  }
}
