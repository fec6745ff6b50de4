package org.undercap.cli.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.undercap.cli.chart.ChartPage;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.chart.ChartWriter;
import org.undercap.cli.chart.LayoutFaults;
import org.undercap.cli.chart.LinePlot;
import org.undercap.cli.chart.Plot;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.lesson.Lesson;
import org.undercap.lesson.LessonPlace;
import org.undercap.lesson.LessonResult;

/** The charts of the lessons: words in their places, colours, lines told apart without colour. */
class LessonChartsTest {
  /** Okabe and Ito, the light mixtures for areas, and greys; see the palette of the charts. */
  private static final Set<String> COLOURS =
      Set.of(
          "#000000", "#0072b2", "#d55e00", "#009e73", "#cc79a7", "#e69f00", "#d5ecfa", "#abdaf4",
          "#faf4b8", "#f2cf7f", "#ffffff", "#404040", "#8c8c8c", "#d0d0d0");

  private static final Pattern PAINT =
      Pattern.compile("(?:fill|stroke)=\"(rgb\\((\\d+),(\\d+),(\\d+)\\)|black|white)\"");

  private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");

  @TempDir private static Path folder;
  private static Words lengthened;

  /** A made-up language that makes each word 40 % longer and ends it in a letter of its own. */
  @BeforeAll
  static void makeUpALanguage() throws IOException {
    StringBuilder file = new StringBuilder();
    for (String line : Words.shipped().asFile().lines().toList()) {
      int at = line.indexOf(" = ") + 3;
      file.append(line, 0, at).append(longer(line.substring(at))).append('\n');
    }
    Path path = Files.writeString(folder.resolve("long.txt"), file.toString());
    lengthened = Words.translated(path);
  }

  private static String longer(String text) {
    Matcher slot = Pattern.compile("\\{[^}]*\\}|\\[[^\\]]*\\]|\\p{L}+").matcher(text);
    return slot.replaceAll(
        found -> {
          String word = found.group();
          boolean kept = word.startsWith("{") || word.startsWith("[");
          return Matcher.quoteReplacement(
              kept ? word : word + "q".repeat((int) Math.ceil(word.length() * 0.4)));
        });
  }

  private static LessonPack pack(Lesson lesson, String climate, Speech speech, ChartStyle style) {
    Climate place = ClimateCatalogue.shipped().get(climate);
    return new LessonPack(LessonPlace.in(place), List.of(lesson), speech, style);
  }

  private static Speech english(Audience audience) {
    return new Speech(Words.shipped(), audience, Units.METRIC);
  }

