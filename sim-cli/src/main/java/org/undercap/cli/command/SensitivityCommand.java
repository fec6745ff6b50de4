package org.undercap.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import org.undercap.advice.Refusal;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.option.FreeOption;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.option.OutputOptions;
import org.undercap.cli.option.ScenarioOptions;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.UsageException;
import org.undercap.cli.report.SensitivityFiles;
import org.undercap.cli.report.SensitivityPage;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.StartMites;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.sensitivity.Design;
import org.undercap.sensitivity.MorrisDesign;
import org.undercap.sensitivity.SobolDesign;
import org.undercap.study.OutcomeStudy;
import org.undercap.study.StudyAxes;
import org.undercap.study.StudyAxis;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.PlanStep;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tells which of the things that are not known matter for an outcome. */
@Command(
    name = "sensitivity",
    description = {
      "Tells which of the things that are not known move an outcome of a plan: by elementary effects (Morris), to sort many things with few runs, or by Sobol indices, which share out the variance.",
      "What is not varied has its middle value."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap sensitivity scenarios/saltmere-garth.yaml --plan \"Gel twice\" --vary strength:thymol-gel,weather,mites,dates=-2:14,reproduction.worker",
      "  undercap sensitivity my-colony.yaml --plan \"Gel twice\" --vary invasion.worker,reproduction.worker --method sobol --size 512 --outcome mites_at_midwinter",
      "  undercap sensitivity my-colony.yaml --plan \"do nothing\" --vary mites,arrivals,bees,brood --json > sensitivity.json"
    })
final class SensitivityCommand implements Callable<Integer> {
  private static final int USUAL_WALKS = 32;
  private static final int USUAL_ROWS = 256;
  private static final int SLICES = 4;
  private static final int RESAMPLES = 500;

  @Spec private CommandSpec spec;
  @Mixin private ScenarioOptions scenarios;

  @Option(names = "--plan", required = true, paramLabel = "NAME", description = "The plan to run.")
  private String planName;

  @Option(
      names = "--vary",
      split = ",",
      required = true,
      paramLabel = "WHAT",
      description =
          "What to vary, separated by commas: parameters, strength:METHOD, dates, weather, mites, bees, brood, arrivals. WHAT=LOW:HIGH is flat between bounds (dates: days later; weather: C warmer; the others: factors); without bounds as the catalogue believes.")
  private List<String> vary;

  @Option(
      names = "--outcome",
      paramLabel = "WORD",
      description =
          "The outcome to look at, as the columns of outcomes.csv (default: ${DEFAULT-VALUE}).")
  private String outcomeName = Outcome.WINTER_BROOD_PARASITISED.header();

  @Option(
      names = "--method",
      paramLabel = "WORD",
      description = "morris or sobol (default: ${DEFAULT-VALUE}).")
  private String method = "morris";

  @Option(
      names = "--size",
      paramLabel = "N",
      description =
          "Walks of morris (default: 32; each costs one run more than things vary), or rows of sobol, a power of two (default: 256; each costs two runs more).")
  private Integer size;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Decides points and resamples (default: ${DEFAULT-VALUE}).")
  private long seed = 1;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Processors to use; results do not depend on it (default: all).")
  private int threads;

  @Mixin private OutputOptions output;
  @Mixin private JsonOption json;

  @Override
  public Integer call() throws InterruptedException {
    Outcome outcome = outcome();
    List<StudyAxis> axes = axes();
    Scenario scenario = scenarios.read();
    Plan plan = ScenarioOptions.plan(scenario, planName);
    PrintWriter out = spec.commandLine().getOut();
    Optional<Refusal> refusal = Refusal.of(scenario);
    if (refusal.isPresent()) {
      return Refusals.print(scenario, refusal.get(), json.wanted(), out);
    }
    checkStrengths(scenario, axes);
    checkDates(scenario, plan, axes);
    Optional<OutputFolder> folder =
        output.folder().map(where -> where.with(CommandWords.manifest(spec)));
    folder.ifPresent(where -> SensitivityFiles.check(where, output.svg()));
    StartMites mites = Mites.of(scenario, seed);
    SensitivityPage page = study(scenario, plan, mites, axes, outcome);
    if (json.wanted()) {
      StringWriter document = new StringWriter();
      page.json(document);
      out.print(document);
    } else {
      out.print(page.text());
    }
    out.flush();
    PrintWriter err = spec.commandLine().getErr();
    folder.ifPresent(
        where -> SensitivityFiles.write(page, ChartStyle.A4, output.svg(), where, err));
    return ExitCodes.DONE;
  }

