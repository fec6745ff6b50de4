package org.undercap.scenario;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.undercap.internal.Nearest;

/** The words that may follow a number, and the unit that each stands for. */
final class UnitWords<U> {

  private final String example;
  private final Map<String, U> words = new LinkedHashMap<>();
  private Optional<U> plain = Optional.empty();
  private boolean negative;
  private boolean fractions;

  private UnitWords(String example) {
    this.example = example;
  }

  /** Begins a list of units; the example tells users what a right value looks like. */
  static <U> UnitWords<U> named(String example) {
    return new UnitWords<>(example);
  }

  /** Accepts a number without a word, as a unit. */
  UnitWords<U> plain(U unit) {
    plain = Optional.of(unit);
    return this;
  }

  /** Accepts numbers below 0. */
  UnitWords<U> negative() {
    negative = true;
    return this;
  }

  /** Accepts {@code 1/2} and {@code half a} as well. */
  UnitWords<U> fractions() {
    fractions = true;
    return this;
  }

  /** Accepts words for a unit, in lower case unless case matters. */
  UnitWords<U> unit(U unit, String... accepted) {
    for (String word : accepted) {
      words.put(word, unit);
    }
    return this;
  }

  /** Reads a number with its unit. */
  Amount<U> parse(String text) throws BadValueException {
    Optional<Amount<String>> fraction = fractions ? Fractions.parse(text) : Optional.empty();
    String[] parts =
        fraction.isPresent()
            ? new String[] {"", fraction.get().unit()}
            : Quantities.split(text, example);
    double number = fraction.isPresent() ? fraction.get().number() : Quantities.number(parts[0]);
    if (number < 0 && !negative) {
      throw new BadValueException(Quantities.quote(text) + " must not be negative", "");
    }
    if (parts[1].isEmpty()) {
      return new Amount<>(
          number,
          plain.orElseThrow(
              () ->
                  new BadValueException(
                      Quantities.quote(text) + " does not say what was counted",
                      "write it as " + example)));
    }
    return new Amount<>(number, unitOf(parts[1]));
  }

  private U unitOf(String word) throws BadValueException {
    U unit = words.get(word);
    if (unit == null) {
      unit = words.get(word.toLowerCase(Locale.ROOT).replaceAll("\\s+", " "));
    }
    if (unit == null) {
      String near =
          Nearest.to(word, words.keySet())
              .map(found -> "did you mean \"" + found + "\"? ")
              .orElse("");
      throw new BadValueException(
          "unknown unit " + Quantities.quote(word), near + "write it as " + example);
    }
    return unit;
  }
}
