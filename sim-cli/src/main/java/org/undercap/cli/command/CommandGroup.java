package org.undercap.cli.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.undercap.cli.manual.HelpWords;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi.Text;
import picocli.CommandLine.Help.Column;
import picocli.CommandLine.Help.Column.Overflow;
import picocli.CommandLine.Help.TextTable;

/** The commands by the people who use them, as the help lists them. */
enum CommandGroup {
  COLONY("For your colony"),
  TEACHING("For teaching"),
  RESEARCH("For research"),
  FACTS("What the program knows"),
  HOUSEKEEPING("Housekeeping");

  private static final int NAMES = 15;
  private static final int INDENT = 2;
  private static final Map<String, Class<?>> COMMANDS = new LinkedHashMap<>();
  private static final Map<String, CommandGroup> GROUPS = new LinkedHashMap<>();

  static {
    COLONY.add("new", NewCommand.class);
    COLONY.add("compare", CompareCommand.class);
    COLONY.add("check", CheckCommand.class);
    COLONY.add("estimate", EstimateCommand.class);
    COLONY.add("efficacy", EfficacyCommand.class);
    COLONY.add("timing", TimingCommand.class);
    COLONY.add("plan", PlanCommand.class);
    COLONY.add("apiary", ApiaryCommand.class);
    TEACHING.add("lesson", LessonCommand.class);
    TEACHING.add("flip-chart", FlipChartCommand.class);
    TEACHING.add("start-map", StartMapCommand.class);
    RESEARCH.add("simulate", SimulateCommand.class);
    RESEARCH.add("batch", BatchCommand.class);
    RESEARCH.add("growth", GrowthCommand.class);
    RESEARCH.add("fit", FitCommand.class);
    RESEARCH.add("sensitivity", SensitivityCommand.class);
    RESEARCH.add("resistance", ResistanceCommand.class);
    RESEARCH.add("evidence", EvidenceCommand.class);
    RESEARCH.add("describe", DescribeCommand.class);
    RESEARCH.add("rerun", RerunCommand.class);
    FACTS.add("methods", MethodsCommand.class);
    FACTS.add("climates", ClimatesCommand.class);
    FACTS.add("thresholds", ThresholdsCommand.class);
    FACTS.add("parameters", ParametersCommand.class);
    FACTS.add("sources", SourcesCommand.class);
    FACTS.add("columns", ColumnsCommand.class);
    FACTS.add("schema", SchemaCommand.class);
    HOUSEKEEPING.add("gallery", GalleryCommand.class);
    HOUSEKEEPING.add("cite", CiteCommand.class);
    HOUSEKEEPING.add("help", HelpCommand.class);
    HOUSEKEEPING.add("completion", CompletionCommand.class);
  }

  private final String title;

  CommandGroup(String title) {
    this.title = title;
  }

  private void add(String name, Class<?> command) {
    COMMANDS.put(name, command);
    GROUPS.put(name, this);
  }

  /** All commands by their names, group by group. */
  static Map<String, Class<?>> commands() {
    return COMMANDS;
  }

  /** The list of commands as it stands in the help of the program, a heading for each group. */
  static String list(Help help) {
    StringBuilder list = new StringBuilder();
    for (CommandGroup group : values()) {
      List<Help> commands =
          help.subcommands().entrySet().stream()
              .filter(entry -> GROUPS.get(entry.getKey()) == group)
              .map(Map.Entry::getValue)
              .toList();
      if (!commands.isEmpty()) {
        list.append("\n").append(group.title).append(":\n").append(rows(help, commands));
      }
    }
    return list.toString();
  }

  private static String rows(Help help, List<Help> commands) {
    int width = help.commandSpec().usageMessage().width();
    TextTable table =
        TextTable.forColumns(
            help.colorScheme(),
            new Column(NAMES, INDENT, Overflow.SPAN),
            new Column(width - NAMES, INDENT / 2, Overflow.WRAP));
    for (Help command : commands) {
      Text name = help.colorScheme().commandText(command.commandSpec().name());
      String about = HelpWords.summary(command.commandSpec().usageMessage()) + ".";
      table.addRowValues(name, help.colorScheme().text(about));
    }
    return table.toString();
  }
}
