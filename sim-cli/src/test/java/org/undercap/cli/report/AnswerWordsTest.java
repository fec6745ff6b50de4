package org.undercap.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;

/** What an adviser must not miss in an answer, in the order in which it is read. */
class AnswerWordsTest {
  private static final String AUGUST =
      """
      undercap: 1
      name: Yard
      site: {climate: central-european}
      colony: {date: 2026-08-08, bees: 20000, brood: 24000 cells}
      """;

  private static final String MANY_MITES = "mites: {in-colony: 2500}\n";

  private static final String VAPOURS =
      """
      plans:
        - name: Weekly vapour
          steps: [{date: 2026-08-10, treatment: oxalic-sublimation, times: 4, every: 7 days}]
      """;

  @TempDir private Path folder;

  @Test
  void saysAtOnceThatWinterBeesAreNotProtectedAndWhichPlanCanBePutRight() {
    String front = section("THE ANSWER", AUGUST + MANY_MITES + VAPOURS);
    assertTrue(front.startsWith("None of your plans can be used as they are written: "), front);
    String dates = section("WHAT TO DO WHEN", AUGUST + MANY_MITES + VAPOURS);
    assertTrue(
        dates.contains("8 August 2026: Decide what to change: a plan, or what rules"), dates);
    assertFalse(dates.contains("nothing to do"), dates);
    assertTrue(front.contains("the winter bees are not protected"), front);
    assertTrue(front.contains("\"Weekly vapour\" would"), front);
    assertTrue(front.contains("but is ruled out: oxalic acid vapour is repeated"), front);
    assertTrue(front.contains("use it once or 4 times 5 days apart"), front);
  }

  @Test
  void heatOnTheFirstDaysOfFormicAcidIsSaidBesideTheHeadline() throws IOException {
    String pads = "plans: [{name: Pads, steps: [{date: 2026-08-10, treatment: formic-pads}]}]\n";
    String dates = section("WHAT TO DO WHEN", AUGUST + MANY_MITES + pads);
    assertTrue(dates.contains("Wait if hotter days than the label allows"), dates);
    Files.writeString(folder.resolve("week.csv"), "date,temperature_c\n2026-08-11,25.5\n");
    String measured =
        AUGUST.replace("central-european}", "central-european, daily-temperatures: week.csv}");
    String front = section("THE ANSWER", measured + MANY_MITES + pads);
    assertTrue(
        front.contains(
            "\"Pads\" would protect the winter bees better, but is ruled out: formic acid pads: too"
                + " hot at its begin, the daily mean of 11 August 2026 is above 25 C."
                + " This can be changed: begin it in cooler days."),
        front);
  }

  @Test
  void aPlanThatComesTooLateIsSaidToProtectNothing() {
    String late =
        "plans: [{name: Winter only, steps: [{date: 2026-12-20, treatment: oxalic-dribble}]}]\n";
    String front = section("THE ANSWER", AUGUST + MANY_MITES + late);
    assertTrue(front.contains("It does not protect the winter bees: "), front);
    assertTrue(front.contains(" if nothing is done."), front);
    String few = section("THE ANSWER", AUGUST + "mites: {in-colony: 20}\narrivals: none\n" + late);
    assertFalse(few.contains("not protect"), few);
  }

  private static final String STRIPS_AND_DRIBBLE =
      """
      plans:
        - name: Strips, then dribble
          steps:
            - {date: 2026-08-10, treatment: oxalic-glycerine-strips}
            - {date: 2026-12-20, treatment: oxalic-dribble}
      """;

  @Test
  void looksAtTheLimitOfTheKeeperAlsoBetweenTreatments() {
    String many = AUGUST + MANY_MITES + "arrivals: dense\n" + STRIPS_AND_DRIBBLE;
    String sure = section("HOW SURE", many);
    assertFalse(sure.contains("above the limit of 8"), sure);
    String strict = section("HOW SURE", many + "threshold: {mites-per-100-bees: 0.5}\n");
    assertTrue(strict.contains("Not enough by itself: on 1 "), strict);
    assertTrue(
        strict.contains("above the limit of 0.5. The plan treats again only on 20 "), strict);
  }

