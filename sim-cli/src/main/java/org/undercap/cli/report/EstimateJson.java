package org.undercap.cli.report;

import java.io.Writer;
import java.util.ArrayList;
import java.util.Locale;
import java.util.Map;
import org.undercap.cli.output.JsonOutput;
import org.undercap.monitoring.CountCheck;
import org.undercap.monitoring.EstimateWarning;
import org.undercap.monitoring.Interval;
import org.undercap.monitoring.MiteDistribution;
import org.undercap.monitoring.MiteEstimate;
import org.undercap.monitoring.WidthSource;
import org.undercap.scenario.ChosenThreshold;
import org.undercap.scenario.Scenario;

/** An estimate as one JSON document, at full precision. */
public final class EstimateJson {
  private static final int VERSION = 1;

  private EstimateJson() {}

  /**
   * Writes the document.
   *
   * @param writer where to write; not closed
   * @param scenario the scenario that holds the counts
   * @param estimate what they say
   */
  public static void write(Writer writer, Scenario scenario, MiteEstimate estimate) {
    JsonOutput.write(
        writer,
        "estimate",
        VERSION,
        json -> {
          json.text("scenario", scenario.name())
              .flag("study", scenario.study())
              .text("date", estimate.date().toString())
              .object("mites", to -> distribution(to, estimate.mites()))
              .object("mitesPer100Bees", to -> distribution(to, estimate.mitesPer100Bees()));
          scenario.threshold().ifPresent(limit -> threshold(json, limit, estimate));
          json.list(
                  "widthShares",
                  new ArrayList<>(estimate.widthShares().entrySet()),
                  EstimateJson::share)
              .list("warnings", new ArrayList<>(estimate.warnings()), EstimateJson::warning)
              .list("counts", estimate.counts(), EstimateJson::count);
        });
  }

  private static void distribution(JsonOutput json, MiteDistribution mites) {
    json.number("median", mites.median());
    interval(json, "range80", mites.interval(EstimatePage.NARROW));
    interval(json, "range95", mites.interval(EstimatePage.WIDE));
  }

  static void interval(JsonOutput json, String key, Interval interval) {
    json.object(key, to -> to.number("low", interval.low()).number("high", interval.high()));
  }

  private static void threshold(JsonOutput json, ChosenThreshold limit, MiteEstimate estimate) {
    json.object(
        "threshold",
        to ->
            to.number("mitesPer100Bees", limit.mitesPer100Bees())
                .text("source", limit.source().map(source -> source.key()).orElse(""))
                .number("probabilityAbove", EstimatePage.shareAbove(limit, estimate)));
  }

  private static void share(JsonOutput json, Map.Entry<WidthSource, Double> share) {
    json.text("source", word(share.getKey())).number("fraction", share.getValue());
  }

  private static void warning(JsonOutput json, EstimateWarning warning) {
    json.text("warning", word(warning)).text("text", warning.words());
  }

  private static void count(JsonOutput json, CountCheck check) {
    json.text("date", check.count().date().toString())
        .text("kind", CountWords.kind(check.count()))
        .number("found", check.count().found())
        .text("found95Unit", CountWords.unit(check.count()));
    interval(json, "found95", check.exact());
    json.number("expected", check.expected()).number("probability", check.probability());
  }

  static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
