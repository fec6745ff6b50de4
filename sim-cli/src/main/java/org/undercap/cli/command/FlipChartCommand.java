package org.undercap.cli.command;

import java.util.List;
import java.util.concurrent.Callable;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.option.OutputOptions;
import org.undercap.cli.option.ScenarioOptions;
import org.undercap.cli.option.SpeechOptions;
import org.undercap.cli.output.UsageException;
import org.undercap.lesson.FlipChart;
import org.undercap.treatment.Method;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Draws which of two methods kills more, by brood and temperature, with a colony marked. */
@Command(
    name = "flip-chart",
    description =
        "Draws which of two methods kills more, by brood and temperature, with this colony marked.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap flip-chart scenarios/saltmere-garth.yaml",
      "  undercap flip-chart my-colony.yaml --method formic-pads,oxalic-sublimation --out results"
    })
final class FlipChartCommand implements Callable<Integer> {
  private static final int TWO = 2;

  @Spec private CommandSpec spec;
  @Mixin private ScenarioOptions scenarios;

  @Option(
      names = "--method",
      split = ",",
      paramLabel = "ID",
      description = "The two methods (default: thymol-gel,oxalic-sublimation).")
  private List<String> methods = List.of("thymol-gel", "oxalic-sublimation");

  @Mixin private SpeechOptions options;
  @Mixin private OutputOptions output;
  @Mixin private JsonOption json;

  @Override
  public Integer call() {
    MapRun run = new MapRun(spec, scenarios.read(), options, output, json.wanted());
    return run.draw(
        "flip-chart",
        (scenario, mites) -> {
          List<Method> chosen = Methods.of(scenario, methods);
          if (chosen.size() != TWO) {
            throw new UsageException("--method needs two different methods, as ID,ID");
          }
          return FlipChart.of(scenario, mites, chosen.get(0), chosen.get(1)).lesson();
        });
  }
}