  @Test
  void aPlanThatIsNotEnoughNamesTheDayAndTheNextStep() throws IOException {
    String pads = "plans: [{name: Pads, steps: [{date: 2026-08-10, treatment: formic-pads}]}]\n";
    String many = AUGUST + MANY_MITES + "arrivals: collapsing\n" + pads;
    String dates = section("WHAT TO DO WHEN", many + "threshold: {mites-per-100-bees: 1}\n");
    assertTrue(dates.contains("Even if it worked treat again (the limit is 1 on 100 bees)"), dates);
    assertTrue(dates.contains("\"undercap plan FILE\" finds treatments"), dates);
    String nothing = section("WHAT TO DO WHEN", AUGUST + MANY_MITES);
    assertTrue(
        nothing.matches(".* 2026: Treat before this day: about .*above the limit of 3.*"), nothing);
    assertTrue(nothing.contains("\"undercap plan FILE\" finds treatments"), nothing);
    String alone = Files.readString(folder.resolve("out/calendar.ics"));
    assertTrue(alone.contains("SUMMARY:Yard: Treat before this day\r\n"), alone);
    section("WHAT TO DO WHEN", many);
    String calendar = Files.readString(folder.resolve("out/calendar.ics"));
    assertTrue(calendar.contains("SUMMARY:Yard: Formic acid pads\r\n"), calendar);
  }

  @Test
  void aCountThatIsGoodNewsAndStillTooHighIsCalledSo() {
    String many = AUGUST + MANY_MITES + STRIPS_AND_DRIBBLE;
    String dates = section("WHAT TO DO WHEN", many + "threshold: {mites-per-100-bees: 0.5}\n");
    assertTrue(
        dates.contains("Even if it worked treat again (the limit is 0.5 on 100 bees)"), dates);
    assertTrue(dates.contains(" before 20 December 2026."), dates);
    String mild = section("WHAT TO DO WHEN", many + "threshold: {mites-per-100-bees: 30}\n");
    assertFalse(mild.contains("Even if it worked"), mild);
    assertTrue(
        mild.contains(
            "At 10 or more it probably failed, or many mites came in. At 90 or more treat again (the"
                + " limit is 30 on 100 bees)."),
        mild);
  }

  @Test
  void theDayOnWhichTheHoneyComesOffStandsAmongTheDates() throws IOException {
    String supers = AUGUST.replace("cells}", "cells, supers-until: 2026-08-20}") + MANY_MITES;
    String waits = "plans: [{name: Wait, steps: [{date: 2026-08-21, treatment: formic-pads}]}]\n";
    String dates = section("WHAT TO DO WHEN", supers + waits);
    assertTrue(dates.contains("20 August 2026: Take the honey supers off."), dates);
    assertTrue(
        Files.readString(folder.resolve("out/calendar.ics")).contains("Take the honey supers off"));
    String atOnce =
        """
        plans:
          - name: At once
            supers-until: 2026-08-09
            steps: [{date: 2026-08-10, treatment: formic-pads}]
        """;
    String front = section("THE ANSWER", supers + atOnce);
    assertTrue(front.startsWith("Honey supers off on 9 August 2026; then formic acid pads"), front);
  }

  @Test
  void plansThatDoAsWellAreToldApartByWhatElseTheyTake() throws IOException {
    String front =
        section("THE ANSWER", Files.readString(Path.of("../scenarios/hollerbach-terraces.yaml")));
    assertTrue(front.contains("with as few mites left, but that one "), front);
    assertTrue(front.contains("takes 35 minutes of work, not 15."), front);
    assertTrue(front.contains("leaves fewer bees at winter's end"), front);
  }

  @Test
  void losesColoniesInRunsAndForecastsNoSurvival() throws IOException {
    String out = run(Files.readString(Path.of("../scenarios/kalamos-threshing-floor.yaml"))).out();
    String text = out.replaceAll("\\s+", " ");
    assertTrue(
        text.contains("Of the plans compared it loses the colony in the fewest simulated seasons."),
        text);
    assertTrue(text.contains("how many real colonies die is not forecast"), text);
    assertFalse(text.contains("alive"), text);
  }

  @Test
  void whatWouldChangeTheAdviceIsSaidInSimplePartsWithPlanAndDate() throws IOException {
    String change =
        section(
            "WHAT WOULD CHANGE THIS ADVICE",
            Files.readString(Path.of("../scenarios/roof-nine.yaml")));
    assertTrue(change.contains("Not even 8 times or an eighth as many mites would"), change);
    assertTrue(
        change.matches(".*comes first if \".*\" begins [0-9]+ days later, on [0-9]+ .* 2026.*"),
        change);
    String curves = Files.readString(folder.resolve("out/answer.html"));
    assertTrue(curves.contains("in a typical season: "), curves);
  }

