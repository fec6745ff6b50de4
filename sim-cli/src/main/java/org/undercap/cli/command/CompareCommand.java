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
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.TextPage;
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
    description = {
      "Compares all plans of a scenario: tables, charts, data and cautions.",
      "Without --out and --json the files go to the folder SCENARIO-comparison, which is made in the working folder; an older comparison in it is replaced."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap compare scenarios/saltmere-garth.yaml",
      "  undercap compare my-colony.yaml --out results --svg",
      "  undercap compare my-colony.yaml --json > comparison.json",
      "  undercap compare scenarios/*.yaml --out reports --if-exists=overwrite"
    })
final class CompareCommand implements Callable<Integer> {
  private static final int REFUSAL_VERSION = 1;

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
      return compareOne(scenarios.get(0), err);
    }
    compareAll(scenarios, err);
    return ExitCodes.DONE;
  }

  private int compareOne(Scenario scenario, PrintWriter err) {
    Optional<Refusal> refusal = Refusal.of(scenario);
    if (refusal.isPresent()) {
      return refuse(refusal.get());
    }
    Path usual = Path.of(ScenarioOptions.stem(files.get(0)) + "-comparison");
    Optional<OutputFolder> wanted =
        json.wanted() ? output.folder() : Optional.of(output.folderOr(usual));
    wanted.ifPresent(folder -> ComparisonFiles.check(folder, output.svg()));
    Comparison comparison = compare(scenario);
    print(comparison);
    wanted.ifPresent(
        folder -> {
          write(comparison, folder, err);
          err.print(
              "next: look at "
                  + folder.path().resolve("plans.png")
                  + ", then count again after the treatment\n");
          err.flush();
        });
    return ExitCodes.DONE;
  }

  private int refuse(Refusal refusal) {
    PrintWriter out = spec.commandLine().getOut();
    if (json.wanted()) {
      StringWriter document = new StringWriter();
      JsonOutput.write(
          document,
          "refusal",
          REFUSAL_VERSION,
          entry -> entry.text("text", refusal.text()).texts("untested", refusal.missing()));
      out.print(document);
    } else {
      out.print(new TextPage().paragraph(refusal.text()).render());
    }
    out.flush();
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
    Map<String, Scenario> scenarioOf = byStem(scenarios);
    ComparisonIndex.check(all);
    scenarioOf.keySet().forEach(stem -> ComparisonFiles.check(in(all, stem), output.svg()));
    Map<String, Comparison> byFolder = new LinkedHashMap<>();
    Map<String, Refusal> refused = new LinkedHashMap<>();
    scenarioOf.forEach(
        (stem, scenario) -> {
          Optional<Refusal> refusal = Refusal.of(scenario);
          if (refusal.isPresent()) {
            refused.put(stem, refusal.get());
            return;
          }
          Comparison comparison = compare(scenario);
          write(comparison, in(all, stem), err);
          byFolder.put(stem, comparison);
        });
    ComparisonIndex.write(byFolder, refused, all, err);
    spec.commandLine().getOut().print(ComparisonIndex.text(byFolder, refused));
    spec.commandLine().getOut().flush();
  }

  /** The scenarios by the names of their files, which name their folders too. */
  private Map<String, Scenario> byStem(List<Scenario> scenarios) {
    Map<String, Scenario> byStem = new LinkedHashMap<>();
    for (int i = 0; i < scenarios.size(); i++) {
      String stem = ScenarioOptions.stem(files.get(i));
      if (byStem.putIfAbsent(stem, scenarios.get(i)) != null) {
        throw new UsageException(
            files.get(i) + ": another scenario has the name " + stem + " too; rename one");
      }
    }
    return byStem;
  }

  private static OutputFolder in(OutputFolder all, String stem) {
    return new OutputFolder(all.path().resolve(stem), all.ifExists());
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
