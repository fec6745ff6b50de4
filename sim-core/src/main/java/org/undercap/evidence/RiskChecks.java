package org.undercap.evidence;

import java.util.Map;
import java.util.function.Consumer;
import org.undercap.comparison.WinterRisk;

/** The survey curve of winter losses. */
final class RiskChecks {
  private RiskChecks() {}

  static Map<String, Consumer<Findings>> all() {
    return Map.of(
        "winter-risk",
        findings -> findings.judge("", WinterRisk.shipped().mitesPer100BeesAt(0.5)),
        "winter-risk-compliant",
        findings -> findings.judge("at 1 per 100", 100 * WinterRisk.shipped().lost(1)));
  }
}
