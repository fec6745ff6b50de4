package org.undercap.cli.report;

import java.io.Writer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.undercap.analysis.GrowthStudy;
import org.undercap.analysis.GrowthStudy.Influence;
import org.undercap.analysis.GrowthStudy.MonthGrowth;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.evidence.Evidence;
import org.undercap.evidence.PublishedCheck;

/** How fast the mites grow: for the terminal and as JSON. */
public final class GrowthPage {
  private static final int VERSION = 1;
  private static final String GROUP = "growth";
  private static final int RATE_DECIMALS = 5;
  private static final double WORTH_SHOWING = 0.005;

  private final boolean full;
  private final Map<String, GrowthStudy> studies = new LinkedHashMap<>();
  private final Map<String, String> failures = new LinkedHashMap<>();

  /**
   * An empty page.
   *
   * @param full whether to show months and parameters of each place
   */
  public GrowthPage(boolean full) {
    this.full = full;
  }

  /**
   * Adds a place.
   *
   * @param name its name
   * @param study growth of the mites there
   */
  public void add(String name, GrowthStudy study) {
    studies.put(name, study);
  }

  /**
   * Adds a place where there is no growth rate.
   *
   * @param name its name
   * @param reason why
   */
  public void addFailure(String name, String reason) {
    failures.put(name, reason);
  }

  /**
   * The page for the terminal.
   *
   * @return its text
   */
  public String text() {
    TextPage page = new TextPage().title("How fast the mites of an untreated colony grow");
    if (!studies.isEmpty()) {
      page.table(overview());
      page.paragraph(
          "Season: bees and brood change as they do in a year. Rate: slope of the logarithm of all"
              + " mites, 15 April to 15 September (in the south half a year later), from 50 mites on"
              + " 1 March, nothing arriving; doubling: days in which mites double at this rate;"
              + " times: mites on 15 September for each on 15 April. Autumn: mites on 1 October for"
              + " each on 1 March.");
      page.paragraph(
          "Bees held: bees and brood stay as they are in the middle of each of these months, and"
              + " the rates are averaged. Matrix: largest eigenvalue of a day; equation: the delay"
              + " equation in continuous time. Neither sees that late mites share cells.");
      page.paragraph(agreement());
    }
    failures.forEach((name, reason) -> page.paragraph(name + ": " + reason + "."));
    if (full) {
      studies.forEach((name, study) -> details(page, name, study));
    }
    page.heading("Published").table(published());
    page.paragraph(
        "\"undercap evidence --only growth\" holds the shipped model against these; \"undercap"
            + " sources KEY\" shows a source.");
    return page.render();
  }

  private TextTable overview() {
    TextTable table =
        new TextTable()
            .text("place")
            .number("season:\nrate\n(a day)")
            .number("season:\ndoubling\n(days)")
            .number("season:\nmites\n(times)")
            .number("autumn:\nmites\n(times)")
            .number("held:\nmatrix\n(a day)")
            .number("held:\nequation\n(a day)");
    studies.forEach(
        (name, study) ->
            table.row(
                name,
                rate(study.season().rate()),
                study.season().doublingDays().isPresent()
                    ? Numbers.rounded(study.season().doublingDays().getAsDouble(), 3)
                    : "never",
                Numbers.rounded(study.season().multiplication(), 3),
                Numbers.rounded(study.season().autumnPerWinterMite(), 3),
                rate(study.meanByMatrix()),
                rate(study.meanByEquation())));
    return table;
  }

  private String agreement() {
    double worst = studies.values().stream().mapToDouble(GrowthStudy::disagreement).max().orElse(0);
    return "With bees and brood held, a run of 400 days, the eigenvalue and the equation in the"
        + " model's days must give the same rate; the largest difference is "
        + String.format(Locale.ROOT, "%.0e", worst)
        + " per day. The equation in continuous time is near, as a day is short.";
  }

