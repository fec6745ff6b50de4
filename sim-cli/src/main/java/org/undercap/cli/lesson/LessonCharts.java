package org.undercap.cli.lesson;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.undercap.cli.chart.BarPlot;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.chart.ChartText;
import org.undercap.cli.chart.Fill;
import org.undercap.cli.chart.LinePlot;
import org.undercap.cli.chart.Look;
import org.undercap.cli.chart.Meaning;
import org.undercap.cli.chart.Plot;
import org.undercap.cli.chart.TeachingChart;
import org.undercap.lesson.Axis;
import org.undercap.lesson.Bar;
import org.undercap.lesson.LessonResult;
import org.undercap.lesson.Panel;
import org.undercap.lesson.Series;

/** Makes charts of the numbers of lessons. */
final class LessonCharts {
  private static final int SHORT_AXIS_DAYS = 80;
  private static final int WEEK = 7;
  private static final double PERCENT = 100;

  /** Key of a series whose points stand alone, each on a stem from zero, instead of a line. */
  private static final String ALONE = "washes";

  /** Parts of bars that begin where the bar above ends, as in an account. */
  private static final Set<String> ENTRIES = Set.of("more", "killed-by-treatment", "died");

  /** Part of bars whose share is written beside them. */
  private static final String KILLED = "killed";

  private final Speech speech;
  private final ChartStyle style;

  LessonCharts(Speech speech, ChartStyle style) {
    this.speech = speech;
    this.style = style;
  }

  /** The chart of a lesson. */
  TeachingChart chart(LessonText text, LessonResult result) {
    Map<String, Object> place = Map.of("place", speech.place(result.climate()));
    ChartText words =
        new ChartText(
            text.title(),
            speech.say("chart.subtitle", place),
            text.headline(),
            text.limit(),
            text.alternative());
    return new TeachingChart(
        result.panels().stream().map(panel -> plot(panel, result)).toList(), words, style);
  }

  private Plot plot(Panel panel, LessonResult result) {
    String title = title(panel);
    Map<String, Object> figures = Speech.figures(result.numbers(), result.dates());
    String unit = speech.say("unit." + panel.unit(), figures);
    return switch (panel.axis()) {
      case DATES, NUMBERS -> lines(panel, title, unit, figures);
      case BARS -> bars(panel, title, unit, figures);
      case COLUMNS -> new MapDrawing(speech, panel, result).plot(title, unit);
    };
  }

  private String title(Panel panel) {
    if (panel.key().isEmpty()) {
      return "";
    }
    String key = "panel." + panel.key();
    return speech.words().has(key) ? speech.say(key) : speech.method(panel.key());
  }

  private LinePlot lines(Panel panel, String title, String unit, Map<String, Object> figures) {
    List<Series> drawn = panel.lines().stream().filter(s -> !s.key().equals(ALONE)).toList();
    double[] ends = ends(panel);
    List<LinePlot.Line> lines = new ArrayList<>();
    for (int i = 0; i < drawn.size(); i++) {
      lines.add(line(drawn.get(i), look(drawn.get(i).key(), i)));
    }
    List<LinePlot.Range> ranges =
        panel.lines().stream()
            .filter(s -> s.key().equals(ALONE))
            .flatMap(LessonCharts::pins)
            .toList();
    return new LinePlot(
        title,
        unit,
        panel.across().isEmpty() ? "" : speech.say("across." + panel.across(), figures),
        ticks(
            panel,
            ranges.isEmpty() ? ends[0] : ends[0] + 1,
            ranges.isEmpty() ? ends[1] : ends[1] - 1),
        ends[0],
        ends[1],
        List.of(),
        panel.areas().stream().map(s -> line(s, area(s.key()))).toList(),
        lines,
        ranges,
        panel.spans().stream()
            .map(
                s ->
                    new LinePlot.SpanMark(speech.say("span." + s.key(), figures), s.from(), s.to()))
            .toList(),
        panel.levels().stream()
            .map(l -> new LinePlot.LevelMark(speech.say("level." + l.key()), l.value()))
            .toList());
  }

  private static Stream<LinePlot.Range> pins(Series series) {
    return IntStream.range(0, series.x().size())
        .mapToObj(i -> pin(series.x().get(i), series.y().get(i)));
  }

  private static LinePlot.Range pin(double x, double y) {
    return new LinePlot.Range(x, 0, y, y, false);
  }

  private static double[] ends(Panel panel) {
    double[] across =
        Stream.concat(panel.areas().stream(), panel.lines().stream())
            .flatMap(series -> series.x().stream())
            .mapToDouble(x -> x)
            .toArray();
    double from = DoubleStream.of(across).min().orElseThrow();
    double to = DoubleStream.of(across).max().orElseThrow();
    boolean apart =
        panel.across().equals(Panel.STARTS)
            || panel.lines().stream().anyMatch(s -> s.key().equals(ALONE));
    return apart ? new double[] {from - 1, to + 1} : new double[] {from, to};
  }

