package org.undercap.cli.lesson;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.undercap.cli.chart.Fill;
import org.undercap.cli.chart.MapPlot;
import org.undercap.lesson.Cell;
import org.undercap.lesson.LessonResult;
import org.undercap.lesson.Panel;
import org.undercap.lesson.StartMap;

/** Makes a map of cells: shares of harm, or which of two methods is ahead. */
final class MapDrawing {
  /** Closer than this, two methods count as equal (mites of 100). */
  private static final double ALIKE = 5;

  /** From here on harm is drawn as some (%). */
  private static final double SOME = 5;

  private static final double PERCENT = 100;
  private static final String OWN = "own";
  private static final String TODAY = "today";
  private static final String EXAMPLE = "example";

  private final Speech speech;
  private final Panel panel;
  private final LessonResult result;

  MapDrawing(Speech speech, Panel panel, LessonResult result) {
    this.speech = speech;
    this.panel = panel;
    this.result = result;
  }

  private boolean compares() {
    return result.methods().size() == 2;
  }

  MapPlot plot(String title, String unit) {
    return new MapPlot(
        title,
        unit,
        speech.say("across." + panel.across()),
        panel.columns().stream().map(this::column).toList(),
        panel.rows().stream().map(this::row).toList(),
        panel.cells().stream().map(this::cell).toList(),
        key());
  }

  /** Head of a column. */
  String column(String head) {
    String words =
        compares()
            ? speech.percent(Double.parseDouble(head) / PERCENT)
            : speech.date(LocalDate.parse(head));
    return words.replace('\u00a0', ' ');
  }

  /** Head of a row. */
  String row(String head) {
    if (compares()) {
      return speech.say("row.outside", Double.parseDouble(head));
    } else if (head.equals(StartMap.UNTREATED)) {
      return speech.say("series.untreated");
    }
    double rounds = result.numbers().get(StartMap.ROUNDS + panel.rows().indexOf(head));
    String method = speech.method(head);
    return rounds > 1
        ? speech.say("row.rounds", Map.of("method", method, "rounds", rounds))
        : method;
  }

  /** A cell as text: a comparison with its sign, a mark behind what is this colony. */
  String words(Cell cell) {
    double shown = compares() ? Math.rint(cell.value()) : cell.value();
    String sign = compares() && shown > 0 ? "+" : "";
    return sign + Speech.number(shown) + (isFramed(cell) ? " *" : "");
  }

  private MapPlot.Cell cell(Cell cell) {
    String value = Speech.number(compares() ? Math.rint(Math.abs(cell.value())) : cell.value());
    return new MapPlot.Cell(
        cell.column(),
        cell.row(),
        compares() ? ahead(cell.value()) : harm(cell.value()),
        value,
        isFramed(cell),
        cell.mark().equals("outside-limits"));
  }

  private static boolean isFramed(Cell cell) {
    return List.of(OWN, TODAY, EXAMPLE).contains(cell.mark());
  }

  /** What the star in a table means; empty if there is none. */
  String star() {
    return Stream.of(OWN, TODAY)
        .filter(this::marked)
        .map(mark -> speech.say("key.marked", Map.of("mark", speech.say("key." + mark))))
        .findFirst()
        .orElse("");
  }

  /** By the number that is written, so that colour and number never disagree. */
  private static Fill ahead(double points) {
    if (Math.rint(Math.abs(points)) < ALIKE) {
      return Fill.LOW;
    }
    return points > 0 ? Fill.FIRST : Fill.SECOND;
  }

  /** By the number that is written, so that colour and number never disagree. */
  private static Fill harm(double value) {
    double percent = Double.parseDouble(Speech.number(value));
    if (percent < SOME) {
      return Fill.LOW;
    }
    return percent < StartMap.MUCH ? Fill.SOME : Fill.MUCH;
  }

  private List<MapPlot.Sample> key() {
    List<MapPlot.Sample> key = new ArrayList<>();
    if (compares()) {
      key.add(sample("first-better", Fill.FIRST, result.methods().get(0)));
      key.add(sample("second-better", Fill.SECOND, result.methods().get(1)));
      key.add(plain("alike", Fill.LOW));
    } else {
      key.add(plain("low", Fill.LOW));
      key.add(plain("some", Fill.SOME));
      key.add(plain("much", Fill.MUCH));
    }
    for (String mark : List.of(OWN, TODAY, EXAMPLE)) {
      if (marked(mark)) {
        String words = speech.say("key." + mark, result.dates());
        key.add(new MapPlot.Sample(words, Fill.LOW, true, false));
      }
    }
    if (marked("outside-limits")) {
      key.add(new MapPlot.Sample(speech.say("key.outside-limits"), Fill.LOW, false, true));
    }
    return key;
  }

  private boolean marked(String mark) {
    return panel.cells().stream().anyMatch(cell -> cell.mark().equals(mark));
  }

  private MapPlot.Sample plain(String name, Fill fill) {
    return new MapPlot.Sample(speech.say("key." + name), fill, false, false);
  }

  private MapPlot.Sample sample(String name, Fill fill, String method) {
    String words = speech.say("key." + name, Map.of("method", speech.method(method)));
    return new MapPlot.Sample(words, fill, false, false);
  }
}
