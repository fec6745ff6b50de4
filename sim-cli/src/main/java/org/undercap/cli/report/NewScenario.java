package org.undercap.cli.report;

import java.util.Map;
import org.undercap.cli.option.Question;
import org.undercap.cli.option.Question.Counted;
import org.undercap.scenario.Scenario;

/** Writes a commented scenario file from the answers to the ten questions. */
public final class NewScenario {
  private NewScenario() {}

  /**
   * The plans that suit a scenario.
   *
   * @param facts the scenario without plans
   * @return YAML to stand below the facts, lines ended by a line feed; empty if no treatment can be
   *     used
   */
  public static String plans(Scenario facts) {
    String examples = new ExamplePlans(facts).yaml();
    return examples.isEmpty()
        ? ""
        : "plans:               # examples that suit place and season: put your own in their place;\n"
            + "                     # undercap methods lists treatments\n"
            + examples;
  }

  /**
   * The facts.
   *
   * @param answers an accepted answer to every question
   * @return YAML without plans, lines ended by a line feed
   */
  public static String facts(Map<Question, String> answers) {
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
            answers.get(Question.ARRIVALS));
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
