package org.undercap.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.undercap.advice.FlipPoint;
import org.undercap.advice.WashValue;
import org.undercap.advice.WeatherTurn;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.report.Report.Block;
import org.undercap.cli.report.Report.Paragraph;
import org.undercap.cli.report.Report.Term;
import org.undercap.cli.report.Report.Terms;
import org.undercap.scenario.Plan;
import org.undercap.treatment.PlanStep;

/** What would turn the advice round, and whether another wash could. */
final class ChangeWords {
  /**
   * A wash that changes the choice less often than this is said to do so hardly ever (fraction).
   */
  private static final double HARDLY = 0.005;

  /** A wash that changes the choice less often than this is not worth it (fraction). */
  private static final double NOT_WORTH = 0.05;

  /** A wash that changes the choice more often than this is well worth it (fraction). */
  private static final double WORTH = 0.2;

  private static final Map<String, String> NAMES =
      Map.of(
          "mites", "Mites in the colony",
          "brood", "Brood",
          "temperature", "Weather",
          "arrivals", "Mites arriving",
          "floor", "Floor",
          "humid", "Humidity",
          "start", "Dates");

  private ChangeWords() {}

  static List<Block> blocks(Answer answer) {
    List<Block> blocks = new ArrayList<>();
    if (answer.advice().second().isEmpty()) {
      blocks.add(new Paragraph("There is no second plan that could take the place of this one."));
      return blocks;
    }
    if (answer.waiting().isPresent()) {
      blocks.add(
          new Paragraph(
              "The next count: "
                  + RecountWords.treatAt(
                      answer.advice().nextWash().orElseThrow(), answer.scenario().limit())
                  + ". So would a lower limit of your own."));
      return blocks;
    }
    if (answer.advice().flips().isEmpty()) {
      blocks.add(
          new Paragraph(
              "The first plans lie so close together that nothing much hangs on the choice: a smaller"
                  + " set of simulated seasons puts another one first, perhaps "
                  + answer.name(answer.advice().second().get())
                  + ". Choose between them by work, money and what you have at hand. Another wash"
                  + " would not tell them apart."));
      return blocks;
    } else {
      blocks.add(
          new Paragraph(
              "How far must one thing alone differ from what you wrote down until another plan comes"
                  + " first? The figures are rough. A plan may also come first since the weather"
                  + " then rules the other out."));
      blocks.add(new Terms(terms(answer)));
      turns(answer).forEach(words -> blocks.add(new Paragraph(words)));
    }
    blocks.add(new Paragraph(wash(answer)));
    return blocks;
  }

  /** Plans that the weather alone rules out, those with the same turning point together. */
  private static List<String> turns(Answer answer) {
    Map<Double, List<String>> names = new TreeMap<>();
    for (int place : answer.comparison().ranking()) {
      WeatherTurn.degrees(answer.scenario(), answer.result(place).plan())
          .ifPresent(
              degrees ->
                  names.computeIfAbsent(degrees, d -> new ArrayList<>()).add(answer.name(place)));
    }
    List<String> turns = new ArrayList<>();
    names.forEach((degrees, plans) -> turns.add(turn(answer, degrees, plans)));
    return turns;
  }

  private static String turn(Answer answer, double degrees, List<String> plans) {
    String way = degrees > 0 ? "warmer" : "cooler";
    boolean stays =
        answer.advice().flips().stream()
            .filter(flip -> flip.what().equals("temperature") && flip.change().contains(way))
            .allMatch(flip -> flip.instead().isEmpty());
    return DateWords.joined(plans)
        + (plans.size() == 1 ? " is" : " are")
        + " ruled out as it is now. The turning point lies at "
        + Numbers.exact(Math.abs(degrees))
        + " C "
        + way
        + " in the first 8 weeks: from there on "
        + (plans.size() == 1 ? "it" : "they")
        + " can be used"
        + (stays
            ? ", though " + answer.name(answer.advice().chosen()) + " still comes first."
            : ".");
  }

