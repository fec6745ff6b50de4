package org.undercap.treatment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.source.Bibliography;

class MethodCatalogueTest {

  static List<Method> methods() {
    return MethodCatalogue.shipped().all();
  }

  private static Release pulse(double... shares) {
    return new Release.Pulse(DoubleStream.of(shares).boxed().toList());
  }

  private static TemperatureResponse vapour(ParameterId substance, double reference, double share) {
    return new TemperatureResponse.Vapour(
        VapourPressure.of(ParameterSet.shipped(), substance), reference, share, 34);
  }

  private static EfficacyProfile profile(
      Release release,
      TemperatureResponse temperature,
      Response response,
      double inCells,
      double... harm) {
    double[] three = Arrays.copyOf(harm, 3);
    return new EfficacyProfile(
        release, temperature, response, inCells, new SideEffects(three[0], three[1], three[2]));
  }

  /** The table of efficacy profiles, written a second time. */
  private static EfficacyProfile expected(String id) {
    TemperatureResponse none = new TemperatureResponse.None();
    TemperatureResponse thymol = vapour(ParameterId.THYMOL_VAPOUR, 22, 0.5);
    TemperatureResponse formic = vapour(ParameterId.FORMIC_VAPOUR, 20, 0);
    Release threeDays = pulse(0.7, 0.2, 0.1);
    return switch (id) {
      case "thymol-gel" ->
          profile(
              new Release.Decay(10, 1, 28),
              thymol,
              new Response.Hill(0.35, 10, 6, 4),
              0,
              0.40,
              0.005,
              0.02);
      case "thymol-wafer" ->
          profile(
              new Release.Decay(14, 1, 28),
              thymol,
              new Response.Hill(0.35, 11, 6, 4),
              0,
              0.25,
              0.003,
              0.01);
      case "oxalic-dribble" ->
          profile(threeDays, none, new Response.Kill(0.95, 0.55), 0, 0, 0.03, 0.15);
      case "oxalic-sublimation" -> profile(threeDays, none, new Response.Kill(0.96, 0.60), 0);
      case "oxalic-glycerine-strips" ->
          profile(new Release.Plateau(42, 10), none, new Response.Constant(0.20), 0);
      case "formic-pads" ->
          profile(
              new Release.Decay(3.5, 0, 7),
              formic,
              new Response.Constant(0.60),
              0.42,
              0.80,
              0.01,
              0.02);
      case "formic-dispenser" ->
          profile(
              new Release.Plateau(21, 1), formic, new Response.Constant(0.15), 0.20, 0.20, 0.0025);
      case "lactic-spray" -> profile(threeDays, none, new Response.Kill(0.80, 0.45), 0);
      case "amitraz-strips" ->
          profile(new Release.Plateau(70, 3), none, new Response.Constant(0.16), 0);
      case "pyrethroid-strips" ->
          profile(new Release.Plateau(42, 3), none, new Response.Constant(0.28), 0);
      case "hop-acid-strips" ->
          profile(new Release.Decay(3, 0, 14), none, new Response.Constant(0.50), 0);
      case "powdered-sugar" -> profile(pulse(1), none, new Response.Kill(0.15, 0.15), 0);
      default -> throw new AssertionError("no expected profile for " + id);
    };
  }

  @Test
  void shipsTwelveMethods() {
    assertEquals(12, methods().size());
    assertEquals("thymol-gel", methods().get(0).id());
  }

  @ParameterizedTest
  @MethodSource("methods")
  void profilesAreThoseOfTheModel(Method method) {
    assertEquals(expected(method.id()), method.profile());
  }

  @ParameterizedTest
  @MethodSource("methods")
  void everySourceResolves(Method method) {
    assertFalse(method.sourceKeys().isEmpty());
    method
        .sourceKeys()
        .forEach(key -> assertTrue(Bibliography.shipped().find(key).isPresent(), key));
    assertFalse(method.aimsAt().isBlank());
  }

