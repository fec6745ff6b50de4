package org.undercap.cli.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.undercap.lesson.Lesson;
import org.undercap.lesson.LessonResult;

/**
 * The words of one lesson with its figures in them.
 *
 * @param id name of the lesson
 * @param title what is shown
 * @param headline what to see, in one line above the picture
 * @param finding what it shows
 * @param limit what it cannot tell
 * @param notes notes for the speaker
 * @param question for the room
 * @param answer to the question
 * @param alternative for a reader who cannot see the picture
 */
public record LessonText(
    String id,
    String title,
    String headline,
    String finding,
    String limit,
    List<String> notes,
    String question,
    String answer,
    String alternative) {
  private static final int NOTES = 3;

  /** Closer than this, two methods count as equal (mites of 100). */
  private static final double ALIKE = 5;

  /**
   * Copies the list.
   *
   * @param id name of the lesson
   * @param title what is shown
   * @param headline what to see, in one line above the picture
   * @param finding what it shows
   * @param limit what it cannot tell
   * @param notes notes for the speaker
   * @param question for the room
   * @param answer to the question
   * @param alternative for a reader who cannot see the picture
   */
  public LessonText {
    notes = List.copyOf(notes);
  }

  /** The words of a lesson; where its numbers do not say it, the finding says so. */
  static LessonText of(Lesson lesson, LessonResult result, Speech speech) {
    String prefix = "lesson." + lesson.id() + ".";
    Map<String, Object> figures = figures(result, speech);
    List<String> notes = new ArrayList<>();
    for (int i = 1; i <= NOTES; i++) {
      notes.add(speech.say(prefix + "note." + i, figures));
    }
    return new LessonText(
        lesson.id(),
        speech.say(prefix + "title", figures),
        headline(prefix, result, figures, speech),
        finding(prefix, result, figures, speech),
        speech.say(prefix + (own(result) ? "limit.own" : "limit"), figures),
        notes,
        speech.say(prefix + "question", figures),
        speech.say(prefix + "answer", figures),
        speech.say(prefix + "alternative", figures));
  }

  /** What the picture shows in this place; nothing that its numbers do not say. */
  private static String headline(
      String prefix, LessonResult result, Map<String, Object> figures, Speech speech) {
    if (own(result)) {
      return finding(prefix, result, figures, speech);
    }
    return speech.say(prefix + (result.holds() ? "headline" : "otherwise"), figures);
  }

  private static String finding(
      String prefix, LessonResult result, Map<String, Object> figures, Speech speech) {
    if (own(result)) {
      boolean alike =
          Math.rint(Math.abs(result.numbers().getOrDefault("ownDifference", ALIKE))) < ALIKE;
      return speech.say(prefix + (alike ? "own.alike" : "own"), figures);
    }
    return result.holds()
        ? speech.say(prefix + "finding", figures)
        : speech.say("otherwise") + " " + speech.say(prefix + "otherwise", figures);
  }

  /** Whether the result is that of a user's colony. */
  private static boolean own(LessonResult result) {
    return result.numbers().getOrDefault("own", 0.0) > 0;
  }

  /** The figures of a result, and where a user's colony stands. */
  static Map<String, Object> figures(LessonResult result, Speech speech) {
    Map<String, Object> figures =
        new LinkedHashMap<>(Speech.figures(result.numbers(), result.dates()));
    Double own = result.numbers().get("ownDifference");
    if (own != null) {
      List<String> methods = result.methods();
      figures.put("better", speech.method(methods.get(own > 0 ? 0 : 1)));
      figures.put("points", (double) Math.round(Math.abs(own)));
    }
    if (result.methods().size() == 1) {
      figures.put("method", speech.method(result.methods().get(0)));
    }
    return figures;
  }
}
