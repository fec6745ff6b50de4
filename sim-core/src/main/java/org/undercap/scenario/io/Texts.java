package org.undercap.scenario.io;

import java.util.List;
import java.util.Optional;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.Lookup;
import org.undercap.scenario.Quantities;
import org.undercap.source.Bibliography;
import org.undercap.source.Source;

/** Reads texts and names that several parts of a scenario have. */
final class Texts {

  private Texts() {}

  /** Text without characters that would disturb a report or a terminal. */
  static String text(String text, int longest) throws BadValueException {
    if (text.codePointCount(0, text.length()) > longest) {
      throw new BadValueException("is longer than the " + longest + " letters accepted", "");
    }
    if (!text.codePoints().allMatch(c -> c == '\n' || Quantities.isHarmless(c))) {
      throw new BadValueException(
          Quantities.quote(text) + " holds characters that cannot be shown", "");
    }
    return text;
  }

  /** A source of the bibliography. */
  static Source source(String key) throws BadValueException {
    Bibliography shipped = Bibliography.shipped();
    Optional<Source> found = shipped.find(key);
    if (found.isPresent()) {
      return found.get();
    }
    List<String> keys = shipped.all().stream().map(Source::key).toList();
    throw new BadValueException(
        "unknown source " + Quantities.quote(key) + Lookup.suggestion(key, keys),
        "use a key of the bibliography, or leave it out");
  }
}
