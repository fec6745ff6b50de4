package org.undercap.treatment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.undercap.model.DayEffects;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.Explanation;
import org.undercap.simulation.Intervention;
import org.undercap.simulation.SimulationDay;

/**
 * Turns the steps of a plan into what acts on the colonies on each day. The order of the steps does
 * not matter.
 */
public final class Interventions {
  /**
   * Sums and products of floating-point numbers depend on their order; the order in the file must
   * not matter.
   */
  private static final Comparator<PlanStep> IN_ORDER =
      Comparator.comparing(PlanStep::date).thenComparing(PlanStep::toString);

  private Interventions() {}

  /**
   * What a plan does on each day. Applications of the same method act together.
   *
   * @param steps what the keeper does
   * @param circumstances hive and place
   * @return interventions for the simulator
   */
  public static List<Intervention> of(List<? extends PlanStep> steps, Circumstances circumstances) {
    Map<String, List<PlanStep.Application>> byMethod = new TreeMap<>();
    List<Intervention> result = new ArrayList<>();
    for (PlanStep step : steps.stream().sorted(IN_ORDER).toList()) {
      if (step instanceof PlanStep.Application application) {
        byMethod
            .computeIfAbsent(application.method().id(), id -> new ArrayList<>())
            .add(application);
      } else {
        result.add(new Measure(step, acting(step, circumstances)));
      }
    }
    byMethod
        .values()
        .forEach(applications -> result.add(Treatment.of(applications, circumstances)));
    return List.copyOf(result);
  }

  /** What one colony's share of a measure is on a day that lies some days after its first. */
  @FunctionalInterface
  private interface Act {
    void on(int age, SimulationDay day, int lane, DayEffects effects);
  }

  private record Measure(PlanStep step, long first, int days, Act act) implements Intervention {
    Measure(PlanStep step, Span span) {
      this(step, step.date().toEpochDay(), span.days, span.act);
    }

    @Override
    public void act(SimulationDay day, DayEffects effects) {
      long age = day.epochDay() - first;
      if (age >= 0 && age < days) {
        for (int lane = 0; lane < day.lanes(); lane++) {
          act.on((int) age, day, lane, effects);
        }
      }
    }

    @Override
    public List<Explanation> explain(SimulationDay day, int lane) {
      long age = day.epochDay() - first;
      return age >= 0 && age < days
          ? List.of(Explanation.of(step.words() + ": day {} of " + days, age + 1.0, ""))
          : List.of();
    }
  }

  private record Span(int days, Act act) {}

  private static Span acting(PlanStep step, Circumstances circumstances) {
    ParameterSet p = circumstances.parameters();
    if (step instanceof PlanStep.LayingStop stop) {
      return new Span(stop.days(), (age, day, lane, effects) -> effects.slowLaying(lane, 0));
    } else if (step instanceof PlanStep.DroneCombRemoval removal) {
      return new Span(1, (age, day, lane, effects) -> effects.remove(lane, 0, removal.share(), 0));
    } else if (step instanceof PlanStep.DroneFrame frame) {
      return new Span(
          days(frame.date(), frame.until()),
          (age, day, lane, effects) -> effects.changeDroneShare(lane, frame.factor()));
    } else if (step instanceof PlanStep.BroodRemoval removal) {
      return new Span(
          1,
          (age, day, lane, effects) -> effects.remove(lane, removal.share(), removal.share(), 0));
    } else if (step instanceof PlanStep.ShookSwarm) {
      return shookSwarm(p);
    } else if (step instanceof PlanStep.Split split) {
      return split(split);
    } else if (step instanceof PlanStep.LateFeeding feeding) {
      return lateFeeding(feeding, p, circumstances.peakEggs());
    }
    throw new IllegalArgumentException("not a measure: " + step);
  }

  private static Span shookSwarm(ParameterSet p) {
    double slower = p.value(ParameterId.SHOOK_SWARM_LAYING_FACTOR);
    return new Span(
        (int) p.value(ParameterId.SHOOK_SWARM_DAYS),
        (age, day, lane, effects) -> {
          if (age == 0) {
            effects.remove(lane, 1, 1, 0);
          }
          effects.slowLaying(lane, slower);
        });
  }

  private static Span split(PlanStep.Split split) {
    return new Span(
        Math.max(1, split.daysWithoutLaying()),
        (age, day, lane, effects) -> {
          if (age == 0) {
            effects.remove(lane, split.broodLeaving(), split.broodLeaving(), split.beesLeaving());
          }
          if (age < split.daysWithoutLaying()) {
            effects.slowLaying(lane, 0);
          }
        });
  }

  private static Span lateFeeding(PlanStep.LateFeeding feeding, ParameterSet p, double peakEggs) {
    double eggs = p.value(ParameterId.FEEDING_LAYING_SHARE) * peakEggs;
    double from = p.value(ParameterId.FEEDING_TEMPERATURE_LOW);
    double span = p.value(ParameterId.FEEDING_TEMPERATURE_SPAN);
    return new Span(
        days(feeding.date(), feeding.until()) + (int) p.value(ParameterId.FEEDING_DAYS_AFTER),
        (age, day, lane, effects) -> {
          double warmth = Math.max(0, Math.min(1, (day.temperature(lane) - from) / span));
          effects.keepLaying(lane, eggs * warmth);
        });
  }

  private static int days(LocalDate from, LocalDate until) {
    return (int) (until.toEpochDay() - from.toEpochDay()) + 1;
  }
}
