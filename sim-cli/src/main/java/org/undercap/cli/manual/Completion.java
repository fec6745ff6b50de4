package org.undercap.cli.manual;

import java.util.List;
import java.util.stream.Collectors;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The scripts by which shells complete the words of a command line. */
public final class Completion {
  private Completion() {}

  /**
   * Returns the script for bash, which also serves zsh.
   *
   * @param root the command line with all commands
   * @return the script
   */
  public static String bash(CommandLine root) {
    String script = AutoComplete.bash(root.getCommandName(), root);
    return script.replace("\r\n", "\n");
  }

  /**
   * Returns the script for fish.
   *
   * @param root the command line with all commands
   * @return the script
   */
  public static String fish(CommandLine root) {
    StringBuilder script = new StringBuilder();
    script.append("# Completes the words of undercap in fish.\n");
    HelpWords.commands(root).forEach(line -> fish(line, script));
    return script.toString();
  }

  private static void fish(CommandLine line, StringBuilder script) {
    CommandSpec command = line.getCommandSpec();
    String start = "complete -c " + command.root().name() + " -n " + quote(condition(line));
    for (CommandLine sub : HelpWords.shownBelow(line)) {
      String about = HelpWords.summary(HelpWords.about(sub.getCommandSpec().usageMessage()));
      script.append("%s -f -a %s -d %s\n".formatted(start, sub.getCommandName(), quote(about)));
    }
    for (OptionSpec option : HelpWords.options(command)) {
      script.append(start).append(names(option)).append(values(option));
      script
          .append(" -d ")
          .append(quote(HelpWords.summary(HelpWords.lines(option.description()))))
          .append('\n');
    }
    for (PositionalParamSpec parameter : command.positionalParameters()) {
      List<String> choices = HelpWords.choices(parameter);
      if (!choices.isEmpty()) {
        script.append(start).append(" -f -a ").append(quote(String.join(" ", choices)));
        script.append('\n');
      }
    }
  }

  /** When the words so far name this command and none below it. */
  private static String condition(CommandLine line) {
    if (line.getParent() == null) {
      return "__fish_use_subcommand";
    }
    String below =
        HelpWords.shownBelow(line).stream()
            .map(CommandLine::getCommandName)
            .collect(Collectors.joining(" "));
    String none = below.isEmpty() ? "" : "not __fish_seen_subcommand_from " + below;
    String seen = "__fish_seen_subcommand_from " + line.getCommandName();
    CommandLine above = line.getParent();
    if (above.getParent() != null) {
      seen = "__fish_seen_subcommand_from " + above.getCommandName() + "; and " + seen;
    }
    return none.isEmpty() ? seen : seen + "; and " + none;
  }

  private static String names(OptionSpec option) {
    return List.of(option.names()).stream()
        .map(
            name -> name.startsWith("--") ? " -l " + name.substring(2) : " -s " + name.substring(1))
        .collect(Collectors.joining());
  }

  private static String values(ArgSpec arg) {
    if (arg.arity().max() == 0) {
      return " -f";
    }
    List<String> choices = HelpWords.choices(arg);
    if (!choices.isEmpty()) {
      return " -x -a " + quote(String.join(" ", choices));
    }
    return HelpWords.isFile(arg) ? " -r -F" : " -x";
  }

  private static String quote(String text) {
    return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
  }
}
