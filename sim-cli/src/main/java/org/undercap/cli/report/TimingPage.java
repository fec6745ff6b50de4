package org.undercap.cli.report;

import java.time.LocalDate;
import org.undercap.advice.RuledOut;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.comparison.Ranking;
import org.undercap.planning.BroodlessTime;
import org.undercap.planning.CourseTiming;
import org.undercap.planning.LastStart;
import org.undercap.planning.StartOutcome;
import org.undercap.planning.Timing;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.PlanStep;

/** When to begin a treatment, as a page of text for the terminal. */
public final class TimingPage {
  private static final String OXALIC = "oxalic-dribble";
  private final Timing timing;
  private final Scenario scenario;

  /**
   * A page about start dates.
   *
   * @param timing the start dates tried
   */
  public TimingPage(Timing timing) {
    this.timing = timing;
    scenario = timing.scope().scenario();
  }

  /**
   * The page.
   *
   * @return its text
   */
  public String render() {
    TextPage page =
        new TextPage()
            .title(scenario.name() + ": when to treat, from " + DateWords.day(scenario.start()));
    if (scenario.study()) {
      page.paragraph("STUDY RUN, NOT ADVICE");
    }
    timing.courses().forEach(course -> page.item(answer(course)));
    page.item(broodless());
    page.paragraph(
        "About "
            + Figures.plain(timing.mites())
            + " mites in the colony on the first day. Each figure below is the middle of "
            + timing.settings().members()
            + " runs; in brackets the range of 8 in 10. Winter bees: those that emerge from "
            + DateWords.day(timing.scope().dates().winterBeesFrom())
            + " to "
            + DateWords.day(timing.scope().dates().winterBeesUntil())
            + ".");
    for (CourseTiming course : timing.courses()) {
      page.heading(course.words()).table(table(course));
    }
    page.paragraph(
        "\"Within limits\" is the share of the days on which it acts that are expected to be neither"
            + " too cold nor too hot for it (common practice, no source). In time is a start that"
            + " parasitises at most "
            + Figures.plain(100 * timing.inTime().tolerance())
            + " percentage points more of the winter brood than the best one, and keeps at least "
            + Figures.plain(100 * timing.inTime().kept())
            + " % of what that gains (assumptions).");
    page.heading("Cautions");
    Cautions.of(scenario, timing.plans())
        .forEach(caution -> page.item(caution.title() + ": " + caution.text()));
    return page.render();
  }

  /**
   * The answer for one course in a sentence.
   *
   * @param course the course
   * @return the sentence
   */
  static String answer(CourseTiming course) {
    String sentence = plain(course);
    return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
  }

  private static String plain(CourseTiming course) {
    if (course.best().isEmpty()) {
      return course.words() + ": no start date here can be advised, see below.";
    }
    StartOutcome best = course.starts().get(course.best().get());
    if (course.last().isEmpty()) {
      return course.words()
          + ": no start date here helps the winter bees by more than anyone could see.";
    }
    LastStart last = course.last().get();
    String least = "harms the winter bees least from " + DateWords.brief(best.date());
    boolean waiting = last.date().isAfter(best.date());
    return course.words()
        + ": "
        + least
        + (waiting
            ? "; still in time on "
                + DateWords.brief(last.date())
                + " ("
                + Figures.runs(last.chance())
                + ")"
            : "; any later start that was tried costs winter bees")
        + ".";
  }

  /**
   * The best time for oxalic acid in winter, in a sentence.
   *
   * @return the sentence
   */
  String broodless() {
    BroodlessTime time = timing.broodless();
    if (time.best().isEmpty()) {
      return "Winter treatment with oxalic acid: no day on which brood is likely to be gone; on the"
          + " best one there is none "
          + Figures.runs(time.bestChance())
          + ". Look into the hive.";
    }
    LocalDate best = time.best().get();
    PlanStep.Application dribble =
        new PlanStep.Application(best, MethodCatalogue.shipped().get(OXALIC), 1);
    double mild = new RuledOut(scenario).shareInBand(dribble);
    return "Winter treatment with oxalic acid: best from about "
        + DateWords.brief(best)
        + ", when there is no brood "
        + Figures.runs(time.chanceOn(best))
        + "; brood is likely to be gone from "
        + DateWords.brief(time.first().orElseThrow())
        + " to "
        + DateWords.brief(time.last().orElseThrow())
        + ". Days then are warm enough for it "
        + Math.round(10 * mild)
        + " times in 10. Look into the hive before you treat.";
  }

  private TextTable table(CourseTiming course) {
    TextTable table =
        new TextTable()
            .name("start")
            .number(brood())
            .number("mites left\n" + DateWords.brief(timing.scope().mitesLeftOn()))
            .number("within\nlimits")
            .text("");
    for (int i = 0; i < course.starts().size(); i++) {
      StartOutcome start = course.starts().get(i);
      table.row(
          DateWords.brief(start.date()),
          Figures.percent(start.outcomes(), Ranking.HARM),
          Figures.number(start.outcomes(), timing.scope().mitesLeft()),
          Math.round(100 * start.shareInBand()) + " %",
          remark(course, i));
    }
    table.row(
        "never",
        Figures.percent(timing.untreated(), Ranking.HARM),
        Figures.number(timing.untreated(), timing.scope().mitesLeft()),
        "",
        "no treatment");
    return table;
  }

  private String brood() {
    return timing.scope().dates().lateBrood()
        ? "parasitised\nlate brood"
        : "parasitised\nwinter brood";
  }

  private static String remark(CourseTiming course, int place) {
    StartOutcome start = course.starts().get(place);
    if (!start.ruledOut().isEmpty()) {
      String name = course.method().name() + ": ";
      return "no: " + String.join("; ", start.ruledOut()).replace(name, "");
    }
    boolean best = course.last().isPresent() && course.best().orElse(-1) == place;
    boolean last = course.last().filter(l -> l.date().equals(start.date())).isPresent();
    return best ? "best" : last ? "last in time" : "";
  }
}
