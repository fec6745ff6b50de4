package org.undercap.cli.lesson;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.undercap.cli.chart.ChartPage;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.chart.ChartWriter;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.lesson.Lesson;
import org.undercap.lesson.LessonResult;
import org.undercap.lesson.Panel;

/** A map of a user's colony as text, JSON, picture and table. */
public final class MapFiles {
  private static final int SCHEMA_VERSION = 1;

  private final Lesson lesson;
  private final String colony;
  private final Speech speech;

  /**
   * A map.
   *
   * @param lesson which map
   * @param colony name of the colony
   * @param speech how to speak
   */
  public MapFiles(Lesson lesson, String colony, Speech speech) {
    this.lesson = lesson;
    this.colony = colony;
    this.speech = speech;
  }

  private List<String> names(boolean svg) {
    String name = lesson.id();
    return svg
        ? List.of(name + ".png", name + ".svg", name + ".csv")
        : List.of(name + ".png", name + ".csv");
  }

  /**
   * Looks early whether the files can be written.
   *
   * @param folder where
   * @param svg whether the chart is written as SVG too
   */
  public void check(OutputFolder folder, boolean svg) {
    folder.prepare(names(svg)).close();
  }

  /**
   * The words of the map.
   *
   * @param result its numbers
   * @return words with the name of the colony
   */
  public LessonText text(LessonResult result) {
    LessonText text = LessonText.of(lesson, result, speech);
    return new LessonText(
        text.id(),
        colony + ": " + text.title(),
        text.headline(),
        text.finding(),
        text.limit(),
        text.notes(),
        text.question(),
        text.answer(),
        text.alternative());
  }

  /**
   * The map as text.
   *
   * @param result its numbers
   * @param cautions printed below it
   * @return lines
   */
  public String page(LessonResult result, List<String> cautions) {
    LessonText text = text(result);
    TextPage page = new TextPage().title(text.title()).paragraph(text.finding());
    Panel panel = result.panels().get(0);
    String star = new MapDrawing(speech, panel, result).star();
    page.table(table(result)).paragraph((speech.say("unit." + panel.unit()) + ". " + star).strip());
    page.paragraph(text.limit());
    cautions.forEach(page::paragraph);
    return page.render();
  }

  private TextTable table(LessonResult result) {
    Panel panel = result.panels().get(0);
    MapDrawing map = new MapDrawing(speech, panel, result);
    TextTable table = new TextTable().name("");
    panel.columns().forEach(column -> table.number(map.column(column)));
    for (int row = 0; row < panel.rows().size(); row++) {
      String[] cells = new String[panel.columns().size() + 1];
      cells[0] = map.row(panel.rows().get(row));
      int at = row;
      panel.cells().stream()
          .filter(cell -> cell.row() == at)
          .forEach(cell -> cells[cell.column() + 1] = map.words(cell));
      table.row(cells);
    }
    return table;
  }

  /**
   * The map for programs.
   *
   * @param result its numbers
   * @return a JSON document
   */
  public String json(LessonResult result) {
    StringWriter document = new StringWriter();
    JsonOutput.write(
        document, lesson.id(), SCHEMA_VERSION, to -> LessonPage.json(to, text(result), result));
    return document.toString();
  }

  /**
   * Writes picture and table.
   *
   * @param result its numbers
   * @param text its words
   * @param folder where
   * @param style size of the picture
   * @param svg whether the picture is written as SVG too
   * @param err told which files were written
   */
  public void write(
      LessonResult result,
      LessonText text,
      OutputFolder folder,
      ChartStyle style,
      boolean svg,
      PrintWriter err) {
    ChartPage page = new LessonCharts(speech, style).chart(text, result).pages().get(0);
    try (OutputFiles files = folder.prepare(names(svg))) {
      files.bytes(lesson.id() + ".png", out -> out.write(ChartWriter.png(page)));
      if (svg) {
        files.bytes(lesson.id() + ".svg", out -> out.write(ChartWriter.svg(page, "chart")));
      }
      files.text(lesson.id() + ".csv", out -> LessonCsv.write(out, result));
      files.publish(err);
    }
  }
}
