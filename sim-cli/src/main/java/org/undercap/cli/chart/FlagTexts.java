package org.undercap.cli.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The words on the flags of one chart: in full, or, where that takes too many rows, numbers that a
 * key explains.
 */
final class FlagTexts {
  private static final int MOST_ROWS = 4;

  /** Where words and dates stand on one line, it is broken after about this many letters. */
  private static final int LONG_LINE = 45;

  /** Where dates stand below the words, both are broken after about this many letters. */
  private static final int SHORT_LINE = 20;

  private final Letters letters;
  private final double left;
  private final double right;
  private final List<String> numbered;

  private FlagTexts(Letters letters, double left, double right, List<String> numbered) {
    this.letters = letters;
    this.left = left;
    this.right = right;
    this.numbered = numbered;
  }

  /** Chooses for all panels at once, so that one number means the same in each. */
  static FlagTexts of(
      List<PlanCourse> plans, DaySpan span, Letters letters, double left, double right) {
    FlagTexts full = new FlagTexts(letters, left, right, List.of());
    if (plans.stream().allMatch(plan -> full.strip(plan, span).rows() <= MOST_ROWS)) {
      return full;
    }
    List<String> words =
        plans.stream()
            .flatMap(plan -> shown(plan, span).stream())
            .map(Band::words)
            .distinct()
            .toList();
    return new FlagTexts(letters, left, right, words);
  }

  /** What the numbers mean, empty if there are none. */
  String key() {
    List<String> parts = new ArrayList<>();
    for (String words : numbered) {
      parts.add((numbered.indexOf(words) + 1) + "\u00a0" + words);
    }
    return parts.isEmpty() ? "" : "Numbers above the plot: " + String.join("; ", parts) + ".";
  }

  /** The flags of one panel, on one line each or on several, whichever is lower. */
  FlagStrip strip(PlanCourse plan, DaySpan span) {
    if (!numbered.isEmpty()) {
      return numbers(plan, span);
    }
    FlagStrip oneLine = words(plan, span, this::oneLine);
    FlagStrip severalLines = words(plan, span, this::severalLines);
    boolean better =
        oneLine.crowded() == severalLines.crowded()
            ? severalLines.height() < oneLine.height()
            : oneLine.crowded();
    return better ? severalLines : oneLine;
  }

  private FlagStrip words(PlanCourse plan, DaySpan span, Function<Band, List<String>> lines) {
    FlagStrip strip = new FlagStrip(letters, left, right);
    List<Flag> flags = new ArrayList<>();
    for (Band band : shown(plan, span)) {
      List<Double> poles =
          band.marks().stream().map(mark -> span.xInside(mark.from())).distinct().toList();
      flags.add(new Flag(lines.apply(band), poles, false));
    }
    lost(plan.course(), span).ifPresent(flags::add);
    flags.sort(Comparator.comparingDouble(Flag::firstPole).reversed());
    flags.forEach(strip::place);
    return strip;
  }

  private FlagStrip numbers(PlanCourse plan, DaySpan span) {
    FlagStrip strip = new FlagStrip(letters, left, right);
    lost(plan.course(), span).ifPresent(strip::place);
    for (Band band : shown(plan, span)) {
      Mark first = band.marks().get(0);
      Mark last = band.marks().get(band.marks().size() - 1);
      double middle = (span.xInside(first.from()) + span.xInside(last.until())) / 2;
      String number = Integer.toString(numbered.indexOf(band.words()) + 1);
      strip.placeIfFree(new Flag(List.of(number), List.of(middle), false));
    }
    return strip;
  }

  private static List<Band> shown(PlanCourse plan, DaySpan span) {
    return Band.of(plan.marks().stream().filter(span::shows).toList());
  }

  private List<String> oneLine(Band band) {
    return wrap(letters.text(), band.title() + ", " + band.period(), LONG_LINE);
  }

  private List<String> severalLines(Band band) {
    List<String> lines = new ArrayList<>(wrap(letters.text(), band.title(), SHORT_LINE));
    lines.addAll(wrap(letters.text(), band.period(), SHORT_LINE));
    return lines;
  }

  private Optional<Flag> lost(Course course, DaySpan span) {
    if (course.lostOnDay().isEmpty()) {
      return Optional.empty();
    }
    int day = course.lostOnDay().getAsInt();
    double pole = span.x((double) course.start().toEpochDay() + day);
    String words =
        Meaning.COLONY_LOST.label() + ", " + Dates.dayAndMonth(course.start().plusDays(day));
    return Optional.of(new Flag(wrap(letters.bold(), words, LONG_LINE), List.of(pole), true));
  }

  private List<String> wrap(Lettering lettering, String words, int lineLetters) {
    return lettering.wrap(words, Math.min(lineLetters * lettering.width("n"), right - left));
  }
}
