package org.undercap.parameter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.internal.CsvResource;
import org.undercap.source.Bibliography;

class ParameterCatalogueTest {

  private static final String HEADER =
      "id,symbol,value,low,high,unit,ensemble_spread,kind,source,read,note\n";

  static List<Parameter> parameters() {
    return ParameterCatalogue.shipped().all();
  }

  @Test
  void identitiesAndRowsMatchOneToOneAndInOrder() {
    assertEquals(
        Arrays.asList(ParameterId.values()), parameters().stream().map(Parameter::id).toList());
  }

  @Test
  void constantsAreNamedAfterTheDottedName() {
    for (ParameterId id : ParameterId.values()) {
      String constant = id.id().replaceAll("([a-z])([A-Z])", "$1_$2").replace('.', '_');
      assertTrue(id.name().equalsIgnoreCase(constant), id.name());
      assertEquals(id, ParameterId.of(id.id()));
    }
  }

  @ParameterizedTest
  @MethodSource("parameters")
  void everyValueHasASourceOrIsAnAssumption(Parameter parameter) {
    for (String key : parameter.sourceKeys()) {
      assertTrue(Bibliography.shipped().find(key).isPresent(), key);
    }
    if (parameter.sourceKeys().equals(List.of("common-practice"))) {
      assertEquals(Kind.ASSUMPTION, parameter.kind());
    }
    assertFalse(parameter.read().isEmpty());
  }

  @ParameterizedTest
  @MethodSource("parameters")
  void onlyInfinityOfWorkerDispersionIsInfinite(Parameter parameter) {
    boolean infinite = parameter.values().stream().anyMatch(value -> value.isInfinite());
    assertEquals(parameter.id() == ParameterId.DISPERSION_WORKER, infinite);
  }

  @ParameterizedTest
  @MethodSource("parameters")
  void betaSpreadsHaveBounds(Parameter parameter) {
    if (parameter.spread().shape() == Spread.Shape.BETA) {
      assertTrue(parameter.low().get(0) < parameter.high().get(0));
    }
  }

  @Test
  void readsARowCompletely() {
    Parameter parameter = ParameterCatalogue.shipped().get(ParameterId.INVASION_WORKER);
    assertEquals("k_w", parameter.symbol());
    assertEquals(0.56, parameter.value());
    assertEquals(List.of(0.28), parameter.low());
    assertEquals(List.of(0.8), parameter.high());
    assertEquals("g per cell", parameter.unit());
    assertEquals(new Spread(Spread.Shape.LOGNORMAL, 0.35), parameter.spread());
    assertEquals(Kind.DERIVED, parameter.kind());
    assertEquals(List.of("boot-1995"), parameter.sourceKeys());
    assertEquals("abstract", parameter.read());
    assertEquals("hazard per worker cell sealed per gram of bees", parameter.note());
  }

  @Test
  void severalValuesStayTogether() {
    ParameterCatalogue shipped = ParameterCatalogue.shipped();
    assertEquals(List.of(3.0, 6.0, 12.0), shipped.get(ParameterId.BROOD_WORKER_DAYS).values());
    assertEquals(List.of(3.0, 7.0, 14.0), shipped.get(ParameterId.BROOD_DRONE_DAYS).values());
    assertEquals(6, shipped.get(ParameterId.CROWDING_WORKER).values().size());
    assertEquals(7, shipped.get(ParameterId.CROWDING_DRONE).values().size());
  }

  @Test
  void invasionFollowsFromThePublishedNumbers() {
    double drone = StrictMath.log(20) / 0.462;
    ParameterCatalogue shipped = ParameterCatalogue.shipped();
    assertEquals(drone, shipped.get(ParameterId.INVASION_DRONE).value(), 0.01);
    assertEquals(drone / 11.6, shipped.get(ParameterId.INVASION_WORKER).value(), 0.005);
  }

  @Test
  void findsByDottedName() {
    ParameterCatalogue shipped = ParameterCatalogue.shipped();
    assertEquals(ParameterId.DRONE_DEATH, shipped.find("drone.death").orElseThrow().id());
    assertEquals(Optional.empty(), shipped.find("drone.birth"));
    IllegalArgumentException error =
        assertThrows(IllegalArgumentException.class, () -> ParameterId.of("drone.deaht"));
    assertTrue(
        error.getMessage().contains("; did you mean \"drone.death\"? Accepted: "),
        error.getMessage());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "drone.death,,0.9,0,0.5,per day,fixed,measured,boot-1995,table,|0.9 is above 0.5",
        "drone.death,,0.1,0.2,0.5,per day,fixed,measured,boot-1995,table,|0.2 is above 0.1",
        "drone.death,,-0.1,,,per day,fixed,measured,boot-1995,table,|must be a finite number >= 0",
        "drone.death,,infinity,,,per day,fixed,measured,boot-1995,table,|must be a finite",
        "drone.death,,NaN,,,per day,fixed,measured,boot-1995,table,|value is not finite: NaN",
        "drone.death,,,,,per day,fixed,measured,boot-1995,table,|needs a value",
        "drone.death,,0.1;0.2,0,,per day,fixed,measured,boot-1995,table,|one bound per value",
        "drone.death,,0.1,,,,fixed,measured,boot-1995,table,|unit is empty",
        "drone.death,,0.1,,,per day,fixed,measured,bot-1995,table,|did you mean \"boot-1995\"",
        "drone.death,,0.1,,,per day,fixed,measured,,table,|a value without a source",
        "drone.death,,0.1,,,per day,fixed,guessed,boot-1995,table,|unknown kind",
        "drone.death,,0.1,,,per day,normal,measured,boot-1995,table,|unknown spread",
        "drone.deth,,0.1,,,per day,fixed,measured,boot-1995,table,|did you mean \"drone.death\""
      })
  void defectiveRowsAreNamed(String row, String message) {
    IllegalStateException error =
        assertThrows(
            IllegalStateException.class,
            () -> ParameterCatalogue.of(CsvResource.parse("p.csv", HEADER + row)));
    assertTrue(error.getMessage().startsWith("p.csv:2: "), error.getMessage());
    assertTrue(error.getMessage().contains(message), error.getMessage());
  }

  @Test
  void doubleAndMissingRowsAreDefects() {
    String row = "drone.death,,0.1,,,per day,fixed,measured,boot-1995,table,\n";
    assertEquals("p.csv:3: duplicate parameter drone.death", defect(row + row));
    assertTrue(defect(row).contains("no row for invasion.worker"), defect(row));
  }

  private static String defect(String rows) {
    return assertThrows(
            IllegalStateException.class,
            () -> ParameterCatalogue.of(CsvResource.parse("p.csv", HEADER + rows)))
        .getMessage();
  }

  @Test
  void kindsReadBackAndAllOccur() {
    for (Kind kind : Kind.values()) {
      assertEquals(kind, Kind.of(kind.word()));
    }
    assertEquals(
        Set.of(Kind.values()),
        parameters().stream().map(Parameter::kind).collect(Collectors.toSet()));
  }
}
