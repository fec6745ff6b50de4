package org.undercap.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercap.cli.report.InputFiles;
import org.undercap.cli.report.Manifest;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.parameter.ParameterSet;
import org.undercap.scenario.Scenario;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/**
 * The command line as a manifest tells it: with all that results depend on, without what they do
 * not depend on, and with the plain names of files.
 */
final class CommandWords {
  /** Names a single file to be written. */
  static final String TRACE = "--trace";

  /** Names a single file to be written. */
  static final String LEDGER = "--ledger";

  /** Results do not depend on these, or they say where results go. */
  static final Set<String> APART =
      Set.of(
          "--out",
          "--if-exists",
          "--threads",
          "--quiet",
          RootCommand.DEBUG,
          RootCommand.NO_COLOR,
          "--json",
          TRACE,
          LEDGER,
          "--explain");

  private CommandWords() {}

  /** The manifest of a command that reads a scenario. */
  static Manifest manifest(
      CommandSpec spec, Scenario scenario, Optional<EnsembleSettings> draws, Path... onlyInput) {
    List<Path> inputs = new ArrayList<>(List.of(onlyInput));
    inputs.addAll(onlyInput.length > 0 ? optionFiles(spec) : inputs(spec));
    return new Manifest(
        onlyInput.length > 0 ? of(spec, List.of(onlyInput)) : of(spec),
        Optional.of(scenario.name()),
        draws,
        scenario.parameters(),
        InputFiles.ofAll(inputs));
  }

  /** The manifest of a single file that an option names. */
  static Manifest manifest(CommandSpec spec, Scenario scenario, String option, String file) {
    Manifest whole = manifest(spec, scenario, Optional.empty());
    List<String> words = new ArrayList<>(whole.command());
    words.add(option + "=" + file);
    return new Manifest(words, whole.scenario(), whole.draws(), whole.parameters(), whole.inputs());
  }

  /** The manifest of a command that runs no one scenario. */
  static Manifest manifest(CommandSpec spec, List<Path> inputs) {
    return new Manifest(
        of(spec),
        Optional.empty(),
        Optional.empty(),
        ParameterSet.shipped(),
        InputFiles.ofAll(inputs));
  }

  /** The same, of the files that the words name. */
  static Manifest manifest(CommandSpec spec) {
    return manifest(spec, inputs(spec));
  }

  /** The words that were given. */
  static List<String> of(CommandSpec spec) {
    return of(spec, List.of());
  }

  /** The words that were given, with other files in place of those that stand by themselves. */
  private static List<String> of(CommandSpec spec, List<Path> instead) {
    ParseResult parsed = spec.commandLine().getParseResult();
    List<String> words = new ArrayList<>(List.of(spec.name()));
    instead.forEach(file -> words.add(plain(file.toString())));
    if (instead.isEmpty()) {
      for (PositionalParamSpec positional : parsed.matchedPositionals()) {
        positional.originalStringValues().forEach(word -> words.add(word(positional, word)));
      }
    }
    for (OptionSpec option : parsed.matchedOptions()) {
      if (!APART.contains(option.longestName())) {
        boolean flag = option.arity().max() == 0;
        option
            .originalStringValues()
            .forEach(
                word -> words.add(option.longestName() + (flag ? "" : "=" + word(option, word))));
      }
    }
    return words;
  }

  /** The files that were given to be read. */
  private static List<Path> inputs(CommandSpec spec) {
    List<Path> files = new ArrayList<>();
    for (PositionalParamSpec positional :
        spec.commandLine().getParseResult().matchedPositionals()) {
      addFiles(files, positional);
    }
    files.addAll(optionFiles(spec));
    return files;
  }

  private static List<Path> optionFiles(CommandSpec spec) {
    List<Path> files = new ArrayList<>();
    for (OptionSpec option : spec.commandLine().getParseResult().matchedOptions()) {
      if (!APART.contains(option.longestName())) {
        addFiles(files, option);
      }
    }
    return files;
  }

  private static void addFiles(List<Path> files, ArgSpec arg) {
    if (isFile(arg)) {
      arg.originalStringValues().forEach(word -> files.add(Path.of(word)));
    }
  }

  private static boolean isFile(ArgSpec arg) {
    return arg.typeInfo().getType() == Path.class
        || List.of(arg.auxiliaryTypes()).contains(Path.class);
  }

  private static String word(ArgSpec arg, String word) {
    return isFile(arg) ? plain(word) : word;
  }

  private static String plain(String file) {
    return String.valueOf(Path.of(file).getFileName());
  }
}
