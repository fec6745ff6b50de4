package org.undercap.treatment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.Explanation;
import org.undercap.simulation.Intervention;

/** What a beekeeper reads when asking why a day went as it did. */
class ExplanationTest {

  private static PlanStep.Application apply(String method, int day) {
    return new PlanStep.Application(
        TrialColony.START.plusDays(day), MethodCatalogue.shipped().get(method), 1);
  }

  private static List<String> lines(int day, Circumstances circumstances, PlanStep... steps) {
    return lines(day, Interventions.of(List.of(steps), circumstances));
  }

  private static List<String> lines(int day, List<Intervention> interventions) {
    return TrialColony.simulator().explain(TrialColony.colony(), interventions, day, 0).stream()
        .map(Explanation::toLine)
        .toList();
  }

  @Test
  void thymolOnACoolDay() {
    assertEquals(
        List.of(
            "thymol gel: 0.83 of a full dose acts -> 13.2 C outside -> 23.6 C on the carrier"
                + " -> vapour 0.58 of that at 22.0 C outside -> 9.5 % of the mites on bees killed",
            "thymol gel: 11 % fewer eggs",
            "thymol gel: 0.1 % of the adult bees killed",
            "thymol gel: 0.6 % of the larvae killed"),
        lines(2, Circumstances.usual(1650), apply("thymol-gel", 0)));
  }

  @Test
  void formicPadsOnAnOpenFloorWithResistantMites() {
    Circumstances circumstances =
        new Circumstances(true, false, Map.of("formic acid", 0.1), 1650, ParameterSet.shipped());
    assertEquals(
        List.of(
            "formic acid pads: 1 of a full dose acts -> floor and humidity leave 0.60 of it"
                + " -> 13.2 C outside -> 13.2 C on the carrier"
                + " -> vapour 0.70 of that at 20.0 C outside"
                + " -> 90 % of the mites are susceptible -> 20 % of the mites on bees killed",
            "formic acid pads: hazard under the cappings 0.42 of that on bees"
                + " -> 9.1 % of the mites under the cappings killed",
            "formic acid pads: 34 % fewer eggs",
            "formic acid pads: 0.4 % of the adult bees killed",
            "formic acid pads: 0.8 % of the larvae killed"),
        lines(0, circumstances, apply("formic-pads", 0)));
  }

  @Test
  void dribbleBesideBrood() {
    List<Intervention> strong =
        List.of(
            Treatment.of(List.of(apply("oxalic-dribble", 0)), Circumstances.usual(1650))
                .withStrength(1.2));
    assertEquals(
        List.of(
            "oxalic acid dribble: 0.70 of a full dose acts -> brood nest at 100 % of its full size"
                + " -> 1.20 times as strong in this colony -> 49 % of the mites on bees killed",
            "oxalic acid dribble: 2.1 % of the adult bees killed",
            "oxalic acid dribble: 10 % of the larvae killed"),
        lines(0, strong));
  }

  @Test
  void measuresTellTheirDay() {
    assertEquals(
        List.of("queen caged: day 4 of 24"),
        lines(
            8,
            Circumstances.usual(1650),
            new PlanStep.LayingStop(TrialColony.START.plusDays(5), 24, true)));
  }

  @Test
  void nothingIsToldOfDaysOnWhichNothingActs() {
    assertTrue(lines(9, Circumstances.usual(1650), apply("formic-pads", 0)).isEmpty());
    assertTrue(lines(3, Circumstances.usual(1650), apply("formic-pads", 4)).isEmpty());
  }

  @ParameterizedTest
  @CsvSource({
    "0, '', 0",
    "0.0043, '', 0.0043",
    "0.58, '', 0.58",
    "12.34, '', 12.3",
    "1234.5, '', 1235",
    "13.24, C, 13.2 C",
    "-4, C, -4.0 C",
    "1500.4, bees, 1500 bees",
    "0, %, 0 %",
    "0.0004, %, less than 0.1 %",
    "0.0042, %, 0.4 %",
    "0.042, %, 4.2 %",
    "0.1449, %, 14 %",
    "0.9968, %, 99.7 %",
    "1, %, 100 %"
  })
  void numbersHaveTheDigitsThatAKeeperCanUse(double value, String unit, String text) {
    assertEquals("some " + text, Explanation.of("some", value, unit).toLine());
    assertEquals(text + " of it", Explanation.of("{} of it", value, unit).toLine());
  }

  @Test
  void causesComeBeforeTheirEffect() {
    Explanation cause = Explanation.of("{} outside", 10, "C");
    Explanation middle = new Explanation("{} on the tray", 22, "C", List.of(cause));
    Explanation result =
        new Explanation("{} killed", 0.5, "%", List.of(middle, Explanation.of("dose", 2, "")));
    assertEquals("10.0 C outside -> 22.0 C on the tray -> dose 2 -> 50 % killed", result.toLine());
  }
}
