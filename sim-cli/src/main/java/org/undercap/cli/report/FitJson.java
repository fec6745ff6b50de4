package org.undercap.cli.report;

import java.io.Writer;
import java.util.List;
import org.undercap.calibration.FitResult;
import org.undercap.calibration.FittedParameter;
import org.undercap.calibration.FittedStart;
import org.undercap.calibration.Foretold;
import org.undercap.calibration.GrowthFitResult;
import org.undercap.calibration.PredictiveCheck;
import org.undercap.cli.output.JsonOutput;

/** What a fit found, as JSON. */
public final class FitJson {
  private static final int VERSION = 1;

  private FitJson() {}

  /**
   * Writes the document.
   *
   * @param writer where to write; not closed
   * @param study what was found
   */
  public static void write(Writer writer, FitStudy study) {
    FitResult fit = study.fit();
    JsonOutput.write(
        writer,
        "fit",
        VERSION,
        json -> {
          json.text("name", study.name())
              .number("seed", study.settings().seed())
              .number("starts", fit.starts())
              .number("startsAgreeing", fit.startsAgreeing())
              .flag("cutOff", fit.exhausted())
              .number("evaluations", fit.evaluations())
              .number("logLikelihood", fit.logLikelihood())
              .number("logPosterior", fit.logPosterior())
              .list("parameters", fit.parameters(), FitJson::parameter)
              .texts("unidentified", fit.unidentified())
              .list("correlations", fit.correlations(), (j, row) -> j.numbers("row", row));
          study
              .growth()
              .ifPresent(growth -> json.list("growth", growth.reached(), FitJson::reached));
          study.counts().ifPresent(counts -> counts(json, counts));
        });
  }

  private static void parameter(JsonOutput json, FittedParameter p) {
    json.text("name", p.name())
        .number("value", p.value())
        .number("low95", p.low())
        .number("high95", p.high())
        .flag("openBelow", p.openBelow())
        .flag("openAbove", p.openAbove())
        .number("uncertaintyLeft", p.priorLeft())
        .flag("unidentified", p.unidentified());
  }

  private static void reached(JsonOutput json, GrowthFitResult.Reached reached) {
    json.text("climate", reached.target().climate().id())
        .number("wantedPerDay", reached.target().rate())
        .number("wantedLowPerDay", reached.target().low())
        .number("wantedHighPerDay", reached.target().high())
        .number("reachedPerDay", reached.rate())
        .number("reachedLow95PerDay", reached.low())
        .number("reachedHigh95PerDay", reached.high())
        .flag("inside", reached.inside());
    if (!Double.isNaN(reached.before())) {
      json.number("beforePerDay", reached.before());
    }
  }

  private static void counts(JsonOutput json, FitStudy.Counts counts) {
    json.object("check", j -> check(j, counts.check()));
    counts.heldOut().ifPresent(held -> json.object("heldOut", j -> check(j, held)));
    counts.lastFitted().ifPresent(last -> json.text("lastFitted", last.toString()));
    json.list("startMites", counts.starts(), FitJson::start)
        .list("counts", counts.foretold(), FitJson::foretold);
  }

  private static void check(JsonOutput json, PredictiveCheck check) {
    json.number("counts", check.counts())
        .number("meanLogProbability", check.logScore())
        .number("inside80", check.inside80())
        .number("inside95", check.inside95())
        .number("simulatedFitWorse", check.misfitShare());
  }

  private static void start(JsonOutput json, FittedStart start) {
    json.text("colony", start.colony())
        .number("medianMites", start.median())
        .number("low95Mites", start.low())
        .number("high95Mites", start.high());
  }

  private static void foretold(JsonOutput json, Foretold count) {
    json.text("colony", count.colony())
        .text("date", count.date().toString())
        .text("kind", count.kind())
        .number("found", count.found())
        .number("foretoldMean", count.mean())
        .number("foretoldLow95", count.low())
        .number("foretoldHigh95", count.high());
  }

  /** The tables of a study have one column each of these. */
  static final List<String> COUNT_COLUMNS =
      List.of(
          "colony",
          "date",
          "kind",
          "found",
          "foretold_mean",
          "foretold_low_95",
          "foretold_high_95",
          "fitted");
}
