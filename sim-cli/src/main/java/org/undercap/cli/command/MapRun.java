package org.undercap.cli.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.undercap.advice.Refusal;
import org.undercap.cli.lesson.LessonText;
import org.undercap.cli.lesson.MapFiles;
import org.undercap.cli.lesson.Speech;
import org.undercap.cli.option.OutputOptions;
import org.undercap.cli.option.SpeechOptions;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.UsageException;
import org.undercap.lesson.Lesson;
import org.undercap.lesson.LessonResult;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.CautionCatalogue;
import picocli.CommandLine.Model.CommandSpec;

/** What the commands share that draw a map with the colony of a scenario on it. */
final class MapRun {
  private final CommandSpec spec;
  private final Scenario scenario;
  private final SpeechOptions options;
  private final OutputOptions output;
  private final boolean json;

  MapRun(
      CommandSpec spec,
      Scenario scenario,
      SpeechOptions options,
      OutputOptions output,
      boolean json) {
    this.spec = spec;
    this.scenario = scenario;
    this.options = options;
    this.output = output;
    this.json = json;
  }

  /** Reckons, prints and draws; returns the exit code. */
  int draw(String lesson, BiFunction<Scenario, Double, LessonResult> map) {
    PrintWriter out = spec.commandLine().getOut();
    Optional<Refusal> refusal = Refusal.of(scenario);
    if (refusal.isPresent()) {
      return Refusals.print(scenario, refusal.get(), json, out);
    }
    Speech speech = options.speech();
    MapFiles files = new MapFiles(Lesson.of(lesson), scenario.name(), speech);
    output.folder().ifPresent(folder -> files.check(folder, output.svg()));
    double mites = Mites.of(scenario).median();
    if (!(mites > 0)) {
      throw new UsageException(scenario.name() + " has no mites: there is nothing to map");
    }
    LessonResult result = map.apply(scenario, mites);
    LessonText text = files.text(result);
    out.print(json ? files.json(result) : files.page(result, cautions()));
    out.flush();
    PrintWriter err = spec.commandLine().getErr();
    output
        .folder()
        .ifPresent(folder -> files.write(result, text, folder, options.style(), output.svg(), err));
    err.flush();
    return ExitCodes.DONE;
  }

  private static List<String> cautions() {
    List<String> cautions = new ArrayList<>();
    for (String id : List.of("every-report", "every-treatment")) {
      cautions.add(CautionCatalogue.shipped().get(id).text());
    }
    return cautions;
  }
}
