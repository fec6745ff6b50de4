package org.undercap.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;

/** The shipped open data still give the figures of their authors. */
class OpenDataTest {
  private static final List<CsvRow> ROWS =
      CsvResource.read(Evidence.class, "amitraz-thymol-trial.csv");

  private static Map<String, Double> totals(String group, int day) {
    return ROWS.stream()
        .filter(row -> row.text("group").equals(group))
        .filter(row -> row.text("day").equals(String.valueOf(day)))
        .filter(row -> !row.text("total_mites").isEmpty())
        .collect(Collectors.toMap(row -> row.text("colony"), row -> row.number("total_mites")));
  }

  @ParameterizedTest
  @CsvSource({
    "amitraz strips, 0, 16, 3720",
    "amitraz strips, 21, 12, 1329",
    "amitraz strips, 42, 14, 550",
    "amitraz strips and thymol gel, 0, 16, 3826",
    "amitraz strips and thymol gel, 21, 12, 898",
    "amitraz strips and thymol gel, 42, 13, 476",
    "amitraz emulsion on towel, 0, 15, 3626",
    "amitraz emulsion on towel, 21, 11, 743",
    "amitraz emulsion on towel, 42, 15, 847"
  })
  void meansOfAllMites(String group, int day, int colonies, double mean) {
    Map<String, Double> totals = totals(group, day);
    assertEquals(colonies, totals.size());
    assertEquals(mean, totals.values().stream().mapToDouble(x -> x).average().orElseThrow(), 0.5);
  }

  @Test
  void acceptedIntervalsAreTheMeansWithinOneStandardDeviation() {
    PublishedCheck check = Evidence.run("amitraz-open-data").check();
    Map<String, Double> before = totals("amitraz strips", 0);
    int[] days = {21, 42};
    for (int i = 0; i < days.length; i++) {
      SummaryStatistics change = new SummaryStatistics();
      totals("amitraz strips", days[i])
          .forEach((colony, mites) -> change.addValue(100 * (mites / before.get(colony) - 1)));
      double sd = change.getStandardDeviation();
      assertEquals(change.getMean() - sd, check.accepted().get(i).low(), 1);
      assertEquals(change.getMean() + sd, check.accepted().get(i).high(), 1);
    }
  }
}
