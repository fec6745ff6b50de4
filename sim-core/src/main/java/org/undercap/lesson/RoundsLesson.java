package org.undercap.lesson;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.undercap.lesson.LessonResult.Figures;
import org.undercap.treatment.Course;

/** Rounds of oxalic acid while there is brood. */
final class RoundsLesson {
  /** All are judged on the same day, after the last of the most rounds (days). */
  private static final int JUDGED_AFTER = 49;

  private RoundsLesson() {}

  static LessonResult teach(LessonPlace place) {
    LocalDate from = place.on(Month.AUGUST, 15);
    LocalDate judged = from.plusDays(JUDGED_AFTER);
    LessonRun colony = LessonRun.of(place, from, SetUps.number("trial.mites"));
    double untreated = colony.until(judged).mites(judged);
    Figures figures = new Figures().put("judged", judged).put("from", from);
    int most = SetUps.whole("rounds.most");
    Panel.Builder panel =
        Panel.bars(
            "percent-of-untreated",
            IntStream.rangeClosed(0, most).mapToObj(Integer::toString).toList());
    double shown = SetUps.numbers("rounds.every").get(0);
    boolean holds = true;
    for (double every : SetUps.numbers("rounds.every")) {
      List<Double> left = new ArrayList<>(List.of(100.0));
      for (int n = 1; n <= most; n++) {
        Course course = new Course(n, (int) every);
        double mites =
            colony.treat(TreatmentLessons.VAPOUR, course, from).until(judged).mites(judged);
        left.add(100 * mites / untreated);
        holds &= left.get(n) < left.get(n - 1);
      }
      for (int n = 0; n <= most && every == shown; n++) {
        panel.bar(new Bar(n, "all-mites", 0, left.get(n)));
      }
      String name = "every" + (int) every;
      figures.put(name + "once", left.get(1) / 100).put(name + "most", left.get(most) / 100);
      figures.put(name + "three", left.get(3) / 100);
      holds &= left.get(1) > 50 && left.get(most) < 0.5 * left.get(1);
    }
    return figures.put("most", most).result(place, holds, panel.build());
  }
}
