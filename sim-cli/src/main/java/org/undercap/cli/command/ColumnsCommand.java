package org.undercap.cli.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.UsageException;
import org.undercap.cli.report.Columns;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Explains the columns of tables. */
@Command(
    name = "columns",
    description = "Explains every column of the tables that the program writes and reads.",
    footerHeading = "%nExamples:%n",
    footer = {"  undercap columns", "  undercap columns batch", "  undercap columns mites"})
final class ColumnsCommand implements Callable<Integer> {
  private static final int SCHEMA_VERSION = 1;
  private static final Set<String> DESIGN = Set.of("design", "batch", "batch design");

  @Spec private CommandSpec spec;
  @Mixin private JsonOption json;

  @Parameters(
      arity = "0..1",
      paramLabel = "WORD",
      description = "Show the columns whose name or table holds this word (default: all).")
  private String word;

  @Override
  public Integer call() {
    List<Columns.Column> columns = word == null ? Columns.all() : holding(word);
    PrintWriter out = spec.commandLine().getOut();
    if (json.wanted()) {
      JsonOutput.write(
          out,
          spec.name(),
          SCHEMA_VERSION,
          to -> to.list(spec.name(), columns, ColumnsCommand::write));
    } else {
      if (word != null && DESIGN.contains(word.toLowerCase(Locale.ROOT))) {
        out.print("A design of three runs:\n" + BatchCommand.sample() + "\n");
      }
      out.print(page(columns).render());
    }
    out.flush();
    return ExitCodes.DONE;
  }

  private static List<Columns.Column> holding(String word) {
    String wanted = word.toLowerCase(Locale.ROOT);
    List<Columns.Column> found =
        Columns.all().stream()
            .filter(
                column ->
                    column.name().contains(wanted)
                        || column.tables().stream()
                            .anyMatch(table -> table.toLowerCase(Locale.ROOT).contains(wanted)))
            .toList();
    if (found.isEmpty()) {
      throw new UsageException(
          "no column or table like '" + word + "'; tables: " + String.join(", ", Columns.tables()));
    }
    return found;
  }

  private static TextPage page(List<Columns.Column> columns) {
    TextPage page = new TextPage();
    for (Columns.Column column : columns) {
      page.heading(column.name() + (column.unit().equals("-") ? "" : " (" + column.unit() + ")"))
          .paragraph(column.meaning())
          .paragraph("in: " + String.join(", ", column.tables()));
    }
    return page;
  }

  private static void write(JsonOutput json, Columns.Column column) {
    json.text("column", column.name())
        .text("unit", column.unit())
        .texts("tables", column.tables())
        .text("meaning", column.meaning());
  }
}
