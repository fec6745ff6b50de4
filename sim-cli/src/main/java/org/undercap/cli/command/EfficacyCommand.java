package org.undercap.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercap.advice.Refusal;
import org.undercap.cli.option.CountGroups;
import org.undercap.cli.option.CountOptions;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.option.MinimumOption;
import org.undercap.cli.option.ParameterOption;
import org.undercap.cli.option.ScenarioOptions;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.UsageException;
import org.undercap.cli.report.EfficacyJson;
import org.undercap.cli.report.EfficacyPage;
import org.undercap.cli.report.EfficacyReport;
import org.undercap.monitoring.Efficacy;
import org.undercap.monitoring.RankedCause;
import org.undercap.monitoring.Verdict;
import org.undercap.scenario.Scenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tells from counts whether a treatment worked, and what may lie behind a poor result. */
@Command(
    name = "efficacy",
    description = "Tells from counts before and after whether a treatment worked.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap efficacy --before 13/300 --after 2/310",
      "  undercap efficacy --before 13/300 --after 2/310 --control-before 12/300"
          + " --control-after 15/300",
      "  undercap efficacy --killed 812 --followup 95 --minimum synthetic",
      "  undercap efficacy --counts yards.csv",
      "  undercap efficacy --scenario scenarios/dry-fork-outfit.yaml --plan \"Amitraz strips as"
          + " always\" --after 7/310 --after-date 2026-10-05"
    })
final class EfficacyCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private CountOptions counts;

  @Option(
      names = "--scenario",
      paramLabel = "FILE",
      description = "The colony, to rank what may lie behind a poor result; needs --plan.")
  private Path file;

  @Option(names = "--plan", paramLabel = "NAME", description = "The plan that was followed.")
  private String plan;

  @Option(
      names = "--after-date",
      paramLabel = "DATE",
      description = "Day of --after, for --scenario (default: the last count of the file).")
  private LocalDate day;

  @Mixin private ParameterOption parameters;
  @Mixin private MinimumOption minimum;
  @Mixin private JsonOption json;

  @Override
  public Integer call() {
    refuseWithoutScenario("--plan", plan != null);
    refuseWithoutScenario("--after-date", day != null);
    refuseWithoutScenario("--parameters", parameters.file().isPresent());
    double least = minimum.share();
    Optional<Scenario> scenario =
        Optional.ofNullable(file).map(path -> ScenarioOptions.read(path, parameters));
    Optional<Refusal> refusal = scenario.flatMap(Refusal::of);
    PrintWriter out = spec.commandLine().getOut();
    if (refusal.isPresent()) {
      out.print(refusal.get().text() + "\n");
      out.flush();
      return ExitCodes.CHECK_SAYS_NO;
    }
    Optional<PoorResultCase> colony =
        scenario.map(read -> PoorResultCase.of(read, plan, counts.after(), day));
    out.print(text(report(colony, least)));
    out.flush();
    return ExitCodes.DONE;
  }

  private void refuseWithoutScenario(String option, boolean given) {
    if (file == null && given) {
      throw new UsageException(option + " needs --scenario");
    }
  }

  private EfficacyReport report(Optional<PoorResultCase> colony, double least) {
    boolean fromScenario = colony.isPresent() && (counts.none() || counts.onlyAfter());
    CountGroups groups = fromScenario ? colony.get().groups() : counts.groups();
    Efficacy efficacy = efficacy(groups);
    boolean explain = colony.isPresent() && efficacy.verdict(least) != Verdict.WORKS;
    List<RankedCause> causes = explain ? colony.get().causes(file) : List.of();
    String explained = explain ? EfficacyReport.words(colony.get().after()) : "";
    return new EfficacyReport(groups, efficacy, least, minimum.words(), explained, causes);
  }

  private static Efficacy efficacy(CountGroups groups) {
    try {
      return groups.efficacy();
    } catch (IllegalArgumentException e) {
      throw new UsageException(e.getMessage());
    }
  }

  private String text(EfficacyReport report) {
    if (!json.wanted()) {
      return new EfficacyPage(report).render();
    }
    StringWriter document = new StringWriter();
    EfficacyJson.write(document, report);
    return document.toString();
  }
}
