package org.undercap.scenario;

import java.util.Collection;
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
        "accepted: " + String.join(", ", accepted));
  }

  /**
   * What a mistyped name probably meant, for messages.
   *
   * @param name as typed
   * @param accepted all names
   * @return {@code , did you mean ...?}, or empty text if no name is near
   */
  public static String suggestion(String name, Collection<String> accepted) {
    return Nearest.to(name, accepted).map(w -> ", did you mean \"" + w + "\"?").orElse("");
  }
}
