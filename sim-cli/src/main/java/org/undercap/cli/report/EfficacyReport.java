package org.undercap.cli.report;

import java.util.List;
import java.util.OptionalDouble;
import org.undercap.cli.option.CountGroups;
import org.undercap.cli.output.Days;
import org.undercap.monitoring.Count;
import org.undercap.monitoring.Efficacy;
import org.undercap.monitoring.RankedCause;
import org.undercap.monitoring.Verdict;

/**
 * What counts before and after say about a treatment.
 *
 * @param counts the counts
 * @param efficacy the efficacy that they show
 * @param minimum efficacy that the treatment must have (fraction)
 * @param minimumWords where the minimum comes from
 * @param explained which count the causes explain, in words; empty if there are none
 * @param causes what may lie behind a poor result, best fit first; empty if not asked
 */
public record EfficacyReport(
    CountGroups counts,
    Efficacy efficacy,
    double minimum,
    String minimumWords,
    String explained,
    List<RankedCause> causes) {
  /**
   * Copies the list.
   *
   * @param counts the counts
   * @param efficacy the efficacy that they show
   * @param minimum efficacy that the treatment must have (fraction)
   * @param minimumWords where the minimum comes from
   * @param explained which count the causes explain
   * @param causes what may lie behind a poor result
   */
  public EfficacyReport {
    causes = List.copyOf(causes);
  }

  /**
   * Describes a count for {@code explained}.
   *
   * @param count the count
   * @return for example {@code 7 on 310 bees}
   */
  public static String words(Count count) {
    return CountWords.kind(count)
        + " of "
        + Days.words(count.date())
        + ", "
        + CountWords.found(count);
  }

  Verdict verdict() {
    return efficacy.verdict(minimum);
  }

  OptionalDouble effort() {
    return efficacy.effortToSettle(minimum);
  }
}