  private static final String COAST =
      """
      undercap: 1
      name: Coast
      site: {latitude: 56}
      colony: {date: DAY, bees: 9 frames, brood: 5 frames two thirds full, frame: national-deep, supers: off}
      mites: {counts: [wash: {date: DAY, bees: 300, mites: 9, method: alcohol}]}
      plans:
        - name: Pads
          steps: [{date: START, treatment: formic-pads}, {date: 2026-12-22, treatment: oxalic-dribble}]
        - name: Vapours
          steps: [{date: START, treatment: oxalic-sublimation, times: 4, every: 5 days}, {date: 2026-12-22, treatment: oxalic-dribble}]
        - name: Oxalic strips
          steps: [{date: START, treatment: oxalic-glycerine-strips}, {date: 2026-12-22, treatment: oxalic-dribble}]
      """;

  private static String coast(String day, String start) {
    return COAST.replace("DAY", day).replace("START", start);
  }

  /** Design: rank by harm to winter bees, never by the mites left alone. */
  @Test
  void whileWinterBeesAreRearedThePlanThatHarmsFewerOfThemComesBeforeTheOneThatLeavesFewerMites() {
    String page = coast("2026-08-25", "2026-08-27");
    String front = section("THE ANSWER", page);
    assertTrue(front.startsWith("Formic acid pads once, on 27 August 2026"), front);
    assertFalse(front.contains("too late"), front);
    assertTrue(section("THE PLANS", page).contains("The order: first come plans that lose fewer"));
  }

  @Test
  void lateItIsSaidWhatTheAnswerHangsOnAndWhichPlanHarmsFewerBees() {
    String page = coast("2026-09-10", "2026-09-12");
    String front = section("THE ANSWER", page);
    assertTrue(front.contains("the model takes the last to emerge on 15 September 2026"), front);
    String sure = section("HOW SURE", page);
    assertTrue(sure.contains("\"Pads\" would harm fewer late bees"), sure);
    assertTrue(sure.contains("did not say: with a humid place \"Vapours\" comes first."), sure);
    String said = section("HOW SURE", page.replace("latitude: 56", "latitude: 56, humid: no"));
    assertFalse(said.contains("did not say"), said);
  }

  @Test
  void factsThatAreOldWhenTreatmentBeginsAreToBeLookedAtAgain() {
    String old = section("HOW SURE", coast("2026-08-25", "2026-11-30"));
    assertTrue(old.contains("begins 97 days after the facts of 25 August 2026: count"), old);
    String fresh = section("HOW SURE", coast("2026-08-25", "2026-08-27"));
    assertFalse(fresh.contains("after the facts"), fresh);
  }

  @Test
  void saysWhichLimitIsUsed() {
    String none = run(AUGUST + MANY_MITES + VAPOURS).out().replaceAll("\\s+", " ");
    assertTrue(
        none.contains("You named no limit, so the usual one is used: 3 mites on 100 bees."), none);
    assertTrue(none.contains("The limit at which to act is 3 mites on 100 bees"), none);
    String own =
        run(AUGUST + MANY_MITES + VAPOURS + "threshold: {mites-per-100-bees: 1}\n")
            .out()
            .replaceAll("\\s+", " ");
    assertTrue(own.contains("Your limit is 1 mite on 100 bees."), own);
  }

  @Test
  void surveysOfOctoberSayNothingOfATreatmentThatComesLater() {
    String surveys = section("WHAT SURVEYS FOUND", AUGUST + MANY_MITES + STRIPS_AND_DRIBBLE);
    assertTrue(
        surveys.contains("Strips, then dribble: not told, since it acts until 22 December 2026"),
        surveys);
    assertTrue(surveys.matches(".*Do nothing: [0-9]+ to [0-9]+ of 100 colonies.*"), surveys);
  }

  @Test
  void aMissingPriceIsNamed() {
    String prices = "costs: {oxalic-glycerine-strips: 4.5}\n";
    String text = run(AUGUST + MANY_MITES + prices + STRIPS_AND_DRIBBLE).out();
    assertTrue(text.contains("at least 4.5"), text);
    assertTrue(text.contains("No price was given for oxalic acid dribble."), text);
  }

  @Test
  void aRecountInTheColdIsLeftToAMildDayOrABoard() {
    String winter =
        "plans: [{name: Winter, steps: [{date: 2026-12-10, treatment: oxalic-dribble}]}]\n";
    String cold = section("WHAT TO DO WHEN", AUGUST + MANY_MITES + winter);
    assertTrue(
        cold.contains(
            "Count again on a mild day (most are too cold then to open a hive), or count a week"),
        cold);
    String summer =
        "plans: [{name: Summer, steps: [{date: 2026-08-10, treatment: formic-pads}]}]\n";
    String warm = section("WHAT TO DO WHEN", AUGUST + MANY_MITES + summer);
    assertFalse(warm.contains("too cold"), warm);
  }

