package org.undercap.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.undercap.advice.FlipPoint;
import org.undercap.advice.WashValue;
import org.undercap.cli.report.Report.Block;
import org.undercap.cli.report.Report.Paragraph;
import org.undercap.cli.report.Report.Term;
import org.undercap.cli.report.Report.Terms;

/** What would turn the advice round, and whether another wash could. */
final class ChangeWords {
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
          "start", "Dates");

  private ChangeWords() {}

  static List<Block> blocks(Answer answer) {
    List<Block> blocks = new ArrayList<>();
    if (answer.advice().second().isEmpty()) {
      blocks.add(new Paragraph("There is no second plan that could take the place of this one."));
      return blocks;
    }
    if (answer.advice().flips().isEmpty()) {
      String second = answer.name(answer.advice().second().get());
      blocks.add(
          new Paragraph(
              "Very little: a smaller set of runs already puts another plan first, perhaps "
                  + second
                  + ". Choose between the two by work, money and what you have."));
    } else {
      blocks.add(
          new Paragraph(
              "What is tried here is how far one thing alone must differ from what was written down"
                  + " until another plan comes first. The borders are rough."));
      blocks.add(new Terms(terms(answer.advice().flips())));
    }
    blocks.add(new Paragraph(wash(answer.advice().anotherWash())));
    return blocks;
  }

  private static List<Term> terms(List<FlipPoint> flips) {
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
                    plan -> sentences.add("\"" + plan + "\" comes first with " + point.change()),
                    () -> not.add(point.change()));
          }
          if (!not.isEmpty()) {
            sentences.add("not even " + String.join(" or ", not) + " would change the choice");
          }
          String text = PlanWords.capital(String.join("; ", sentences)) + ".";
          terms.add(new Term(NAMES.getOrDefault(what, what), text));
        });
    return terms;
  }

  private static String wash(WashValue wash) {
    String often =
        "Another wash of "
            + wash.bees()
            + " bees today would change this choice "
            + (wash.changes() < 0.005
                ? "hardly ever"
                : "in about " + Figures.inHundred(wash.changes()) + " of 100 cases");
    if (wash.changes() < NOT_WORTH) {
      return often + ": it is not worth the bees for this choice.";
    }
    return often + (wash.changes() < WORTH ? ": it may be worth it." : ": it is well worth it.");
  }
}
