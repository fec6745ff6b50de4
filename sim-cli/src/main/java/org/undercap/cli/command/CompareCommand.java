package org.undercap.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.option.EnsembleOptions;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.option.OutputOptions;
import org.undercap.cli.option.ScenarioOptions;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.report.ComparisonFiles;
import org.undercap.cli.report.ComparisonJson;
import org.undercap.cli.report.ComparisonPage;
import org.undercap.comparison.Comparison;
import org.undercap.ensemble.MiteBelief;
import org.undercap.scenario.Scenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Compares all plans of a scenario. */
@Command(
    name = "compare",
    description = "Compares all plans of a scenario: table, charts, data and cautions.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap compare scenarios/saltmere-garth.yaml",
      "  undercap compare my-colony.yaml --out results --svg",
      "  undercap compare my-colony.yaml --json > comparison.json"
    })
final class CompareCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ScenarioOptions scenarios;
  @Mixin private EnsembleOptions ensemble;
  @Mixin private OutputOptions output;
  @Mixin private JsonOption json;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    Scenario scenario = scenarios.read();
    OutputFolder folder = output.folderOr(Path.of(scenarios.stem() + "-comparison"));
    double mites = Mites.of(scenario);
    Comparison comparison =
        Comparison.of(scenario, mites, MiteBelief.known(mites), ensemble.settings(), members -> {});
    if (json.wanted()) {
      StringWriter document = new StringWriter();
      ComparisonJson.write(document, comparison, mites);
      out.print(document);
      out.flush();
      if (!output.named()) {
        return ExitCodes.DONE;
      }
    } else {
      out.print(new ComparisonPage(comparison, mites).render());
      out.flush();
    }
    new ComparisonFiles(comparison, mites, ChartStyle.A4, output.svg()).write(folder, err);
    err.print(
        "next: look at "
            + folder.path().resolve("plans.png")
            + ", then count again after the treatment\n");
    err.flush();
    return ExitCodes.DONE;
  }
}
