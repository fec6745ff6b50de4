package org.undercap.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.undercap.cli.output.Numbers;
import org.undercap.scenario.Plan;
import org.undercap.treatment.Method;
import org.undercap.treatment.PlanStep;

/** A plan in words: in one phrase, and day by day. */
final class PlanWords {
  private static final List<String> TIMES = List.of("", "once", "twice");
  private static final List<String> NUMBERS =
      List.of("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");

  /** What the weather decides on the day, whatever was written down before. */
  private static final String HEAT = ". Wait if hotter days than the label allows are forecast";

  private final List<PlanStep> steps;
  private final Optional<LocalDate> supersUntil;

  PlanWords(Plan plan) {
    supersUntil = plan.supersUntil();
    steps = plan.steps().stream().sorted(Comparator.comparing(PlanStep::date)).toList();
  }

  /** How often: {@code once}, {@code twice}, {@code three times}. */
  static String times(int number) {
    if (number < TIMES.size()) {
      return TIMES.get(number);
    }
    return number(number) + " times";
  }

  /** A number in words, as far as people write it so: {@code three}, but {@code 12}. */
  static String number(int number) {
    return number < NUMBERS.size() ? NUMBERS.get(number) : Integer.toString(number);
  }

  /**
   * The plan in one phrase with methods, number of times and dates, as in {@code thymol gel twice,
   * on 26 September and 10 October 2026}.
   */
  String phrase() {
    if (steps.isEmpty()) {
      return "do nothing";
    }
    List<String> parts = new ArrayList<>();
    supersUntil.ifPresent(day -> parts.add("honey supers off on " + DateWords.day(day)));
    int from = 0;
    for (int i = 1; i <= steps.size(); i++) {
      if (i == steps.size() || !continues(steps.get(i - 1), steps.get(i))) {
        parts.add(part(steps.subList(from, i)));
        from = i;
      }
    }
    return String.join("; then ", parts);
  }

  private static boolean continues(PlanStep step, PlanStep next) {
    return step instanceof PlanStep.Application a
        && next instanceof PlanStep.Application b
        && a.method().id().equals(b.method().id())
        && a.dose() == b.dose();
  }

  private static String part(List<PlanStep> same) {
    PlanStep first = same.get(0);
    if (first instanceof PlanStep.Application application) {
      return application.method().name()
          + dose(application)
          + " "
          + times(same.size())
          + ", on "
          + DateWords.days(same.stream().map(PlanStep::date).toList());
    }
    boolean lasts = first.until().isAfter(first.date());
    return first.words()
        + (lasts
            ? " from " + DateWords.day(first.date()) + " to " + DateWords.day(first.until())
            : " on " + DateWords.day(first.date()));
  }

  private static String dose(PlanStep.Application application) {
    return application.dose() == 1 ? "" : " at " + Numbers.exact(application.dose()) + " doses";
  }

  /** What to do on which day, without the days of counting. */
  List<PlanDate> dates() {
    List<PlanDate> dates = new ArrayList<>();
    for (PlanStep step : steps) {
      if (step instanceof PlanStep.Application application) {
        addApplication(dates, application);
      } else {
        addMeasure(dates, step);
      }
    }
    dates.sort(Comparator.comparing(PlanDate::date).thenComparing(PlanDate::kind));
    return List.copyOf(dates);
  }

  private void addApplication(List<PlanDate> dates, PlanStep.Application application) {
    Method method = application.method();
    List<LocalDate> same =
        steps.stream()
            .filter(s -> s instanceof PlanStep.Application a && a.method().id().equals(method.id()))
            .map(PlanStep::date)
            .toList();
    String number =
        same.size() == 1
            ? ""
            : ", " + (same.indexOf(application.date()) + 1) + " of " + same.size();
    add(
        dates,
        application.date(),
        PlanDate.Kind.APPLY,
        capital(method.name())
            + dose(application)
            + number
            + (method.hotLimit().isPresent() && application.date().equals(same.get(0))
                ? HEAT
                : ""));
    if (method.carrierDays() > 0) {
      add(
          dates,
          application.date().plusDays(method.carrierDays()),
          PlanDate.Kind.REMOVE,
          "Take out the " + method.name() + " of " + DateWords.brief(application.date()));
    }
  }

  private static void addMeasure(List<PlanDate> dates, PlanStep step) {
    PlanDate.Kind kind = PlanDate.Kind.MEASURE;
    if (step instanceof PlanStep.LayingStop stop && stop.caged()) {
      add(dates, stop.date(), kind, "Cage the queen");
      add(dates, stop.until().plusDays(1), kind, "Free the queen");
    } else if (step instanceof PlanStep.DroneFrame frame) {
      add(dates, frame.date(), kind, "Hang in a drone frame");
      add(dates, frame.until(), kind, "Last day of the drone frame: take it out");
    } else if (step instanceof PlanStep.DroneCombRemoval removal) {
      add(
          dates,
          removal.date(),
          kind,
          "Take out " + Numbers.percent(removal.share()) + " of the drone brood");
    } else if (step instanceof PlanStep.BroodRemoval removal) {
      add(
          dates,
          removal.date(),
          kind,
          "Take out " + Numbers.percent(removal.share()) + " of the brood");
    } else if (step instanceof PlanStep.Split split) {
      add(
          dates,
          split.date(),
          kind,
          "Split: "
              + Numbers.percent(split.beesLeaving())
              + " of the bees and "
              + Numbers.percent(split.broodLeaving())
              + " of the brood leave");
    } else if (step instanceof PlanStep.LateFeeding feeding) {
      add(dates, feeding.date(), kind, "Begin to feed thin syrup");
      add(dates, feeding.until(), kind, "Last day of feeding");
    } else {
      add(dates, step.date(), kind, capital(step.words()));
    }
  }

  private static void add(List<PlanDate> dates, LocalDate date, PlanDate.Kind kind, String words) {
    dates.add(new PlanDate(date, kind, words));
  }

  /** A sentence begins with a capital letter. */
  static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
