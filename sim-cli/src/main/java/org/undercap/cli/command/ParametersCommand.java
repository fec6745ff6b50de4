package org.undercap.cli.command;

import java.util.Iterator;
import java.util.List;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.ParameterWords;
import org.undercap.cli.output.SourceWords;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;
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
          ParameterWords.range(parameter).replace("; ", ";\n"),
          ParameterWords.unit(parameter),
          parameter.kind().word());
    }
    return new TextPage()
        .table(table)
        .paragraph(
            "Range: what is plausible. "
                + ParameterWords.kinds()
                + " "
                + SourceWords.MEMORY_MEANING
                + ".")
        .paragraph("Explain one: undercap parameters ID. Its source: undercap sources KEY");
  }

  @Override
  TextPage detail(Parameter parameter) {
    String range = ParameterWords.range(parameter);
    TextPage page =
        new TextPage()
            .title(idOf(parameter))
            .fact("value", Numbers.exact(parameter.values()))
            .fact("unit", ParameterWords.unit(parameter))
            .fact("plausible range", range.isEmpty() ? "not known" : range)
            .fact("must be", parameter.id().domain().accepted())
            .fact("kind", parameter.kind().word() + ": " + ParameterWords.meaning(parameter.kind()))
            .fact("in ensembles", ParameterWords.spread(parameter))
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

  private static final class Ids implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return ParameterCatalogue.shipped().all().stream().map(p -> p.id().id()).iterator();
    }
  }
}
