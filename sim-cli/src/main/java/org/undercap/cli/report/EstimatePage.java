package org.undercap.cli.report;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.undercap.cli.output.Days;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.monitoring.CountCheck;
import org.undercap.monitoring.EstimateWarning;
import org.undercap.monitoring.Interval;
import org.undercap.monitoring.MiteDistribution;
import org.undercap.monitoring.MiteEstimate;
import org.undercap.monitoring.WidthSource;
import org.undercap.scenario.ChosenThreshold;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Caution;
import org.undercap.treatment.CautionCatalogue;

/** The mites that counts speak for, as a page of text for the terminal. */
public final class EstimatePage {
  static final double NARROW = 0.80;
  static final double WIDE = 0.95;
  private static final int FIGURES = 2;
  private static final double PERCENT = 100;
  private static final double POORLY = 0.1;
  private static final double HARDLY = 0.01;
  private static final double WORTH_TELLING = 0.05;

  private final Scenario scenario;
  private final MiteEstimate estimate;

  /**
   * A page of an estimate.
   *
   * @param scenario the scenario that holds the counts
   * @param estimate what they say
   */
  public EstimatePage(Scenario scenario, MiteEstimate estimate) {
    this.scenario = scenario;
    this.estimate = estimate;
  }

  /**
   * The page.
   *
   * @return its text
   */
  public String render() {
    TextPage page =
        new TextPage().title(scenario.name() + ", mites on " + Days.words(estimate.date()));
    if (scenario.study()) {
      page.paragraph("STUDY RUN, NOT ADVICE");
    }
    page.paragraph(answer()).table(figures());
    page.paragraph(
        "All mites are those on the bees and under the cappings. A wash finds a little less than"
            + " the mites per 100 bees.");
    threshold(page);
    warnings(page);
    width(page);
    counts(page);
    page.heading("Cautions");
    Caution caution = CautionCatalogue.shipped().get("every-report");
    return page.item(caution.title() + ": " + caution.text()).render();
  }

  private String answer() {
    if (estimate.warnings().contains(EstimateWarning.NOTHING_FOUND)) {
      return "No mites were found. There are at most about "
          + rounded(estimate.mites().quantile(WIDE))
          + " mites in the colony (right in 19 of 20 such cases); there may be far fewer.";
    }
    Interval wide = estimate.mites().interval(WIDE);
    return "About "
        + rounded(estimate.mites().median())
        + " mites in the colony, "
        + rounded(estimate.mitesPer100Bees().median())
        + " on 100 bees. It may well be any number of mites from "
        + rounded(wide.low())
        + " to "
        + rounded(wide.high())
        + ".";
  }

  private TextTable figures() {
    TextTable table =
        new TextTable().text("").number("middle").name("80 % range").name("95 % range");
    row(table, "all mites", estimate.mites());
    row(table, "mites per 100 bees", estimate.mitesPer100Bees());
    return table;
  }

  private static void row(TextTable table, String label, MiteDistribution mites) {
    table.row(
        label, rounded(mites.median()), range(mites.interval(NARROW)), range(mites.interval(WIDE)));
  }

  private void threshold(TextPage page) {
    if (scenario.threshold().isEmpty()) {
      page.paragraph(
          "The scenario names no threshold; \"undercap thresholds\" lists published ones.");
      return;
    }
    ChosenThreshold limit = scenario.threshold().get();
    String from = limit.source().map(source -> " (" + source.key() + ")").orElse("");
    page.paragraph(
        "Threshold: "
            + Numbers.exact(limit.mitesPer100Bees())
            + " mites per 100 bees"
            + from
            + ". The colony is above it with a probability of "
            + Numbers.percent(shareAbove(limit, estimate))
            + ".");
  }

  /** Share of the belief that lies above a threshold (fraction). */
  static double shareAbove(ChosenThreshold limit, MiteEstimate estimate) {
    double at = limit.mitesPer100Bees();
    double below = at > 0 ? estimate.mitesPer100Bees().cumulative(at) : 0;
    return Math.max(0, Math.min(1, 1 - below));
  }

  private void warnings(TextPage page) {
    if (!estimate.warnings().isEmpty()) {
      page.heading("Warnings");
      estimate.warnings().forEach(warning -> page.item(sentence(warning)));
    }
  }

  private static String sentence(EstimateWarning warning) {
    String next =
        switch (warning) {
          case SMALL_SAMPLE -> "; take a second, larger sample before you decide";
          case NOTHING_FOUND -> "; a larger sample would lower that limit";
          case CONFLICT ->
              "; look below for the one that fits least, check how it was made, and count again";
          case SATURATED, NO_SUCH_BROOD -> "";
        };
    String words = warning.words();
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + next + ".";
  }

  private void width(TextPage page) {
    List<Map.Entry<WidthSource, Double>> shares =
        estimate.widthShares().entrySet().stream()
            .filter(share -> share.getValue() >= WORTH_TELLING)
            .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
            .toList();
    page.heading("Where the width of the range comes from");
    for (Map.Entry<WidthSource, Double> share : shares) {
      page.item(
          Math.round(PERCENT * share.getValue())
              + " % from "
              + share.getKey().words()
              + cure(share.getKey()));
    }
  }

  private static String cure(WidthSource source) {
    return switch (source) {
      case SAMPLE -> ": more bees in the jar, or a second sample, would narrow it";
      case BEES -> ": count the covered frames again, early in the day";
      case BROOD -> ": look at the brood frame by frame";
      case METHOD -> ": methods find different shares of the mites; a second method would help";
      case TREATMENT -> ": only a count after it can tell how well it worked here";
    };
  }

  private void counts(TextPage page) {
    TextTable table =
        new TextTable()
            .text("count")
            .text("found")
            .text("by itself it says\n(95 % range)")
            .number("estimate\nexpects")
            .text("fits");
    for (CountCheck check : estimate.counts()) {
      table.row(
          Days.words(check.count().date()) + ", " + CountWords.kind(check.count()),
          CountWords.found(check.count()),
          range(check.exact()) + " " + CountWords.unit(check.count()),
          rounded(check.expected()),
          fit(check.probability()));
    }
    page.heading("Each count beside the estimate").table(table);
    page.paragraph(
        "A count fits poorly if fewer than 1 in 10 colonies like the estimated one would give one so"
            + " far off, and hardly if fewer than 1 in 100 would.");
    long later = scenario.counts().stream().filter(c -> c.date().isAfter(scenario.start())).count();
    if (later > 0) {
      page.paragraph(
          "Counts after "
              + Days.words(scenario.start())
              + " are not used here ("
              + later
              + "); \"undercap efficacy\" uses the last of them.");
    }
  }

  private static String fit(double probability) {
    if (probability < HARDLY) {
      return "hardly";
    }
    return probability < POORLY ? "poorly" : "well";
  }

  private static String range(Interval interval) {
    return Numbers.range(interval.low(), interval.high(), FIGURES);
  }

  private static String rounded(double value) {
    return Numbers.rounded(value, FIGURES);
  }
}
