package org.undercap.cli.lesson;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.chart.TeachingChart;
import org.undercap.lesson.Lesson;
import org.undercap.lesson.LessonPlace;
import org.undercap.lesson.LessonResult;

/** Lessons of one place, with their words and charts. */
public final class LessonPack {
  private final LessonPlace place;
  private final Speech speech;
  private final ChartStyle style;
  private final Map<Lesson, LessonResult> results = new EnumMap<>(Lesson.class);

  /**
   * Reckons lessons.
   *
   * @param place where the colonies stand
   * @param lessons which ones
   * @param speech how to speak
   * @param style size of the pictures
   */
  public LessonPack(LessonPlace place, List<Lesson> lessons, Speech speech, ChartStyle style) {
    this.place = place;
    this.speech = speech;
    this.style = style;
    lessons.parallelStream()
        .map(lesson -> Map.entry(lesson, lesson.teach(place)))
        .toList()
        .forEach(each -> results.put(each.getKey(), each.getValue()));
  }

  LessonPlace place() {
    return place;
  }

  Speech speech() {
    return speech;
  }

  ChartStyle style() {
    return style;
  }

  /** The lessons in the order of the evening. */
  List<Lesson> lessons() {
    return List.copyOf(results.keySet());
  }

  /**
   * The numbers of a lesson.
   *
   * @param lesson one of the pack
   * @return as the engine gave them
   */
  public LessonResult result(Lesson lesson) {
    return results.get(lesson);
  }

  /**
   * The words of a lesson.
   *
   * @param lesson one of the pack
   * @return with its figures
   */
  public LessonText text(Lesson lesson) {
    return LessonText.of(lesson, results.get(lesson), speech);
  }

  /**
   * The chart of a lesson.
   *
   * @param lesson one of the pack
   * @return the chart
   */
  public TeachingChart chart(Lesson lesson) {
    return new LessonCharts(speech, style).chart(text(lesson), results.get(lesson));
  }
}
