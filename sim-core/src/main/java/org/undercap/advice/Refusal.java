package org.undercap.advice;

import java.util.List;
import java.util.Optional;
import org.undercap.scenario.Scenario;

/**
 * No advice: the facts lie outside the range in which the model was tested.
 *
 * @param missing what was not tested, in words, at least one
 */
public record Refusal(List<String> missing) {
  /**
   * Copies the list.
   *
   * @param missing what was not tested, in words
   * @throws IllegalArgumentException if nothing is missing
   */
  public Refusal {
    missing = List.copyOf(missing);
    if (missing.isEmpty()) {
      throw new IllegalArgumentException("a refusal needs a reason");
    }
  }

  /**
   * Whether a scenario must be refused.
   *
   * @param scenario the scenario
   * @return the refusal; empty if there can be advice
   */
  public static Optional<Refusal> of(Scenario scenario) {
    List<String> missing = scenario.keeper().untested();
    return missing.isEmpty() ? Optional.empty() : Optional.of(new Refusal(missing));
  }

  /**
   * The refusal in a sentence.
   *
   * @return the sentence
   */
  public String text() {
    return "No advice. T" + reason().substring(1) + ".";
  }

  /**
   * Why there is no advice, as part of a sentence.
   *
   * @return words without a full stop
   */
  public String reason() {
    return "the model was not tested for " + String.join("; nor for ", missing);
  }
}
