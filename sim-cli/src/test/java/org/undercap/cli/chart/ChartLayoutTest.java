package org.undercap.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Words stand on the page, are large enough and do not touch each other. */
class ChartLayoutTest {
  static Stream<Arguments> charts() {
    return Stream.of(ChartStyle.A4, ChartStyle.LETTER, ChartStyle.SLIDE)
        .flatMap(InventedCharts::all);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("charts")
  void wordsLieOnThePageAndApart(String name, Chart chart) {
    assertEquals(List.of(), LayoutFaults.of(chart));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("charts")
  void everyPageTellsFindingLimitAndHemisphere(String name, Chart chart) {
    for (ChartPage page : chart.pages()) {
      String words = words(page);
      assertTrue(words.contains(chart.text().finding()), words);
      assertTrue(words.contains(chart.text().limit()), words);
      assertTrue(words.contains(chart.text().title()), words);
      assertTrue(words.contains("hemisphere"), words);
    }
  }

  @Test
  void miteCurveNamesItsLinesAreasAndTreatments() {
    String words = words(InventedCharts.miteCurve(ChartStyle.A4).pages().get(0));
    for (String expected :
        List.of(
            "mites on bees",
            "mites in sealed brood",
            "adult bees",
            "brood cells",
            "thymol gel, 2 times",
            "10 Aug to 6 Sep",
            "12 Dec",
            "number of mites",
            "2026 to 2027 (northern hemisphere)")) {
      assertTrue(words.contains(expected), expected + " in " + words);
    }
  }

  @Test
  void lostColonyIsMarkedWithItsDate() {
    PlanCourse lost = InventedCharts.sixPlans().get(0);
    String words = words(InventedCharts.curve(lost, ChartStyle.A4).pages().get(0));
    assertTrue(words.contains("colony lost, 7 Jan"), words);
    String infestation = words(InventedCharts.infestation(ChartStyle.A4).pages().get(0));
    assertTrue(infestation.contains("colony lost 7 Jan"), infestation);
  }

  @Test
  void thresholdShowsItsSource() {
    String words = words(InventedCharts.infestation(ChartStyle.A4).pages().get(0));
    assertTrue(words.contains("act at 3 mites per 100 bees in August"), words);
    assertTrue(words.contains("(invented limit, 2026)"), words);
  }

  @Test
  void sixPlansFitOnOnePageOfA4() {
    List<ChartPage> pages = InventedCharts.plans(ChartStyle.A4).pages();
    assertEquals(1, pages.size());
    assertTrue(pages.get(0).height() <= ChartStyle.A4.pageHeight());
  }

  @Test
  void manyPlansGoToEquallyFullPagesOnTheSameAxes() {
    List<PlanCourse> plans = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      plans.addAll(InventedCharts.sixPlans());
    }
    List<ChartPage> pages = InventedCharts.plans(plans, ChartStyle.A4).pages();
    assertEquals(3, pages.size());
    for (ChartPage page : pages) {
      assertTrue(page.height() <= ChartStyle.A4.pageHeight(), "height " + page.height());
      assertEquals(6, count(page, "3,000"));
    }
    assertTrue(words(pages.get(1)).contains("Page 2 of 3."), words(pages.get(1)));
  }

  @Test
  void axesCanBeSharedBetweenMiteCurves() {
    PlanCourse small =
        new PlanCourse(InventedCharts.course("Few", 300, 20, 0, List.of()), List.of());
    MiteCurveChart alone = (MiteCurveChart) InventedCharts.curve(small, ChartStyle.A4);
    MiteCurveChart shared = alone.withAxes(new AxisTops(1900, 30000));
    assertEquals(0, count(alone.pages().get(0), "2,000"));
    assertEquals(1, count(shared.pages().get(0), "2,000"));
  }

  private static long count(ChartPage page, String text) {
    return TextSpy.textsOf(page).stream().filter(w -> w.text().equals(text)).count();
  }

  /** All words of a page in drawing order, with plain blanks. */
  private static String words(ChartPage page) {
    List<String> texts = TextSpy.textsOf(page).stream().map(TextSpy.Written::text).toList();
    return String.join(" ", texts).replace('\u00a0', ' ');
  }
}
