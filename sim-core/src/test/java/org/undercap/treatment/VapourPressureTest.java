package org.undercap.treatment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

class VapourPressureTest {

  @ParameterizedTest
  @CsvSource({"THYMOL_VAPOUR, 25, 2.15, 2.30", "FORMIC_VAPOUR, 20, 4380, 4480"})
  void agreesWithMeasuredPressures(ParameterId substance, double celsius, double low, double high) {
    double pascal = VapourPressure.of(ParameterSet.shipped(), substance).pascal(celsius);
    assertTrue(pascal >= low && pascal <= high, substance + ": " + pascal + " Pa");
  }

  @ParameterizedTest
  @CsvSource({"thymol-gel, 22", "formic-pads, 20"})
  void factorIsOneAtTheReferenceAndRises(String method, double reference) {
    TemperatureResponse vapour = MethodCatalogue.shipped().get(method).profile().temperature();
    assertEquals(1, vapour.factor(reference));
    for (int celsius = -20; celsius < 45; celsius++) {
      assertTrue(vapour.factor(celsius) < vapour.factor(celsius + 1));
    }
  }

  @Test
  void carrierLiesBetweenOutsideAndBroodNest() {
    VapourPressure thymol = VapourPressure.of(ParameterSet.shipped(), ParameterId.THYMOL_VAPOUR);
    assertEquals(23.6, new TemperatureResponse.Vapour(thymol, 22, 0.5, 34).carrier(13.2), 1e-12);
    assertEquals(13.2, new TemperatureResponse.Vapour(thymol, 22, 0, 34).carrier(13.2));
    assertEquals(34, new TemperatureResponse.Vapour(thymol, 22, 1, 34).carrier(13.2), 1e-12);
  }

  @Test
  void withoutResponseTemperatureDoesNotMatter() {
    assertEquals(1, new TemperatureResponse.None().factor(-30));
    assertEquals(1, new TemperatureResponse.None().factor(40));
  }

  @Test
  void refusesImpossibleNumbers() {
    assertThrows(IllegalArgumentException.class, () -> new VapourPressure(Double.NaN, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> new VapourPressure(1, 0, 1));
    VapourPressure fine = new VapourPressure(1, 1, 1);
    assertThrows(
        IllegalArgumentException.class, () -> new TemperatureResponse.Vapour(fine, 22, 1.1, 34));
    assertThrows(
        IllegalArgumentException.class,
        () -> new TemperatureResponse.Vapour(fine, Double.NaN, 0.5, 34));
  }
}
