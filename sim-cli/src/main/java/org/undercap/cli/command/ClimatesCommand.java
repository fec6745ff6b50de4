package org.undercap.cli.command;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.Hemisphere;
import org.undercap.climate.MonthlyTable;
import org.undercap.climate.SeasonDay;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows the climates that the program knows. */
@Command(
    name = "climates",
    description = "Shows the climates: temperature and egg-laying through the year.",
    footerHeading = "%nExamples:%n",
    footer = {"  undercap climates", "  undercap climates central-european"})
final class ClimatesCommand extends CatalogueCommand<Climate> {
  private static final String ASSUMED =
      "The tables of laying are assumptions that join published courses of brood with common"
          + " practice. A scenario can replace them, and the temperatures, by its own.";
  private static final int BAR = 30;
  private static final int MID_MONTH = 15;
  private static final int PERCENT = 100;

  /** Any year without a leap day gives the same days. */
  private static final int YEAR = 2001;

  @Parameters(
      arity = "0..1",
      paramLabel = "ID",
      completionCandidates = Ids.class,
      description = "The climate to show month by month; all if none is named.")
  private String id;

  @Override
  String kind() {
    return "climate";
  }

  @Override
  List<Climate> all() {
    return ClimateCatalogue.shipped().all();
  }

  @Override
  String idOf(Climate climate) {
    return climate.id();
  }

  @Override
  String wanted() {
    return id;
  }

  @Override
  TextPage table(List<Climate> climates) {
    TextTable table =
        new TextTable()
            .name("climate")
            .text("place")
            .number("coldest\nday (C)")
            .number("warmest\nday (C)")
            .number("most eggs\n(per day)")
            .name("laid in");
    for (Climate climate : climates) {
      double[] days =
          IntStream.rangeClosed(1, SeasonDay.DAYS)
              .mapToDouble(climate.temperature()::at)
              .sorted()
              .toArray();
      double most = climate.eggs().max();
      table.row(
          climate.id(),
          climate.description(),
          Numbers.fixed(days[0], 0),
          Numbers.fixed(days[days.length - 1], 0),
          Numbers.exact(most),
          monthsWith(climate, most));
    }
    return new TextPage()
        .table(table)
        .paragraph("Days: daily mean outside. Eggs: a good queen in a very large colony.")
        .paragraph(ASSUMED)
        .paragraph("Show one month by month: undercap climates ID");
  }

  @Override
  TextPage detail(Climate climate) {
    TextTable table =
        new TextTable()
            .name("on the 15th")
            .number("daily mean\noutside (C)")
            .number("eggs\n(per day)")
            .number("into drone\ncells (%)")
            .name("laying");
    for (Month month : Month.values()) {
      double eggs = at(climate.eggs(), month);
      int bar = (int) Math.round(BAR * eggs / Math.max(1, climate.eggs().max()));
      table.row(
          name(month),
          Numbers.fixed(outside(climate, month), 1),
          Numbers.exact(eggs),
          Numbers.fixed(PERCENT * at(climate.droneShare(), month), 2),
          "#".repeat(bar));
    }
    return new TextPage()
        .title(climate.description())
        .fact("climate", climate.id())
        .fact("hemisphere", climate.hemisphere() == Hemisphere.NORTH ? "north" : "south")
        .table(table)
        .paragraph(
            "Eggs: what a good queen in a very large colony lays; smaller colonies rear fewer.")
        .paragraph(ASSUMED);
  }

  @Override
  void write(JsonOutput out, Climate climate) {
    out.text("id", climate.id())
        .text("description", climate.description())
        .text("hemisphere", climate.hemisphere().name().toLowerCase(Locale.ROOT))
        .numbers(
            "dailyMeanCelsiusOnThe15th",
            Arrays.stream(Month.values()).map(month -> outside(climate, month)).toList())
        .numbers("midMonthEggsPerDay", climate.eggs().values())
        .numbers("midMonthDroneShare", climate.droneShare().values())
        .text("kind", "assumption");
  }

  private static double outside(Climate climate, Month month) {
    return climate.temperature().at(SeasonDay.of(LocalDate.of(YEAR, month, MID_MONTH)));
  }

  private static double at(MonthlyTable table, Month month) {
    return table.values().get(month.getValue() - 1);
  }

  private static String monthsWith(Climate climate, double eggs) {
    return Arrays.stream(Month.values())
        .filter(month -> at(climate.eggs(), month) == eggs)
        .map(ClimatesCommand::name)
        .collect(Collectors.joining(", "));
  }

  private static String name(Month month) {
    return month.getDisplayName(TextStyle.SHORT, Locale.ROOT);
  }

  private static final class Ids implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return ClimateCatalogue.shipped().all().stream().map(Climate::id).iterator();
    }
  }
}
