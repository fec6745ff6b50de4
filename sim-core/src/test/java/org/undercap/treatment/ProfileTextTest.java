package org.undercap.treatment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

class ProfileTextTest {
  private static final ProfileText TEXT = new ProfileText(ParameterSet.shipped());

  @Test
  void readsReleases() {
    assertEquals(new Release.Pulse(List.of(0.7, 0.2, 0.1)), TEXT.release("pulse 0.7/0.2/0.1"));
    assertEquals(new Release.Pulse(List.of(1.0)), TEXT.release(" pulse  1 "));
    assertEquals(new Release.Decay(3.5, 0, 7), TEXT.release("decay 3.5 0 7"));
    assertEquals(new Release.Plateau(42, 10), TEXT.release("plateau 42 10"));
  }

  @Test
  void readsResponses() {
    assertEquals(new Response.Kill(0.95, 0.55), TEXT.response("kill 0.95 0.55"));
    assertEquals(new Response.Constant(0.16), TEXT.response("hazard 0.16"));
    assertEquals(new Response.Hill(0.35, 10, 6, 4), TEXT.response("hill 0.35 10 6 4"));
  }

  @Test
  void namesOfParametersStandForTheirValues() {
    ProfileText other =
        new ProfileText(ParameterSet.shipped().with(ParameterId.THYMOL_TARGET, 8.5));
    assertEquals(
        new Response.Hill(0.35, 10, 8.5, 4), other.response("hill 0.35 10 thymol.target 4"));
  }

  @Test
  void readsTemperatures() {
    assertEquals(new TemperatureResponse.None(), TEXT.temperature(" none "));
    TemperatureResponse.Vapour vapour =
        (TemperatureResponse.Vapour) TEXT.temperature("formic 20 0.25");
    assertEquals(20, vapour.reference());
    assertEquals(0.25, vapour.carrierShare());
    assertEquals(34, vapour.nest());
    assertEquals(
        VapourPressure.of(ParameterSet.shipped(), ParameterId.FORMIC_VAPOUR), vapour.line());
  }

  private static String message(Runnable reading) {
    return assertThrows(IllegalArgumentException.class, reading::run).getMessage();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "pulse", "pulse 1 2", "decay 1 2", "plateau 42", "Plateau 42 10", "drip 3"})
  void otherReleasesAreRefusedWithTheForms(String text) {
    assertEquals(
        "release '"
            + text
            + "' must be 'pulse SHARE/SHARE/..', 'decay HALF-LIFE LAG DAYS' or 'plateau DAYS RAMP'",
        message(() -> TEXT.release(text)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "none 1", "thymol", "thymol 22", "acetic 20 0", "formic 20 0 1"})
  void otherTemperaturesAreRefusedWithTheForms(String text) {
    String message = message(() -> TEXT.temperature(text));
    assertTrue(message.startsWith("temperature '" + text + "' must be 'none', 'thymol"), message);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "kill", "kill 0.5", "hazard", "hill 1 2 3", "poison 1"})
  void otherResponsesAreRefusedWithTheForms(String text) {
    String message = message(() -> TEXT.response(text));
    assertTrue(message.startsWith("response '" + text + "' must be 'kill SHARE"), message);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '"',
      value = {
        "pulse 0.7/x, 'x' must be a number or the id of a parameter",
        "pulse 0.7//0.1, '' must be a number or the id of a parameter",
        "decay 3 0 7.5, '7.5' must be a whole number of days",
        "plateau 4o 1, '4o' must be a whole number of days"
      })
  void badNumbersAreNamed(String text, String message) {
    assertEquals(message, message(() -> TEXT.release(text)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"pulse NaN", "pulse -1", "decay Infinity 0 7", "decay 3 0 0"})
  void numbersOutOfRangeAreRefused(String text) {
    assertTrue(message(() -> TEXT.release(text)).contains("must be"));
  }
}
