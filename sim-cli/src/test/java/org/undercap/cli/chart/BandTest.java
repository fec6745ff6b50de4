package org.undercap.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class BandTest {
  private static List<String> labels(Mark... marks) {
    return Band.of(List.of(marks)).stream()
        .map(band -> (band.title() + ": " + band.period()).replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void marksAreSortedAndKeptApartByWords() {
    assertEquals(
        List.of("thymol gel: 10 Aug to 23 Aug", "oxalic dribble: 12 Dec"),
        labels(
            InventedCharts.mark("2026-12-12", "2026-12-12", "oxalic dribble"),
            InventedCharts.mark("2026-08-10", "2026-08-23", "thymol gel")));
  }

  @Test
  void fewSingleDaysAreWrittenOut() {
    assertEquals(
        List.of("oxalic vapour: 10 Aug, 15 Aug"),
        labels(
            InventedCharts.mark("2026-08-10", "2026-08-10", "oxalic vapour"),
            InventedCharts.mark("2026-08-15", "2026-08-15", "oxalic vapour")));
  }

  @Test
  void repeatedPeriodsAreCounted() {
    assertEquals(
        List.of("thymol gel, 2 times: 10 Aug to 6 Sep"),
        labels(
            InventedCharts.mark("2026-08-10", "2026-08-23", "thymol gel"),
            InventedCharts.mark("2026-08-24", "2026-09-06", "thymol gel")));
  }

  @Test
  void nextYearIsAnotherAction() {
    assertEquals(
        List.of("thymol gel: 10 Aug", "thymol gel: 10 Aug"),
        labels(
            InventedCharts.mark("2026-08-10", "2026-08-10", "thymol gel"),
            InventedCharts.mark("2027-08-10", "2027-08-10", "thymol gel")));
  }
}
