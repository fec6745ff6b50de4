package org.undercap.scenario;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.undercap.internal.Nearest;

/** Finds what a name in a file stands for. */
public final class Lookup {

  private Lookup() {}

  /**
   * The thing of a name.
   *
   * @param <T> type of the thing
   * @param kind what kind of thing it is, as in "climate"
   * @param name as typed
   * @param find finds it
   * @param accepted all names
   * @return the thing
   * @throws BadValueException if the name is unknown; the message suggests the nearest
   */
  public static <T> T find(
      String kind, String name, Function<String, Optional<T>> find, Collection<String> accepted)
      throws BadValueException {
    Optional<T> found = find.apply(name);
    if (found.isPresent()) {
      return found.get();
    }
    throw new BadValueException(
        "unknown " + kind + " " + Quantities.quote(name) + suggestion(name, accepted),
        "accepted: " + String.join(", ", accepted) + advice(kind));
  }

  private static String advice(String kind) {
    return kind.equals("treatment")
        ? "; in place of a trade name write the substance and its form, which stand on the label"
        : "";
  }

  /**
   * What a mistyped name probably meant, for messages.
   *
   * @param name as typed
   * @param accepted all names
   * @return {@code , did you mean ...?}, or empty text if no name is near
   */
  public static String suggestion(String name, Collection<String> accepted) {
    List<String> likely =
        Nearest.to(name, accepted)
            .map(List::of)
            .orElseGet(() -> accepted.stream().filter(word -> holds(word, name)).toList());
    return likely.isEmpty() ? "" : ", did you mean \"" + String.join("\" or \"", likely) + "\"?";
  }

  /** Whether a word holds another that is long enough to tell something. */
  private static boolean holds(String word, String part) {
    return part.length() >= 4 && word.contains(part.toLowerCase(Locale.ROOT));
  }
}
