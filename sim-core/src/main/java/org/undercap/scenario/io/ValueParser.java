package org.undercap.scenario.io;

import org.undercap.scenario.BadValueException;

/** Makes sense of the text of a value. */
@FunctionalInterface
interface ValueParser<T> {

  /**
   * Reads a value.
   *
   * @param text as typed, without blanks around it, not empty
   * @return what it says
   * @throws BadValueException if the text cannot be used; the message says why
   */
  T parse(String text) throws BadValueException;
}
