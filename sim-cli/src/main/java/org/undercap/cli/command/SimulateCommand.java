package org.undercap.cli.command;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.chart.ChartWriter;
import org.undercap.cli.option.OutputOptions;
import org.undercap.cli.option.ScenarioOptions;
import org.undercap.cli.option.ToDate;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.IfExists;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.UsageException;
import org.undercap.cli.report.ChartFiles;
import org.undercap.cli.report.DailyCsv;
import org.undercap.cli.report.RunCharts;
import org.undercap.cli.report.RunPage;
import org.undercap.comparison.CentralRun;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.Explanation;
import org.undercap.simulation.MiteLedger;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Runs plans of a scenario day by day. */
@Command(
    name = "simulate",
    description = "Runs one plan or all plans of a scenario day by day with middle values.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap simulate scenarios/saltmere-garth.yaml",
      "  undercap simulate my-colony.yaml --plan \"Gel twice\" --out results",
      "  undercap simulate my-colony.yaml --plan \"Gel twice\" --explain 2026-10-01",
      "  undercap simulate my-colony.yaml --plan \"Gel twice\" --trace daily.csv",
      "  undercap simulate my-colony.yaml --ledger account.csv"
    })
final class SimulateCommand implements Callable<Integer> {
  private static final String DAILY = "daily.csv";

  @Spec private CommandSpec spec;
  @Mixin private ScenarioOptions scenarios;
  @Mixin private OutputOptions output;

  @Option(names = "--plan", paramLabel = "NAME", description = "Run this plan only (default: all).")
  private String planName;

  @Option(
      names = CommandWords.TRACE,
      paramLabel = "FILE",
      description =
          "Write the daily table of the plan at full precision to this new file; needs --plan if there are several.")
  private Path trace;

  @Option(
      names = CommandWords.LEDGER,
      paramLabel = "FILE",
      description = "Write the daily account of mites, what came and what went, to this new file.")
  private Path ledger;

  @Option(
      names = "--explain",
      paramLabel = "DATE",
      converter = ToDate.class,
      description = "Tell what acted on this day, and why.")
  private LocalDate explained;

  @Override
  public Integer call() {
    if (output.named()) {
      ChartWriter.loadAhead();
    }
    Scenario scenario = scenarios.read();
    List<Plan> plans =
        planName == null ? scenario.plans() : List.of(ScenarioOptions.plan(scenario, planName));
    Plan traced = trace == null ? null : traced(scenario, plans);
    Optional<OutputFolder> wanted =
        output
            .folder()
            .map(path -> path.with(CommandWords.manifest(spec, scenario, Optional.empty())));
    check(plans, wanted);
    Optional<OutputFolder> traceTo = singleFile(scenario, CommandWords.TRACE, trace);
    Optional<OutputFolder> ledgerTo = singleFile(scenario, CommandWords.LEDGER, ledger);
    double mites = Mites.of(scenario).median();
    List<CentralRun> runs = CentralRun.of(scenario, mites, plans);
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    if (explained == null) {
      out.print(RunPage.of(scenario, runs));
    } else {
      explain(out, scenario, mites, plans);
    }
    out.flush();
    traceTo.ifPresent(
        to ->
            writeSingle(
                to,
                trace,
                writer -> DailyCsv.trace(writer, runs.get(plans.indexOf(traced)).table())));
    ledgerTo.ifPresent(
        to ->
            writeSingle(
                to, ledger, writer -> DailyCsv.ledger(writer, accounts(scenario, mites, plans))));
    wanted.ifPresent(folder -> write(folder, scenario, runs, err));
    return ExitCodes.DONE;
  }

  /** Looks before anything is printed whether the files can be written. */
  private void check(List<Plan> plans, Optional<OutputFolder> wanted) {
    List<String> names = new ArrayList<>(List.of(DAILY));
    for (int i = 0; i < plans.size(); i++) {
      names.add(chartName(plans.get(i).name(), i) + ".png");
      if (output.svg()) {
        names.add(chartName(plans.get(i).name(), i) + ".svg");
      }
    }
    wanted.ifPresent(folder -> folder.prepare(names).close());
  }

  /** The only plan, or the only one beside doing nothing. */
  private static Plan traced(Scenario scenario, List<Plan> plans) {
    if (plans.size() <= 2) {
      return plans.get(plans.size() - 1);
    }
    throw new UsageException(
        "--trace needs --plan, since " + scenario.name() + " has " + plans.size() + " plans");
  }

  private void explain(PrintWriter out, Scenario scenario, double mites, List<Plan> plans) {
    if (explained.isBefore(scenario.start()) || explained.isAfter(scenario.end())) {
      throw new UsageException(
          "--explain "
              + explained
              + " must lie in the run, "
              + scenario.start()
              + " to "
              + scenario.end());
    }
    for (Plan plan : plans) {
      out.print(plan.name() + ", " + explained + "\n");
      List<Explanation> reasons = CentralRun.explain(scenario, mites, plan, explained);
      if (reasons.isEmpty()) {
        out.print("  nothing acts on this day\n");
      }
      reasons.forEach(reason -> out.print("  " + reason.toLine() + "\n"));
    }
  }

  private static Map<String, MiteLedger> accounts(
      Scenario scenario, double mites, List<Plan> plans) {
    Map<String, MiteLedger> accounts = new LinkedHashMap<>();
    for (Plan plan : plans) {
      MiteLedger account = new MiteLedger(0);
      CentralRun.watch(scenario, mites, plan, account);
      accounts.put(plan.name(), account);
    }
    return accounts;
  }

  /** The folder of a file that an option names, if it does; looks whether it can be written. */
  private Optional<OutputFolder> singleFile(Scenario scenario, String option, Path file) {
    if (file == null) {
      return Optional.empty();
    }
    String name = String.valueOf(file.getFileName());
    if (name.isBlank() || file.getFileName() == null) {
      throw new UsageException(option + " needs the name of a file");
    }
    OutputFolder folder =
        OutputFolder.of(file, output.ifExists().orElse(IfExists.ERROR))
            .with(
                name + "." + OutputFolder.MANIFEST,
                CommandWords.manifest(spec, scenario, option, name));
    folder.prepare(List.of(name)).close();
    return Optional.of(folder);
  }

  private void writeSingle(OutputFolder folder, Path file, OutputFiles.Content<Writer> content) {
    String name = String.valueOf(file.getFileName());
    try (OutputFiles files = folder.prepare(List.of(name))) {
      files.text(name, content);
      files.publish(spec.commandLine().getErr());
    }
  }

  private void write(
      OutputFolder folder, Scenario scenario, List<CentralRun> runs, PrintWriter err) {
    ChartFiles charts = new ChartFiles(output.svg());
    RunCharts drawings = new RunCharts(scenario, ChartStyle.A4);
    for (CentralRun run : runs) {
      String name = chartName(run.plan().name(), runs.indexOf(run));
      charts.add(name, drawings.miteCurve(run));
    }
    List<String> names = new ArrayList<>(charts.names());
    names.add(DAILY);
    try (OutputFiles files = folder.prepare(names)) {
      charts.write(files);
      files.text(DAILY, writer -> DailyCsv.runs(writer, runs));
      files.publish(err);
    }
  }

  /**
   * The name of the chart of a plan without ending; the number keeps names apart that look alike.
   */
  private static String chartName(String name, int number) {
    String plain =
        name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    String shortened = plain.length() > 40 ? plain.substring(0, 40) : plain;
    return "mites-" + (number + 1) + (shortened.isEmpty() ? "" : "-" + shortened);
  }
}