  private static final String LOW =
      """
      undercap: 1
      name: Low
      site: {climate: temperate-oceanic}
      colony: {date: 2026-08-05, bees: 10 frames, brood: 6 frames, frame: langstroth-deep}
      mites: {counts: [{%s}]}
      plans: [{name: Pads, steps: [{date: 2026-08-07, treatment: formic-pads}]}]
      """;

  private static String washed(int mites) {
    return String.format(
        Locale.ROOT,
        LOW,
        "wash: {date: 2026-08-05, bees: 300, mites: " + mites + ", method: alcohol}");
  }

  @Test
  void aLowFirstWashNeedsNoTreatmentButAnotherWash() throws IOException {
    String front = section("THE ANSWER", washed(0));
    assertTrue(
        front.startsWith(
            "No treatment needed now; wash 300 bees again on 2 September 2026. Treat at 9 or more"
                + " mites (the limit is 3 on 100 bees)."),
        front);
    assertTrue(front.contains("Of your plans \"Pads\" would then come first."), front);
    String calendar = Files.readString(folder.resolve("out/calendar.ics"));
    assertTrue(calendar.contains("DTSTART;VALUE=DATE:20260902"), calendar);
    String json = Files.readString(folder.resolve("out/comparison.json"));
    assertTrue(json.replaceAll("\\s+", "").contains("\"treatAtMites\":9,"), json);
    assertTrue(section("WHAT TO DO WHEN", washed(0)).contains("no treatment before"));
    String strict = section("THE ANSWER", washed(0) + "threshold: {mites-per-100-bees: 0.1}\n");
    assertFalse(strict.contains("No treatment needed now"), strict);
  }

  @Test
  void manyMitesOrABoardAloneDoNotPutATreatmentOff() {
    assertTrue(section("THE ANSWER", washed(12)).startsWith("Formic acid pads once"));
    String board = String.format(Locale.ROOT, LOW, "board: {date: 2026-08-05, days: 5, mites: 0}");
    assertFalse(section("THE ANSWER", board).startsWith("No treatment needed now"));
  }

  @Test
  void everyWordOfTheFirstPageIsExplainedThere() {
    String sure = section("HOW SURE", AUGUST + MANY_MITES + STRIPS_AND_DRIBBLE);
    assertTrue(sure.contains("of 100 winter bees are harmed, not "), sure);
    assertTrue(sure.contains("Harmed: a living mite was in the cell when the bee came out."), sure);
    assertTrue(sure.contains("Simulated season: one imagined course of this colony"), sure);
    String all = run(AUGUST + MANY_MITES + STRIPS_AND_DRIBBLE).out();
    assertFalse(
        all.matches("(?s).*(percentage point|parasitised|middle values|work\\.[a-z]).*"), all);
  }

  @Test
  void endsWithFourIfNoPlanCanBeUsedAndSaysForWhich() throws IOException {
    CliRun one = run(AUGUST + MANY_MITES + VAPOURS);
    assertEquals(4, one.exitCode());
    assertTrue(one.err().endsWith("no plan can be advised for: yard\n"), one.err());
    CliRun several =
        CliRun.of(
            "compare",
            "../scenarios/roof-nine.yaml",
            "../scenarios/serra-do-ipe-roxo.yaml",
            folder.resolve("yard.yaml").toString(),
            "--members=20",
            "--out=" + folder.resolve("all"));
    assertEquals(4, several.exitCode());
    assertTrue(
        several.err().endsWith("no plan can be advised for: serra-do-ipe-roxo, yard\n"),
        several.err());
    assertTrue(Files.exists(folder.resolve("all/roof-nine/answer.html")), several.err());
  }

  /** A section of the answer on one line, without its heading. */
  private String section(String heading, String scenario) {
    CliRun run = run(scenario);
    boolean none = run.out().contains("None of your plans can be used");
    assertEquals(none ? 4 : 0, run.exitCode(), run.err());
    String text =
        run.out().substring(run.out().indexOf("\n" + heading + "\n") + heading.length() + 2);
    return text.split("\n\n[A-Z ]+\n", 2)[0].replaceAll("\\s+", " ");
  }

  private CliRun run(String scenario) {
    try {
      Path file = Files.writeString(folder.resolve("yard.yaml"), scenario);
      return CliRun.of(
          "compare",
          file.toString(),
          "--members=40",
          "--out=" + folder.resolve("out"),
          "--if-exists=overwrite");
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
