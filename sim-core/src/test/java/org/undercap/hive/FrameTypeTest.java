package org.undercap.hive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.source.Bibliography;

class FrameTypeTest {

  private static final FrameType DADANT = FrameCatalogue.shipped().get("dadant");

  static List<FrameType> frames() {
    return FrameCatalogue.shipped().all();
  }

  @Test
  void shipsNineFrames() {
    assertEquals(9, frames().size());
    assertEquals(new FrameType("dadant", 11.2, 4500, 1400), DADANT);
    assertEquals(Optional.empty(), FrameCatalogue.shipped().find("dadent"));
    assertThrows(IllegalArgumentException.class, () -> FrameCatalogue.shipped().get("dadent"));
  }

  @ParameterizedTest
  @MethodSource("frames")
  void beesAndCellsFollowFromTheComb(FrameType frame) {
    assertEquals(125 * frame.combPerSide(), frame.beesPerSide(), 10);
    assertEquals(400 * frame.combPerSide(), frame.cellsPerSide(), 40);
  }

  @Test
  void framesAndSeamsHaveTwoSides() {
    assertEquals(2800, DADANT.bees(1, CombUnit.FRAMES));
    assertEquals(2800, DADANT.bees(1, CombUnit.SEAMS));
    assertEquals(2100, DADANT.bees(1.5, CombUnit.SIDES));
    assertEquals(9000, DADANT.cells(1, CombUnit.FRAMES));
    assertEquals(2250, DADANT.cells(0.5, CombUnit.SIDES));
    assertEquals(0, DADANT.bees(0, CombUnit.FRAMES));
  }

  @Test
  void broodIsNotCountedInSeams() {
    assertThrows(IllegalArgumentException.class, () -> DADANT.cells(1, CombUnit.SEAMS));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesImpossibleAmounts(double amount) {
    assertThrows(IllegalArgumentException.class, () -> DADANT.bees(amount, CombUnit.FRAMES));
    assertThrows(IllegalArgumentException.class, () -> DADANT.cells(amount, CombUnit.FRAMES));
    assertThrows(IllegalArgumentException.class, () -> new FrameType("x", amount, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> new FrameType("x", 1, amount, 1));
    assertThrows(IllegalArgumentException.class, () -> new FrameType("x", 1, 1, amount));
  }

  @Test
  void namesItsSources() {
    List<String> keys = FrameCatalogue.shipped().sourceKeys();
    assertTrue(keys.stream().allMatch(key -> Bibliography.shipped().find(key).isPresent()));
    assertEquals(List.of("imdorf-1987"), keys);
  }
}