  private static void details(TextPage page, String name, GrowthStudy study) {
    page.heading(name + ": bees and brood held as they are on a day");
    TextTable months =
        new TextTable()
            .name("day")
            .number("brood\nindex")
            .number("run\n(a day)")
            .number("matrix\n(a day)")
            .number("equation, days\n(a day)")
            .number("equation, continuous\n(a day)");
    for (MonthGrowth month : study.months()) {
      months.row(
          DateWords.brief(month.date()),
          Numbers.fixed(month.broodIndex(), 2),
          rate(month.run()),
          rate(month.matrix()),
          rate(month.daily()),
          rate(month.continuous()));
    }
    page.table(months);
    page.heading(name + ": change of the growth rate (%) when a parameter rises by 1 %");
    TextTable table =
        new TextTable()
            .name("parameter")
            .number("value")
            .number("bees held\n(eigenvectors)")
            .number("whole season\n(two runs)");
    int left = 0;
    for (Influence influence : study.elasticities()) {
      if (shown(influence)) {
        table.row(
            influence.parameter().id(),
            Numbers.rounded(influence.value(), 4),
            percent(influence.held()),
            percent(influence.season()));
      } else {
        left++;
      }
    }
    page.table(table);
    page.paragraph(
        "Another "
            + left
            + " parameters change it by less than 0.005 %. Temperatures, numbers of days and tables"
            + " are not moved by per cent. A dash: not in the matrix.");
  }

  private static boolean shown(Influence influence) {
    return Math.abs(influence.held().orElse(0)) >= WORTH_SHOWING
        || Math.abs(influence.season().orElse(0)) >= WORTH_SHOWING;
  }

  private static String percent(OptionalDouble elasticity) {
    return elasticity.isPresent() ? Numbers.fixed(elasticity.getAsDouble(), 2) : "-";
  }

  private static String rate(double rate) {
    return Numbers.fixed(rate, RATE_DECIMALS);
  }

  private static TextTable published() {
    TextTable table =
        new TextTable().text("quantity").text("published").text("source").text("read");
    for (PublishedCheck check : checks()) {
      table.row(
          check.quantity(),
          check.published() + " " + check.unit(),
          String.join(", ", check.sourceKeys()),
          check.read());
    }
    return table;
  }

  private static List<PublishedCheck> checks() {
    return Evidence.all().stream()
        .filter(check -> check.group().equals(GROUP) && !check.sourceKeys().contains("arithmetic"))
        .toList();
  }

  /**
   * The page as JSON.
   *
   * @param writer where to write; not closed
   */
  public void json(Writer writer) {
    JsonOutput.write(
        writer,
        GROUP,
        VERSION,
        json ->
            json.list("places", List.copyOf(studies.entrySet()), (j, e) -> place(j, e))
                .list(
                    "withoutGrowth",
                    List.copyOf(failures.entrySet()),
                    (j, e) -> j.text("name", e.getKey()).text("reason", e.getValue()))
                .list("published", checks(), GrowthPage::published));
  }

  private static void place(JsonOutput json, Map.Entry<String, GrowthStudy> entry) {
    GrowthStudy study = entry.getValue();
    json.text("name", entry.getKey())
        .text("climate", study.climate().id())
        .number("slopePerDay", study.season().rate())
        .number("meanByMatrixPerDay", study.meanByMatrix())
        .number("meanByEquationPerDay", study.meanByEquation())
        .number("doublingDays", study.season().doublingDays())
        .number("multiplicationOverSeason", study.season().multiplication())
        .number("autumnMitesPerWinterMite", study.season().autumnPerWinterMite())
        .number("largestDisagreementPerDay", study.disagreement())
        .list("beesAndBroodHeld", study.months(), GrowthPage::month)
        .list("elasticities", study.elasticities(), GrowthPage::influence);
  }

  private static void month(JsonOutput json, MonthGrowth month) {
    json.text("monthDay", month.date().toString().substring(5))
        .number("broodIndex", month.broodIndex())
        .number("runPerDay", month.run())
        .number("matrixPerDay", month.matrix())
        .number("equationInDaysPerDay", month.daily())
        .number("equationContinuousPerDay", month.continuous());
  }

  private static void influence(JsonOutput json, Influence influence) {
    json.text("parameter", influence.parameter().id())
        .number("value", influence.value())
        .number("elasticityBeesHeld", influence.held())
        .number("elasticityWholeSeason", influence.season());
  }

  private static void published(JsonOutput json, PublishedCheck check) {
    json.text("id", check.id())
        .text("quantity", check.quantity())
        .text("published", check.published())
        .text("unit", check.unit())
        .texts("sources", check.sourceKeys())
        .text("read", check.read());
  }
}