  private static List<Term> terms(Answer answer) {
    List<FlipPoint> flips = answer.advice().flips();
    Map<String, List<FlipPoint>> byThing = new LinkedHashMap<>();
    flips.forEach(flip -> byThing.computeIfAbsent(flip.what(), w -> new ArrayList<>()).add(flip));
    List<Term> terms = new ArrayList<>();
    byThing.forEach(
        (what, points) -> {
          List<String> sentences = new ArrayList<>();
          List<String> not = new ArrayList<>();
          for (FlipPoint point : points) {
            point
                .instead()
                .ifPresentOrElse(
                    plan -> sentences.add(first(plan) + when(answer, point)),
                    () -> not.add(change(answer, point)));
          }
          if (!not.isEmpty()) {
            sentences.add("not even " + either(not) + " would change the choice");
          }
          String text = PlanWords.capital(String.join("; ", sentences)) + ".";
          terms.add(new Term(NAMES.getOrDefault(what, what), text));
        });
    return terms;
  }

  private static String first(String plan) {
    return plan(plan) + " comes first ";
  }

  /** A plan by its name, within a sentence. */
  static String plan(String name) {
    return name.equals(Plan.DO_NOTHING) ? "doing nothing" : "\"" + name + "\"";
  }

  private static String when(Answer answer, FlipPoint point) {
    String change = change(answer, point);
    return switch (point.what()) {
      case "temperature" -> "if it is " + change;
      case "start" -> "if " + answer.name(answer.advice().chosen()) + " begins " + change;
      default -> "with " + change;
    };
  }

  /** Nobody knows the border to a tenth. */
  static String whole(String change) {
    return change.replaceAll("\\b(\\d+)\\.0\\b", "$1");
  }

  private static String change(Answer answer, FlipPoint point) {
    String change = whole(point.change());
    return point.what().equals("start") ? change + begin(answer, change) : change;
  }

  /** The day on which the plan to take would begin if it came so many days later. */
  private static String begin(Answer answer, String daysLater) {
    long days = Long.parseLong(daysLater.substring(0, daysLater.indexOf(' ')));
    return answer.advice().chosenPlan().steps().stream()
        .map(PlanStep::date)
        .min(Comparator.naturalOrder())
        .map(date -> ", on " + DateWords.day(date.plusDays(days)))
        .orElse("");
  }

  /** Changes joined by "or", what they have in common at both ends said once. */
  private static String either(List<String> changes) {
    if (changes.size() != 2) {
      return String.join(" or ", changes);
    }
    List<String> one = List.of(changes.get(0).split(" ", -1));
    List<String> other = List.of(changes.get(1).split(" ", -1));
    int shorter = Math.min(one.size(), other.size());
    int end = 0;
    while (end < shorter - 1
        && one.get(one.size() - 1 - end).equals(other.get(other.size() - 1 - end))) {
      end++;
    }
    int begin = 0;
    while (begin < shorter - 1 - end && one.get(begin).equals(other.get(begin))) {
      begin++;
    }
    return String.join(" ", one.subList(0, one.size() - end))
        + " or "
        + String.join(" ", other.subList(begin, other.size()));
  }

  private static String wash(Answer answer) {
    WashValue wash = answer.advice().anotherWash();
    String another =
        "Another wash of "
            + wash.bees()
            + " bees on "
            + DateWords.day(answer.scenario().start())
            + " would ";
    if (wash.changes() < HARDLY) {
      return another + "hardly ever change this choice, so it is not worth the bees.";
    }
    String often =
        another
            + "change this choice in about "
            + Figures.inHundred(wash.changes())
            + " of 100 cases";
    if (wash.changes() < NOT_WORTH) {
      return often + ": it is not worth the bees.";
    }
    return often + (wash.changes() < WORTH ? ": it may be worth it." : ": it is well worth it.");
  }
}
