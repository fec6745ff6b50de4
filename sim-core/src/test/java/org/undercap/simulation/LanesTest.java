package org.undercap.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.Test;
import org.undercap.ForAll;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.model.Part;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.treatment.Treatment;

/** Colonies run side by side are each as if run alone, to the last bit. */
class LanesTest {
  private static final int LANES = 7;

  /** Lane 0 gives place, time and plan; the others differ from it in all that may differ. */
  private record Block(List<RandomCase> lanes, List<List<Double>> weather, List<Double> strength) {
    RandomCase first() {
      return lanes.get(0);
    }

    ModelParameters parameters() {
      return ModelParameters.of(lanes.stream().map(RandomCase::parameters).toList());
    }

    DailyDrivers drivers(int from, int count) {
      RandomCase one = first();
      DailyDrivers drivers =
          DailyDrivers.of(one.climate(), one.start(), one.days(), date -> 0, count);
      for (int day = 0; day < one.days(); day++) {
        for (int lane = 0; lane < count; lane++) {
          drivers.temperature(day)[lane] += weather.get(from + lane).get(day);
          drivers.arriving(day)[lane] = lanes.get(from + lane).arriving();
        }
      }
      return drivers;
    }

    List<Intervention> interventions(int from, int count) {
      double[] own = strength.subList(from, from + count).stream().mapToDouble(s -> s).toArray();
      return first().interventions().stream()
          .map(i -> i instanceof Treatment t ? t.withStrength(own) : i)
          .toList();
    }

    ColonyLanes colonies() {
      ColonyLanes shape = first().colony();
      ColonyLanes colonies = shape.copies(0, lanes.size());
      for (int lane = 1; lane < lanes.size(); lane++) {
        RandomCase own = lanes.get(lane);
        colonies.scaleTo(lane, own.bees(), shape.brood(0) * own.brood(), own.mites());
        colonies.setQueenQuality(lane, own.brood());
      }
      colonies.scaleTo(LANES - 1, 400, 0, own(LANES - 1).mites());
      return colonies;
    }

    private RandomCase own(int lane) {
      return lanes.get(lane);
    }

    @Override
    public String toString() {
      return String.join("\n", lanes.stream().map(RandomCase::toString).toList());
    }
  }

  private static Block block(UniformRandomProvider random) {
    RandomCase first = RandomCases.any(random);
    List<RandomCase> lanes = new ArrayList<>(List.of(first));
    List<List<Double>> weather = new ArrayList<>();
    List<Double> strength = new ArrayList<>();
    for (int lane = 0; lane < LANES; lane++) {
      strength.add(2 * random.nextDouble());
      weather.add(random.doubles(first.days(), -5, 5).boxed().toList());
      if (lane > 0) {
        RandomCase other = RandomCases.any(random);
        ParameterSet own = sameShape(other.parameters(), first.parameters());
        lanes.add(
            other.withParameters(
                own.with(ParameterId.BROOD_SURVIVAL_LARVA, 1 - random.nextDouble() / 4)
                    .with(ParameterId.BROOD_SURVIVAL_EGG, 1 - random.nextDouble() / 4)));
      }
    }
    return new Block(List.copyOf(lanes), weather, strength);
  }

  private static ParameterSet sameShape(ParameterSet own, ParameterSet first) {
    ParameterSet set = own;
    for (ParameterId id :
        List.of(
            ParameterId.BROOD_WORKER_DAYS,
            ParameterId.DISPERSION_WORKER,
            ParameterId.DISPERSION_DRONE)) {
      set = set.with(id, first.values(id));
    }
    return set;
  }

  @Test
  void eachLaneIsAsIfAlone() {
    ForAll.cases(
        20,
        LanesTest::block,
        block -> Stream.of(),
        block -> {
          ColonyLanes start = block.colonies();
          DailyDrivers together = block.drivers(0, LANES);
          List<DailyTable> tables = new ArrayList<>();
          for (int lane = 0; lane < LANES; lane++) {
            tables.add(DailyTable.of(together, lane));
          }
          Simulator.RunEnd end =
              new Simulator(block.parameters(), together)
                  .run(start, block.interventions(0, LANES), tables);
          for (int lane = 0; lane < LANES; lane++) {
            compareAlone(block, start.copies(lane, 1), lane, tables.get(lane), end);
          }
        });
  }

  private static void compareAlone(
      Block block, ColonyLanes start, int lane, DailyTable together, Simulator.RunEnd end) {
    DailyDrivers drivers = block.drivers(lane, 1);
    DailyTable alone = DailyTable.of(drivers, 0);
    Simulator.RunEnd aloneEnd =
        new Simulator(ModelParameters.of(block.lanes().get(lane).parameters()), drivers)
            .run(start, block.interventions(lane, 1), List.of(alone));
    InvariantsTest.assertSame(alone, together);
    assertEquals(aloneEnd.lostOn(0), end.lostOn(lane));
    for (Part part : Part.values()) {
      assertEquals(aloneEnd.colony().total(part, 0), end.colony().total(part, lane), "" + part);
    }
  }

  @Test
  void lostColonyStaysEmptyAmongArrivals() {
    ColonyLanes start =
        StartShape.at(
                ClimateCatalogue.shipped().get("central-european"),
                182,
                ModelParameters.of(ParameterSet.shipped()))
            .copies(0, 2);
    start.scaleTo(0, 20_000, 20_000, 100);
    start.scaleTo(1, 400, 0, 100);
    ModelParameters two =
        ModelParameters.of(List.of(ParameterSet.shipped(), ParameterSet.shipped()));
    DailyDrivers drivers =
        DailyDrivers.of(
            ClimateCatalogue.shipped().get("central-european"),
            LocalDate.of(2023, 7, 1),
            60,
            date -> 5,
            2);
    Simulator.RunEnd end = new Simulator(two, drivers).run(start, List.of(), List.of());
    assertEquals(-1, end.lostOn(0));
    assertTrue(end.colony().mites(0) > 200);
    assertEquals(0, end.lostOn(1));
    for (Part part : Part.values()) {
      assertEquals(0, end.colony().total(part, 1), part.toString());
    }
  }

  @Test
  void whatShapesTheArraysMustBeTheSame() {
    ParameterSet other = ParameterSet.shipped().with(ParameterId.DISPERSION_DRONE, 3);
    ModelParameters mixed = ModelParameters.of(List.of(ParameterSet.shipped(), other));
    ColonyLanes colonies = ColonyLanes.empty(mixed);
    DailyDrivers drivers =
        DailyDrivers.of(
            ClimateCatalogue.shipped().get("central-european"),
            LocalDate.of(2023, 7, 1),
            1,
            date -> 0,
            2);
    Simulator simulator = new Simulator(mixed, drivers);
    IllegalArgumentException error =
        assertThrows(
            IllegalArgumentException.class, () -> simulator.run(colonies, List.of(), List.of()));
    assertEquals(
        "parameter dispersion.drone must be the same for all colonies run side by side",
        error.getMessage());
  }
}
