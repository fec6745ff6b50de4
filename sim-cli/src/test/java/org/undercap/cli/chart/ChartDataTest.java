package org.undercap.cli.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.undercap.climate.Hemisphere;

class ChartDataTest {
  private static final LocalDate DAY = LocalDate.of(2026, 8, 15);

  private static Course course(double[] onBees, double[] adults, OptionalInt lost) {
    double[] zero = new double[onBees.length];
    return new Course("plan", DAY, onBees, zero, adults, zero, lost);
  }

  private static void refused(Runnable action) {
    assertThrows(IllegalArgumentException.class, action::run);
  }

  @Test
  void wrongCoursesAreRefused() {
    OptionalInt alive = OptionalInt.empty();
    refused(() -> course(new double[0], new double[0], alive));
    refused(() -> course(new double[2], new double[3], alive));
    refused(() -> course(new double[] {-1}, new double[1], alive));
    refused(() -> course(new double[] {Double.NaN}, new double[1], alive));
    refused(() -> course(new double[1], new double[] {Double.POSITIVE_INFINITY}, alive));
    refused(() -> course(new double[2], new double[2], OptionalInt.of(2)));
    refused(() -> course(new double[2], new double[2], OptionalInt.of(-1)));
  }

  @Test
  void courseKeepsItsOwnValues() {
    double[] mites = {1, 2};
    Course course = course(mites, new double[] {100, 0}, OptionalInt.of(0));
    mites[0] = 9;
    course.mitesOnBees()[1] = 9;
    assertArrayEquals(new double[] {1, 2}, course.mitesOnBees());
    assertArrayEquals(new double[] {1}, course.shown(course.mitesOnBees()));
    assertArrayEquals(new double[] {1, Double.NaN}, course.mitesPer100Bees());
  }

  @Test
  void wrongMarksThresholdsTextsAndStylesAreRefused() {
    refused(() -> new Mark(DAY, DAY.minusDays(1), "thymol gel"));
    refused(() -> new Mark(DAY, DAY, " "));
    refused(() -> new ThresholdLine(0, "act", "source"));
    refused(() -> new ThresholdLine(Double.NaN, "act", "source"));
    refused(() -> new ThresholdLine(3, "act", ""));
    refused(() -> new ChartText("title", "", "", "limit", "alternative"));
    refused(() -> new AxisTops(Double.NaN, 1));
    refused(() -> new ChartStyle("small", 496, 350, 728, 9, 13, 2, 1, 150));
    refused(() -> new ChartStyle("low", 496, 350, 300, 10, 13, 2, 1, 150));
    refused(() -> new ChartStyle("coarse", 496, 350, 728, 10, 13, 2, 1, 50));
  }

  @Test
  void emptyComparisonsAreRefused() {
    ChartText text = InventedCharts.text();
    refused(() -> PlansChart.of(List.of(), text, Hemisphere.NORTH, ChartStyle.A4));
    refused(() -> InventedCharts.infestation(List.of(), ChartStyle.A4));
  }

  @Test
  void axisTopsCoverAllCoursesUntilTheyAreLost() {
    Course lost = course(new double[] {5, 80}, new double[] {70, 10}, OptionalInt.of(0));
    Course alive = course(new double[] {7, 3}, new double[] {20, 30}, OptionalInt.empty());
    assertEquals(new AxisTops(7, 70), AxisTops.covering(List.of(lost, alive)));
  }

  @Test
  void linesDifferWithoutColour() {
    Look bees = Meaning.MITES_ON_BEES.look();
    Look cells = Meaning.MITES_IN_CELLS.look();
    Look all = Meaning.ALL_MITES.look();
    assertNotEquals(bees.dash(), cells.dash());
    assertNotEquals(bees.dash(), all.dash());
    assertNotEquals(cells.dash(), all.dash());
    assertNotEquals(bees.marker(), cells.marker());
  }

  @Test
  void plansLookDifferentAndLeaveTheColoursOfMitesAlone() {
    Set<Look> looks = new HashSet<>();
    for (int plan = 0; plan < 60; plan++) {
      Look look = Look.ofPlan(plan);
      assertTrue(looks.add(look), "plan " + plan);
      assertNotEquals(Meaning.MITES_ON_BEES.look().color(), look.color());
      assertNotEquals(Meaning.MITES_IN_CELLS.look().color(), look.color());
    }
  }
}
