package org.undercap.cli.manual;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** What the help says of commands and options, as plain text without marks and colours. */
public final class HelpWords {
  private HelpWords() {}

  /**
   * Returns the command and all below it, each once; those that the help hides are left out.
   *
   * @param line the command
   */
  static List<CommandLine> commands(CommandLine line) {
    List<CommandLine> all = new ArrayList<>();
    all.add(line);
    shownBelow(line).forEach(sub -> all.addAll(commands(sub)));
    return all;
  }

  /**
   * Returns the commands right below a command, each once, in the order of the help.
   *
   * @param line the command
   */
  static Collection<CommandLine> shownBelow(CommandLine line) {
    return new LinkedHashSet<>(line.getSubcommands().values())
        .stream().filter(sub -> !sub.getCommandSpec().usageMessage().hidden()).toList();
  }

  /**
   * Returns the options of a command that the help shows.
   *
   * @param command the command
   */
  static List<OptionSpec> options(CommandSpec command) {
    return command.options().stream().filter(option -> !option.hidden()).toList();
  }

  /**
   * Returns lines of the help as plain lines.
   *
   * @param lines the lines, with picocli's marks
   */
  static List<String> lines(String... lines) {
    return Stream.of(lines)
        .flatMap(line -> line.replace("%n", "\n").replace("%%", "%").lines())
        .map(line -> Ansi.OFF.string(line))
        .toList();
  }

  /**
   * Returns what a command does.
   *
   * @param usage what the help says of it
   */
  static List<String> about(UsageMessageSpec usage) {
    return Stream.of(usage.header(), usage.description())
        .flatMap(text -> lines(text).stream())
        .filter(text -> !text.isBlank())
        .toList();
  }

  /**
   * Returns what a command does, in short.
   *
   * @param usage what the help says of it
   * @return the beginning, up to the first stop or bracket
   */
  public static String summary(UsageMessageSpec usage) {
    return summary(about(usage));
  }

  /**
   * Returns the beginning of what the help says, up to the first stop or bracket.
   *
   * @param lines what the help says
   */
  static String summary(List<String> lines) {
    String first = lines.stream().findFirst().orElse("");
    return first.replaceFirst("( \\(|[.:;]( |$)).*", "");
  }

  /**
   * Returns how the help writes the value of an option or parameter, as in {@code =FOLDER}; empty
   * if there is none.
   *
   * @param help the help of its command
   * @param arg the option or parameter
   */
  static String label(Help help, ArgSpec arg) {
    return help.parameterLabelRenderer().renderParameterLabel(arg, Ansi.OFF, List.of()).toString();
  }

  /**
   * Returns the words among which an option or parameter has its value.
   *
   * @param arg the option or parameter
   * @return the words, or none if it may be anything
   */
  static List<String> choices(ArgSpec arg) {
    if (arg.completionCandidates() == null) {
      return List.of();
    }
    return StreamSupport.stream(arg.completionCandidates().spliterator(), false).toList();
  }

  /**
   * Tells whether the value is a file or folder.
   *
   * @param arg the option or parameter
   */
  static boolean isFile(ArgSpec arg) {
    for (Class<?> type : arg.auxiliaryTypes()) {
      if (Path.class.isAssignableFrom(type)) {
        return true;
      }
    }
    return Path.class.isAssignableFrom(arg.type());
  }
}
