package org.undercap.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercap.advice.Refusal;
import org.undercap.cli.option.EnsembleOptions;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.option.OutputOptions;
import org.undercap.cli.option.ParameterOption;
import org.undercap.cli.option.ScenarioOptions;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.Progress;
import org.undercap.cli.report.PlanningJson;
import org.undercap.cli.report.YardFiles;
import org.undercap.cli.report.YardPage;
import org.undercap.planning.Yard;
import org.undercap.scenario.ApiaryColony;
import org.undercap.scenario.Place;
import org.undercap.scenario.Problem;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ApiaryReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks at all colonies of a yard. */
@Command(
    name = "apiary",
    description =
        "Looks at all colonies of a yard: which to worry about, and one plan for all of them.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap apiary scenarios/tall-sedge-yard-colonies.csv --scenario scenarios/tall-sedge-yard.yaml",
      "  undercap apiary colonies.csv --scenario my-yard.yaml --out results"
    })
final class ApiaryCommand implements Callable<Integer> {
  private static final int USUAL_MEMBERS = 64;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "TABLE",
      description =
          "One row a colony, separated by commas; columns: colony, bees, brood, wash_bees, wash_mites, board_days, board_mites, method, note.")
  private Path table;

  @Option(
      names = "--scenario",
      required = true,
      paramLabel = "SCENARIO",
      description = "The scenario file with place, day, hive and plans of the yard.")
  private Path site;

  @Mixin private ParameterOption parameters;
  @Mixin private EnsembleOptions ensemble = new EnsembleOptions(USUAL_MEMBERS);
  @Mixin private OutputOptions output;
  @Mixin private JsonOption json;

  @Override
  public Integer call() {
    Scenario scenario = ScenarioOptions.read(site, parameters);
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    Reading<List<ApiaryColony>> reading = ApiaryReader.read(table, scenario);
    if (!reading.problems().isEmpty()) {
      throw new InvalidFileException(InvalidFileException.text(reading.problems()));
    }
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
    folder.ifPresent(YardFiles::check);
    List<ApiaryColony> colonies = reading.orThrow();
    colonies.forEach(colony -> colony.doubts().forEach(doubt -> err.print(text(doubt))));
    err.flush();
    Yard yard = yard(scenario, colonies);
    if (json.wanted()) {
      StringWriter document = new StringWriter();
      PlanningJson.yard(document, yard);
      out.print(document);
    } else {
      out.print(new YardPage(yard).render());
    }
    out.flush();
    folder.ifPresent(to -> YardFiles.write(yard, to, err));
    return ExitCodes.DONE;
  }

  private Yard yard(Scenario scenario, List<ApiaryColony> colonies) {
    try (Progress progress = RootCommand.progress(spec, "colonies", colonies.size())) {
      return Yard.of(scenario, colonies, ensemble.settings(), progress::add);
    }
  }

  private static String text(Problem doubt) {
    Place place = new Place(doubt.file(), doubt.line(), doubt.column());
    return place + ": doubtful: " + doubt.field() + ": " + doubt.message() + "\n";
  }
}
