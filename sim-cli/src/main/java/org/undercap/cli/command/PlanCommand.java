package org.undercap.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercap.advice.Refusal;
import org.undercap.cli.option.EnsembleOptions;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.option.OutputOptions;
import org.undercap.cli.option.ScenarioOptions;
import org.undercap.cli.option.ToDate;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.Progress;
import org.undercap.cli.output.UsageException;
import org.undercap.cli.report.PlanningJson;
import org.undercap.cli.report.SearchFiles;
import org.undercap.cli.report.SearchPage;
import org.undercap.planning.PlanSearch;
import org.undercap.planning.SearchSettings;
import org.undercap.scenario.Scenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Looks for good schedules. */
@Command(
    name = "plan",
    description =
        "Looks for good schedules of up to three treatments, with the least harm to winter bees.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap plan scenarios/hollerbach-terraces.yaml",
      "  undercap plan my-colony.yaml --from 2026-08-20 --schedules 500 --out results"
    })
final class PlanCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ScenarioOptions scenarios;

  @Option(
      names = "--schedules",
      paramLabel = "N",
      description = "Most schedules to try, at least 30 (default: ${DEFAULT-VALUE}).")
  private int schedules = SearchSettings.USUAL_SCHEDULES;

  @Option(
      names = "--from",
      converter = ToDate.class,
      paramLabel = "DATE",
      description =
          "First day on which you can treat (default: first day of the scenario); the others"
              + " follow week by week.")
  private LocalDate from;

  @Mixin private EnsembleOptions ensemble = new EnsembleOptions(SearchSettings.USUAL_MEMBERS);
  @Mixin private OutputOptions output;
  @Mixin private JsonOption json;

  @Override
  public Integer call() {
    Scenario scenario = scenarios.read();
    PrintWriter out = spec.commandLine().getOut();
    Optional<Refusal> refusal = Refusal.of(scenario);
    if (refusal.isPresent()) {
      return Refusals.print(scenario, refusal.get(), json.wanted(), out);
    }
    Optional<OutputFolder> folder =
        output
            .folder()
            .map(
                path ->
                    path.with(
                        CommandWords.manifest(spec, scenario, Optional.of(ensemble.settings()))));
    folder.ifPresent(SearchFiles::check);
    PlanSearch.Result result = search(scenario);
    if (json.wanted()) {
      StringWriter document = new StringWriter();
      PlanningJson.search(document, result);
      out.print(document);
    } else {
      out.print(new SearchPage(result).render());
    }
    out.flush();
    PrintWriter err = spec.commandLine().getErr();
    folder.ifPresent(to -> SearchFiles.write(result, to, err));
    return ExitCodes.DONE;
  }

  private PlanSearch.Result search(Scenario scenario) {
    SearchSettings settings = settings();
    if (from != null && (from.isBefore(scenario.start()) || from.isAfter(scenario.end()))) {
      throw new UsageException(
          "--from: "
              + from
              + " must lie in the run, "
              + scenario.start()
              + " to "
              + scenario.end());
    }
    int most = settings.schedules() + settings.finalists();
    try (Progress progress = RootCommand.progress(spec, "schedules", most)) {
      return PlanSearch.of(
          scenario, Mites.of(scenario, settings.ensemble().seed()), settings, progress::add);
    }
  }

  private SearchSettings settings() {
    try {
      SearchSettings usual = SearchSettings.usual(schedules, ensemble.settings());
      return from == null ? usual : usual.withFrom(from);
    } catch (IllegalArgumentException e) {
      throw new UsageException(e.getMessage());
    }
  }
}
