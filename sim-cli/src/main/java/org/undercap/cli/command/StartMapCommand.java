package org.undercap.cli.command;

import java.util.List;
import java.util.concurrent.Callable;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.option.OutputOptions;
import org.undercap.cli.option.ScenarioOptions;
import org.undercap.cli.option.SpeechOptions;
import org.undercap.lesson.StartMap;
import org.undercap.treatment.Method;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Draws the harm to winter bees by start date and method, with a colony marked. */
@Command(
    name = "start-map",
    description =
        "Draws the harm to winter bees by start date and method, with this colony marked.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap start-map scenarios/wairepo-flat.yaml",
      "  undercap start-map my-colony.yaml --method thymol-gel,formic-pads --out results"
    })
final class StartMapCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ScenarioOptions scenarios;

  @Option(
      names = "--method",
      split = ",",
      paramLabel = "ID",
      description = "Methods to try (default: six usual ones).")
  private List<String> methods = List.of();

  @Mixin private SpeechOptions options;
  @Mixin private OutputOptions output;
  @Mixin private JsonOption json;

  @Override
  public Integer call() {
    MapRun run = new MapRun(spec, scenarios.read(), options, output, json.wanted());
    return run.draw(
        "start-map",
        (scenario, mites) -> {
          List<Method> chosen = methods.isEmpty() ? List.of() : Methods.of(scenario, methods);
          return StartMap.of(scenario, mites, chosen).lesson();
        });
  }
}