  private SensitivityPage study(
      Scenario scenario, Plan plan, StartMites mites, List<StudyAxis> axes, Outcome outcome)
      throws InterruptedException {
    boolean sobol =
        switch (method.toLowerCase(Locale.ROOT)) {
          case "sobol" -> true;
          case "morris" -> false;
          default -> throw new UsageException("--method " + method + " must be morris or sobol");
        };
    SensitivityPage page =
        new SensitivityPage(scenario.name(), plan.name(), outcome.header(), axes, seed);
    try {
      OutcomeStudy study = new OutcomeStudy(scenario, plan, mites.belief(), axes, outcome);
      if (sobol) {
        SobolDesign design = SobolDesign.of(axes.size(), size == null ? USUAL_ROWS : size, seed);
        return page.with(design.indices(evaluate(design, study), RESAMPLES, seed), design.size());
      }
      MorrisDesign design =
          MorrisDesign.of(axes.size(), size == null ? USUAL_WALKS : size, SLICES, seed);
      return page.with(design.effects(evaluate(design, study)), design.size());
    } catch (IllegalArgumentException e) {
      throw new UsageException(e.getMessage());
    }
  }

  private double[] evaluate(Design design, OutcomeStudy study) throws InterruptedException {
    int wanted = threads > 0 ? threads : Runtime.getRuntime().availableProcessors();
    ExecutorService pool = Executors.newFixedThreadPool(wanted);
    try {
      return design.evaluate(study, pool);
    } finally {
      pool.shutdownNow();
    }
  }

  private Outcome outcome() {
    return Arrays.stream(Outcome.values())
        .filter(known -> known.header().equals(outcomeName))
        .findFirst()
        .orElseThrow(
            () ->
                new UsageException(
                    "there is no outcome '"
                        + outcomeName
                        + "'; outcomes: "
                        + Arrays.stream(Outcome.values())
                            .map(Outcome::header)
                            .collect(Collectors.joining(", "))));
  }

  private List<StudyAxis> axes() {
    List<StudyAxis> axes = new ArrayList<>();
    for (String word : vary) {
      int equals = word.indexOf('=');
      try {
        if (equals < 0) {
          axes.add(StudyAxes.believed(word.strip()));
        } else {
          String name = word.substring(0, equals).strip();
          double[] ends = FreeOption.pair(word.substring(equals + 1), ":", name);
          axes.add(StudyAxes.flat(name, ends[0], ends[1]));
        }
      } catch (IllegalArgumentException e) {
        throw new UsageException(e.getMessage());
      }
    }
    return axes;
  }

  /** A step that is moved out of the run would be left out without a word. */
  private static void checkDates(Scenario scenario, Plan plan, List<StudyAxis> axes) {
    for (StudyAxis axis : axes) {
      if (axis.kind() == StudyAxis.Kind.DATES) {
        for (PlanStep step : plan.steps()) {
          LocalDate first = step.moved((long) StrictMath.rint(axis.prior().low())).date();
          LocalDate last = step.moved((long) StrictMath.rint(axis.prior().high())).date();
          if (first.isBefore(scenario.start()) || last.isAfter(scenario.end())) {
            throw new UsageException(
                "dates: the step of "
                    + step.date()
                    + " would leave the run, "
                    + scenario.start()
                    + " to "
                    + scenario.end()
                    + "; move it less");
          }
        }
      }
    }
  }

  private static void checkStrengths(Scenario scenario, List<StudyAxis> axes) {
    List<String> known = new ArrayList<>();
    MethodCatalogue.shipped().all().forEach(m -> known.add(m.id()));
    scenario.ownMethods().forEach(m -> known.add(m.id()));
    for (StudyAxis axis : axes) {
      if (axis.kind() == StudyAxis.Kind.STRENGTH && !known.contains(axis.name())) {
        throw new UsageException(
            "there is no treatment '" + axis.name() + "'; \"undercap methods\" lists them");
      }
    }
  }
}
