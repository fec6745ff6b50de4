package org.undercap.evidence;

/**
 * A direction or rank order that a finding asks for.
 *
 * @param words what must hold
 * @param holds whether it does in the model
 */
public record Condition(String words, boolean holds) {
  /**
   * The condition and whether it holds.
   *
   * @return as in {@code no treatment is worst: yes}
   */
  public String toText() {
    return words + ": " + (holds ? "yes" : "no");
  }
}
