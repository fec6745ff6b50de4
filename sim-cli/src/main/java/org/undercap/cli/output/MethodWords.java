package org.undercap.cli.output;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.undercap.model.Hazard;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.treatment.EfficacyProfile;
import org.undercap.treatment.Method;
import org.undercap.treatment.Release;
import org.undercap.treatment.Response;
import org.undercap.treatment.SideEffects;
import org.undercap.treatment.TemperatureResponse;

/** Says in the words of the trade what the profile of a method means. */
public final class MethodWords {
  /** Place of the sealed stage among the days of brood. */
  private static final int SEALED = 2;

  private final Method method;
  private final EfficacyProfile profile;
  private final ParameterSet parameters;

  /**
   * Creates the words of a method with the shipped parameters.
   *
   * @param method the method
   */
  public MethodWords(Method method) {
    this.method = method;
    this.profile = method.profile();
    this.parameters = ParameterSet.shipped();
  }

  /**
   * The daily mean temperatures between which it is commonly used.
   *
   * @return for example {@code 15 to 30} or {@code over 3} (C), or {@code any}
   */
  public String usualTemperatures() {
    OptionalDouble cool = method.coolLimit();
    OptionalDouble hot = method.hotLimit();
    if (cool.isPresent() && hot.isPresent()) {
      return Numbers.exactRange(cool.getAsDouble(), hot.getAsDouble());
    }
    if (cool.isPresent()) {
      return "over " + Numbers.exact(cool.getAsDouble());
    }
    return hot.isPresent() ? "under " + Numbers.exact(hot.getAsDouble()) : "any";
  }

  /**
   * When it acts after an application.
   *
   * @return sentences
   */
  public String release() {
    Release release = profile.release();
    if (release instanceof Release.Pulse pulse) {
      return pulse(pulse.shares());
    }
    String text;
    if (release instanceof Release.Decay decay) {
      String lag = decay.lag() > 0 ? "builds up over about " + days(decay.lag()) + ", then " : "";
      text = lag + "falls by half every " + days(decay.halfLife());
    } else {
      int full = (int) Math.ceil(((Release.Plateau) release).ramp());
      text = full <= 1 ? "even from the first day on" : "even once it is full, after " + days(full);
    }
    return "Slow release: " + text + ". " + end(release.days());
  }

  /**
   * Which mites it reaches.
   *
   * @return sentences
   */
  public String reach() {
    if (profile.reachesSealedBrood()) {
      return "Mites on the bees and mites in sealed brood. Under the cappings it kills at "
          + Numbers.percent(Math.min(1, profile.inCellRatio()))
          + " of the rate on the bees.";
    }
    String sealed =
        "Only mites on the bees. Mites in sealed brood are out of reach for up to "
            + Numbers.exact(parameters.value(ParameterId.BROOD_WORKER_DAYS, SEALED))
            + " days (workers) or "
            + days(parameters.value(ParameterId.BROOD_DRONE_DAYS, SEALED))
            + " (drones)";
    return profile.slowRelease()
        ? sealed + "; they meet it when they come out with the young bees, while it still acts."
        : sealed + "; they come out with the young bees when it has stopped acting.";
  }

  /**
   * How strongly it kills the mites on the bees in the model.
   *
   * @return sentences
   */
  public String strength() {
    if (profile.response() instanceof Response.Kill kill) {
      return kill.broodless() == kill.fullBrood()
          ? Numbers.percent(kill.broodless()) + " per dose."
          : Numbers.percent(kill.broodless())
              + " per dose without brood, "
              + Numbers.percent(kill.fullBrood())
              + " with a full brood nest.";
    }
    if (profile.temperature() instanceof TemperatureResponse.Vapour vapour) {
      List<String> parts = new ArrayList<>();
      temperatures(vapour)
          .forEach(t -> parts.add(Numbers.percent(killedPerDay(t)) + " at " + celsius(t)));
      return "Per day at fullest release: " + String.join(", ", parts) + " (daily mean outside).";
    }
    return Numbers.percent(killedPerDay(0)) + " per day at fullest release.";
  }

