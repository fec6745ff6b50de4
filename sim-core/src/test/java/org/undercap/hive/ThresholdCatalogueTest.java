package org.undercap.hive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.source.Access;
import org.undercap.source.Bibliography;
import org.undercap.source.Source;

class ThresholdCatalogueTest {

  private static final Pattern VALUE = Pattern.compile("\\d+(\\.\\d+)?(-\\d+(\\.\\d+)?)?");
  private static final Set<String> MEASURES =
      Set.of("mites per 100 bees", "mites falling per day", "mites in the colony");

  static List<Threshold> thresholds() {
    return ThresholdCatalogue.shipped().all();
  }

  @Test
  void holdsTheWholeTable() {
    assertEquals(30, thresholds().size());
  }

  @ParameterizedTest
  @MethodSource("thresholds")
  void entriesAreNumbersWithUnitAndSource(Threshold threshold) {
    assertTrue(VALUE.matcher(threshold.value()).matches(), threshold.value());
    assertTrue(MEASURES.contains(threshold.measure()), threshold.measure());
    assertFalse(threshold.sourceKeys().isEmpty());
    assertEquals(threshold.read(), Access.of(threshold.read()).word());
  }

  @ParameterizedTest
  @MethodSource("thresholds")
  void yearsAreThoseOfTheSources(Threshold threshold) {
    List<String> years =
        threshold.sourceKeys().stream()
            .map(key -> Bibliography.shipped().get(key))
            .map(Source::year)
            .toList();
    assertEquals(String.join(";", years), threshold.year());
  }
}
