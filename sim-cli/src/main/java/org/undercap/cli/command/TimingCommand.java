package org.undercap.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercap.advice.Refusal;
import org.undercap.cli.chart.ChartStyle;
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
import org.undercap.cli.report.TimingFiles;
import org.undercap.cli.report.TimingPage;
import org.undercap.ensemble.StartMites;
import org.undercap.planning.StartDates;
import org.undercap.planning.Timing;
import org.undercap.planning.TrialScope;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Method;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tries start dates of treatments. */
@Command(
    name = "timing",
    description = "Tells what waiting costs: begins treatments on one date after another.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap timing scenarios/wairepo-flat.yaml --method thymol-wafer,formic-pads",
      "  undercap timing my-colony.yaml --method thymol-gel --from 2026-08-01 --until 2026-10-01",
      "  undercap timing my-colony.yaml --every 3 --out results"
    })
final class TimingCommand implements Callable<Integer> {
  private static final int USUAL_MEMBERS = 200;

  @Spec private CommandSpec spec;
  @Mixin private ScenarioOptions scenarios;

  @Option(
      names = "--method",
      split = ",",
      paramLabel = "ID",
      description =
          "Treatments to try, separated by commas (default: those in the plans of the scenario).")
  private List<String> methods = List.of();

  @Option(
      names = "--from",
      converter = ToDate.class,
      paramLabel = "DATE",
      description = "First start date (default: first day of the scenario).")
  private LocalDate from;

  @Option(
      names = "--until",
      converter = ToDate.class,
      paramLabel = "DATE",
      description =
          "Last start date (default: when the last winter bees emerge, or eight weeks after the first day).")
  private LocalDate until;

  @Option(
      names = "--every",
      paramLabel = "DAYS",
      description = "Days from one start date to the next (default: ${DEFAULT-VALUE}).")
  private int every = StartDates.WEEK;

  @Mixin private EnsembleOptions ensemble = new EnsembleOptions(USUAL_MEMBERS);
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
    List<Method> chosen = Methods.of(scenario, methods);
    Optional<OutputFolder> folder =
        output
            .folder()
            .map(
                path ->
                    path.with(
                        CommandWords.manifest(spec, scenario, Optional.of(ensemble.settings()))));
    folder.ifPresent(to -> TimingFiles.check(to, output.svg()));
    StartMites mites = Mites.of(scenario, ensemble.settings().seed());
    Timing timing = timing(scenario, mites, chosen);
    if (json.wanted()) {
      StringWriter document = new StringWriter();
      PlanningJson.timing(document, timing);
      out.print(document);
    } else {
      out.print(new TimingPage(timing).render());
    }
    out.flush();
    PrintWriter err = spec.commandLine().getErr();
    folder.ifPresent(to -> new TimingFiles(timing, ChartStyle.A4, output.svg()).write(to, err));
    return ExitCodes.DONE;
  }

  private Timing timing(Scenario scenario, StartMites mites, List<Method> chosen) {
    StartDates usual = StartDates.usual(TrialScope.of(scenario));
    LocalDate first = from == null ? usual.from() : from;
    LocalDate last = until == null ? usual.until() : until;
    StartDates dates;
    try {
      dates = new StartDates(first, last, every);
      Timing.check(scenario, dates);
    } catch (IllegalArgumentException e) {
      throw new UsageException(e.getMessage());
    }
    int courses = chosen.stream().mapToInt(method -> method.usual().courses().size()).sum();
    int starts = courses * dates.all().size();
    try (Progress progress = RootCommand.progress(spec, "start dates", starts)) {
      return Timing.of(scenario, mites, chosen, dates, ensemble.settings(), progress::add);
    }
  }
}
