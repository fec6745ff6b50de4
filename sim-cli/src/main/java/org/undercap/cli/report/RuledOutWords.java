package org.undercap.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercap.advice.Objection;
import org.undercap.comparison.Ranking.By;

/** Plans that would come first if nothing ruled them out. */
final class RuledOutWords {
  private final Answer answer;
  private final Map<Integer, By> better = new LinkedHashMap<>();

  RuledOutWords(Answer answer) {
    this.answer = answer;
    for (int place : answer.comparison().ranking()) {
      if (!objections(place).isEmpty()) {
        answer
            .advice()
            .wouldLeadBy(place)
            .filter(by -> by != By.MITES_LEFT || !answer.needsNoTreatment())
            .ifPresent(by -> better.put(place, by));
      }
    }
  }

  /** Reasons against a plan, with dates as people say them. */
  static String reasons(Answer answer, int place) {
    return answer.advice().ruledOut().get(place).stream()
        .map(Objection::words)
        .map(DateWords::said)
        .collect(Collectors.joining("; "));
  }

  /** Reasons against a plan and what can be done about each. */
  static String reasonsAndRemedies(Answer answer, int place) {
    return answer.advice().ruledOut().get(place).stream()
        .map(o -> o.words() + o.remedy().map(remedy -> " (" + remedy + ")").orElse(""))
        .map(DateWords::said)
        .collect(Collectors.joining("; "));
  }

  /** Whether there is such a plan. */
  boolean any() {
    return !better.isEmpty();
  }

  /** The best of these plans that the keeper can put right: why it is ruled out, and how. */
  Optional<String> curable() {
    return firstCurable()
        .map(
            place ->
                answer.name(place)
                    + " would "
                    + gain(better.get(place))
                    + ", but is ruled out: "
                    + reasons(answer, place)
                    + ". This can be changed: "
                    + objections(place).stream()
                        .map(o -> o.remedy().orElseThrow())
                        .collect(Collectors.joining("; "))
                    + ". Then compare again.");
  }

  private Optional<Integer> firstCurable() {
    return better.keySet().stream()
        .filter(place -> objections(place).stream().allMatch(o -> o.remedy().isPresent()))
        .findFirst();
  }

  /** The others, those with the same reasons together. */
  List<String> others() {
    record Why(By by, String reasons) {}
    Map<Why, List<String>> plans = new LinkedHashMap<>();
    better.forEach(
        (place, by) -> {
          if (!firstCurable().equals(Optional.of(place))) {
            plans
                .computeIfAbsent(new Why(by, reasons(answer, place)), why -> new ArrayList<>())
                .add(answer.name(place));
          }
        });
    List<String> items = new ArrayList<>();
    plans.forEach(
        (why, names) ->
            items.add(
                DateWords.joined(names)
                    + " would "
                    + gain(why.by)
                    + (names.size() == 1 ? ", but is" : ", but are")
                    + " ruled out ("
                    + why.reasons
                    + ")."));
    return items;
  }

  private List<Objection> objections(int place) {
    return answer.advice().ruledOut().get(place);
  }

  private static String gain(By by) {
    return switch (by) {
      case LOSSES -> "lose the colony in fewer simulated seasons";
      case HARM_TO_BROOD -> "protect the winter bees better";
      case WEAKENED_BEES -> "leave fewer weakened bees";
      case MITES_LEFT -> "leave fewer mites";
    };
  }
}
