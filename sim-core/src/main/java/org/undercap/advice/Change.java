package org.undercap.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.util.Precision;
import org.undercap.climate.Spell;
import org.undercap.climate.TemperatureCourse;
import org.undercap.ensemble.MiteBelief;
import org.undercap.hive.ArrivalLevel;
import org.undercap.scenario.HiveFacts;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Scenario;

/** One thing that may differ from what was written down, and how much of it is tried at most. */
enum Change {
  /** More or fewer mites than the counts say. */
  MITES("mites", "as many mites", 1, 8, true),
  /** More or less brood. */
  BROOD("brood", "as much brood", 1, 4, true),
  /** Warmer or cooler weeks from the first day on. */
  TEMPERATURE("temperature", "C", 0, 6, false),
  /** More or fewer mites arriving. */
  ARRIVALS("arrivals", "as many mites arriving", 1, 10, true),
  /** A closed floor (1) or an open one (-1), which loses what evaporates. */
  FLOOR("floor", "floor", 0, 1, false),
  /** A humid place (1) or one that is not (-1): some strips work less well where it is humid. */
  HUMID("humid", "place", 0, 1, false),
  /** The chosen plan begins later than planned. */
  START("start", "days", 0, 42, false);

  private static final int SPELL_DAYS = 55;

  /** Borders are rough, so what lies this close to a simple part is called so (fraction). */
  private static final double ROUGH = 0.07;

  private static final List<String> PARTS =
      List.of(
          "",
          "",
          "half",
          "a third",
          "a quarter",
          "a fifth",
          "a sixth",
          "a seventh",
          "an eighth",
          "a ninth",
          "a tenth");
  private final String id;
  private final String unit;
  private final double none;
  private final double most;
  private final boolean factor;

  Change(String id, String unit, double none, double most, boolean factor) {
    this.id = id;
    this.unit = unit;
    this.none = none;
    this.most = most;
    this.factor = factor;
  }

  String id() {
    return id;
  }

  /** Whether it is so or not, with nothing between. */
  boolean isWhole() {
    return this == FLOOR || this == HUMID;
  }

  /** A size of the change: 0 is none, 1 the most upwards, -1 the most downwards. */
  double amount(double size) {
    return factor ? StrictMath.pow(most, size) : none + size * most;
  }

  /** The size of an amount, at most 1; for changes that are no factors. */
  double sizeOf(double amount) {
    return Math.max(0, Math.min(1, (amount - none) / most));
  }

  /** The change in words, as in {@code 2.1 times as many mites}. */
  String words(double size) {
    double amount = amount(size);
    return switch (this) {
      case MITES, BROOD, ARRIVALS -> multiple(amount) + " " + unit;
      case TEMPERATURE ->
          String.format(
              Locale.ROOT,
              "%.1f C %s in the first 8 weeks",
              Math.abs(amount),
              amount > 0 ? "warmer" : "cooler");
      case FLOOR -> amount > 0 ? "a closed floor" : "an open mesh floor";
      case HUMID -> amount > 0 ? "a humid place" : "a place that is not humid";
      case START -> Math.round(Math.abs(amount)) + (amount > 0 ? " days later" : " days earlier");
    };
  }

  /** As in {@code 2.1 times}, {@code half} and {@code an eighth}. */
  private static String multiple(double amount) {
    double parts = 1 / amount;
    long whole = Math.round(parts);
    boolean named = whole >= 2 && whole < PARTS.size() && Math.abs(parts - whole) < ROUGH * whole;
    return named
        ? PARTS.get((int) whole)
        : Quantities.format(Precision.round(amount, amount < 1 ? 2 : 1)) + " times";
  }

  Scenario apply(Scenario scenario, String chosen, double size) {
    double amount = amount(size);
    return switch (this) {
      case MITES -> scenario;
      case BROOD -> scenario.withHive(hive(scenario.hive(), amount, scenario.hive().openFloor()));
      case FLOOR -> scenario.withHive(hive(scenario.hive(), 1, amount < 0));
      case HUMID -> scenario.withHumid(amount > 0);
      case TEMPERATURE ->
          scenario.withClimate(scenario.climate().withTemperature(spell(scenario, amount)));
      case ARRIVALS -> scenario.withArrivals(arrivals(scenario.arrivals(), amount));
      case START -> scenario.withPlans(moved(scenario.plans(), chosen, Math.round(amount)));
    };
  }

  MiteBelief apply(MiteBelief belief, double size) {
    return this == MITES ? belief.times(amount(size)) : belief;
  }

  private static TemperatureCourse spell(Scenario scenario, double degrees) {
    return new Spell(
        scenario.climate().temperature(),
        scenario.start(),
        scenario.start().plusDays(SPELL_DAYS),
        degrees);
  }

  private static HiveFacts hive(HiveFacts hive, double brood, boolean openFloor) {
    return new HiveFacts(
        hive.bees(),
        hive.broodCells() * brood,
        hive.frame(),
        hive.queenQuality(),
        openFloor,
        hive.supersOn());
  }

  private static ArrivalLevel arrivals(ArrivalLevel level, double factor) {
    List<Double> months = new ArrayList<>();
    level.perMonth().forEach(mites -> months.add(mites * factor));
    return new ArrivalLevel(level.id(), level.description(), months, level.sourceKeys());
  }

  /** The plans without that of doing nothing, the chosen one later. */
  private static List<Plan> moved(List<Plan> plans, String chosen, long days) {
    List<Plan> moved = new ArrayList<>();
    for (Plan plan : plans) {
      if (plan.name().equals(chosen)) {
        moved.add(
            new Plan(
                chosen,
                plan.steps().stream().map(step -> step.moved(days)).toList(),
                plan.supersUntil()));
      } else if (!plan.name().equals(Plan.DO_NOTHING)) {
        moved.add(plan);
      }
    }
    return moved;
  }
}
