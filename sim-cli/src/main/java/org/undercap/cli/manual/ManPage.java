package org.undercap.cli.manual;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.undercap.cli.output.ProgramVersion;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** The man page of one command, in the language of {@code man}. */
public final class ManPage {
  private final CommandLine line;
  private final CommandSpec command;
  private final UsageMessageSpec usage;
  private final Help help;
  private final StringBuilder page = new StringBuilder();

  private ManPage(CommandLine line) {
    this.line = line;
    this.command = line.getCommandSpec();
    this.usage = command.usageMessage();
    this.help = new Help(command, Help.defaultColorScheme(Ansi.OFF));
  }

  /**
   * Returns the pages of a command and of all commands below it.
   *
   * @param root the command
   * @return for each the name of its page, as in {@code undercap-compare}, and the page itself
   */
  public static Map<String, String> all(CommandLine root) {
    return HelpWords.commands(root).stream()
        .collect(Collectors.toMap(ManPage::name, line -> new ManPage(line).text()));
  }

  private static String name(CommandLine line) {
    return line.getCommandSpec().qualifiedName("-");
  }

  private String text() {
    page.append(
        ".TH \"%s\" \"1\" \"\" \"Undercap %s\" \"Undercap\"\n"
            .formatted(escape(name(line).toUpperCase(Locale.ROOT)), ProgramVersion.text()));
    page.append(".nh\n.ad l\n");
    section("NAME");
    page.append(escape(name(line))).append(" \\- ");
    page.append(escape(HelpWords.summary(HelpWords.about(usage)))).append('\n');
    section("SYNOPSIS");
    verbatim(help.synopsis(0).lines().toList());
    section("DESCRIPTION");
    paragraphs(HelpWords.about(usage));
    parameters(command.positionalParameters());
    options(HelpWords.options(command));
    commands();
    exitCodes();
    examples();
    seeAlso();
    return page.toString();
  }

  private void section(String title) {
    page.append(".SH ").append(title).append('\n');
  }

  private void parameters(List<PositionalParamSpec> parameters) {
    List<PositionalParamSpec> shown = parameters.stream().filter(p -> !p.hidden()).toList();
    if (!shown.isEmpty()) {
      section("ARGUMENTS");
      shown.forEach(parameter -> entry(HelpWords.label(help, parameter), parameter));
    }
  }

  private void options(List<OptionSpec> options) {
    section("OPTIONS");
    for (OptionSpec option : options) {
      entry(String.join(", ", option.names()) + HelpWords.label(help, option), option);
    }
  }

  private void entry(String term, ArgSpec arg) {
    entry(term, HelpWords.lines(arg.description()));
  }

  private void entry(String term, List<String> lines) {
    page.append(".TP\n\\fB").append(escape(term)).append("\\fR\n");
    lines.forEach(text -> page.append(escape(text.strip())).append('\n'));
  }

  private void commands() {
    Collection<CommandLine> below = HelpWords.shownBelow(line);
    if (!below.isEmpty()) {
      section("COMMANDS");
      for (CommandLine sub : below) {
        List<String> about = HelpWords.about(sub.getCommandSpec().usageMessage());
        entry(sub.getCommandName(), about.stream().limit(1).toList());
      }
    }
  }

  private void exitCodes() {
    section("EXIT STATUS");
    usage.exitCodeList().forEach((code, meaning) -> entry(code.strip(), List.of(meaning)));
  }

  private void examples() {
    List<String> lines = HelpWords.lines(usage.footer());
    if (!lines.isEmpty()) {
      section("EXAMPLES");
      verbatim(lines.stream().map(String::stripTrailing).toList());
    }
  }

  private void seeAlso() {
    CommandLine above = line.getParent();
    String pages =
        (above == null ? HelpWords.shownBelow(line).stream() : Stream.of(above))
            .map(other -> "\\fB" + escape(name(other)) + "\\fR(1)")
            .collect(Collectors.joining(",\n"));
    section("SEE ALSO");
    page.append(pages).append('\n');
  }

  private void paragraphs(List<String> lines) {
    String between = "";
    for (String text : lines) {
      page.append(between).append(escape(text.strip())).append('\n');
      between = ".PP\n";
    }
  }

  private void verbatim(List<String> lines) {
    page.append(".nf\n");
    lines.forEach(text -> page.append(escape(text)).append('\n'));
    page.append(".fi\n");
  }

  /** Keeps signs that mean something to man, and minus signs that can be copied into a shell. */
  private static String escape(String text) {
    String safe = text.replace("\\", "\\e").replace("-", "\\-");
    return safe.startsWith(".") || safe.startsWith("'") ? "\\&" + safe : safe;
  }
}
