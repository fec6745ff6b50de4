package org.undercap.cli.report;

import java.io.Writer;
import org.undercap.cli.output.JsonOutput;
import org.undercap.monitoring.Efficacy;
import org.undercap.monitoring.RankedCause;

/** What counts say about a treatment as one JSON document, at full precision. */
public final class EfficacyJson {
  private static final int VERSION = 1;

  private EfficacyJson() {}

  /**
   * Writes the document.
   *
   * @param writer where to write; not closed
   * @param report what the counts say
   */
  public static void write(Writer writer, EfficacyReport report) {
    Efficacy efficacy = report.efficacy();
    JsonOutput.write(
        writer,
        "efficacy",
        VERSION,
        json -> {
          json.text("formula", EstimateJson.word(efficacy.formula()))
              .text("source", efficacy.formula().sourceKey())
              .text("counted", report.counts().boards() ? "fallen mites" : "mites on bees")
              .number("colonies", efficacy.colonies())
              .number("untreatedColonies", report.counts().controlAfter().size())
              .number("efficacyFraction", efficacy.estimate());
          EstimateJson.interval(json, "range95Fraction", efficacy.interval());
          json.flag("exactRange", efficacy.exact())
              .number("minimumFraction", report.minimum())
              .text("verdict", EstimateJson.word(report.verdict()))
              .number("effortToSettleRatio", report.effort())
              .text("explained", report.explained())
              .list("causes", report.causes(), EfficacyJson::cause);
        });
  }

  private static void cause(JsonOutput json, RankedCause cause) {
    json.text("cause", cause.cause().id())
        .text("text", cause.cause().words())
        .number("weightFraction", cause.weight())
        .number("expected", cause.expected());
    EstimateJson.interval(json, "range80", cause.range());
    json.number("probability", cause.probability()).text("next", cause.cause().next());
  }
}
