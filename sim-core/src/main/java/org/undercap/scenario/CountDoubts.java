package org.undercap.scenario;

import java.util.Optional;
import org.undercap.monitoring.Count;
import org.undercap.monitoring.Wash;

/** Says which counts can be used but should be looked at again. */
public final class CountDoubts {
  private CountDoubts() {}

  /**
   * What is doubtful about a count.
   *
   * @param count the count
   * @return the doubt with what to do, a sentence without a full stop; empty if there is none
   */
  public static Optional<String> of(Count count) {
    return count instanceof Wash wash ? of(wash) : Optional.empty();
  }

  private static Optional<String> of(Wash wash) {
    String mites = wash.mites() + (wash.mites() == 1 ? " mite" : " mites");
    String found = mites + " on " + wash.bees() + " bees";
    if (wash.mites() > wash.bees()) {
      return Optional.of(found + " is more mites than bees: are the two swapped?");
    }
    if (100.0 * wash.mites() / wash.bees() > limit("usual").high()) {
      return Optional.of(
          found
              + " is "
              + Math.round(100.0 * wash.mites() / wash.bees())
              + " per 100 bees, rarely seen alive: is that mites in the whole wash, and how many"
              + " bees were in it?");
    }
    if (wash.mites() == 0 && wash.bees() < limit("bees.zero").low()) {
      return Optional.of(
          "no mite on "
              + wash.bees()
              + " bees tells next to nothing: wash 300 bees, half a cup, before you rely on it");
    }
    return Optional.empty();
  }

  private static InputLimit limit(String name) {
    return InputLimits.shipped().get("mites.counts.wash." + name);
  }
}
