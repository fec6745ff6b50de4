package org.undercap.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A text that leaves something out, or names what does not exist, is refused. */
class ModelDescriptionTest {
  @ParameterizedTest
  @CsvSource({
    "an unknown {invasion.wrker}, model-description.md: no parameter is named invasion.wrker",
    "@parameters invasions, model-description.md: no parameter is named invasions",
    "@bees, model-description.md: unknown line '@bees'",
    "@parameters invasion invasion.worker lost invasion, "
        + "model-description.md: no table shows reproduction.worker",
  })
  void defectiveTextIsRefused(String text, String message) {
    String told =
        assertThrows(IllegalStateException.class, () -> ModelDescription.of(text)).getMessage();
    assertEquals(message, told.split(",", -1)[0]);
  }

  @Test
  void parameterInTwoTablesIsRefused() {
    String text = "@parameters invasion\n@parameters invasion.drone\n";
    assertEquals(
        "model-description.md: two tables show invasion.drone",
        assertThrows(IllegalStateException.class, () -> ModelDescription.of(text)).getMessage());
  }
}
