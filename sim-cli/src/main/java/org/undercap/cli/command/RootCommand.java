package org.undercap.cli.command;

import java.util.concurrent.Callable;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.Progress;
import org.undercap.cli.output.Terminal;
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
      BatchCommand.class,
      ResistanceCommand.class,
      EvidenceCommand.class,
      GrowthCommand.class,
      FitCommand.class,
      SensitivityCommand.class,
      LessonCommand.class,
      MethodsCommand.class,
      ClimatesCommand.class,
      ThresholdsCommand.class,
      ParametersCommand.class,
      SourcesCommand.class,
      SchemaCommand.class,
      ColumnsCommand.class,
      RerunCommand.class,
      CiteCommand.class,
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

  @Option(
      names = "--quiet",
      scope = ScopeType.INHERIT,
      description = "Show no progress, also on a terminal.")
  private boolean quiet;

  /** Creates the command. */
  public RootCommand() {}

  /**
   * Begins to show the progress of a command, if a person is watching who wants it.
   *
   * @param command the command that runs
   * @param what what is counted, as in {@code runs}
   * @param total how many there will be
   * @return takes what has been done; to be closed
   */
  static Progress progress(CommandSpec command, String what, long total) {
    RootCommand root = (RootCommand) command.root().userObject();
    return new Progress(
        command.commandLine().getErr(), Terminal.onStandardError() && !root.quiet, what, total);
  }

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
