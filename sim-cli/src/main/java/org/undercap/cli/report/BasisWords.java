package org.undercap.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.SourceWords;
import org.undercap.cli.report.Report.Block;
import org.undercap.cli.report.Report.Items;
import org.undercap.cli.report.Report.Paragraph;
import org.undercap.cli.report.Report.Subheading;
import org.undercap.monitoring.EstimateWarning;
import org.undercap.monitoring.Interval;
import org.undercap.monitoring.MiteDistribution;
import org.undercap.monitoring.MiteEstimate;
import org.undercap.parameter.Kind;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.scenario.Assumption;
import org.undercap.scenario.Scenario;
import org.undercap.source.Access;
import org.undercap.source.Bibliography;

/** What an answer rests on: the counts, what was assumed, values that nobody measured. */
final class BasisWords {
  private static final double LEVEL = 0.95;
  private static final int FIGURES = 2;

  /** Parts of the width that are smaller are not named (fraction). */
  private static final double NAMED = 0.05;

  private BasisWords() {}

  static List<Block> blocks(Answer answer) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Subheading("The facts used"));
    blocks.add(new Items(FactWords.items(answer.scenario())));
    blocks.add(new Subheading("Mites at the start"));
    blocks.add(new Paragraph(mites(answer)));
    blocks.add(new Subheading("What was assumed"));
    blocks.add(new Items(assumptions(answer.scenario())));
    blocks.add(new Subheading("Numbers that nobody measured"));
    blocks.add(new Paragraph(unmeasured()));
    return blocks;
  }

  private static String mites(Answer answer) {
    if (answer.estimate().isEmpty()) {
      return "About "
          + Numbers.rounded(answer.mites().median(), FIGURES)
          + " mites in the colony, as the keeper gave them; they were taken as known.";
    }
    MiteEstimate estimate = answer.estimate().get();
    String text =
        "By the counts there are about "
            + estimate(estimate.mites())
            + " mites in the colony, "
            + estimate(estimate.mitesPer100Bees())
            + " on each 100 bees. In brackets stands the range in which 95 of 100 such colonies lie."
            + width(estimate)
            + counts(estimate);
    String warnings =
        estimate.warnings().stream()
            .map(EstimateWarning::words)
            .map(words -> " Note: " + words + ".")
            .collect(Collectors.joining());
    return text + warnings;
  }

  private static String estimate(MiteDistribution distribution) {
    Interval interval = distribution.interval(LEVEL);
    return Figures.said(interval.low(), distribution.median(), interval.high());
  }

  private static String width(MiteEstimate estimate) {
    List<String> parts =
        estimate.widthShares().entrySet().stream()
            .filter(part -> part.getValue() >= NAMED)
            .sorted(Map.Entry.comparingByValue(Comparator.<Double>reverseOrder()))
            .map(part -> part.getKey().words() + " (" + Numbers.percent(part.getValue()) + ")")
            .toList();
    return parts.isEmpty() ? "" : " Its width comes from " + DateWords.joined(parts) + ".";
  }

  /** Several counts, each beside what a colony with these mites would give. */
  private static String counts(MiteEstimate estimate) {
    if (estimate.counts().size() < 2) {
      return "";
    }
    List<String> found =
        estimate.counts().stream()
            .map(
                check ->
                    DateWords.day(check.count().date())
                        + ": "
                        + CountWords.found(check.count())
                        + ", where about "
                        + Numbers.rounded(check.expected(), FIGURES)
                        + " would be expected")
            .toList();
    return " Found on " + String.join("; on ", found) + ".";
  }

  private static List<String> assumptions(Scenario scenario) {
    List<String> items = new ArrayList<>();
    for (Assumption assumption : scenario.assumptions()) {
      String basis =
          switch (assumption.basis()) {
            case DEFAULT -> "not said, so the usual";
            case DERIVED -> "worked out";
            case CHANGED -> "CHANGED BY YOU";
          };
      items.add(
          PlanWords.capital(DateWords.said(assumption.text()))
              + " ("
              + assumption.field()
              + ": "
              + basis
              + ")");
    }
    scenario
        .parameters()
        .changed()
        .keySet()
        .forEach(
            id -> {
              if (items.stream().noneMatch(item -> item.contains(id.id()))) {
                items.add("Parameter " + id.id() + " is not the shipped one (CHANGED BY YOU)");
              }
            });
    return items;
  }

  private static String unmeasured() {
    List<Parameter> all = ParameterCatalogue.shipped().all();
    List<Parameter> assumed = all.stream().filter(p -> p.kind() == Kind.ASSUMPTION).toList();
    List<String> unsourced =
        assumed.stream()
            .filter(BasisWords::hasNoPublication)
            .map(BasisWords::about)
            .distinct()
            .toList();
    long memory = all.stream().filter(p -> SourceWords.fromMemory(p.read())).count();
    return assumed.size()
        + " of the "
        + all.size()
        + " numbers of the model are assumptions. So are the numbers behind each treatment, which"
        + " were chosen so that the published efficacy comes out. "
        + memory
        + " were taken from memory of the publication. No publication stands behind "
        + DateWords.joined(unsourced)
        + ". \"undercap parameters\" shows each number with its range and source.";
  }

  /** What a number is about, in words, by the first part of its name. */
  private static String about(Parameter parameter) {
    String id = parameter.id().id();
    return switch (id.substring(0, id.indexOf('.'))) {
      case "count" -> "the scatter of counts and the share that a board catches";
      case "hand" -> "the area of a hand of brood";
      case "lost" -> "when a colony counts as lost";
      case "hive", "floor" -> "the warmth of the hive and the effect of an open floor";
      case "shookSwarm" -> "laying after a shook swarm";
      case "feeding" -> "laying after late feeding";
      case "start" -> "how the colony of the first day is made up";
      case "colony" -> "the error of estimates of bees and brood";
      case "weather" -> "how much the weather varies";
      case "winterBees" -> "when winter bees are reared";
      case "season" -> "the days that stand for midwinter and the end of winter";
      case "work" -> "the minutes that a keeper's work takes";
      case "rotation", "advice", "ranking", "timing", "planning" ->
          "the rules by which plans are judged";
      default -> parameter.note().isEmpty() ? id : parameter.note();
    };
  }

  private static boolean hasNoPublication(Parameter parameter) {
    return parameter.sourceKeys().stream()
        .allMatch(key -> Bibliography.shipped().get(key).read() == Access.NONE);
  }
}
