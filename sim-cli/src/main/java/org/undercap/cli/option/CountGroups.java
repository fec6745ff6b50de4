package org.undercap.cli.option;

import java.util.ArrayList;
import java.util.List;
import org.undercap.monitoring.BeforeAfter;
import org.undercap.monitoring.CriticalCount;
import org.undercap.monitoring.Efficacy;
import org.undercap.monitoring.Tally;

/**
 * Counts of treated and untreated colonies, from which an efficacy can be reckoned. Places in the
 * lists of a group belong to the same colony.
 *
 * @param before treated colonies before; empty if they were counted afterwards only
 * @param after treated colonies after
 * @param controlBefore untreated colonies before; may be empty
 * @param controlAfter untreated colonies after; may be empty
 * @param critical counts of a critical test, if it is one; then all others are empty
 * @param boards whether the counts are those of boards instead of washes
 */
public record CountGroups(
    List<Tally> before,
    List<Tally> after,
    List<Tally> controlBefore,
    List<Tally> controlAfter,
    List<CriticalCount> critical,
    boolean boards) {
  private static final long SEED = 1;

  /**
   * Copies the lists.
   *
   * @param before treated colonies before
   * @param after treated colonies after
   * @param controlBefore untreated colonies before
   * @param controlAfter untreated colonies after
   * @param critical counts of a critical test
   * @param boards whether the counts are those of boards
   */
  public CountGroups {
    before = List.copyOf(before);
    after = List.copyOf(after);
    controlBefore = List.copyOf(controlBefore);
    controlAfter = List.copyOf(controlAfter);
    critical = List.copyOf(critical);
  }

  /**
   * Counts of a critical test.
   *
   * @param counts one for each colony
   * @return the groups
   */
  static CountGroups criticalTest(List<CriticalCount> counts) {
    return new CountGroups(List.of(), List.of(), List.of(), List.of(), counts, true);
  }

  /**
   * The efficacy by the formula that the counts allow: critical test, Henderson and Tilton with
   * untreated colonies before and after, Abbott with counts after only, else simple reduction.
   *
   * @return the efficacy
   * @throws IllegalArgumentException if there are too few mites
   */
  public Efficacy efficacy() {
    if (!critical.isEmpty()) {
      return Efficacy.criticalTest(critical, SEED);
    }
    if (before.isEmpty()) {
      return Efficacy.abbott(after, controlAfter, SEED);
    }
    List<BeforeAfter> treated = pairs(before, after);
    return controlAfter.isEmpty()
        ? Efficacy.reduction(treated, SEED)
        : Efficacy.hendersonTilton(treated, pairs(controlBefore, controlAfter), SEED);
  }

  private static List<BeforeAfter> pairs(List<Tally> before, List<Tally> after) {
    List<BeforeAfter> pairs = new ArrayList<>();
    for (int i = 0; i < after.size(); i++) {
      pairs.add(new BeforeAfter(before.get(i), after.get(i)));
    }
    return pairs;
  }
}
