package org.undercap.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.climate.Hemisphere;

class WaitingChartTest {
  private static final ChartText TEXT =
      new ChartText("The cost of waiting", "Invented.", "Earlier is better", "A limit.", "Words.");
  private static final WaitingLine.Spread UNTREATED = new WaitingLine.Spread(10, 20, 30);

  private static WaitingLine line(String name, int starts) {
    List<WaitingLine.Point> points = new ArrayList<>();
    for (int i = 0; i < starts; i++) {
      points.add(
          new WaitingLine.Point(
              LocalDate.of(2026, 8, 1).plusDays(7L * i),
              new WaitingLine.Spread(i, 5.0 + i, 9.0 + i),
              new WaitingLine.Spread(100 - i, 200 - i, 300 - i),
              i > 3));
    }
    return new WaitingLine(name, points);
  }

  private static String words(ChartPage page) {
    return TextSpy.textsOf(page).stream()
        .map(TextSpy.Written::text)
        .collect(Collectors.joining("\n"));
  }

  /** A chart of some treatments, the later dates ruled out. */
  static WaitingChart invented(ChartStyle style, int treatments) {
    List<WaitingLine> lines = new ArrayList<>();
    for (int i = 0; i < treatments; i++) {
      lines.add(line("invented treatment " + i + ", 2 times 14 days apart", 9));
    }
    return chart(style, lines);
  }

  private static WaitingChart chart(ChartStyle style, List<WaitingLine> lines) {
    return new WaitingChart(
        lines, UNTREATED, UNTREATED, "mites left on 1 Jan", TEXT, Hemisphere.NORTH, style);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 5})
  void allWordsAreOnThePage(int count) {
    List<WaitingLine> lines = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      lines.add(line("treatment " + i, 6));
    }
    for (ChartStyle style : List.of(ChartStyle.A4, ChartStyle.LETTER, ChartStyle.SLIDE)) {
      ChartPage page = chart(style, lines).pages().get(0);
      String words = words(page);
      assertTrue(words.contains("winter bees harmed (%)"), style.name());
      assertTrue(words.contains("mites left on 1 Jan"), style.name());
      assertTrue(words.contains("no treatment"), style.name());
      assertTrue(words.contains("this date is ruled out"), style.name());
      assertTrue(words.contains("treatment " + (count - 1)), style.name());
    }
  }

  @Test
  void oneStartDateIsEnough() {
    assertEquals(1, chart(ChartStyle.A4, List.of(line("once", 1))).pages().size());
    assertTrue(
        words(chart(ChartStyle.A4, List.of(line("once", 1))).pages().get(0)).contains("once"));
  }

  @Test
  void wrongDataAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> chart(ChartStyle.A4, List.of()));
    assertThrows(IllegalArgumentException.class, () -> new WaitingLine("none", List.of()));
    assertThrows(IllegalArgumentException.class, () -> new WaitingLine.Spread(2, 1, 3));
    assertThrows(IllegalArgumentException.class, () -> new WaitingLine.Spread(0, Double.NaN, 3));
  }
}