  @ParameterizedTest
  @MethodSource("methods")
  void everyCautionExistsAndIsPrintedOnce(Method method) {
    List<Caution> cautions = CautionCatalogue.shipped().of(List.of(method, method));
    Set<String> ids = new LinkedHashSet<>(cautions.stream().map(Caution::id).toList());
    assertEquals(cautions.size(), ids.size());
    assertTrue(ids.containsAll(List.of("every-report", "every-treatment")));
    assertTrue(ids.containsAll(method.cautions()));
    cautions.forEach(caution -> assertFalse(caution.text().isBlank(), caution.id()));
  }

  @Test
  void onlySugarNeedsNoCautionOfItsOwn() {
    List<String> without =
        methods().stream().filter(m -> m.cautions().isEmpty()).map(Method::id).toList();
    assertEquals(List.of("powdered-sugar"), without);
  }

  @Test
  void reportWithoutTreatmentHasTheGeneralCautionOnly() {
    List<Caution> cautions = CautionCatalogue.shipped().of(List.of());
    assertEquals(List.of("every-report"), cautions.stream().map(Caution::id).toList());
  }

  @ParameterizedTest
  @CsvSource({
    "thymol-gel, true, false, true",
    "oxalic-dribble, false, false, false",
    "formic-pads, true, true, true",
    "amitraz-strips, false, false, true"
  })
  void traitsFollowFromTheProfile(String id, boolean evaporates, boolean inCells, boolean slow) {
    EfficacyProfile profile = MethodCatalogue.shipped().get(id).profile();
    assertEquals(evaporates, profile.evaporates());
    assertEquals(inCells, profile.reachesSealedBrood());
    assertEquals(slow, profile.slowRelease());
  }

  @Test
  void carriersStayAsLongAsTheyAct() {
    for (Method method : methods()) {
      EfficacyProfile profile = method.profile();
      int days = profile.slowRelease() ? profile.release().days() : 0;
      assertEquals(days, method.carrierDays(), method.id());
    }
  }

  @Test
  void humidPlacesOnlyWeakenTheGlycerineStrips() {
    for (Method method : methods()) {
      double expected = method.id().equals("oxalic-glycerine-strips") ? 0.3 : 1;
      assertEquals(expected, method.humidFactor(), method.id());
    }
  }

  @Test
  void otherParametersGiveOtherProfiles() {
    ParameterSet weak = ParameterSet.shipped().with(ParameterId.THYMOL_TARGET, 12);
    Method gel = MethodCatalogue.with(weak).get("thymol-gel");
    assertEquals(new Response.Hill(0.35, 10, 12, 4), gel.profile().response());
  }

  @Test
  void unknownMethodSuggestsTheNearest() {
    IllegalArgumentException error =
        assertThrows(
            IllegalArgumentException.class, () -> MethodCatalogue.shipped().get("thymol-jel"));
    assertTrue(
        error.getMessage().contains("; did you mean \"thymol-gel\"? Accepted: "),
        error.getMessage());
    assertTrue(MethodCatalogue.shipped().find("thymol-jel").isEmpty());
  }

  @ParameterizedTest
  @MethodSource("methods")
  void methodIsMeantByItsIdAndItsName(Method method) {
    assertEquals(List.of(method), MethodCatalogue.shipped().meant(method.id()));
    assertEquals(List.of(method), MethodCatalogue.shipped().meant(method.name()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Oxalic  Vapor | oxalic-sublimation",
        "trickling of oxalic acid |",
        "oxalic trickling | oxalic-dribble",
        "formic | formic-pads formic-dispenser",
        "flumethrin | pyrethroid-strips",
        "acid |",
        "honey |"
      })
  void keepersMeanMethodsByWordsOfTheTrade(String said, String ids) {
    List<String> meant = MethodCatalogue.shipped().meant(said).stream().map(Method::id).toList();
    assertEquals(ids == null ? List.of() : List.of(ids.split(" ")), meant);
  }
}
