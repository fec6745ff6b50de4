package org.undercap.evidence;

import static org.undercap.parameter.ParameterId.FORMIC_VAPOUR;
import static org.undercap.parameter.ParameterId.THYMOL_VAPOUR;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.undercap.parameter.ParameterSet;
import org.undercap.treatment.VapourPressure;

/** Vapour pressures that carry the temperature into the treatments. */
final class DriverChecks {
  /** Molar gas constant (J per mol and K). */
  private static final double GAS = 8.314462618;

  /** 0 C in kelvin (K). */
  private static final double ZERO_CELSIUS = 273.15;

  private DriverChecks() {}

  static Map<String, Consumer<Findings>> all() {
    return Map.of(
        "thymol-pressure", DriverChecks::thymol,
        "formic-pressure", DriverChecks::formic);
  }

  private static void thymol(Findings findings) {
    VapourPressure line = VapourPressure.of(ParameterSet.shipped(), THYMOL_VAPOUR);
    double celsius = 25;
    findings.judge("", line.pascal(celsius), "Pa");
    double step = 0.01;
    double lnRatio = StrictMath.log(line.pascal(celsius + step) / line.pascal(celsius - step));
    double inverse = 1 / (celsius - step + ZERO_CELSIUS) - 1 / (celsius + step + ZERO_CELSIUS);
    findings.judge("sublimation", GAS * lnRatio / inverse / 1000, "kJ/mol");
  }

  private static void formic(Findings findings) {
    double celsius = 20;
    double ours = VapourPressure.of(ParameterSet.shipped(), FORMIC_VAPOUR).pascal(celsius);
    findings.judge("", ours / 1000);
    findings.judge("against Perry's equation", 100 * (ours / perry(celsius) - 1), "%");
  }

  private static double perry(double celsius) {
    double kelvin = celsius + ZERO_CELSIUS;
    List<Double> c = SetUps.numbers("perry.formic");
    return StrictMath.exp(
        c.get(0)
            + c.get(1) / kelvin
            + c.get(2) * StrictMath.log(kelvin)
            + c.get(3) * kelvin * kelvin);
  }
}
