package org.undercap.cli.lesson;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.undercap.cli.chart.Chart;
import org.undercap.cli.chart.ChartPage;
import org.undercap.cli.chart.ChartWriter;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.lesson.Lesson;

/** The files of a pack: a picture and a table for each lesson, and for a whole pack the pages. */
public final class LessonFiles {
  /** Name of the book. */
  public static final String BOOK = "book.html";

  private static final String QUIZ = "quiz.html";
  private static final String GAME = "wash-game.html";
  private static final String GIF = "treatment.gif";
  private static final String STILL = "treatment";

  private final List<Lesson> lessons;
  private final boolean svg;
  private final boolean whole;

  /**
   * The files of some lessons.
   *
   * @param lessons the lessons
   * @param svg whether to write each picture as SVG too
   * @param whole whether to write book, quiz, game and film too
   */
  public LessonFiles(List<Lesson> lessons, boolean svg, boolean whole) {
    this.lessons = List.copyOf(lessons);
    this.svg = svg;
    this.whole = whole;
  }

  private List<String> names() {
    List<String> names = new ArrayList<>();
    for (Lesson lesson : lessons) {
      names.addAll(pictures(lesson.id()));
      names.add(lesson.id() + ".csv");
    }
    if (whole) {
      names.addAll(pictures(STILL));
      names.addAll(List.of(GIF, BOOK, QUIZ, GAME));
    }
    return names;
  }

  private List<String> pictures(String name) {
    return svg ? List.of(name + ".png", name + ".svg") : List.of(name + ".png");
  }

  /**
   * Looks early whether the files can be written.
   *
   * @param folder where they will be written
   * @throws org.undercap.cli.output.UsageException if files are there that must stay
   */
  public void check(OutputFolder folder) {
    folder.prepare(names()).close();
  }

  /**
   * Writes all files, or none.
   *
   * @param pack the lessons with words and charts
   * @param folder where to write
   * @param err told which files were written
   */
  public void write(LessonPack pack, OutputFolder folder, PrintWriter err) {
    try (OutputFiles files = folder.prepare(names())) {
      Map<String, byte[]> pictures = new ConcurrentHashMap<>();
      lessons.parallelStream()
          .forEach(lesson -> draw(files, lesson.id(), () -> pack.chart(lesson), pictures));
      for (Lesson lesson : lessons) {
        files.text(lesson.id() + ".csv", out -> LessonCsv.write(out, pack.result(lesson)));
      }
      if (whole) {
        pages(pack, files, pictures);
      }
      pictures.forEach((name, bytes) -> files.bytes(name, out -> out.write(bytes)));
      files.publish(err);
    }
  }

  private void pages(LessonPack pack, OutputFiles files, Map<String, byte[]> pictures) {
    Film film = new Film(pack.place(), pack.speech());
    Pages pages = new Pages(pack);
    draw(files, STILL, () -> film.still(pack.style()), pictures);
    if (files.wants(GIF)) {
      byte[] gif = film.gif();
      files.bytes(GIF, out -> out.write(gif));
    }
    files.text(BOOK, out -> out.write(pages.book(film)));
    files.text(QUIZ, out -> out.write(pages.quiz()));
    files.text(GAME, out -> out.write(pages.game()));
  }

  /** Draws the files of a picture that are wanted. */
  private void draw(
      OutputFiles files, String name, Supplier<Chart> chart, Map<String, byte[]> pictures) {
    boolean png = files.wants(name + ".png");
    boolean vector = svg && files.wants(name + ".svg");
    if (png || vector) {
      ChartPage page = chart.get().pages().get(0);
      if (png) {
        pictures.put(name + ".png", ChartWriter.png(page));
      }
      if (vector) {
        pictures.put(name + ".svg", ChartWriter.svg(page, "chart"));
      }
    }
  }
}
