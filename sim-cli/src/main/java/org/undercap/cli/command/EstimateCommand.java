package org.undercap.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercap.advice.Refusal;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.option.ScenarioOptions;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.cli.report.EstimateJson;
import org.undercap.cli.report.EstimatePage;
import org.undercap.monitoring.MiteEstimate;
import org.undercap.monitoring.MitePosterior;
import org.undercap.scenario.Scenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Tells how many mites a colony has, from its counts. */
@Command(
    name = "estimate",
    description = "Tells how many mites the colony has, from its counts, and how sure that is.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap estimate scenarios/dry-fork-outfit.yaml",
      "  undercap estimate my-colony.yaml --json > estimate.json"
    })
final class EstimateCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ScenarioOptions scenarios;
  @Mixin private JsonOption json;

  @Override
  public Integer call() {
    Scenario scenario = scenarios.read();
    PrintWriter out = spec.commandLine().getOut();
    Optional<Refusal> refusal = Refusal.of(scenario);
    if (refusal.isPresent()) {
      return Refusals.print(scenario, refusal.get(), json.wanted(), out);
    }
    Warnings.print(spec.commandLine().getErr(), scenarios.file(), scenario);
    MiteEstimate estimate = posterior(scenario).estimate();
    if (json.wanted()) {
      StringWriter document = new StringWriter();
      EstimateJson.write(document, scenario, estimate);
      out.print(document);
    } else {
      out.print(new EstimatePage(scenario, estimate).render());
      PrintWriter err = spec.commandLine().getErr();
      err.print("next: undercap compare " + scenarios.file() + "\n");
      err.flush();
    }
    out.flush();
    return ExitCodes.DONE;
  }

  private MitePosterior posterior(Scenario scenario) {
    return Mites.of(scenario)
        .posterior()
        .orElseThrow(
            () ->
                new InvalidFileException(
                    scenarios.file()
                        + ": error: mites.in-colony: the number of mites is given, so there is"
                        + " nothing to estimate\n  hint: write what was counted, as in counts:"
                        + " [{wash: {date: "
                        + scenario.start()
                        + ", bees: 300, mites: 9, method: alcohol}}]\n1 problem"));
  }
}
