package org.undercap.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercap.advice.Advice;
import org.undercap.advice.Refusal;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.chart.ChartWriter;
import org.undercap.cli.chart.ChartsUnavailableException;
import org.undercap.cli.option.EnsembleOptions;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.option.OutputOptions;
import org.undercap.cli.option.ParameterOption;
import org.undercap.cli.option.ScenarioOptions;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.Progress;
import org.undercap.cli.output.UsageException;
import org.undercap.cli.report.Answer;
import org.undercap.cli.report.AnswerFiles;
import org.undercap.cli.report.AnswerIndex;
import org.undercap.cli.report.AnswerJson;
import org.undercap.cli.report.AnswerPage;
import org.undercap.cli.report.AnswerWords;
import org.undercap.cli.report.InputFiles;
import org.undercap.cli.report.Manifest;
import org.undercap.cli.report.RefusalFiles;
import org.undercap.comparison.Comparison;
import org.undercap.ensemble.StartMites;
import org.undercap.scenario.Scenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Compares all plans of a scenario. */
@Command(
    name = "compare",
    description = {
      "Compares all plans of a scenario and says which to take: a page to print, a calendar, a sheet for records, charts and data.",
      "Without --out and --json the files go to the folder SCENARIO-comparison, which is made in the working folder; an older comparison in it is replaced.",
      "Exit code 4 if no plan of a scenario can be advised: something rules out each of them, or there is no advice for such a colony."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap compare scenarios/saltmere-garth.yaml",
      "  undercap compare my-colony.yaml --out results --svg",
      "  undercap compare my-colony.yaml --json > comparison.json",
      "  undercap compare scenarios/*.yaml --out reports --if-exists=overwrite"
    })
