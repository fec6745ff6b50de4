package org.undercap.cli.report;

import java.util.Locale;
import org.undercap.advice.Advice;
import org.undercap.advice.FlipPoint;
import org.undercap.advice.Followup;
import org.undercap.advice.NextWash;
import org.undercap.cli.output.JsonOutput;
import org.undercap.monitoring.Interval;
import org.undercap.monitoring.MiteDistribution;
import org.undercap.monitoring.MiteEstimate;

/** The part of the JSON document that tells what to do. */
final class AdviceJson {
  private static final double LEVEL = 0.95;

  private AdviceJson() {}

  static void write(JsonOutput json, Answer answer) {
    Advice advice = answer.advice();
    json.object(
        "advice",
        entry -> {
          entry
              .text("plan", advice.chosenPlan().name())
              .text("answer", AnswerWords.headline(answer))
              .list("dates", answer.dates(), AdviceJson::date);
          advice.followup().ifPresent(f -> entry.object("countAgain", o -> followup(o, f)));
          advice.nextWash().ifPresent(w -> entry.object("nextWash", o -> nextWash(o, w)));
          entry
              .list("wouldChangeIt", advice.flips(), AdviceJson::flip)
              .object(
                  "anotherWash",
                  o ->
                      o.number("bees", advice.anotherWash().bees())
                          .number("changesChoiceFraction", advice.anotherWash().changes()));
        });
    answer.estimate().ifPresent(e -> json.object("estimate", o -> estimate(o, e)));
  }

  private static void date(JsonOutput json, PlanDate date) {
    json.text("date", date.date().toString())
        .text("kind", date.kind().word())
        .text("what", date.words());
  }

  private static void followup(JsonOutput json, Followup followup) {
    json.text("date", followup.date().toString())
        .number("bees", followup.expected().bees())
        .number("expectedMites", followup.expected().expected())
        .number("expectedMitesLow", followup.expected().range().low())
        .number("expectedMitesHigh", followup.expected().range().high())
        .number("expectedMitesWithoutTreatment", followup.untreated())
        .number("alarmingMites", followup.expected().alarm())
        .number("falseAlarmFraction", followup.expected().falseAlarm())
        .number("failureNoticedFraction", followup.noticed());
  }

  private static void nextWash(JsonOutput json, NextWash wash) {
    json.text("date", wash.date().toString())
        .number("bees", wash.bees())
        .number("treatAtMites", wash.treatAt())
        .flag("mayReachLimit", wash.mayReachLimit());
  }

  private static void flip(JsonOutput json, FlipPoint flip) {
    json.text("what", flip.what())
        .text("change", flip.change())
        .text("thenFirst", flip.instead().orElse(""));
  }

  private static void estimate(JsonOutput json, MiteEstimate estimate) {
    json.text("date", estimate.date().toString());
    json.object("mites", o -> distribution(o, estimate.mites()));
    json.object("mitesPer100Bees", o -> distribution(o, estimate.mitesPer100Bees()));
    json.object(
        "shareOfWidth",
        o ->
            estimate
                .widthShares()
                .forEach(
                    (source, share) -> o.number(source.name().toLowerCase(Locale.ROOT), share)));
    json.texts("warnings", estimate.warnings().stream().map(w -> w.words()).toList());
  }

  private static void distribution(JsonOutput json, MiteDistribution distribution) {
    Interval interval = distribution.interval(LEVEL);
    json.number("median", distribution.median())
        .number("low95", interval.low())
        .number("high95", interval.high());
  }
}
