package org.undercap.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercap.calibration.CountFit;
import org.undercap.calibration.FitException;
import org.undercap.calibration.FitSettings;
import org.undercap.calibration.GrowthFit;
import org.undercap.calibration.GrowthTarget;
import org.undercap.calibration.ObservedColony;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.option.FreeOption;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.option.OutputOptions;
import org.undercap.cli.option.ParameterOption;
import org.undercap.cli.option.ScenarioOptions;
import org.undercap.cli.option.ToDate;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.UsageException;
import org.undercap.cli.report.FitFiles;
import org.undercap.cli.report.FitJson;
import org.undercap.cli.report.FitPage;
import org.undercap.cli.report.FitStudy;
import org.undercap.cli.report.ReportText;
import org.undercap.climate.Climate;
import org.undercap.monitoring.Count;
import org.undercap.parameter.ParameterSet;
import org.undercap.parameter.ParameterSpace;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ObservationReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Fits parameters to a growth rate or to counts. */
@Command(
    name = "fit",
    description = {
      "Fits parameters of the model to a growth rate, or to counts of mites over time in one or many colonies: values with 95 %% intervals, what the data cannot tell, and a file of parameters that other commands take by --parameters.",
      "Give --growth (or --doubling), or a scenario with later counts, or a scenario with --counts."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap fit --growth 0.021 --growth-interval 0.017:0.025 --free reproduction.worker,emergence.loss.mother.worker --out fitted",
      "  undercap fit scenarios/research/plot-7.yaml --counts scenarios/research/plot-7-counts.csv --free reproduction.worker,treatment.strength,count.capture.board --out plot-7",
      "  undercap fit my-colony.yaml --plan \"Gel twice\" --free reproduction.worker=0.6:1.4 --hold-out 2026-09-01"
    })
