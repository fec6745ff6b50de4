package org.undercap.cli.report;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Locale;
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

  /** A start that leaves less than this part of the mites is worth a word (fraction). */
  private static final double FAR_FEWER = 0.5;

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
      page.paragraph(Report.STUDY.toUpperCase(Locale.ROOT));
    }
    timing.courses().forEach(course -> page.item(answer(course) + leftBehind(course)));
    page.item(broodless());
    page.paragraph(
        "About "
            + Figures.plain(timing.mites())
            + " mites in the colony on the first day. Each figure below is the middle of "
            + timing.settings().members()
            + " simulated seasons; in brackets the range of 8 in 10. Winter bees: those that emerge from "
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
            + " harms at most "
            + Figures.plain(100 * timing.inTime().tolerance())
            + " of 100 winter bees more than the best one, and keeps at least "
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
      return course.words()
          + ": no start date here can be advised, "
          + String.join("; ", course.starts().get(0).ruledOut())
              .replace(course.method().name() + ": ", "")
          + ".";
    }
    StartOutcome best = course.starts().get(course.best().get());
    if (course.last().isEmpty()) {
      return course.words()
          + ": no start date here helps the winter bees by more than anyone could see.";
    }
    LastStart last = course.last().get();
    String least = "protects the winter bees best if begun on " + DateWords.brief(best.date());
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

  /** What the best start for the winter bees leaves, if a later one leaves far fewer mites. */
  private String leftBehind(CourseTiming course) {
    if (course.best().isEmpty() || course.last().isEmpty()) {
      return "";
    }
    StartOutcome best = course.starts().get(course.best().get());
    StartOutcome fewest =
        course.starts().stream()
            .filter(start -> start.ruledOut().isEmpty())
            .min(Comparator.comparingDouble(this::left))
            .orElse(best);
    return left(fewest) < FAR_FEWER * left(best) && fewest.date().isAfter(best.date())
        ? " It leaves about "
            + Figures.plain(left(best))
            + " mites on "
            + DateWords.brief(timing.scope().mitesLeftOn())
            + "; begun on "
            + DateWords.brief(fewest.date())
            + " it leaves about "
            + Figures.plain(left(fewest))
            + ", too late for the winter bees. Treat again when there is no brood."
        : "";
  }

  private double left(StartOutcome start) {
    return start.outcomes().quantiles(timing.scope().mitesLeft(), 0.5)[0];
  }

  /**
   * The best time for oxalic acid in winter, in a sentence.
   *
   * @return the sentence
   */
  String broodless() {
    BroodlessTime time = timing.broodless();
    if (time.best().isEmpty()) {
      return "Winter treatment with oxalic acid: brood is not likely to be gone on any day; even on"
          + " the likeliest one the hive is without brood "
          + without(time.bestChance())
          + ". Look into the hive.";
    }
    LocalDate best = time.best().get();
    PlanStep.Application dribble =
        new PlanStep.Application(best, MethodCatalogue.shipped().get(OXALIC), 1);
    double mild = new RuledOut(scenario).shareInBand(dribble);
    return "Winter treatment with oxalic acid: best from about "
        + DateWords.brief(best)
        + ", when the brood is gone "
        + Figures.runs(time.chanceOn(best))
        + "; brood is likely to be gone from "
        + DateWords.brief(time.first().orElseThrow())
        + " to "
        + DateWords.brief(time.last().orElseThrow())
        + ". Then "
        + Math.round(10 * mild)
        + " of 10 days are warm enough for it. Look into the hive before you treat.";
  }

  private static String without(double chance) {
    return chance < 0.05
        ? "in fewer than 1 of 20 simulated seasons"
        : "only " + Figures.runs(chance);
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
    return timing.scope().dates().lateBrood() ? "late bees\nharmed" : "winter bees\nharmed";
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