  private List<LinePlot.Tick> ticks(Panel panel, double from, double to) {
    return panel.axis() == Axis.DATES
        ? dateTicks(LocalDate.ofEpochDay((long) from), LocalDate.ofEpochDay((long) to))
        : numberTicks(from, to, panel.across().startsWith("days") ? WEEK : 1);
  }

  /** The first of each month, and the fifteenth on short axes. */
  List<LinePlot.Tick> dateTicks(LocalDate first, LocalDate last) {
    boolean fine = first.plusDays(SHORT_AXIS_DAYS).isAfter(last);
    return first
        .datesUntil(last.plusDays(1))
        .filter(day -> day.getDayOfMonth() == 1 || (fine && day.getDayOfMonth() == 15))
        .map(day -> new LinePlot.Tick((double) day.toEpochDay(), speech.date(day)))
        .toList();
  }

  private static List<LinePlot.Tick> numberTicks(double from, double to, int step) {
    List<LinePlot.Tick> ticks = new ArrayList<>();
    for (int at = (int) Math.ceil(from); at <= to; at += step) {
      ticks.add(new LinePlot.Tick(at, Integer.toString(at)));
    }
    return ticks;
  }

  private LinePlot.Line line(Series series, Look look) {
    String words =
        series.of().isPresent()
            ? speech.say("series." + series.key(), series.of().getAsDouble())
            : speech.say("series." + series.key());
    return new LinePlot.Line(words, look, series.x(), series.y());
  }

  private static Look look(String key, int index) {
    return switch (key) {
      case "on-bees" -> Meaning.MITES_ON_BEES.look();
      case "in-cells" -> Meaning.MITES_IN_CELLS.look();
      case "all-mites" -> index == 0 ? Look.ofPlan(0) : Meaning.ALL_MITES.look();
      default -> Look.ofPlan(index);
    };
  }

  private static Look area(String key) {
    return key.equals("brood") ? Meaning.BROOD.look() : Meaning.BEES.look();
  }

  private BarPlot bars(Panel panel, String title, String unit, Map<String, Object> figures) {
    List<BarPlot.Row> rows = new ArrayList<>();
    for (int row = 0; row < panel.rows().size(); row++) {
      rows.add(new BarPlot.Row(head(panel.rows().get(row), figures), value(panel, row)));
    }
    boolean several = panel.bars().stream().map(Bar::part).distinct().count() > 1;
    List<BarPlot.Bar> bars =
        panel.bars().stream()
            .map(
                bar ->
                    new BarPlot.Bar(
                        bar.row(),
                        several ? speech.say("part." + bar.part()) : "",
                        fill(bar.part()),
                        bar.from(),
                        bar.to()))
            .toList();
    double whole = panel.unit().startsWith("percent") ? PERCENT : 0;
    return new BarPlot(title, unit, rows, bars, whole);
  }

  /** A head of a row: a date, a number, or a key. */
  private String head(String head, Map<String, Object> figures) {
    if (head.matches("\\d+")) {
      return speech.say(
          "row." + (head.equals("0") || head.equals("1") ? "rounds-" + head : "rounds-many"),
          Integer.valueOf(head));
    }
    return head.matches("\\d{4}-.*")
        ? speech.date(LocalDate.parse(head))
        : speech.say("row." + head, figures);
  }

  private String value(Panel panel, int row) {
    List<Bar> parts = panel.bars().stream().filter(bar -> bar.row() == row).toList();
    if (parts.get(0).part().equals(KILLED)) {
      return speech.say("value.killed", Map.of("killed", parts.get(0).to() / PERCENT));
    }
    Bar last = parts.get(parts.size() - 1);
    return switch (last.part()) {
      case "killed-by-treatment", "died" -> signed("\u2212", last);
      case "more" -> signed("+", last);
      default -> isAccount(panel) ? Speech.tens(last.to()) : Speech.number(last.to());
    };
  }

  private static boolean isAccount(Panel panel) {
    return panel.bars().stream().anyMatch(bar -> ENTRIES.contains(bar.part()));
  }

  /** An entry of an account: it leads from one balance to the next as they are shown. */
  private static String signed(String sign, Bar bar) {
    double change = 10 * (Math.rint(bar.to() / 10) - Math.rint(bar.from() / 10));
    return change == 0 ? "0" : sign + Speech.tens(change);
  }

  private static Fill fill(String part) {
    return switch (part) {
      case "on-bees", "spared-on-bees" -> Fill.ON_BEES;
      case "in-cells", "out-of-reach" -> Fill.IN_CELLS;
      case "killed-by-treatment", KILLED -> Fill.KILLED;
      case "died" -> Fill.FEWER;
      case "more" -> Fill.MORE;
      default -> Fill.ALL_MITES;
    };
  }
}
