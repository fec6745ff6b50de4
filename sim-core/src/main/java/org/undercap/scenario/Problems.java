package org.undercap.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Gathers the problems of a file, so that all are told at once. */
public final class Problems {

  private static final int LONG_HINT = 100;
  private static final int MOST = 100;

  private final List<Problem> found = new ArrayList<>();
  private final Set<String> suspected = new HashSet<>();

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
    if (found.size() <= MOST) {
      found.add(new Problem(place.file(), place.line(), place.column(), field, message, hint));
    }
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
   * Whether there are so many problems that no more are taken, so that the rest of a file need not
   * be looked at.
   *
   * @return true if there are more than a hundred
   */
  public boolean isFull() {
    return found.size() > MOST;
  }

  /**
   * Whether something is wrong with a field.
   *
   * @param field the field, as in {@code colony.frame}
   * @return true if a problem names it
   */
  public boolean concern(String field) {
    return suspected.contains(field)
        || found.stream().anyMatch(problem -> problem.field().equals(field));
  }

  /**
   * Notes that a problem found already is probably about another field, so that what follows from
   * its absence is not told too.
   *
   * @param field the field that was meant, as in {@code colony.frame}
   */
  public void suspect(String field) {
    suspected.add(field);
  }

  /**
   * All problems in the order of the file, each once; of more than a hundred the first that were
   * found, and a last one that says so. A long hint is given only with the first problem that it
   * helps with.
   *
   * @return an unmodifiable list
   */
  public List<Problem> all() {
    Set<String> given = new HashSet<>();
    List<Problem> all = new ArrayList<>();
    found.stream()
        .limit(MOST)
        .distinct()
        .sorted(Problem.ORDER)
        .map(problem -> isNews(problem, given) ? problem : problem.withoutHint())
        .forEach(all::add);
    if (isFull()) {
      String file = found.get(MOST).file();
      all.add(
          new Problem(file, 0, 0, "", "has many more problems", "mend these, then check again"));
    }
    return List.copyOf(all);
  }

  private static boolean isNews(Problem problem, Set<String> given) {
    return given.add(problem.file() + problem.hint()) || problem.hint().length() <= LONG_HINT;
  }
}