  @ParameterizedTest
  @EnumSource(Lesson.class)
  void wordsLieOnThePageAndApartOnPaperAndSlides(Lesson lesson) {
    for (ChartStyle style : List.of(ChartStyle.A4, ChartStyle.LETTER, ChartStyle.SLIDE)) {
      for (String climate : List.of("temperate-oceanic", "southern-temperate")) {
        LessonPack pack = pack(lesson, climate, english(Audience.PRACTISED), style);
        String what = lesson.id() + " " + style.name() + " " + climate;
        assertEquals(List.of(), LayoutFaults.of(pack.chart(lesson)), what);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Lesson.class)
  void translationReplacesAllWordsAndStillFits(Lesson lesson) {
    Speech speech = new Speech(lengthened, Audience.NEW, Units.IMPERIAL);
    LessonPack pack = pack(lesson, "temperate-oceanic", speech, ChartStyle.A4);
    assertEquals(List.of(), LayoutFaults.of(pack.chart(lesson)), lesson.id());
    List<String> own = new ArrayList<>();
    for (String text : LayoutFaults.words(pack.chart(lesson))) {
      Matcher word = WORD.matcher(text);
      while (word.find()) {
        // Long words may be broken between letters where a column is narrow.
        if (!word.group().contains("q") && word.group().length() > 3) {
          own.add(word.group());
        }
      }
    }
    assertEquals(List.of(), own, lesson.id());
  }

  @ParameterizedTest
  @EnumSource(Lesson.class)
  void coloursAreThoseOfThePalette(Lesson lesson) {
    LessonPack pack = pack(lesson, "temperate-oceanic", english(Audience.PRACTISED), ChartStyle.A4);
    ChartPage page = pack.chart(lesson).pages().get(0);
    Matcher paint = PAINT.matcher(new String(ChartWriter.svg(page, "x"), StandardCharsets.UTF_8));
    Set<String> used = new TreeSet<>();
    while (paint.find()) {
      used.add(hex(paint));
    }
    assertTrue(used.size() >= 3, "colours were found: " + used);
    used.removeAll(COLOURS);
    assertEquals(Set.of(), used);
  }

  private static String hex(Matcher paint) {
    if (paint.group(2) == null) {
      return paint.group(1).equals("black") ? "#000000" : "#ffffff";
    }
    StringBuilder hex = new StringBuilder("#");
    for (int part = 2; part <= 4; part++) {
      hex.append(Character.forDigit(Integer.parseInt(paint.group(part)) / 16, 16));
      hex.append(Character.forDigit(Integer.parseInt(paint.group(part)) % 16, 16));
    }
    return hex.toString();
  }

  @ParameterizedTest
  @EnumSource(Lesson.class)
  void linesDifferWithoutColour(Lesson lesson) {
    LessonPack pack = pack(lesson, "temperate-oceanic", english(Audience.PRACTISED), ChartStyle.A4);
    for (Plot plot : pack.chart(lesson).plots()) {
      if (plot instanceof LinePlot lines) {
        Set<String> looks = new HashSet<>();
        lines.lines().forEach(l -> looks.add(l.look().dash() + " " + l.look().marker()));
        assertEquals(lines.lines().size(), looks.size(), lesson.id());
      }
    }
  }

  /** Also where the finding does not hold, and for a map of a user's colony. */
  @ParameterizedTest
  @EnumSource(Audience.class)
  void everyTextIsFilledForEveryAudience(Audience audience) {
    for (String climate : List.of("temperate-oceanic", "humid-subtropical")) {
      for (Lesson lesson : Lesson.values()) {
        LessonText text = pack(lesson, climate, english(audience), ChartStyle.A4).text(lesson);
        Stream.concat(
                Stream.of(
                    text.title(),
                    text.finding(),
                    text.limit(),
                    text.question(),
                    text.answer(),
                    text.alternative()),
                text.notes().stream())
            .forEach(
                words -> {
                  assertFalse(words.matches("(?s).*[{}\\[\\]].*"), words);
                  assertTrue(
                      Character.isUpperCase(words.charAt(0)) || Character.isDigit(words.charAt(0)),
                      words);
                });
        assertEquals(3, text.notes().size());
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Lesson.class)
  void slidesKeepTheirSize(Lesson lesson) {
    LessonPack pack =
        pack(lesson, "southern-temperate", english(Audience.PRACTISED), ChartStyle.SLIDE);
    ChartPage page = pack.chart(lesson).pages().get(0);
    assertEquals(ChartStyle.SLIDE.chartHeight(), page.height(), 0, lesson.id());
  }

  /** Months come from the place; only the lesson on both hemispheres names them. */
  @Test
  void wordsNameNoMonthOrFeastOfOneHemisphere() {
    Pattern season =
        Pattern.compile(
            "January|February|March|April|\\bMay\\b|June|July|August|September|October"
                + "|November|December|New Year|Christmas|Easter");
    List<String> lines = Words.shipped().asFile().lines().toList();
    assertTrue(lines.stream().anyMatch(line -> season.matcher(line).find()), "the search works");
    List<String> found =
        lines.stream()
            .filter(line -> !line.startsWith("month.") && !line.startsWith("lesson.north-south."))
            .filter(line -> season.matcher(line).find())
            .toList();
    assertEquals(List.of(), found);
  }

  /** One line of a slide, so that a room reads it in a glance. */
  @ParameterizedTest
  @EnumSource(Lesson.class)
  void headlineIsOneShortLine(Lesson lesson) {
    for (Audience audience : Audience.values()) {
      LessonPack pack = pack(lesson, "temperate-oceanic", english(audience), ChartStyle.SLIDE);
      assertTrue(pack.result(lesson).holds(), lesson.id());
      String headline = pack.text(lesson).headline();
      assertTrue(headline.length() <= 66, headline);
      assertTrue(
          LayoutFaults.words(pack.chart(lesson)).contains(headline), "not broken: " + headline);
    }
  }

  /** Where a lesson does not hold, no picture stands below the headline that claims it. */
  @Test
  void headlineClaimsNothingThatTheNumbersDoNotSay() {
    for (String climate : List.of("southern-temperate", "humid-subtropical")) {
      LessonPack pack =
          pack(Lesson.LATE_SYRUP, climate, english(Audience.PRACTISED), ChartStyle.A4);
      assertFalse(pack.result(Lesson.LATE_SYRUP).holds(), climate);
      String headline = pack.text(Lesson.LATE_SYRUP).headline();
      assertTrue(headline.startsWith("Here late syrup changes little"), headline);
    }
  }

  @Test
  void findingSaysSoWhereTheNumbersDoNotSayIt() {
    LessonPack pack =
        pack(Lesson.FOUR_DATES, "humid-subtropical", english(Audience.NEW), ChartStyle.A4);
    LessonResult result = pack.result(Lesson.FOUR_DATES);
    assertFalse(result.holds());
    String finding = pack.text(Lesson.FOUR_DATES).finding();
    assertTrue(finding.startsWith("In this place the numbers do not say"), finding);
  }

  @Test
  void temperaturesFollowTheUnits() {
    Speech fahrenheit = new Speech(Words.shipped(), Audience.PRACTISED, Units.IMPERIAL);
    LessonPack pack = pack(Lesson.GEL_WARMTH, "temperate-oceanic", fahrenheit, ChartStyle.A4);
    List<String> words = LayoutFaults.words(pack.chart(Lesson.GEL_WARMTH));
    assertTrue(
        words.stream().anyMatch(w -> w.replace('\u00a0', ' ').equals("68 °F")), words.toString());
  }
}