  /**
   * How temperature changes it.
   *
   * @return sentences
   */
  public String temperature() {
    String effect =
        profile.evaporates()
            ? "It works by evaporating: weak in the cold, strong in the heat."
                + " An open floor leaves "
                + Numbers.percent(parameters.value(ParameterId.FLOOR_OPEN_FACTOR))
                + " of the vapour (assumption)."
            : "Makes no difference in the model.";
    return effect + limits();
  }

  /**
   * What it does to bees and brood in the model.
   *
   * @return a sentence
   */
  public String sideEffects() {
    SideEffects effects = profile.sideEffects();
    List<String> parts = new ArrayList<>();
    if (effects.laying() > 0) {
      parts.add("the queen lays " + Numbers.percent(effects.laying()) + " less");
    }
    if (effects.adults() > 0) {
      parts.add(Numbers.percent(Hazard.fraction(effects.adults())) + " of the bees die");
    }
    if (effects.openBrood() > 0) {
      parts.add(Numbers.percent(Hazard.fraction(effects.openBrood())) + " of the larvae die");
    }
    if (parts.isEmpty()) {
      return "None in the model.";
    }
    String when = profile.slowRelease() ? "Per day at full strength: " : "Per dose: ";
    return when + String.join(", ", parts) + " (assumption).";
  }

  /**
   * What else changes how it works: the place and resistant mites.
   *
   * @return sentences, empty if there is nothing to say
   */
  public String circumstances() {
    List<String> parts = new ArrayList<>();
    if (method.humidFactor() != 1) {
      parts.add(
          "In humid places "
              + Numbers.percent(method.humidFactor())
              + " of the amount acts (assumption).");
    }
    return String.join(" ", parts);
  }

  private String end(int days) {
    int carrier = method.carrierDays();
    if (carrier == 0) {
      return "Acts for " + days(days) + ".";
    }
    return carrier == days
        ? "Acts until it is taken out after " + days(days) + "."
        : "Acts for " + days(days) + "; it is taken out after " + days(carrier) + ".";
  }

  private String limits() {
    List<String> parts = new ArrayList<>();
    method.coolLimit().ifPresent(c -> parts.add("too weak below " + celsius(c)));
    method.hotLimit().ifPresent(c -> parts.add("harmful above " + celsius(c)));
    return parts.isEmpty()
        ? ""
        : " Held to be "
            + String.join(" and ", parts)
            + " (daily mean outside; common practice, no source).";
  }

  /** The limits of use and the reference between them (C). */
  private DoubleStream temperatures(TemperatureResponse.Vapour vapour) {
    return DoubleStream.of(
            method.coolLimit().orElse(vapour.reference()),
            vapour.reference(),
            method.hotLimit().orElse(vapour.reference()))
        .sorted()
        .distinct();
  }

  /** Share of the mites on the bees that die on the day of the fullest release (fraction). */
  private double killedPerDay(double outside) {
    Release release = profile.release();
    double fullest = IntStream.range(0, release.days()).mapToDouble(release::at).max().orElse(0);
    double amount = fullest * profile.temperature().factor(outside);
    return Hazard.fraction(profile.response().hazard(amount, 0));
  }

  private static String pulse(List<Double> shares) {
    if (shares.size() == 1) {
      return "Single dose: acts on the day of use only.";
    }
    List<String> parts = shares.stream().map(Numbers::percent).toList();
    int last = parts.size() - 1;
    return "Single dose: "
        + String.join(", ", parts.subList(0, last))
        + " and "
        + parts.get(last)
        + " of its effect fall on the day of use and the "
        + (last == 1 ? "day" : last + " days")
        + " after it.";
  }

  private static String days(double number) {
    return Numbers.exact(number) + (number == 1 ? " day" : " days");
  }

  private static String celsius(double temperature) {
    return Numbers.exact(temperature) + " C";
  }
}
