package org.undercap.cli.chart;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Marks with the same words that follow each other closely; they share one label. */
record Band(List<Mark> marks) {
  /** Marks further apart than this are two separate actions (days). */
  private static final long CLOSE_DAYS = 60;

  /** So many single days are written out; more are counted. */
  private static final int DAYS_WRITTEN_OUT = 3;

  Band {
    marks = List.copyOf(marks);
  }

  /** Joins marks, in order of their first day. */
  static List<Band> of(List<Mark> marks) {
    List<Mark> sorted = new ArrayList<>(marks);
    sorted.sort(Comparator.comparing(Mark::from).thenComparing(Mark::words));
    List<Band> bands = new ArrayList<>();
    List<Mark> open = new ArrayList<>();
    for (Mark mark : sorted) {
      if (!open.isEmpty() && !continues(open.get(open.size() - 1), mark)) {
        bands.add(new Band(open));
        open.clear();
      }
      open.add(mark);
    }
    if (!open.isEmpty()) {
      bands.add(new Band(open));
    }
    return bands;
  }

  private static boolean continues(Mark before, Mark next) {
    return before.words().equals(next.words())
        && ChronoUnit.DAYS.between(before.until(), next.from()) <= CLOSE_DAYS;
  }

  String words() {
    return marks.get(0).words();
  }

  /** What is done and how often, as in {@code oxalic vapour, 5 times}. */
  String title() {
    return marks.size() == 1 || daysAreWrittenOut()
        ? words()
        : words() + ", " + marks.size() + " times";
  }

  /** When, as in {@code 15 Aug}, {@code 15 Aug, 20 Aug} or {@code 15 Aug to 12 Sep}. */
  String period() {
    if (daysAreWrittenOut()) {
      List<String> days = marks.stream().map(mark -> Dates.dayAndMonth(mark.from())).toList();
      return String.join(", ", days);
    }
    LocalDate from = marks.get(0).from();
    LocalDate until = marks.get(marks.size() - 1).until();
    return Dates.dayAndMonth(from) + " to " + Dates.dayAndMonth(until);
  }

  private boolean daysAreWrittenOut() {
    return marks.size() <= DAYS_WRITTEN_OUT
        && marks.stream().allMatch(mark -> mark.from().equals(mark.until()));
  }
}
