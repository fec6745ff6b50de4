package org.undercap.lesson;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.undercap.climate.Climate;
import org.undercap.internal.Checks;

/**
 * The numbers of a lesson.
 *
 * @param climate where the colonies stand
 * @param holds whether the numbers say what the lesson teaches
 * @param numbers figures of the finding by name; shares are fractions
 * @param dates dates of the finding by name
 * @param methods ids of methods that the picture compares, in the order of its marks; may be empty
 * @param panels the pictures
 */
public record LessonResult(
    Climate climate,
    boolean holds,
    Map<String, Double> numbers,
    Map<String, LocalDate> dates,
    List<String> methods,
    List<Panel> panels) {
  /**
   * Copies the collections.
   *
   * @param climate where the colonies stand
   * @param holds whether the numbers say what the lesson teaches
   * @param numbers each finite
   * @param dates dates by name
   * @param methods ids of methods that the picture compares
   * @param panels at least one
   * @throws IllegalArgumentException if a number is not finite or there is no panel
   */
  public LessonResult {
    numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
    dates = Collections.unmodifiableMap(new LinkedHashMap<>(dates));
    methods = List.copyOf(methods);
    panels = List.copyOf(panels);
    numbers.forEach((name, value) -> Checks.finite(value, "figure " + name));
    if (panels.isEmpty()) {
      throw new IllegalArgumentException("a lesson needs a picture");
    }
  }

  /** Collects the figures of a lesson. */
  static final class Figures {
    private final Map<String, Double> numbers = new LinkedHashMap<>();
    private final Map<String, LocalDate> dates = new LinkedHashMap<>();
    private List<String> methods = List.of();

    Figures comparing(String... ids) {
      methods = List.of(ids);
      return this;
    }

    Figures put(String name, double value) {
      numbers.put(name, value);
      return this;
    }

    Figures put(String name, LocalDate date) {
      dates.put(name, date);
      return this;
    }

    LessonResult result(LessonPlace place, boolean holds, Panel... panels) {
      return new LessonResult(place.climate(), holds, numbers, dates, methods, List.of(panels));
    }
  }
}
