package org.undercap.cli.report;

import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.undercap.cli.output.CsvOutput;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.resistance.ResistanceYear;
import org.undercap.scenario.Scenario;

/** A study of resistance as text, table and document. */
public final class ResistancePage {
  private static final int VERSION = 1;
  private static final List<String> COLUMNS =
      List.of(
          "scheme",
          "year",
          "first_day",
          "plan",
          "substance_class",
          "resistant_fraction",
          "mites_on_last_day",
          "mites_per_100_bees_highest",
          "lost_on");

  private final Scenario scenario;
  private final Map<String, Double> first;
  private final Map<String, List<ResistanceYear>> schemes;

  /**
   * Takes a study.
   *
   * @param scenario what it began from
   * @param first share of resistant mites on the first day by class of substances (fraction)
   * @param schemes the years by name of the scheme
   */
  public ResistancePage(
      Scenario scenario, Map<String, Double> first, Map<String, List<ResistanceYear>> schemes) {
    this.scenario = scenario;
    this.first = new TreeMap<>(first);
    this.schemes = schemes;
  }

  /**
   * The page for people.
   *
   * @return text
   */
  public String text() {
    TextPage page =
        new TextPage()
            .title(scenario.name() + ", resistant mites through the years")
            .paragraph(
                "A study, not a forecast. Assumed: resistant mites are not killed by their class of"
                    + " substances at all and are otherwise like the others; they keep this from"
                    + " mother to daughter; mites that arrive hold as many resistant ones as the"
                    + " colony on the first day. Middle values, usual weather.");
    schemes.forEach(
        (name, years) -> {
          page.heading(name).table(table(years));
          ResistanceYear last = years.get(years.size() - 1);
          last.lostOn().ifPresent(day -> page.paragraph("The colony is lost on " + day + "."));
        });
    return page.render();
  }

  private TextTable table(List<ResistanceYear> years) {
    TextTable table = new TextTable().number("year").text("plan");
    List<String> classes = shown();
    classes.forEach(name -> table.number("resist\n" + name + " (%)"));
    table.number("mites at\nits end").number("highest\n(mites per\n100 bees)");
    table.row(cells("", "first day", first, "", ""));
    for (ResistanceYear year : years) {
      table.row(
          cells(
              Integer.toString(year.number()),
              year.plan(),
              year.resistant(),
              year.lostOn().isPresent() ? "lost" : Numbers.rounded(year.mites(), 3),
              Numbers.rounded(year.highestPer100Bees(), 2)));
    }
    return table;
  }

  /** Classes to which some mites resist. */
  private List<String> shown() {
    return first.keySet().stream().filter(name -> first.get(name) > 0).toList();
  }

  private String[] cells(
      String year, String plan, Map<String, Double> shares, String mites, String highest) {
    List<String> cells = new ArrayList<>(List.of(year, plan));
    shown().forEach(name -> cells.add(Numbers.rounded(100 * shares.get(name), 3)));
    cells.add(mites);
    cells.add(highest);
    return cells.toArray(String[]::new);
  }

  /**
   * The table for programs: one row for each scheme, year and class of substances.
   *
   * @param writer where to write; not closed
   */
  public void csv(Writer writer) {
    CsvOutput csv = CsvOutput.withHeader(writer, COLUMNS);
    schemes.forEach(
        (scheme, years) -> {
          for (ResistanceYear year : years) {
            new TreeMap<>(year.resistant())
                .forEach(
                    (name, share) ->
                        csv.row(
                            scheme,
                            year.number(),
                            year.from(),
                            year.plan(),
                            name,
                            share,
                            year.mites(),
                            year.highestPer100Bees(),
                            year.lostOn()));
          }
        });
  }

  /**
   * The document for programs.
   *
   * @param writer where to write; flushed, not closed
   */
  public void json(Writer writer) {
    JsonOutput.write(
        writer,
        "resistance",
        VERSION,
        json ->
            json.text("scenario", scenario.name())
                .flag("study", true)
                .list(
                    "schemes",
                    List.copyOf(schemes.entrySet()),
                    (entry, scheme) ->
                        entry
                            .text("name", scheme.getKey())
                            .list("years", scheme.getValue(), ResistancePage::year)));
  }

  private static void year(JsonOutput json, ResistanceYear year) {
    json.number("year", year.number())
        .text("firstDay", year.from().toString())
        .text("plan", year.plan())
        .list(
            "resistant",
            List.copyOf(new TreeMap<>(year.resistant()).entrySet()),
            (entry, share) ->
                entry.text("substanceClass", share.getKey()).number("fraction", share.getValue()))
        .number("mitesOnLastDay", year.mites())
        .number("mitesPer100BeesHighest", year.highestPer100Bees())
        .text("lostOn", year.lostOn().map(Object::toString).orElse(""));
  }
}
