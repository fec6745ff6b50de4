package org.undercap.cli.command;

import java.util.concurrent.Callable;
import org.undercap.cli.output.ExitCodes;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/**
 * The command {@code undercap}. By itself it only shows the help; the work is done by the commands
 * listed in its annotation. Help, version, exit codes and the options below hold for all of them.
 */
@Command(
    name = "undercap",
    scope = ScopeType.INHERIT,
    mixinStandardHelpOptions = true,
    versionProvider = VersionProvider.class,
    description = "Simulates varroa mites in a honey bee colony and compares treatment plans.",
    synopsisSubcommandLabel = "COMMAND",
    sortOptions = false,
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      " 0:done",
      " 1:something failed unexpectedly",
      " 2:the command line is wrong",
      " 3:a file that was read is not valid",
      " 4:a check that was asked for says no"
    },
    subcommands = {
      CompareCommand.class,
      SimulateCommand.class,
      TimingCommand.class,
      PlanCommand.class,
      ApiaryCommand.class,
      FlipChartCommand.class,
      StartMapCommand.class,
      EstimateCommand.class,
      EfficacyCommand.class,
      CheckCommand.class,
      EvidenceCommand.class,
      LessonCommand.class,
      MethodsCommand.class,
      ClimatesCommand.class,
      ThresholdsCommand.class,
      ParametersCommand.class,
      SourcesCommand.class,
      SchemaCommand.class,
      HelpCommand.class,
      GenerateCompletion.class
    })
public final class RootCommand implements Callable<Integer> {
  /** The name of the option that shows the technical details of an unexpected error. */
  public static final String DEBUG = "--debug";

  /** The name of the option that switches colours off. */
  public static final String NO_COLOR = "--no-color";

  @Spec private CommandSpec spec;

  @Option(
      names = DEBUG,
      scope = ScopeType.INHERIT,
      description = "Show the technical details of an unexpected error.")
  private boolean debug;

  @Option(
      names = NO_COLOR,
      scope = ScopeType.INHERIT,
      description = "Print without colours, also on a terminal.")
  @SuppressWarnings("unused") // Declared for the help; the program looks for it before it parses.
  private boolean noColor;

  /** Creates the command. */
  public RootCommand() {}

  /**
   * Tells whether the user wants the technical details of an unexpected error.
   *
   * @return true if so
   */
  public boolean debug() {
    return debug;
  }

  @Override
  public Integer call() {
    spec.commandLine().usage(spec.commandLine().getOut());
    return ExitCodes.DONE;
  }
}