final class FitCommand implements Callable<Integer> {
  private static final String USUAL_CLIMATE = "central-european";

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..1",
      paramLabel = "SCENARIO",
      description =
          "A scenario file: place, first day, usual colony, arrivals and what was done, for counts; or the climate, for a growth rate.")
  private Path file;

  @Option(
      names = "--free",
      split = ",",
      required = true,
      paramLabel = "ID",
      description =
          "Parameters to fit, separated by commas: ID takes what the catalogue believes, ID=LOW:HIGH is flat between bounds.")
  private List<String> free;

  @Option(
      names = "--growth",
      paramLabel = "RATE",
      description = "Growth rate to meet (per day), as undercap growth measures it over a season.")
  private Double growth;

  @Option(
      names = "--growth-interval",
      paramLabel = "LOW:HIGH",
      description = "Its 95 %% interval (per day).")
  private String growthInterval;

  @Option(
      names = "--doubling",
      paramLabel = "DAYS",
      description = "Doubling time to meet, instead of a rate (days).")
  private Double doubling;

  @Option(
      names = "--doubling-interval",
      paramLabel = "LOW:HIGH",
      description = "Its 95 %% interval (days).")
  private String doublingInterval;

  @Option(
      names = "--climate",
      paramLabel = "ID",
      description = "Climate of --growth or --doubling (default: " + USUAL_CLIMATE + ").")
  private String climate;

  @Option(
      names = "--counts",
      paramLabel = "FILE",
      description =
          "Counts over time, one row a visit, separated by commas; columns: colony, date, bees, brood, plan, wash_bees, wash_mites, method, board_days, board_mites, drone_cells, infested_cells, all_mites, note.")
  private Path counts;

  @Option(
      names = "--plan",
      paramLabel = "NAME",
      description = "What was done, if the counts are those of the scenario itself.")
  private String plan;

  @Option(
      names = "--hold-out",
      paramLabel = "DATE",
      converter = ToDate.class,
      description = "Fit counts up to this date and foretell those after it.")
  private LocalDate lastFitted;

  @Option(
      names = "--starts",
      paramLabel = "N",
      description = "Searches from different starts (default: ${DEFAULT-VALUE}).")
  private int starts = 4;

  @Option(
      names = "--search",
      paramLabel = "WORD",
      description =
          "local for smooth likelihoods, global for rough ones, which is slow (default: local).")
  private String search = "local";

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Decides starts and draws (default: ${DEFAULT-VALUE}).")
  private long seed = 1;

  @Mixin private ParameterOption parameters;
  @Mixin private OutputOptions output;
  @Mixin private JsonOption json;

  @Override
  public Integer call() {
    boolean toGrowth = growth != null || doubling != null;
    refuseMixtures(toGrowth);
    FitSettings settings = settings();
    Optional<OutputFolder> folder =
        output.folder().map(where -> where.with(CommandWords.manifest(spec)));
    folder.ifPresent(FitFiles::check);
    FitStudy study;
    try {
      study = toGrowth ? toGrowth(settings) : toCounts(settings);
    } catch (FitException e) {
      throw new UsageException(e.getMessage());
    }
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    if (json.wanted()) {
      StringWriter document = new StringWriter();
      FitJson.write(document, study);
      out.print(document);
    } else {
      out.print(ReportText.of(FitPage.of(study, List.of())));
    }
    out.flush();
    folder.ifPresent(
        where -> {
          new FitFiles(study, ChartStyle.A4, output.svg()).write(where, err);
          Path fitted = where.path().resolve(FitFiles.PARAMETERS);
          err.print("next: undercap growth --parameters " + fitted + "\n");
        });
    if (folder.isEmpty() && !json.wanted()) {
      err.print("next: the same with --out=DIR writes these values to a file for --parameters\n");
    }
    err.flush();
    return ExitCodes.DONE;
  }

  private void refuseMixtures(boolean toGrowth) {
    String wrong = "";
    if (growth != null && doubling != null) {
      wrong = "give --growth or --doubling, not both";
    } else if (!toGrowth && file == null) {
      wrong = "nothing to fit to: give --growth, --doubling or a scenario with counts";
    } else if (toGrowth && (counts != null || lastFitted != null || plan != null)) {
      wrong = "--counts, --plan and --hold-out do not go with a growth rate";
    } else if (!toGrowth && climate != null) {
      wrong = "--climate goes with --growth or --doubling; counts have the climate of the scenario";
    } else if (file != null && climate != null) {
      wrong = "give a scenario or --climate, not both";
    } else if ((growth == null) != (growthInterval == null)) {
      wrong = "--growth and --growth-interval go together, as in --growth-interval 0.017:0.025";
    } else if ((doubling == null) != (doublingInterval == null)) {
      wrong = "--doubling and --doubling-interval go together, as in --doubling-interval 20:40";
    } else if (counts != null && plan != null) {
      wrong = "with --counts the plan of each colony stands in the table, column plan";
    }
    if (!wrong.isEmpty()) {
      throw new UsageException(wrong);
    }
  }

  private FitSettings settings() {
    FitSettings.Search kind =
        switch (search.toLowerCase(Locale.ROOT)) {
          case "local" -> FitSettings.Search.LOCAL;
          case "global" -> FitSettings.Search.GLOBAL;
          default -> throw new UsageException("--search " + search + " must be local or global");
        };
    try {
      return FitSettings.usual(seed).withStarts(starts).withSearch(kind);
    } catch (IllegalArgumentException e) {
      throw new UsageException(e.getMessage());
    }
  }

  private FitStudy toGrowth(FitSettings settings) {
    Climate place;
    ParameterSet base;
    if (file != null) {
      Scenario scenario = ScenarioOptions.read(file, parameters);
      place = scenario.climate();
      base = scenario.parameters();
    } else {
      place = Climates.of(climate == null ? USUAL_CLIMATE : climate);
      base = parameters.read().applyTo(ParameterSet.shipped());
    }
    ParameterSpace space = FreeOption.space(free, base);
    GrowthTarget target = target(place);
    String name =
        growth != null
            ? "growth rate " + growth + " per day"
            : "doubling time " + doubling + " days";
    return FitStudy.of(
        name + " in " + place.id(),
        space,
        settings,
        GrowthFit.of(List.of(target), space).run(settings));
  }

  private GrowthTarget target(Climate place) {
    try {
      if (growth != null) {
        double[] ends = FreeOption.pair(growthInterval, ":", "--growth-interval");
        return new GrowthTarget(place, growth, ends[0], ends[1]);
      }
      double[] ends = FreeOption.pair(doublingInterval, ":", "--doubling-interval");
      if (!(ends[0] > 0)) {
        throw new UsageException("--doubling-interval must lie above 0 days");
      }
      double ln2 = StrictMath.log(2);
      return new GrowthTarget(place, ln2 / doubling, ln2 / ends[1], ln2 / ends[0]);
    } catch (IllegalArgumentException e) {
      throw new UsageException(e.getMessage());
    }
  }

  private FitStudy toCounts(FitSettings settings) {
    Scenario scenario = ScenarioOptions.read(file, parameters);
    List<ObservedColony> colonies = counts == null ? ofScenario(scenario) : ofTable(scenario);
    ParameterSpace space = FreeOption.space(free, scenario.parameters());
    Optional<LocalDate> last = Optional.ofNullable(lastFitted);
    List<ObservedColony> fitted =
        last.map(day -> colonies.stream().map(colony -> colony.until(day)).toList())
            .orElse(colonies);
    try {
      CountFit fit = CountFit.withFreeErrors(fitted, space);
      return FitStudy.of(scenario.name(), space, settings, fit.run(settings), colonies, last);
    } catch (IllegalArgumentException e) {
      throw new UsageException(e.getMessage());
    }
  }

  private List<ObservedColony> ofTable(Scenario scenario) {
    Reading<List<ObservedColony>> reading = ObservationReader.read(counts, scenario);
    if (!reading.problems().isEmpty()) {
      throw new InvalidFileException(InvalidFileException.text(reading.problems()));
    }
    return reading.orThrow();
  }

  /** The counts of the scenario from its first day on. */
  private List<ObservedColony> ofScenario(Scenario scenario) {
    Plan done = plan == null ? scenario.plans().get(0) : ScenarioOptions.plan(scenario, plan);
    List<Count> later =
        scenario.counts().stream()
            .filter(count -> !count.firstDay().isBefore(scenario.start()))
            .toList();
    if (later.isEmpty()) {
      throw new UsageException(
          file + " has no counts that begin on or after its first day; give --counts=FILE");
    }
    return List.of(ObservedColony.of(scenario, done, later));
  }
}
