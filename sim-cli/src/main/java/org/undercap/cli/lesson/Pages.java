package org.undercap.cli.lesson;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.undercap.cli.chart.Chart;
import org.undercap.cli.chart.ChartPage;
import org.undercap.cli.chart.ChartWriter;
import org.undercap.lesson.Lesson;
import org.undercap.lesson.LessonResult;
import org.undercap.lesson.WashGame;

/** The pages of a pack: book, quiz and wash game, each one file that needs nothing else. */
public final class Pages {
  private static final TemplateEngine ENGINE = TemplateEngine.createPrecompiled(ContentType.Html);
  private static final String NAME_SPACE = "\\s+xmlns(:\\w+)?=\"[^\"]*\"";

  private static final List<String> CAUTIONS =
      List.of("every-report", "every-treatment", "oxalic-vapour", "formic", "thymol", "strips");

  /** The figures of other lessons in the three things to take home, by their names there. */
  private static final Map<String, Lesson> HOME =
      Map.of(
          "fourDates",
          Lesson.FOUR_DATES,
          "count",
          Lesson.COUNT_CLIMBS,
          "gel",
          Lesson.GEL_WARMTH,
          "waiting",
          Lesson.WAITING);

  private final LessonPack pack;
  private final Speech speech;

  /**
   * The pages of a pack.
   *
   * @param pack its lessons
   */
  public Pages(LessonPack pack) {
    this.pack = pack;
    speech = pack.speech();
  }

  private static String render(String template, Object page) {
    StringOutput output = new StringOutput();
    ENGINE.render(template, Map.of("page", page), output);
    return output.toString().replace("\r\n", "\n");
  }

  static String svg(Chart chart, String prefix) {
    ChartPage page = chart.pages().get(0);
    String svg = new String(ChartWriter.svg(page, prefix), StandardCharsets.UTF_8);
    return svg.replaceAll(NAME_SPACE, "");
  }

  /**
   * The book.
   *
   * @param film the treatment day by day
   * @return a web page
   */
  public String book(Film film) {
    List<BookPage.Chapter> chapters = pack.lessons().parallelStream().map(this::chapter).toList();
    return render(
        "lesson-book.jte",
        new BookPage(
            new Headings(speech),
            speech.place(pack.place().climate()),
            home(),
            chapters,
            sheet(),
            svg(film.still(pack.style()), "film-"),
            glossary(),
            CAUTIONS.stream().map(id -> speech.say("caution." + id)).toList()));
  }

  private BookPage.Chapter chapter(Lesson lesson) {
    String picture = svg(pack.chart(lesson), "lesson-" + lesson.id() + "-");
    return new BookPage.Chapter(pack.text(lesson), picture, lesson.id() + ".csv");
  }

  /**
   * What everybody should know at the end; left out if a lesson of it is, or does not hold here.
   */
  private List<String> home() {
    Map<String, Object> figures = new LinkedHashMap<>();
    for (Map.Entry<String, Lesson> each : HOME.entrySet()) {
      if (!pack.lessons().contains(each.getValue()) || !pack.result(each.getValue()).holds()) {
        return List.of();
      }
      LessonResult result = pack.result(each.getValue());
      Speech.figures(result.numbers(), result.dates())
          .forEach((name, value) -> figures.put(each.getKey() + "." + name, value));
    }
    return speech.words().names("home.").stream()
        .map(name -> speech.say("home." + name, figures))
        .toList();
  }

  /** First of each month and the number of mites, to be guessed and compared. */
  private List<BookPage.Entry> sheet() {
    List<BookPage.Entry> sheet = new ArrayList<>();
    if (pack.lessons().contains(Lesson.ONE_MITE)) {
      LessonResult result = pack.result(Lesson.ONE_MITE);
      List<String> dates = result.panels().get(0).rows();
      for (int i = 0; i < dates.size(); i++) {
        String date = speech.date(LocalDate.parse(dates.get(i)));
        sheet.add(
            new BookPage.Entry(date, Speech.number(result.panels().get(0).bars().get(i).to())));
      }
    }
    return sheet;
  }

  private List<BookPage.Entry> glossary() {
    return speech.words().names("glossary.").stream()
        .map(
            name ->
                new BookPage.Entry(
                    speech.say("glossary." + name), speech.say("glossary." + name + ".text")))
        .toList();
  }

  /**
   * The quiz.
   *
   * @return a web page
   */
  public String quiz() {
    return render("lesson-quiz.jte", new Quiz(pack).page());
  }

  /**
   * The wash game.
   *
   * @return a web page
   */
  public String game() {
    WashGame game = WashGame.usual();
    return render("lesson-game.jte", GamePage.of(game, speech));
  }
}
