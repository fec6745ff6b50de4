package org.undercap.cli.command;

import java.util.Set;
import java.util.concurrent.Callable;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.Progress;
import org.undercap.cli.output.Terminal;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/**
 * The command {@code undercap}. By itself it only tells what to type first; the work is done by the
 * commands that {@link #addCommands} adds. Help, version, exit codes and the options below hold for
 * all of them.
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
      " 4:a check that was asked for says no, or no plan can be advised"
    })
public final class RootCommand implements Callable<Integer> {
  /** The name of the option that shows the technical details of an unexpected error. */
  public static final String DEBUG = "--debug";

  /** The name of the option that switches colours off. */
  public static final String NO_COLOR = "--no-color";

  private static final Set<String> VERSION = Set.of("-V", "--version");

  private static final Set<String> NEED_ALL = Set.of("help", "completion");

  private static final String FIRST_STEPS =
      """
      Simulates varroa mites in a honey bee colony and compares treatment plans.

      For your own colony, type
        undercap new my-colony.yaml        asks what you saw, in frames, pounds and cups
        undercap compare my-colony.yaml    says which plan to take, and writes a page to print

      All commands: undercap --help        Pages to read: undercap help topics
      """;

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
   * Adds the commands that the words need. To make one takes time, so where the words begin with
   * the name of a command only that one is made; help and wrong words need them all.
   *
   * @param line the command line of a root command
   * @param words the words after {@code undercap}
   */
  public static void addCommands(CommandLine line, String... words) {
    String first = words.length == 0 ? "" : words[0];
    if (words.length == 1 && VERSION.contains(first)) {
      return;
    }
    boolean one = CommandGroup.commands().containsKey(first) && !NEED_ALL.contains(first);
    CommandGroup.commands()
        .forEach(
            (name, command) -> {
              if (!one || name.equals(first)) {
                line.addSubcommand(command);
              }
            });
    UsageMessageSpec usage = line.getCommandSpec().usageMessage();
    usage.commandListHeading("");
    usage.sectionMap().put(UsageMessageSpec.SECTION_KEY_COMMAND_LIST, CommandGroup::list);
    usage.footer(
        "%nThe first to type: undercap new my-colony.yaml",
        "Pages on scenario files, units, counts, treatments and more: undercap help topics");
  }

  /** The names of all commands. */
  static Set<String> names() {
    return CommandGroup.commands().keySet();
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
    spec.commandLine().getOut().print(FIRST_STEPS);
    return ExitCodes.DONE;
  }
}
