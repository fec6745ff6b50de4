package org.undercap.cli.command;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.SourceWords;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.hive.ThresholdCatalogue;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.source.Bibliography;
import org.undercap.source.Source;
import org.undercap.treatment.MethodCatalogue;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows the publications that values were taken from. */
@Command(
    name = "sources",
    description = "Shows the publications, how far each was read, and what rests on it.",
    footerHeading = "%nExamples:%n",
    footer = {"  undercap sources", "  undercap sources boot-1995"})
final class SourcesCommand extends CatalogueCommand<Source> {
  @Parameters(
      arity = "0..1",
      paramLabel = "KEY",
      completionCandidates = Keys.class,
      description = "The source to show in full; all if none is named.")
  private String key;

  @Override
  String kind() {
    return "source";
  }

  @Override
  List<Source> all() {
    return Bibliography.shipped().all();
  }

  @Override
  String idOf(Source source) {
    return source.key();
  }

  @Override
  String wanted() {
    return key;
  }

  @Override
  TextPage table(List<Source> sources) {
    TextTable table = new TextTable().name("source").name("read").text("title");
    for (Source source : sources) {
      String title = source.title().isEmpty() ? "(title not found)" : source.title();
      table.row(source.key(), source.read().word(), title);
    }
    return new TextPage()
        .table(table)
        .paragraph(
            "Read: how it was read for the values taken from it. secondary = quoted by others;"
                + " memory = not read; none = there is no publication.")
        .paragraph("Show one in full: undercap sources KEY");
  }

  @Override
  TextPage detail(Source source) {
    return new TextPage()
        .title(source.key())
        .fact("authors", source.authors())
        .fact("year", source.year())
        .fact("title", source.title())
        .fact("published in", place(source))
        .fact("DOI", source.doi())
        .fact("how read", SourceWords.read(source.read()))
        .fact("note", source.note())
        .fact("parameters", String.join(", ", parameters(source)))
        .fact("treatments", String.join(", ", methods(source)))
        .fact("thresholds", String.join(", ", thresholds(source)));
  }

  @Override
  void write(JsonOutput out, Source source) {
    out.text("key", source.key())
        .text("authors", source.authors())
        .text("year", source.year())
        .text("title", source.title())
        .text("journal", source.journal())
        .text("volume", source.volume())
        .text("pages", source.pages())
        .text("doi", source.doi())
        .text("read", source.read().word())
        .text("note", source.note())
        .texts("parameters", parameters(source))
        .texts("treatments", methods(source))
        .texts("thresholdPlaces", thresholds(source));
  }

  private static String place(Source source) {
    List<String> parts = new ArrayList<>(List.of(source.journal(), source.volume()));
    parts.removeIf(String::isEmpty);
    String place = String.join(" ", parts);
    return source.pages().isEmpty() ? place : place + ": " + source.pages();
  }

  private static List<String> parameters(Source source) {
    return ParameterCatalogue.shipped().all().stream()
        .filter(parameter -> parameter.sourceKeys().contains(source.key()))
        .map(parameter -> parameter.id().id())
        .toList();
  }

  private static List<String> methods(Source source) {
    return MethodCatalogue.shipped().all().stream()
        .filter(method -> method.sourceKeys().contains(source.key()))
        .map(method -> method.id())
        .toList();
  }

  private static List<String> thresholds(Source source) {
    return ThresholdCatalogue.shipped().all().stream()
        .filter(threshold -> threshold.sourceKeys().contains(source.key()))
        .map(threshold -> threshold.place())
        .distinct()
        .toList();
  }

  private static final class Keys implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Bibliography.shipped().all().stream().map(Source::key).iterator();
    }
  }
}
