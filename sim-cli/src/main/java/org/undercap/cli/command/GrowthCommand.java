package org.undercap.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.undercap.analysis.GrowthStudy;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.option.ParameterOption;
import org.undercap.cli.option.ScenarioOptions;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.UsageException;
import org.undercap.cli.report.GrowthPage;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.parameter.ParameterSet;
import org.undercap.scenario.Scenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells how fast the mites grow, in several ways, and on what that hangs. */
@Command(
    name = "growth",
    description = {
      "Tells how fast the mites of an untreated colony grow: by the slope of a season, by the eigenvalue of the day matrix and by the delay equation, beside published rates; and which parameters the growth hangs on.",
      "Without a scenario and --climate all climates are shown, with --climate or a scenario more of each."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap growth",
      "  undercap growth --climate central-european",
      "  undercap growth my-colony.yaml --parameters fitted/parameters.yaml",
      "  undercap growth --json > growth.json"
    })
final class GrowthCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..1",
      paramLabel = "SCENARIO",
      description = "A scenario file, for its climate and parameters.")
  private Path file;

  @Option(
      names = "--climate",
      split = ",",
      paramLabel = "ID",
      description = "Climates, separated by commas (default: all).")
  private List<String> climates = List.of();

  @Mixin private ParameterOption parameters;
  @Mixin private JsonOption json;

  @Override
  public Integer call() {
    if (file != null && !climates.isEmpty()) {
      throw new UsageException("give a scenario or --climate, not both");
    }
    GrowthPage page = new GrowthPage(file != null || !climates.isEmpty());
    if (file != null) {
      Scenario scenario = ScenarioOptions.read(file, parameters);
      add(page, scenario.name(), scenario.climate(), scenario.parameters());
    } else {
      ParameterSet set = parameters.read().applyTo(ParameterSet.shipped());
      wanted().forEach(climate -> add(page, climate.id(), climate, set));
    }
    PrintWriter out = spec.commandLine().getOut();
    if (json.wanted()) {
      StringWriter document = new StringWriter();
      page.json(document);
      out.print(document);
    } else {
      out.print(page.text());
    }
    out.flush();
    return ExitCodes.DONE;
  }

  private static void add(GrowthPage page, String name, Climate climate, ParameterSet set) {
    try {
      page.add(name, GrowthStudy.of(climate, set));
    } catch (IllegalArgumentException | IllegalStateException e) {
      page.addFailure(name, e.getMessage());
    }
  }

  private List<Climate> wanted() {
    if (climates.isEmpty()) {
      return ClimateCatalogue.shipped().all();
    }
    List<Climate> wanted = new ArrayList<>();
    for (String id : climates) {
      wanted.add(Climates.of(id));
    }
    return wanted;
  }
}
