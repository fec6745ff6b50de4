package org.undercap.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.UsageException;
import org.undercap.cli.report.EvidencePage;
import org.undercap.evidence.CheckResult;
import org.undercap.evidence.Evidence;
import org.undercap.evidence.Inside;
import org.undercap.evidence.KnownMiss;
import org.undercap.evidence.PublishedCheck;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Holds the model against published findings. */
@Command(
    name = "evidence",
    description =
        "Runs the model against published findings and shows what agrees and what misses. Exit code 4 if a finding is"
            + " missed that is not a known miss.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap evidence",
      "  undercap evidence --only efficacy",
      "  undercap evidence --markdown > published-checks.md"
    })
final class EvidenceCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private JsonOption json;

  @Option(
      names = "--only",
      paramLabel = "GROUP",
      description = "Run the findings of one group, as in growth or efficacy.")
  private String group;

  @Option(names = "--markdown", description = "Print a page in Markdown.")
  private boolean markdown;

  @Override
  public Integer call() {
    List<CheckResult> results = wanted().stream().map(check -> Evidence.run(check.id())).toList();
    EvidencePage page = new EvidencePage(results);
    PrintWriter out = spec.commandLine().getOut();
    if (json.wanted()) {
      StringWriter document = new StringWriter();
      page.json(document);
      out.print(document);
    } else {
      out.print(markdown ? page.markdown() : page.text());
    }
    out.flush();
    Set<String> known =
        Evidence.knownMisses().stream().map(KnownMiss::id).collect(Collectors.toSet());
    boolean newMiss =
        results.stream().anyMatch(r -> r.inside() == Inside.NO && !known.contains(r.check().id()));
    return newMiss ? ExitCodes.CHECK_SAYS_NO : ExitCodes.DONE;
  }

  private List<PublishedCheck> wanted() {
    List<PublishedCheck> all = Evidence.all();
    if (group == null) {
      return all;
    }
    List<PublishedCheck> wanted =
        all.stream().filter(check -> check.group().equals(group)).toList();
    if (wanted.isEmpty()) {
      throw new UsageException(
          "there is no group '"
              + group
              + "'; groups: "
              + all.stream()
                  .map(PublishedCheck::group)
                  .distinct()
                  .collect(Collectors.joining(", ")));
    }
    return wanted;
  }
}
