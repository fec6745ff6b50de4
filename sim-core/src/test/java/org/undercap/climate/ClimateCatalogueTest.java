package org.undercap.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClimateCatalogueTest {

  static List<Climate> climates() {
    return ClimateCatalogue.shipped().all();
  }

  @Test
  void shipsEightClimates() {
    assertEquals(8, climates().size());
    assertEquals(
        List.of("southern-temperate"),
        climates().stream()
            .filter(climate -> climate.hemisphere() == Hemisphere.SOUTH)
            .map(Climate::id)
            .toList());
  }

  @ParameterizedTest
  @CsvSource({
    // potential eggs from 16 July to 15 August: first + (second - first) * 8 / 31 on day 204
    "temperate-oceanic, 1083.8709677419354, 0.010564516129032258",
    "mediterranean, 698.3870967741935, 0.0039677419354838714",
    "southern-temperate, 53.225806451612904, 0"
  })
  void readsTheTables(String id, double eggs, double droneShare) {
    Climate climate = ClimateCatalogue.shipped().get(id);
    assertEquals(eggs, climate.potentialEggs(204), 1e-9);
    assertEquals(droneShare, climate.droneShare(204), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    "central-european, 1, 0.9851096033354629",
    "humid-subtropical, 213, 25.110628029340003",
    "mediterranean, 190, 24.300156751689002",
    "continental-warm-summer, 235, 20.22493025321571",
    "continental-cold, 121, 7.168434886565215",
    "southern-temperate, 244, 7.644532013286673"
  })
  void temperaturesAgreeWithAnIndependentImplementation(String id, int doy, double expected) {
    double actual = ClimateCatalogue.shipped().get(id).temperature().at(doy);
    assertEquals(expected, actual, 1e-9);
  }

  @ParameterizedTest
  @MethodSource("climates")
  void summerFallsIntoTheRightMonths(Climate climate) {
    int summer = climate.hemisphere() == Hemisphere.NORTH ? 196 : 15;
    int winter = climate.hemisphere() == Hemisphere.NORTH ? 15 : 196;
    assertTrue(climate.temperature().at(summer) > climate.temperature().at(winter));
    assertTrue(climate.potentialEggs(summer) > climate.potentialEggs(winter));
  }

  @ParameterizedTest
  @MethodSource("climates")
  void mirroredTwiceIsTheSame(Climate climate) {
    Climate mirrored = climate.mirrored();
    assertTrue(mirrored.hemisphere() != climate.hemisphere());
    assertEquals(climate.potentialEggs(15), mirrored.potentialEggs(196));
    assertEquals(climate.droneShare(135), mirrored.droneShare(319));
    assertEquals(climate, mirrored.mirrored());
    assertSame(climate, climate.in(climate.hemisphere()));
    assertEquals(mirrored, climate.in(mirrored.hemisphere()));
  }

  @ParameterizedTest
  @CsvSource({
    "52, temperate-oceanic, NORTH",
    "50, central-european, NORTH",
    "58, cool-oceanic, NORTH",
    "44.5, continental-warm-summer, NORTH",
    "38, mediterranean, NORTH",
    "27, humid-subtropical, NORTH",
    "0, humid-subtropical, NORTH",
    "-27, humid-subtropical, SOUTH",
    "-36, southern-temperate, SOUTH",
    "-42, southern-temperate, SOUTH"
  })
  void theNearestLatitudeIsAFirstGuess(double latitude, String id, Hemisphere hemisphere) {
    Climate nearest = ClimateCatalogue.shipped().nearest(latitude);
    assertEquals(id, nearest.id());
    assertEquals(hemisphere, nearest.hemisphere());
  }

  @ParameterizedTest
  @ValueSource(doubles = {90.1, -91, Double.NaN})
  void refusesImpossibleLatitudes(double latitude) {
    assertThrows(
        IllegalArgumentException.class, () -> ClimateCatalogue.shipped().nearest(latitude));
  }

  @Test
  void unknownNamesGetASuggestion() {
    assertEquals(Optional.empty(), ClimateCatalogue.shipped().find("central-europe"));
    IllegalArgumentException error =
        assertThrows(
            IllegalArgumentException.class, () -> ClimateCatalogue.shipped().get("central-europe"));
    assertTrue(
        error.getMessage().contains("; did you mean \"central-european\"? Accepted: "),
        error.getMessage());
  }

  @Test
  void partsCanBeReplaced() {
    Climate climate = ClimateCatalogue.shipped().get("central-european");
    MonthlyTable half = new MonthlyTable(Collections.nCopies(12, 0.5));
    Sinusoid other = new Sinusoid(1, 2, 3);
    assertEquals(0.5, climate.withEggs(half).potentialEggs(100));
    assertEquals(0.5, climate.withDroneShare(half).droneShare(100));
    assertEquals(other, climate.withTemperature(other).temperature());
    assertEquals(climate.eggs(), climate.withTemperature(other).eggs());
  }

  @Test
  void refusesImpossibleTables() {
    Climate climate = ClimateCatalogue.shipped().get("central-european");
    MonthlyTable negative = new MonthlyTable(Collections.nCopies(12, -1.0));
    MonthlyTable aboveOne = new MonthlyTable(Collections.nCopies(12, 1.5));
    assertThrows(IllegalArgumentException.class, () -> climate.withEggs(negative));
    assertThrows(IllegalArgumentException.class, () -> climate.withDroneShare(negative));
    assertThrows(IllegalArgumentException.class, () -> climate.withDroneShare(aboveOne));
  }
}
