package org.undercap.treatment;

import java.util.ArrayList;
import java.util.List;
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
    if (applications.stream().map(a -> a.method().id()).distinct().count() != 1) {
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
   */
  public Treatment withStrength(double... perLane) {
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
    double ownStrength = strength[strength.length == 1 ? 0 : lane];
    return method.profile().response().hazard(amount, broodIndex) * susceptible * ownStrength;
  }

  @Override
  public List<Explanation> explain(SimulationDay day, int lane) {
    double released = amount(day.epochDay());
    if (released == 0) {
      return List.of();
    }
    EfficacyProfile profile = method.profile();
    double outside = day.temperature(lane);
    double factor = profile.temperature().factor(outside);
    double hazard = hazard(released * factor, day.broodIndex(lane), lane);
    List<Explanation> chain = new ArrayList<>();
    chain.add(Explanation.of(method.name() + ": release {} of the full amount", released, ""));
    if (profile.temperature() instanceof TemperatureResponse.Vapour vapour) {
      chain.add(Explanation.of("{} outside", outside, "C"));
      chain.add(Explanation.of("{} on the carrier", vapour.carrier(outside), "C"));
      chain.add(Explanation.of("vapour {} of that at the reference temperature", factor, ""));
    }
    if (profile.response() instanceof Response.Kill) {
      chain.add(Explanation.of("brood index {}", day.broodIndex(lane), ""));
    }
    if (susceptible < 1) {
      chain.add(Explanation.of("{} of the mites are susceptible", susceptible, "%"));
    }
    if (profile.reachesSealedBrood()) {
      chain.add(
          Explanation.of(
              "{} of the mites under the cappings killed",
              Hazard.fraction(hazard * profile.inCellRatio()),
              "%"));
    }
    return List.of(
        new Explanation("{} of the mites on bees killed", Hazard.fraction(hazard), "%", chain));
  }
}
