package org.undercap.cli.report;

import java.util.List;
import java.util.Optional;
import org.undercap.cli.report.Report.Term;

/** What every report says: the limits of the model, and the words of the trade. */
final class Glossary {
  static final List<String> LIMITS =
      List.of(
          "It follows one average colony that fits the facts. Real colonies scatter more widely than any range here.",
          "Viruses, food, failing queens, robbing and other diseases are not in it. So how many real colonies die is not forecast; \"lost\" counts simulated seasons, to tell plans apart.",
          "It counts in averages; below about ten mites chance decides.",
          "It was tested against published measurements of European bees in temperate and warm-temperate places only; where it misses them, the README of the project says so.",
          "Mites arriving from other colonies are guessed from their neighbourhood, and nobody can know the weather to come.",
          "It knows no label, no law and no price but those that you gave.");

  static final List<Term> TERMS =
      List.of(
          new Term(
              "harmed (winter bees, late bees, young bees)",
              "with at least one living mite in the cell when the bee came out."),
          new Term(
              "weakened bee",
              "a worker that was harmed so: it lives shorter and does not become a good winter bee."),
          new Term("phoretic mite", "a mite on an adult bee, where most treatments reach it."),
          new Term(
              "sealed brood, under the cappings",
              "brood in closed cells, where mites breed and most treatments do not reach."),
          new Term("winter bees", "the workers reared late in the season that live until spring."),
          new Term(
              "late bees",
              "the bees that emerge when the time of winter bees is nearly over or past."),
          new Term("wash", "mites shaken off a sample of bees in alcohol or soap, and counted."),
          new Term(
              "efficacy",
              "share of the mites that a treatment kills; it must be said of which mites."),
          new Term("limit", "mites on 100 bees at which a keeper wants to act."),
          new Term(
              "simulated season",
              "one imagined course of this colony from the first day to the last; what nobody can know, as the weather, is drawn anew for each."),
          new Term(
              "typical season",
              "the simulated season in which all that nobody knows has its middle value."),
          new Term(
              "lost",
              "a simulated season in which too few bees are left for a colony; real losses are more."),
          new Term(
              "middle and range of 8 in 10",
              "half of the simulated seasons lie above the middle; one in ten lies below the range, one in ten above."));

  private static final String SEASON =
      "Simulated season: one imagined course of this colony; what nobody can know, as the weather, is drawn anew for each.";

  private Glossary() {}

  /** What words of the first page mean, those that it uses. */
  static Optional<String> explained(String text) {
    String words =
        (text.contains(" harmed") ? HarmWords.MEANING + " " : "")
            + (text.contains("simulated season") ? SEASON : "");
    return words.isEmpty() ? Optional.empty() : Optional.of(words.strip());
  }
}
