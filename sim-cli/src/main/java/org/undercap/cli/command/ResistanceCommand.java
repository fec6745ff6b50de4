package org.undercap.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.undercap.cli.option.FolderOptions;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.option.ScenarioOptions;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.UsageException;
import org.undercap.cli.report.ResistancePage;
import org.undercap.resistance.ResistanceStudy;
import org.undercap.resistance.ResistanceYear;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Scenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Follows resistance through years. */
@Command(
    name = "resistance",
    description = {
      "Follows the share of resistant mites through years of treatment by one scheme or another. A study, not a forecast.",
      "A scheme names the plan of each year, then begins again: \"Strips,Acid\" is strips in the first year and acid in the second."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap resistance my-colony.yaml --share pyrethroid=0.01 --scheme Strips --scheme Strips,Acid",
      "  undercap resistance my-colony.yaml --share pyrethroid=0.01 --years 10 --out results"
    })
final class ResistanceCommand implements Callable<Integer> {
  private static final int USUAL_YEARS = 6;
  private static final String CSV = "years.csv";
  private static final String PAGE = "resistance.txt";

  @Spec private CommandSpec spec;
  @Mixin private ScenarioOptions scenarios;

  @Option(
      names = "--scheme",
      paramLabel = "PLAN,PLAN",
      description =
          "The plans of the years; may be given more than once (default: each plan by itself).")
  private List<String> schemes = List.of();

  @Option(
      names = "--share",
      paramLabel = "CLASS=SHARE",
      description =
          "Share of mites that resist a class of substances on the first day; more than one may be given (default: as in the scenario under resistance).")
  private Map<String, String> shares = Map.of();

  @Option(
      names = "--years",
      paramLabel = "N",
      description = "Length of the study (default: ${DEFAULT-VALUE}).")
  private int years = USUAL_YEARS;

  @Mixin private FolderOptions output;
  @Mixin private JsonOption json;

  @Override
  public Integer call() {
    Scenario scenario = scenarios.read();
    Map<String, List<Plan>> chosen = schemes(scenario);
    Map<String, Double> first = shares(scenario, chosen);
    Optional<OutputFolder> folder =
        output
            .folder()
            .map(path -> path.with(CommandWords.manifest(spec, scenario, Optional.empty())));
    folder.ifPresent(to -> to.prepare(List.of(CSV, PAGE)).close());
    double mites = Mites.of(scenario).median();
    Map<String, List<ResistanceYear>> results = new LinkedHashMap<>();
    chosen.forEach((name, scheme) -> results.put(name, study(scenario, mites, scheme, first)));
    ResistancePage page = new ResistancePage(scenario, first, results);
    PrintWriter out = spec.commandLine().getOut();
    if (json.wanted()) {
      StringWriter document = new StringWriter();
      page.json(document);
      out.print(document);
    } else {
      out.print(page.text());
    }
    out.flush();
    folder.ifPresent(to -> write(to, page));
    return ExitCodes.DONE;
  }

  private void write(OutputFolder folder, ResistancePage page) {
    try (OutputFiles files = folder.prepare(List.of(CSV, PAGE))) {
      files.text(CSV, page::csv);
      files.text(PAGE, writer -> writer.write(page.text()));
      files.publish(spec.commandLine().getErr());
    }
  }

  private List<ResistanceYear> study(
      Scenario scenario, double mites, List<Plan> scheme, Map<String, Double> first) {
    try {
      return ResistanceStudy.run(scenario, mites, scheme, years, first);
    } catch (IllegalArgumentException e) {
      throw new UsageException(e.getMessage());
    }
  }

  private Map<String, List<Plan>> schemes(Scenario scenario) {
    Map<String, List<Plan>> chosen = new LinkedHashMap<>();
    if (schemes.isEmpty()) {
      scenario.plans().stream()
          .filter(plan -> !plan.steps().isEmpty())
          .forEach(plan -> chosen.put(plan.name(), List.of(plan)));
    }
    for (String scheme : schemes) {
      List<Plan> plans = new ArrayList<>();
      for (String name : names(scenario, scheme)) {
        plans.add(ScenarioOptions.plan(scenario, name));
      }
      chosen.put(String.join(", ", plans.stream().map(Plan::name).toList()), plans);
    }
    if (chosen.isEmpty()) {
      throw new UsageException("the scenario has no plan with a treatment; add one under plans");
    }
    return chosen;
  }

  /** A plan whose own name holds commas is a scheme by itself. */
  private static List<String> names(Scenario scenario, String scheme) {
    boolean one = scenario.plans().stream().anyMatch(plan -> plan.name().equalsIgnoreCase(scheme));
    return one ? List.of(scheme) : List.of(scheme.split("\\s*,\\s*", -1));
  }

  private Map<String, Double> shares(Scenario scenario, Map<String, List<Plan>> chosen) {
    TreeSet<String> used = new TreeSet<>();
    chosen.values().forEach(scheme -> used.addAll(ResistanceStudy.classes(scheme)));
    Map<String, Double> first = new TreeMap<>();
    used.forEach(name -> first.put(name, scenario.resistance().getOrDefault(name, 0.0)));
    shares.forEach((name, text) -> first.put(known(name, used), share(text)));
    if (first.values().stream().noneMatch(share -> share > 0)) {
      throw new UsageException(
          "no mites are resistant on the first day: give --share, as in --share \""
              + used.first()
              + "=1 %\"; classes: "
              + String.join(", ", used));
    }
    return first;
  }

  private static String known(String name, SortedSet<String> used) {
    if (used.contains(name)) {
      return name;
    }
    throw new UsageException(
        "--share: no plan uses the class '" + name + "'; classes: " + String.join(", ", used));
  }

  private static double share(String text) {
    try {
      return Quantities.share(text);
    } catch (BadValueException e) {
      throw new UsageException("--share: " + e.getMessage());
    }
  }
}
