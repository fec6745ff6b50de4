package org.undercap.cli.command;

import java.util.List;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.report.MethodPages;
import org.undercap.treatment.Method;
import org.undercap.treatment.Release;
import org.undercap.treatment.Response;
import org.undercap.treatment.TemperatureResponse;

/** Writes a treatment with its whole profile for programs. */
final class MethodJson {
  private MethodJson() {}

  static void write(JsonOutput out, Method method) {
    out.text("id", method.id())
        .text("name", method.name())
        .text("substance", method.substance())
        .text("substanceClass", method.substanceClass())
        .object("release", o -> release(o, method.profile().release()))
        .object("temperature", o -> temperature(o, method.profile().temperature()))
        .object("response", o -> response(o, method.profile().response()))
        .number("inCellRatio", method.profile().inCellRatio())
        .number("layingFallFraction", method.profile().sideEffects().laying())
        .number("adultHazardPerDay", method.profile().sideEffects().adults())
        .number("openBroodHazardPerDay", method.profile().sideEffects().openBrood())
        .number("humidFactor", method.humidFactor())
        .number("carrierDays", method.carrierDays())
        .number("coolLimitCelsius", method.coolLimit())
        .number("hotLimitCelsius", method.hotLimit())
        .number("minutesPerVisit", method.minutes())
        .flag("organic", method.organic())
        .text("publishedEfficacy", method.aimsAt())
        .texts("sources", method.sourceKeys())
        .text("note", method.note())
        .object(
            "cautions", o -> MethodPages.cautions(method).forEach(c -> o.text(c.id(), c.text())));
  }

  private static void release(JsonOutput out, Release release) {
    if (release instanceof Release.Pulse pulse) {
      out.text("kind", "pulse").numbers("shares", pulse.shares());
    } else if (release instanceof Release.Decay decay) {
      out.text("kind", "decay")
          .number("halfLifeDays", decay.halfLife())
          .number("lagDays", decay.lag());
    } else if (release instanceof Release.Plateau plateau) {
      out.text("kind", "plateau").number("rampDays", plateau.ramp());
    }
    out.number("days", release.days());
  }

  private static void temperature(JsonOutput out, TemperatureResponse response) {
    if (response instanceof TemperatureResponse.Vapour vapour) {
      out.text("kind", "vapour")
          .number("referenceCelsius", vapour.reference())
          .number("carrierShare", vapour.carrierShare())
          .number("broodNestCelsius", vapour.nest())
          .numbers(
              "vapourPressureLnPascalKelvinKelvin",
              List.of(vapour.line().a(), vapour.line().b(), vapour.line().c()));
    } else {
      out.text("kind", "none");
    }
  }

  private static void response(JsonOutput out, Response response) {
    if (response instanceof Response.Kill kill) {
      out.text("kind", "kill")
          .number("killedWithoutBroodFraction", kill.broodless())
          .number("killedWithFullBroodFraction", kill.fullBrood());
    } else if (response instanceof Response.Constant constant) {
      out.text("kind", "hazard").number("hazardPerDay", constant.perDay());
    } else if (response instanceof Response.Hill hill) {
      out.text("kind", "hill")
          .number("largestHazardPerDay", hill.largest())
          .number("fullMicrogramsPerLitre", hill.full())
          .number("halfEffectMicrogramsPerLitre", hill.half())
          .number("exponent", hill.exponent());
    }
  }
}
