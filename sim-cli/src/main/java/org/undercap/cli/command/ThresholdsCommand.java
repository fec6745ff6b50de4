package org.undercap.cli.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.SourceWords;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.cli.output.UsageException;
import org.undercap.hive.Threshold;
import org.undercap.hive.ThresholdCatalogue;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows the published limits at which to act, side by side. */
@Command(
    name = "thresholds",
    description = "Shows published limits at which to act, side by side.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap thresholds",
      "  undercap thresholds Canada",
      "  undercap thresholds \"New South Wales\""
    })
final class ThresholdsCommand implements Callable<Integer> {
  private static final int SCHEMA_VERSION = 1;
  private static final String DIFFER =
      "Limits differ by place, season and way of counting, and fell with time. None holds"
          + " everywhere; a report says which one it used.";

  @Spec private CommandSpec spec;
  @Mixin private JsonOption json;

  @Parameters(
      arity = "0..1",
      paramLabel = "PLACE-WORD",
      description = "A word of the place, to show its limits in full; all places if none is named.")
  private String word;

  @Override
  public Integer call() {
    List<Threshold> thresholds = word == null ? all() : at(word);
    PrintWriter out = spec.commandLine().getOut();
    if (json.wanted()) {
      JsonOutput.write(
          out,
          spec.name(),
          SCHEMA_VERSION,
          to -> to.list(spec.name(), thresholds, ThresholdsCommand::write));
    } else {
      out.print((word == null ? table(thresholds) : details(thresholds)).render());
    }
    out.flush();
    return ExitCodes.DONE;
  }

  private static List<Threshold> all() {
    return ThresholdCatalogue.shipped().all();
  }

  private static List<Threshold> at(String word) {
    String wanted = word.toLowerCase(Locale.ROOT);
    List<Threshold> found =
        all().stream().filter(t -> t.place().toLowerCase(Locale.ROOT).contains(wanted)).toList();
    if (found.isEmpty()) {
      throw new UsageException(unknown(word));
    }
    return found;
  }

  private static String unknown(String word) {
    List<String> words =
        all().stream()
            .flatMap(t -> List.of(t.place().split("[^\\p{L}-]+", -1)).stream())
            .filter(w -> !w.isEmpty())
            .distinct()
            .toList();
    List<String> near = CatalogueCommand.suggestions(word, words);
    return "no threshold for a place like '"
        + word
        + "'"
        + (near.isEmpty()
            ? "; 'undercap thresholds' lists all"
            : "; did you mean " + near.get(0) + "?");
  }

  /** One table for each way of counting, so that only like is set beside like. */
  private static TextPage table(List<Threshold> thresholds) {
    TextPage page = new TextPage();
    thresholds.stream()
        .map(Threshold::measure)
        .distinct()
        .forEach(
            measure -> {
              TextTable table =
                  new TextTable()
                      .text("place")
                      .text("season")
                      .number("limit")
                      .text("what to do")
                      .name("source");
              thresholds.stream()
                  .filter(t -> t.measure().equals(measure))
                  .forEach(
                      t ->
                          table.row(
                              t.place(),
                              t.season(),
                              t.value(),
                              t.action(),
                              SourceWords.marked(t.sourceKeys(), t.read())));
              page.heading(firstUpper(measure)).table(table);
            });
    return page.paragraph(DIFFER)
        .paragraph(
            "Limits of clubs and those marked "
                + SourceWords.MEMORY_MARK
                + " are for orientation only.")
        .paragraph(SourceWords.MEMORY_MEANING)
        .paragraph("Notes and how each was read: undercap thresholds PLACE-WORD");
  }

  private static TextPage details(List<Threshold> thresholds) {
    TextPage page = new TextPage();
    for (Threshold threshold : thresholds) {
      page.heading(threshold.place() + ", " + threshold.season())
          .fact("limit", threshold.value() + " " + threshold.measure())
          .fact("what to do", threshold.action())
          .fact("year", threshold.year())
          .fact("how read", SourceWords.read(threshold.read()))
          .fact("note", threshold.note())
          .fact("source", String.join(" ", SourceWords.citations(threshold.sourceKeys())));
    }
    return page.paragraph(DIFFER);
  }

  private static void write(JsonOutput out, Threshold threshold) {
    out.text("place", threshold.place())
        .text("season", threshold.season())
        .text("measure", threshold.measure())
        .text("value", threshold.value())
        .text("action", threshold.action())
        .texts("sources", threshold.sourceKeys())
        .text("year", threshold.year())
        .text("read", threshold.read())
        .flag("fromMemory", SourceWords.fromMemory(threshold.read()))
        .text("note", threshold.note());
  }

  private static String firstUpper(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
