package org.undercap.cli.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.chart.LayoutFaults;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.lesson.Lesson;
import org.undercap.lesson.LessonPlace;

/** Book, quiz, wash game and film. */
class PagesTest {
  private static final LessonPlace PLACE =
      LessonPlace.in(ClimateCatalogue.shipped().get("temperate-oceanic"));
  private static final Speech SPEECH =
      new Speech(Words.shipped(), Audience.PRACTISED, Units.METRIC);

  private static LessonPack pack;
  private static Film film;
  private static String book;

  @BeforeAll
  static void make() {
    pack = new LessonPack(PLACE, List.of(Lesson.values()), SPEECH, ChartStyle.A4);
    film = new Film(PLACE, SPEECH);
    book = new Pages(pack).book(film);
  }

  @Test
  void bookHoldsEachLessonWithItsPictureAndCautions() {
    for (Lesson lesson : Lesson.values()) {
      assertTrue(book.contains("<section class=\"lesson\" id=\"" + lesson.id() + "\">"));
      assertTrue(book.contains("lesson-" + lesson.id() + "-desc"), "text for the picture");
    }
    assertTrue(book.contains("not a prescription"), "cautions");
    assertTrue(book.contains("burns lungs and eyes"), "caution of oxalic vapour");
    assertFalse(book.contains("http://") || book.contains("https://"), "needs no network");
    assertFalse(book.contains("<script"), "needs no script");
  }

  @Test
  void takeHomeSentencesTellAugustWarmthAndLateTreatment() {
    assertTrue(book.contains("One oxalic treatment in late summer disappoints"));
    assertTrue(book.contains("Thymol needs warmth and weeks"));
    assertTrue(book.contains("Treating late ruins winter bees, even when fewer mites are left"));
  }

  @Test
  void takeHomeSentencesAreLeftOutWhereTheirLessonsDoNotHold() {
    Speech speech = new Speech(Words.shipped(), Audience.NEW, Units.METRIC);
    LessonPlace place = LessonPlace.in(ClimateCatalogue.shipped().get("humid-subtropical"));
    LessonPack everBrood = new LessonPack(place, List.of(Lesson.values()), speech, ChartStyle.A4);
    String said = new Pages(everBrood).book(new Film(place, speech));
    assertFalse(said.contains("disappoints"));
    assertFalse(said.contains("Three things to take home"));
  }

  @Test
  void quizHidesNamesInItsPicturesAndTellsThemAtTheEnd() {
    String quiz = new Pages(pack).quiz();
    int answers = quiz.indexOf("id=\"answers\"");
    String pictures = quiz.substring(0, answers);
    for (String name : List.of("treated once", "in sealed brood", "frame forgotten")) {
      assertFalse(pictures.contains(name), name);
      assertTrue(quiz.indexOf(name, answers) > 0, name);
    }
  }

  @Test
  void gameHoldsAHundredSlips() {
    String game = new Pages(pack).game();
    assertEquals(100, game.split("<div>\\d+</div>", -1).length - 1);
    assertTrue(game.contains("666"), "dice");
  }

  @Test
  void filmHasAFrameForEachDayAndWordsApart() throws IOException {
    ImageReader reader = ImageIO.getImageReadersByFormatName("gif").next();
    byte[] gif = film.gif();
    assertTrue(gif.length < 300_000, "size " + gif.length);
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(gif))) {
      reader.setInput(in);
      assertEquals(28, reader.getNumImages(true));
      assertEquals(28, film.frames());
    } finally {
      reader.dispose();
    }
    assertEquals(List.of(), LayoutFaults.of(film.still(ChartStyle.A4)));
    assertEquals(List.of(), LayoutFaults.of(film.still(ChartStyle.SLIDE)));
  }

  @Test
  void browserPrintsTheBook(@TempDir Path folder) throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/chromium")), "needs a browser");
    Path page = Files.writeString(folder.resolve("book.html"), book);
    Path pdf = folder.resolve("book.pdf");
    Process browser =
        new ProcessBuilder(
                "/usr/bin/chromium",
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + folder.resolve("profile"),
                "--no-pdf-header-footer",
                "--print-to-pdf=" + pdf,
                page.toUri().toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("log.txt").toFile())
            .start();
    assertTrue(browser.waitFor(120, TimeUnit.SECONDS), "browser ends");
    assertTrue(Files.size(pdf) > 100_000, "pages were printed");
  }
}
