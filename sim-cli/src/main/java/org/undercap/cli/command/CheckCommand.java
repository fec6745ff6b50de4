package org.undercap.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.undercap.advice.Refusal;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.cli.output.TextPage;
import org.undercap.scenario.Assumption;
import org.undercap.scenario.Problem;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ScenarioReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks scenario files without running them. */
@Command(
    name = "check",
    description = "Checks scenario files without running them.",
    footerHeading = "%nExamples:%n",
    footer = {"  undercap check my-colony.yaml", "  undercap check --assumptions scenarios/*.yaml"})
final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(arity = "1..*", paramLabel = "SCENARIO", description = "The files to check.")
  private List<Path> files;

  @Option(
      names = "--assumptions",
      description = "Show also what is assumed where a file does not say.")
  private boolean assumptions;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    List<Problem> problems = new ArrayList<>();
    for (Path file : files) {
      Reading<Scenario> reading = ScenarioReader.read(file);
      problems.addAll(reading.problems());
      reading.value().ifPresent(scenario -> print(out, file, scenario));
    }
    if (!problems.isEmpty()) {
      out.flush();
      throw new InvalidFileException(InvalidFileException.text(problems));
    }
    return ExitCodes.DONE;
  }

  private void print(PrintWriter out, Path file, Scenario scenario) {
    int plans = scenario.plans().size() - 1;
    String count = plans == 1 ? "1 plan" : plans + " plans";
    List<String> warnings = new ArrayList<>(Warnings.ofCounts(scenario));
    Refusal.of(scenario)
        .ifPresent(refusal -> warnings.add("no figures for this colony: " + refusal.reason()));
    if (supersWithoutEnd(scenario)) {
      warnings.add(
          "colony.supers: on, but not until when; that rules out every treatment: add their last"
              + " day to colony, as in supers-until: "
              + scenario.start().plusDays(14));
    }
    out.print(
        file
            + (warnings.isEmpty() ? ": good: " : ": usable, " + number(warnings) + ": ")
            + scenario.name()
            + ", "
            + count
            + ", "
            + scenario.start()
            + " to "
            + scenario.end()
            + "\n");
    warnings.forEach(warning -> out.print(file + ": warning: " + warning + "\n"));
    if (assumptions) {
      TextPage page = new TextPage();
      for (Assumption assumption : scenario.assumptions()) {
        page.item(assumption.field() + ": " + assumption.text());
      }
      out.print(page.render());
    }
  }

  private static String number(List<String> warnings) {
    return warnings.size() == 1 ? "1 warning" : warnings.size() + " warnings";
  }

  /** Whether supers are on and, for a plan that does something, no day on which they come off. */
  private static boolean supersWithoutEnd(Scenario scenario) {
    return scenario.hive().supersOn()
        && scenario.plans().stream()
            .filter(plan -> scenario.plans().size() == 1 || !plan.steps().isEmpty())
            .anyMatch(plan -> scenario.supersUntil(plan).isEmpty());
  }
}