final class CompareCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "1..*",
      paramLabel = "SCENARIO",
      description =
          "Scenario files; with several, each gets a folder of its own in --out, and a page lists them.")
  private List<Path> files;

  @Mixin private ParameterOption parameters;
  @Mixin private EnsembleOptions ensemble;
  @Mixin private OutputOptions output;
  @Mixin private JsonOption json;

  @Override
  public Integer call() {
    if (writesFiles()) {
      ChartWriter.loadAhead();
    }
    List<Scenario> scenarios = ScenarioOptions.readAll(files, parameters);
    for (int i = 0; i < files.size(); i++) {
      Warnings.print(spec.commandLine().getErr(), files.get(i), scenarios.get(i));
    }
    int exitCode = ExitCodes.DONE;
    if (files.size() > 1) {
      exitCode = compareAll(scenarios);
    } else {
      Scenario scenario = scenarios.get(0);
      if (json.wanted()) {
        output.folder(); // refuses options about files where none are written
      }
      OutputFolder folder =
          output
              .folderOr(Path.of(ScenarioOptions.stem(files.get(0)) + "-comparison"))
              .with(manifest(scenario, files.get(0)));
      Optional<Refusal> refusal = Refusal.of(scenario);
      if (refusal.isPresent()) {
        refuse(scenario, refusal.get(), folder);
        exitCode = ExitCodes.CHECK_SAYS_NO;
      } else {
        exitCode = answer(scenario, folder);
      }
    }
    spec.commandLine().getErr().flush();
    return exitCode;
  }

  private int answer(Scenario scenario, OutputFolder folder) {
    PrintWriter err = spec.commandLine().getErr();
    if (writesFiles()) {
      AnswerFiles.check(folder, output.svg());
    }
    Answer answer = answer(scenario);
    if (writesFiles()) {
      write(answer, files.get(0), folder, () -> print(answer));
      err.print(
          "next: open "
              + folder.path().resolve(AnswerFiles.PAGE)
              + " and print it; "
              + (answer.stuck() ? "change a plan, then compare again\n" : "count mites again\n"));
    } else {
      print(answer);
    }
    return without(answer.stuck() ? stems() : List.of());
  }

  /** Says for which scenarios no plan can be used; returns the exit code. */
  private int without(List<String> names) {
    if (names.isEmpty()) {
      return ExitCodes.DONE;
    }
    spec.commandLine()
        .getErr()
        .print("no plan can be advised for: " + String.join(", ", names) + "\n");
    return ExitCodes.CHECK_SAYS_NO;
  }

  private void print(Answer answer) {
    PrintWriter out = spec.commandLine().getOut();
    if (json.wanted()) {
      StringWriter document = new StringWriter();
      AnswerJson.write(document, answer);
      out.print(document);
    } else {
      out.print(new AnswerPage(answer).render());
    }
    out.flush();
  }

  private boolean writesFiles() {
    return !json.wanted() || output.named();
  }

  private void refuse(Scenario scenario, Refusal refusal, OutputFolder folder) {
    Refusals.print(scenario, refusal, json.wanted(), spec.commandLine().getOut());
    if (writesFiles()) {
      RefusalFiles.write(scenario, refusal, folder, spec.commandLine().getErr());
    }
  }

  private int compareAll(List<Scenario> scenarios) {
    if (json.wanted()) {
      throw new UsageException("--json prints one document; give one scenario");
    }
    OutputFolder all =
        output
            .folder()
            .orElseThrow(
                () -> new UsageException("several scenarios need a folder: give --out=DIR too"));
    List<String> stems = stems();
    PrintWriter err = spec.commandLine().getErr();
    AnswerIndex.check(all);
    for (int i = 0; i < scenarios.size(); i++) {
      OutputFolder folder = all.in(stems.get(i)).with(manifest(scenarios.get(i), files.get(i)));
      AnswerFiles.check(folder, output.svg());
    }
    AnswerIndex index = new AnswerIndex();
    List<String> without = new ArrayList<>();
    for (int i = 0; i < scenarios.size(); i++) {
      Scenario scenario = scenarios.get(i);
      OutputFolder folder = all.in(stems.get(i)).with(manifest(scenario, files.get(i)));
      Optional<Refusal> refusal = Refusal.of(scenario);
      if (refusal.isPresent()) {
        RefusalFiles.write(scenario, refusal.get(), folder, err);
        index.add(stems.get(i), scenario.name(), refusal.get().text());
        without.add(stems.get(i));
      } else {
        Answer answer = answer(scenario);
        write(answer, files.get(i), folder, () -> {});
        index.add(stems.get(i), scenario.name(), AnswerWords.headline(answer));
        if (answer.stuck()) {
          without.add(stems.get(i));
        }
      }
    }
    index.write(all, err);
    spec.commandLine().getOut().print(index.text());
    spec.commandLine().getOut().flush();
    return without(without);
  }

  private Manifest manifest(Scenario scenario, Path file) {
    return CommandWords.manifest(spec, scenario, Optional.of(ensemble.settings()), file);
  }

  /** Names of the folders, which must differ. */
  private List<String> stems() {
    List<String> stems = new ArrayList<>();
    for (Path file : files) {
      String stem = ScenarioOptions.stem(file);
      if (stems.contains(stem)) {
        throw new UsageException(
            file + ": another scenario has the name " + stem + " too; rename one");
      }
      stems.add(stem);
    }
    return stems;
  }

  private Answer answer(Scenario scenario) {
    StartMites mites = Mites.of(scenario, ensemble.settings().seed());
    Comparison comparison;
    try (Progress progress =
        RootCommand.progress(
            spec, "members of " + scenario.name(), ensemble.settings().members())) {
      comparison =
          Comparison.of(
              scenario, mites.median(), mites.belief(), ensemble.settings(), progress::add);
    }
    return Answer.of(Advice.of(comparison, mites.belief()), mites);
  }

  private void write(Answer answer, Path file, OutputFolder folder, Runnable meanwhile) {
    AnswerFiles files;
    try {
      files =
          new AnswerFiles(
              answer, InputFiles.of(file, parameters.file()), ChartStyle.A4, output.svg());
    } catch (ChartsUnavailableException e) {
      meanwhile.run(); // The answer itself needs no charts.
      throw e;
    }
    files.write(folder, spec.commandLine().getErr(), meanwhile);
  }
}
