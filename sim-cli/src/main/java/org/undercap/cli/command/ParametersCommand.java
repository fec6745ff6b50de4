package org.undercap.cli.command;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.SourceWords;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.parameter.Kind;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.Spread;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows the numbers of the model. */
@Command(
    name = "parameters",
    description = "Shows every number of the model with its range, unit and source.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap parameters",
      "  undercap parameters invasion.worker",
      "  undercap parameters --json > parameters.json"
    })
final class ParametersCommand extends CatalogueCommand<Parameter> {
  private static final String NO_UNIT = "-";

  @Parameters(
      arity = "0..1",
      paramLabel = "ID",
      completionCandidates = Ids.class,
      description = "The parameter to explain; all if none is named.")
  private String id;

  @Override
  String kind() {
    return "parameter";
  }

  @Override
  List<Parameter> all() {
    return ParameterCatalogue.shipped().all();
  }

  @Override
  String idOf(Parameter parameter) {
    return parameter.id().id();
  }

  @Override
  String wanted() {
    return id;
  }

  @Override
  TextPage table(List<Parameter> parameters) {
    TextTable table =
        new TextTable()
            .name("parameter\n  source")
            .numbers("value")
            .name("range")
            .text("unit")
            .name("kind");
    for (Parameter parameter : parameters) {
      table.row(
          idOf(parameter)
              + "\n  "
              + SourceWords.marked(parameter.sourceKeys(), parameter.read()).replace("\n", "\n  "),
          Numbers.exact(parameter.values()),
          range(parameter).replace("; ", ";\n"),
          unit(parameter),
          parameter.kind().word());
    }
    return new TextPage()
        .table(table)
        .paragraph("Range: what is plausible. " + kinds() + " " + SourceWords.MEMORY_MEANING + ".")
        .paragraph("Explain one: undercap parameters ID. Its source: undercap sources KEY");
  }

  @Override
  TextPage detail(Parameter parameter) {
    String range = range(parameter);
    TextPage page =
        new TextPage()
            .title(idOf(parameter))
            .fact("value", Numbers.exact(parameter.values()))
            .fact("unit", unit(parameter))
            .fact("plausible range", range.isEmpty() ? "not known" : range)
            .fact("must be", parameter.id().domain().accepted())
            .fact("kind", parameter.kind().word() + ": " + meaning(parameter.kind()))
            .fact("in ensembles", spread(parameter))
            .fact("symbol", parameter.symbol())
            .fact("note", parameter.note())
            .fact("how read", SourceWords.read(parameter.read()))
            .heading("Source");
    SourceWords.citations(parameter.sourceKeys()).forEach(page::item);
    return page;
  }

  @Override
  void write(JsonOutput out, Parameter parameter) {
    out.text("id", idOf(parameter))
        .text("symbol", parameter.symbol())
        .numbers("values", parameter.values())
        .numbers("low", parameter.low())
        .numbers("high", parameter.high())
        .text("unit", parameter.unit())
        .text("spread", parameter.spread().toString())
        .text("kind", parameter.kind().word())
        .texts("sources", parameter.sourceKeys())
        .text("read", parameter.read())
        .flag("fromMemory", SourceWords.fromMemory(parameter.read()))
        .text("note", parameter.note());
  }

  private static String unit(Parameter parameter) {
    return parameter.unit().equals(NO_UNIT) ? "none" : parameter.unit().replace(";", "; ");
  }

  private static String range(Parameter parameter) {
    List<String> ranges = new ArrayList<>();
    for (int i = 0; i < Math.min(parameter.low().size(), parameter.high().size()); i++) {
      ranges.add(Numbers.exactRange(parameter.low().get(i), parameter.high().get(i)));
    }
    return String.join("; ", ranges);
  }

  private static String spread(Parameter parameter) {
    Spread spread = parameter.spread();
    String amount = Numbers.exact(spread.amount());
    return switch (spread.shape()) {
      case FIXED -> "the same in every run";
      case NORMAL -> "differs from run to run: normal, standard deviation " + amount;
      case LOGNORMAL ->
          "differs from run to run: lognormal, value as median, standard deviation of the logarithm "
              + amount;
      case BETA -> "differs from run to run: beta between the ends of the range";
    };
  }

  private static String kinds() {
    List<String> kinds = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      kinds.add(kind.word() + " = " + meaning(kind));
    }
    return "Kind: " + String.join("; ", kinds) + ".";
  }

  private static String meaning(Kind kind) {
    return switch (kind) {
      case MEASURED -> "somebody measured it";
      case DERIVED -> "computed from published numbers";
      case CALIBRATED -> "chosen so that the model agrees with field data";
      case ASSUMPTION -> "nobody measured it";
    };
  }

  private static final class Ids implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return ParameterCatalogue.shipped().all().stream().map(p -> p.id().id()).iterator();
    }
  }
}
