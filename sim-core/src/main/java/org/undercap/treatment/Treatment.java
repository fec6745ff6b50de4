package org.undercap.treatment;

import java.util.ArrayList;
import java.util.List;
import org.undercap.internal.Checks;
import org.undercap.model.DayEffects;
import org.undercap.model.Hazard;
import org.undercap.parameter.ParameterId;
import org.undercap.simulation.Explanation;
import org.undercap.simulation.Intervention;
import org.undercap.simulation.SimulationDay;

/**
 * All applications of one method in a plan, acting together: what each releases on a day adds up to
 * the amount that acts, the temperature changes it, and the response makes a hazard of it, on the
 * bees and, for brood-penetrating methods, under the cappings.
 */
public final class Treatment implements Intervention {
  private final Method method;
  private final long[] appliedOn;
  private final double[] doses;
  private final double[] release;
  private final double setting;
  private final double susceptible;
  private final double[] strength;

  private Treatment(
      Method method,
      long[] appliedOn,
      double[] doses,
      double setting,
      double susceptible,
      double[] strength) {
    this.method = method;
    this.appliedOn = appliedOn;
    this.doses = doses;
    this.setting = setting;
    this.susceptible = susceptible;
    this.strength = strength;
    Release source = method.profile().release();
    release = new double[source.days()];
    for (int age = 0; age < release.length; age++) {
      release[age] = source.at(age);
    }
  }

  /**
   * A treatment of equal strength in all colonies.
   *
   * @param applications applications of one method, at least one
   * @param circumstances hive and place
   * @return the treatment
   * @throws IllegalArgumentException if there is none, or the methods differ
   */
  public static Treatment of(List<PlanStep.Application> applications, Circumstances circumstances) {
    if (applications.stream().map(PlanStep.Application::method).distinct().count() != 1) {
      throw new IllegalArgumentException("a treatment needs applications of one method");
    }
    Method method = applications.get(0).method();
    double floor =
        circumstances.openFloor() && method.profile().evaporates()
            ? circumstances.parameters().value(ParameterId.FLOOR_OPEN_FACTOR)
            : 1;
    double setting = floor * (circumstances.humid() ? method.humidFactor() : 1);
    double susceptible =
        1 - circumstances.resistantShares().getOrDefault(method.substanceClass(), 0.0);
    return new Treatment(
        method,
        applications.stream().mapToLong(a -> a.date().toEpochDay()).toArray(),
        applications.stream().mapToDouble(PlanStep.Application::dose).toArray(),
        setting,
        susceptible,
        new double[] {circumstances.parameters().value(ParameterId.TREATMENT_STRENGTH)});
  }

  /**
   * The same treatment with a strength of its own in each colony.
   *
   * @param perLane factor on the hazard, one value a colony, each finite and at least 0
   * @return the treatment
   * @throws IllegalArgumentException if a factor is out of range
   */
  public Treatment withStrength(double... perLane) {
    for (double factor : perLane) {
      Checks.notNegative(factor, "strength of a treatment");
    }
    return new Treatment(method, appliedOn, doses, setting, susceptible, perLane.clone());
  }

  /**
   * The method.
   *
   * @return the method
   */
  public Method method() {
    return method;
  }

  /** What is released on a day, before the temperature of the day. */
  private double amount(long epochDay) {
    double sum = 0;
    for (int i = 0; i < appliedOn.length; i++) {
      long age = epochDay - appliedOn[i];
      if (age >= 0 && age < release.length) {
        sum += release[(int) age] * doses[i];
      }
    }
    return sum * setting;
  }

  @Override
  public void act(SimulationDay day, DayEffects effects) {
    double released = amount(day.epochDay());
    if (released == 0) {
      return;
    }
    EfficacyProfile profile = method.profile();
    SideEffects harm = profile.sideEffects();
    for (int lane = 0; lane < day.lanes(); lane++) {
      double amount = released * profile.temperature().factor(day.temperature(lane));
      double hazard = hazard(amount, day.broodIndex(lane), lane);
      double relative = profile.response().relative(amount);
      effects.killMites(lane, hazard, hazard * profile.inCellRatio());
      effects.slowLaying(lane, Math.max(0, 1 - harm.laying() * relative));
      effects.harmBees(lane, harm.adults() * relative, harm.openBrood() * relative, 0);
    }
  }

  private double hazard(double amount, double broodIndex, int lane) {
    return method.profile().response().hazard(amount, broodIndex) * susceptible * strength(lane);
  }

  private double strength(int lane) {
    return strength[strength.length == 1 ? 0 : lane];
  }

  @Override
  public List<Explanation> explain(SimulationDay day, int lane) {
    double released = amount(day.epochDay());
    if (released == 0) {
      return List.of();
    }
    EfficacyProfile profile = method.profile();
    double amount = released * profile.temperature().factor(day.temperature(lane));
    double hazard = hazard(amount, day.broodIndex(lane), lane);
    List<Explanation> effects = new ArrayList<>();
    effects.add(
        new Explanation(
            "{} of the mites on bees killed",
            Hazard.fraction(hazard),
            "%",
            causes(day, lane, released)));
    if (profile.reachesSealedBrood()) {
      effects.add(
          new Explanation(
              "{} of the mites under the cappings killed",
              Hazard.fraction(hazard * profile.inCellRatio()),
              "%",
              List.of(
                  Explanation.of(
                      method.name() + ": hazard under the cappings {} of that on bees",
                      profile.inCellRatio(),
                      ""))));
    }
    addHarm(effects, profile.response().relative(amount));
    return List.copyOf(effects);
  }

  private List<Explanation> causes(SimulationDay day, int lane, double released) {
    EfficacyProfile profile = method.profile();
    List<Explanation> chain = new ArrayList<>();
    chain.add(Explanation.of(method.name() + ": {} of a full dose acts", released / setting, ""));
    if (setting != 1) {
      chain.add(Explanation.of("floor and humidity leave {} of it", setting, ""));
    }
    if (profile.temperature() instanceof TemperatureResponse.Vapour vapour) {
      double outside = day.temperature(lane);
      chain.add(Explanation.of("{} outside", outside, "C"));
      chain.add(Explanation.of("{} on the carrier", vapour.carrier(outside), "C"));
      String reference = "vapour {} of that at " + vapour.reference() + " C outside";
      chain.add(Explanation.of(reference, vapour.factor(outside), ""));
    }
    if (profile.response() instanceof Response.Kill) {
      chain.add(Explanation.of("brood nest at {} of its full size", day.broodIndex(lane), "%"));
    }
    if (susceptible < 1) {
      chain.add(Explanation.of("{} of the mites are susceptible", susceptible, "%"));
    }
    if (strength(lane) != 1) {
      chain.add(Explanation.of("{} times as strong in this colony", strength(lane), ""));
    }
    return chain;
  }

  private void addHarm(List<Explanation> effects, double relative) {
    SideEffects harm = method.profile().sideEffects();
    String name = method.name() + ": ";
    if (harm.laying() > 0) {
      effects.add(
          Explanation.of(name + "{} fewer eggs", Math.min(1, harm.laying() * relative), "%"));
    }
    if (harm.adults() > 0) {
      double dead = Hazard.fraction(harm.adults() * relative);
      effects.add(Explanation.of(name + "{} of the adult bees killed", dead, "%"));
    }
    if (harm.openBrood() > 0) {
      double dead = Hazard.fraction(harm.openBrood() * relative);
      effects.add(Explanation.of(name + "{} of the larvae killed", dead, "%"));
    }
  }
}
