package org.undercap.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercap.advice.Refusal;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.option.EnsembleOptions;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.option.OutputOptions;
import org.undercap.cli.option.ScenarioOptions;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.UsageException;
import org.undercap.cli.report.ComparisonFiles;
import org.undercap.cli.report.ComparisonIndex;
import org.undercap.cli.report.ComparisonJson;
import org.undercap.cli.report.ComparisonPage;
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
    description = "Compares all plans of a scenario: tables, charts, data and cautions.",
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

  @Mixin private EnsembleOptions ensemble;
  @Mixin private OutputOptions output;
  @Mixin private JsonOption json;

  @Override
  public Integer call() {
    List<Scenario> scenarios = ScenarioOptions.readAll(files);
    PrintWriter err = spec.commandLine().getErr();
    if (files.size() == 1) {
      Optional<Refusal> refusal = Refusal.of(scenarios.get(0));
      if (refusal.isPresent()) {
        return refuse(refusal.get());
      }
      OutputFolder folder =
          output.folderOr(Path.of(ScenarioOptions.stem(files.get(0)) + "-comparison"));
      Comparison comparison = compare(scenarios.get(0));
      print(comparison);
      if (!json.wanted() || output.named()) {
        write(comparison, folder, err);
        err.print(
            "next: look at "
                + folder.path().resolve("plans.png")
                + ", then count again after the treatment\n");
      }
    } else {
      compareAll(scenarios, err);
    }
    err.flush();
    return ExitCodes.DONE;
  }

  private int refuse(Refusal refusal) {
    spec.commandLine().getOut().print(refusal.text() + "\n");
    spec.commandLine().getOut().flush();
    return ExitCodes.CHECK_SAYS_NO;
  }

  private void compareAll(List<Scenario> scenarios, PrintWriter err) {
    if (json.wanted()) {
      throw new UsageException("--json prints one document; give one scenario");
    }
    OutputFolder all =
        output
            .folder()
            .orElseThrow(
                () -> new UsageException("several scenarios need a folder: give --out=DIR too"));
    Map<String, Comparison> byFolder = new LinkedHashMap<>();
    for (int i = 0; i < scenarios.size(); i++) {
      String stem = ScenarioOptions.stem(files.get(i));
      if (byFolder.containsKey(stem)) {
        throw new UsageException(
            files.get(i) + ": another scenario has the name " + stem + " too; rename one");
      }
      if (Refusal.of(scenarios.get(i)).isPresent()) {
        continue;
      }
      Comparison comparison = compare(scenarios.get(i));
      write(comparison, new OutputFolder(all.path().resolve(stem), all.ifExists()), err);
      byFolder.put(stem, comparison);
    }
    ComparisonIndex.write(byFolder, all, err);
    spec.commandLine().getOut().print(ComparisonIndex.text(byFolder));
    spec.commandLine().getOut().flush();
  }

  private Comparison compare(Scenario scenario) {
    StartMites mites = Mites.of(scenario);
    return Comparison.of(
        scenario, mites.median(), mites.belief(), ensemble.settings(), members -> {});
  }

  private void print(Comparison comparison) {
    PrintWriter out = spec.commandLine().getOut();
    if (json.wanted()) {
      StringWriter document = new StringWriter();
      ComparisonJson.write(document, comparison);
      out.print(document);
    } else {
      out.print(new ComparisonPage(comparison).render());
    }
    out.flush();
  }

  private void write(Comparison comparison, OutputFolder folder, PrintWriter err) {
    new ComparisonFiles(comparison, ChartStyle.A4, output.svg()).write(folder, err);
  }
}
