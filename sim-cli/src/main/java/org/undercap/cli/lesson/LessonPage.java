package org.undercap.cli.lesson;

import java.util.List;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.lesson.Bar;
import org.undercap.lesson.Cell;
import org.undercap.lesson.Lesson;
import org.undercap.lesson.LessonResult;
import org.undercap.lesson.Panel;
import org.undercap.lesson.Series;

/** Lessons as text and as JSON. */
public final class LessonPage {
  private LessonPage() {}

  /**
   * The list of lessons.
   *
   * @param speech words
   * @return a table of names and titles
   */
  public static String list(Speech speech) {
    TextTable table = new TextTable().name("lesson").text("title");
    for (Lesson lesson : Lesson.values()) {
      table.row(lesson.id(), title(lesson, speech));
    }
    return new TextPage().table(table).render();
  }

  private static String title(Lesson lesson, Speech speech) {
    return speech.words().get("lesson." + lesson.id() + ".title");
  }

  /**
   * The list of lessons for programs.
   *
   * @param out takes the names and titles
   * @param speech words
   */
  public static void list(JsonOutput out, Speech speech) {
    out.list(
        "lessons",
        List.of(Lesson.values()),
        (entry, lesson) -> entry.text("id", lesson.id()).text("title", title(lesson, speech)));
  }

  /**
   * What each lesson of a pack shows.
   *
   * @param pack the pack
   * @param lessons its lessons
   * @return a line or two for each
   */
  public static String findings(LessonPack pack, List<Lesson> lessons) {
    TextPage page = new TextPage();
    lessons.forEach(lesson -> page.fact(lesson.id(), pack.text(lesson).finding()));
    return page.render();
  }

  /**
   * A lesson as text.
   *
   * @param text its words
   * @param speech headings
   * @return lines
   */
  public static String text(LessonText text, Speech speech) {
    TextPage page = new TextPage().title(text.title()).paragraph(text.finding());
    page.heading(speech.say("book.limit")).paragraph(text.limit());
    page.heading(speech.say("book.notes"));
    text.notes().forEach(page::item);
    page.heading(speech.say("book.question")).paragraph(text.question());
    page.heading(speech.say("book.answer")).paragraph(text.answer());
    return page.render();
  }

  /**
   * A lesson for programs.
   *
   * @param out takes its words, figures and data
   * @param text its words
   * @param result its numbers
   */
  public static void json(JsonOutput out, LessonText text, LessonResult result) {
    out.text("id", text.id()).text("title", text.title()).text("finding", text.finding());
    out.text("limit", text.limit()).texts("notes", text.notes());
    out.text("question", text.question()).text("answer", text.answer());
    out.flag("numbersSayIt", result.holds());
    out.object("numbers", to -> result.numbers().forEach(to::number));
    out.object(
        "dates", to -> result.dates().forEach((name, date) -> to.text(name, date.toString())));
    out.list("panels", result.panels(), LessonPage::panel);
  }

  private static void panel(JsonOutput out, Panel panel) {
    out.text("panel", panel.key()).text("unit", panel.unit());
    out.texts("columns", panel.columns()).texts("rows", panel.rows());
    out.list("areas", panel.areas(), LessonPage::series);
    out.list("lines", panel.lines(), LessonPage::series);
    out.list("bars", panel.bars(), LessonPage::bar);
    out.list("cells", panel.cells(), LessonPage::cell);
  }

  private static void series(JsonOutput out, Series series) {
    out.text("series", series.key()).number("of", series.of());
    out.numbers("x", series.x()).numbers("y", series.y());
  }

  private static void bar(JsonOutput out, Bar bar) {
    out.number("row", (long) bar.row()).text("part", bar.part());
    out.number("from", bar.from()).number("to", bar.to());
  }

  private static void cell(JsonOutput out, Cell cell) {
    out.number("column", (long) cell.column()).number("row", (long) cell.row());
    out.number("value", cell.value()).text("mark", cell.mark());
  }
}
