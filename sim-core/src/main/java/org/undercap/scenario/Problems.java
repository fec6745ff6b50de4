package org.undercap.scenario;

import java.util.ArrayList;
import java.util.List;

/** Gathers the problems of a file, so that all are told at once. */
public final class Problems {

  private final List<Problem> found = new ArrayList<>();

  /** No problems yet. */
  public Problems() {}

  /**
   * Notes a problem.
   *
   * @param place where
   * @param field the field in question, or empty text
   * @param message what is wrong
   * @param hint what to try, or empty text
   */
  public void add(Place place, String field, String message, String hint) {
    found.add(new Problem(place.file(), place.line(), place.column(), field, message, hint));
  }

  /**
   * Notes that a value cannot be used.
   *
   * @param place where
   * @param field the field in question
   * @param mistake what is wrong with it
   */
  public void add(Place place, String field, BadValueException mistake) {
    add(place, field, mistake.getMessage(), mistake.hint());
  }

  /**
   * Whether nothing was found.
   *
   * @return true if there is no problem
   */
  public boolean isEmpty() {
    return found.isEmpty();
  }

  /**
   * Whether something is wrong with a field.
   *
   * @param field the field, as in {@code colony.frame}
   * @return true if a problem names it
   */
  public boolean concern(String field) {
    return found.stream().anyMatch(problem -> problem.field().equals(field));
  }

  /**
   * All problems in the order of the file, each once.
   *
   * @return an unmodifiable list
   */
  public List<Problem> all() {
    return found.stream().distinct().sorted(Problem.ORDER).toList();
  }
}
