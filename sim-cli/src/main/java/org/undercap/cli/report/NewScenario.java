package org.undercap.cli.report;

import java.time.LocalDate;
import java.util.Map;
import org.undercap.cli.option.Question;
import org.undercap.cli.option.Question.Counted;

/** Writes a commented scenario file from the answers to the ten questions. */
public final class NewScenario {
  private static final int DAYS_TO_FETCH_IT = 2;

  private NewScenario() {}

  /**
   * The file.
   *
   * @param answers an accepted answer to every question
   * @return YAML, lines ended by a line feed
   */
  public static String text(Map<Question, String> answers) {
    LocalDate start = LocalDate.parse(answers.get(Question.DATE)).plusDays(DAYS_TO_FETCH_IT);
    String supers = answers.get(Question.SUPERS);
    return """
        # Check this file with "undercap check FILE", compare its plans with "undercap compare FILE".
        # "undercap help scenario" explains every key, also those that are not used here.
        undercap: 1
        name: "%s"
        site:
          climate: %s        # undercap climates lists them; or latitude: 52.1
        colony:
          date: %s           # the day of these facts; the run begins here
          bees: %s           # adult bees; frames count as covered on both sides
          brood: %s          # eggs, larvae and sealed brood
          frame: %s
          floor: %s          # open: vapour is lost through a mesh
          %s
        mites:
          counts:
            %s
        arrivals: %s         # mites from neighbours: none, low, dense, collapsing
        # feeding:           # late syrup keeps the queen laying
        #   - {from: 2026-09-10, until: 2026-09-20}
        # organic: true      # or name what you have, as in allowed: [thymol-gel, oxalic-dribble]
        plans:               # examples: put your own in their place; undercap methods lists treatments
          - name: Thymol gel twice
            steps:
              - {date: %s, treatment: thymol-gel, times: 2, every: 14 days}
          - name: Formic acid pads
            steps:
              - {date: %s, treatment: formic-pads}
          - name: Oxalic acid vapour three times
            steps:
              - {date: %s, treatment: oxalic-sublimation, times: 3, every: 7 days}
        """
        .formatted(
            answers.get(Question.NAME),
            answers.get(Question.CLIMATE),
            answers.get(Question.DATE),
            answers.get(Question.BEES),
            answers.get(Question.BROOD),
            answers.get(Question.FRAME),
            answers.get(Question.FLOOR),
            supers.equals("off")
                ? "supers: off        # on: say supers-until: 2026-09-30"
                : "supers-until: " + supers,
            count(answers),
            answers.get(Question.ARRIVALS),
            start,
            start,
            start);
  }

  private static String count(Map<Question, String> answers) {
    Counted counted = Question.counted(answers.get(Question.COUNT)).orElseThrow();
    String date = answers.get(Question.DATE);
    return counted.board()
        ? "- board: {date: "
            + date
            + ", days: "
            + counted.among()
            + ", mites: "
            + counted.mites()
            + "}"
        : "- wash: {date: "
            + date
            + ", bees: "
            + counted.among()
            + ", mites: "
            + counted.mites()
            + ", method: alcohol}";
  }
}
