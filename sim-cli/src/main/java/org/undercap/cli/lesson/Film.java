package org.undercap.cli.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.undercap.cli.chart.ChartPage;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.chart.ChartText;
import org.undercap.cli.chart.FilmFrame;
import org.undercap.cli.chart.GifWriter;
import org.undercap.lesson.LessonPlace;
import org.undercap.lesson.TreatmentFilm;

/** The treatment day by day: a moving picture, and three days of it for print. */
public final class Film {
  /** How long a day is shown (hundredths of a second). */
  private static final int SHOWN = 60;

  /** How long the day of the treatment and the last day are shown (hundredths of a second). */
  private static final int HELD = 300;

  /** Days of the print: before, on the day, when all cells are open. */
  private static final List<Integer> PRINTED = List.of(-1, 1, 13);

  private static final int DAY_BEFORE = PRINTED.get(0);
  private static final int ALL_OPEN = PRINTED.get(PRINTED.size() - 1);

  /** As many mites as before, if there are at least so many (fraction). */
  private static final double AS_MANY = 0.9;

  private static final double MITES_PER_DOT = 4;

  private final TreatmentFilm film;
  private final Speech speech;
  private final String place;

  /**
   * Films a treatment.
   *
   * @param place where the colony stands
   * @param speech how to speak
   */
  public Film(LessonPlace place, Speech speech) {
    film = TreatmentFilm.of(place);
    this.speech = speech;
    this.place =
        speech.say("chart.subtitle", Map.of("place", speech.place(place.climate())))
            + " "
            + speech.say("film.date", Map.of("date", film.treated()));
  }

  /**
   * Number of frames.
   *
   * @return days of the film
   */
  public int frames() {
    return film.days().size();
  }

  /**
   * The moving picture.
   *
   * @return a GIF file
   */
  public byte[] gif() {
    List<ChartPage> pages = new ArrayList<>();
    for (TreatmentFilm.Day day : film.days()) {
      pages.add(picture(List.of(day), ChartStyle.FILM).pages().get(0));
    }
    int last = film.days().get(film.days().size() - 1).day();
    List<Integer> shown =
        film.days().stream()
            .map(day -> day.day() == 0 || day.day() == last ? HELD : SHOWN)
            .toList();
    return GifWriter.write(pages, shown);
  }

  /**
   * Three days for print.
   *
   * @param style size
   * @return the picture
   */
  public FilmFrame still(ChartStyle style) {
    List<TreatmentFilm.Day> days =
        film.days().stream().filter(day -> PRINTED.contains(day.day())).toList();
    return picture(days, style);
  }

  private FilmFrame picture(List<TreatmentFilm.Day> days, ChartStyle style) {
    String dot = speech.say("film.dot", MITES_PER_DOT);
    ChartText text =
        new ChartText(
            speech.say("book.film"),
            place,
            finding(),
            speech.say("film.limit"),
            days.stream().map(this::words).reduce((a, b) -> a + " " + b).orElseThrow());
    return new FilmFrame(
        days.stream().map(this::still).toList(),
        new FilmFrame.Captions(speech.say("film.cells"), dot),
        text,
        style);
  }

  private String finding() {
    double before = onBees(DAY_BEFORE);
    double after = onBees(ALL_OPEN);
    Map<String, ?> figures = Map.of("days", ALL_OPEN, "before", before, "after", after);
    return speech.say(after >= AS_MANY * before ? "film.finding" : "film.otherwise", figures);
  }

  private double onBees(int number) {
    return film.days().stream()
        .filter(day -> day.day() == number)
        .mapToDouble(TreatmentFilm.Day::onBees)
        .findFirst()
        .orElseThrow();
  }

  private String words(TreatmentFilm.Day day) {
    FilmFrame.Still still = still(day);
    return still.moment() + ": " + still.onBees() + "; " + still.inCells() + ".";
  }

  private FilmFrame.Still still(TreatmentFilm.Day day) {
    double inCells = day.inCells().stream().mapToDouble(mites -> mites).sum();
    double killed = killedUntil(day.day());
    return new FilmFrame.Still(
        moment(day.day()) + (killed >= 1 ? ": " + speech.say("film.killed", killed) : ""),
        speech.say("film.on-bees", Map.of("value", day.onBees(), "adults", day.adults())),
        dots(day.onBees()),
        speech.say("film.in-cells", inCells),
        day.inCells().stream().map(Film::dots).toList());
  }

  /** Mites killed from the treatment to the end of a day. */
  private double killedUntil(int last) {
    return film.days().stream()
        .filter(day -> day.day() <= last)
        .mapToDouble(TreatmentFilm.Day::killed)
        .sum();
  }

  private String moment(int day) {
    if (day < 0) {
      return day == -1 ? speech.say("film.before.one") : speech.say("film.before", -day);
    }
    return day == 0 ? speech.say("film.treated") : speech.say("film.after", day);
  }

  private static int dots(double mites) {
    return (int) Math.round(mites / MITES_PER_DOT);
  }
}
