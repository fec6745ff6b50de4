package org.undercap.monitoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.PlanStep;

class PoorResultTest {
  private static final LocalDate DAY = LocalDate.of(2026, 8, 20);
  private static final LocalDate LATER = DAY.plusDays(30);
  private static final CountedColony COLONY =
      CountedColony.of(ClimateCatalogue.shipped().get("temperate-oceanic"), DAY, 18_000, 14_000)
          .withArrivals(day -> 1.5);
  private static final Wash BEFORE = new Wash(DAY, 300, 18, WashMethod.ALCOHOL);

  private static CountedColony treated(String method) {
    Method chosen = MethodCatalogue.shipped().get(method);
    return COLONY.withSteps(
        List.of(new PlanStep.Application(DAY, chosen, 1)), COLONY.circumstances());
  }

  private static Map<String, RankedCause> rank(String method, int found) {
    return rank(treated(method), found);
  }

  private static Map<String, RankedCause> rank(CountedColony colony, int found) {
    Wash after = new Wash(LATER, 300, found, WashMethod.ALCOHOL);
    List<RankedCause> ranked = PoorResult.rank(colony, List.of(BEFORE), after, 1);
    for (int i = 1; i < ranked.size(); i++) {
      assertTrue(ranked.get(i - 1).weight() >= ranked.get(i).weight());
    }
    assertEquals(1, ranked.stream().mapToDouble(RankedCause::weight).sum(), 1e-12);
    return ranked.stream().collect(Collectors.toMap(r -> r.cause().id(), Function.identity()));
  }

  @Test
  void mitesLeftAfterStripsSpeakForResistance() {
    Map<String, RankedCause> bad = rank("pyrethroid-strips", 12);
    Map<String, RankedCause> good = rank("pyrethroid-strips", 1);
    assertTrue(bad.get("resistance").weight() > 5 * bad.get("brood").weight());
    assertTrue(good.get("brood").weight() > good.get("resistance").weight());
    assertTrue(bad.get("brood").probability() < 0.05);
    assertTrue(bad.get("resistance").expected() > 2 * bad.get("brood").expected());
    assertTrue(bad.get("arrivals").expected() > bad.get("brood").expected());
  }

  @Test
  void coldMattersOnlyToWhatEvaporates() {
    assertTrue(rank("thymol-gel", 9).containsKey("cold"));
    assertEquals(4, rank("pyrethroid-strips", 9).size());
    Method thymol = MethodCatalogue.shipped().get("thymol-gel");
    CountedColony twice =
        COLONY.withSteps(
            List.of(
                new PlanStep.Application(DAY, thymol, 1),
                new PlanStep.Application(DAY.plusDays(14), thymol, 1)),
            COLONY.circumstances());
    Map<String, RankedCause> ranked = rank(twice, 25);
    assertTrue(ranked.get("cold").expected() > ranked.get("brood").expected());
    assertTrue(ranked.get("dose").expected() > ranked.get("cold").expected());
  }

  @Test
  void aSingleVapourWithBroodIsExpectedToLookPoor() {
    RankedCause brood = rank("oxalic-sublimation", 30).get("brood");
    assertTrue(brood.probability() > 0.2, "30 mites are no surprise: more than before");
    assertTrue(brood.range().contains(30), brood.range().toString());
  }

  @Test
  void causesComeFromTheTable() {
    assertEquals(
        List.of("brood", "arrivals", "dose", "cold", "resistance"),
        FailureCause.all().stream().map(FailureCause::id).toList());
    for (FailureCause cause : FailureCause.all()) {
      assertTrue(cause.next().endsWith("."), cause.next());
    }
    assertThrows(IllegalArgumentException.class, () -> FailureCause.Change.of("weather"));
  }

  @Test
  void needsATreatmentAndACountBefore() {
    Wash after = new Wash(LATER, 300, 9, WashMethod.ALCOHOL);
    assertThrows(
        IllegalArgumentException.class, () -> PoorResult.rank(COLONY, List.of(BEFORE), after, 1));
    CountedColony treated = treated("thymol-gel");
    assertThrows(
        IllegalArgumentException.class, () -> PoorResult.rank(treated, List.of(), after, 1));
  }
}
