package org.undercap.lesson;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.undercap.internal.Nearest;

/** The lessons of the teaching set, in the order in which an evening would show them. */
@SuppressWarnings("ImmutableEnumChecker") // the functions keep nothing
public enum Lesson {
  /** The year of a colony: bees, brood, mites on bees and mites under the cappings. */
  YEAR("year", SeasonLessons::year),
  /** One mite at midwinter and how often it doubles. */
  ONE_MITE("one-mite", SeasonLessons::oneMite),
  /** One oxalic treatment on four dates. */
  FOUR_DATES("four-dates", TreatmentLessons::fourDates),
  /** Where the mites of a treatment went. */
  WHERE_DID_THEY_GO("where-did-they-go", LedgerLesson::teach),
  /** Why the count falls and climbs again after a treatment. */
  COUNT_CLIMBS("count-climbs", TreatmentLessons::countClimbs),
  /** The same gel at five temperatures. */
  GEL_WARMTH("gel-warmth", TreatmentLessons::gelWarmth),
  /** Slow release against a single dose while mites arrive. */
  SLOW_RELEASE("slow-release", ArrivalLessons::slowRelease),
  /** The cost of waiting. */
  WAITING("waiting", AutumnLessons::waiting),
  /** Late syrup and the brood that it keeps going. */
  LATE_SYRUP("late-syrup", AutumnLessons::lateSyrup),
  /** Why mites per 100 bees rise faster than mites in autumn. */
  AUTUMN_RISE("autumn-rise", AutumnLessons::autumnRise),
  /** Drone comb removed, and the comb that was forgotten. */
  DRONE_COMB("drone-comb", SeasonLessons::droneComb),
  /** A broodless window. */
  BROODLESS_WINDOW("broodless-window", TreatmentLessons::broodlessWindow),
  /** A neighbour collapses. */
  COLLAPSE("collapse", ArrivalLessons::collapse),
  /** What one wash can tell. */
  WASH_LUCK("wash-luck", WashLesson::teach),
  /** Rounds of oxalic acid, five and seven days apart. */
  ROUNDS("rounds", RoundsLesson::teach),
  /** Resistance and rotation over some years. */
  RESISTANCE("resistance", ResistanceLesson::teach),
  /** The same year north and south. */
  NORTH_SOUTH("north-south", SeasonLessons::northSouth),
  /** Which of two methods kills more. */
  FLIP_CHART("flip-chart", place -> FlipChart.usual(place).lesson()),
  /** Start date by method. */
  START_MAP("start-map", place -> StartMap.usual(place).lesson());

  private final String id;
  private final Function<LessonPlace, LessonResult> teaching;

  Lesson(String id, Function<LessonPlace, LessonResult> teaching) {
    this.id = id;
    this.teaching = teaching;
  }

  /**
   * Name in commands and files.
   *
   * @return lower case, words joined by hyphens
   */
  public String id() {
    return id;
  }

  /**
   * The numbers of the lesson.
   *
   * @param place where the colonies stand
   * @return figures, pictures, and whether they say what the lesson teaches
   */
  public LessonResult teach(LessonPlace place) {
    return teaching.apply(place);
  }

  /**
   * The lesson of a name.
   *
   * @param id as in {@link #id()}
   * @return the lesson
   * @throws IllegalArgumentException if there is none; the message suggests the nearest
   */
  public static Lesson of(String id) {
    for (Lesson lesson : values()) {
      if (lesson.id.equals(id)) {
        return lesson;
      }
    }
    throw Nearest.unknown("lesson", id, ids());
  }

  /**
   * Names of all lessons.
   *
   * @return in the order of the evening
   */
  public static List<String> ids() {
    return Arrays.stream(values()).map(Lesson::id).toList();
  }
}
