package org.undercap.simulation;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.DailyTemperatures;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.model.Part;
import org.undercap.parameter.ParameterSet;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.PlanStep;

/**
 * One of the reference tables: where and when it begins, what happens, and what an independent
 * implementation found.
 */
record ReferenceCase(
    String name,
    String climateId,
    int startDoy,
    double mites,
    double arrivals,
    List<Happening> happenings) {
  /** Something that happens on a day of the run, counted from 0. */
  interface Happening {
    PlanStep on(LocalDate firstDay);
  }

  private static final ModelParameters PARAMETERS = ModelParameters.of(ParameterSet.shipped());

  static List<ReferenceCase> all() {
    return List.of(
        new ReferenceCase("01-healthy-two-years-central", "central-european", 1, 0, 0, List.of()),
        new ReferenceCase(
            "02-untreated-central-from-1-March", "central-european", 60, 50, 0, List.of()),
        new ReferenceCase(
            "03-thymol-gel-oceanic-10-August",
            "temperate-oceanic",
            222,
            1200,
            1.5,
            apply("thymol-gel", 2, 16)),
        new ReferenceCase(
            "04-oxalic-sublimation-five-times-subtropical",
            "humid-subtropical",
            213,
            900,
            0,
            apply("oxalic-sublimation", 0, 5, 10, 15, 20)),
        new ReferenceCase(
            "05-caging-then-dribble-mediterranean",
            "mediterranean",
            190,
            1500,
            0,
            join(
                List.of(d -> new PlanStep.LayingStop(d.plusDays(3), 24, true)),
                apply("oxalic-dribble", 27))),
        new ReferenceCase(
            "06-formic-pads-newengland",
            "continental-warm-summer",
            235,
            2000,
            6,
            apply("formic-pads", 1)),
        new ReferenceCase(
            "07-drone-comb-removal-continental",
            "continental-cold",
            121,
            100,
            0,
            List.of(removal(20), removal(44), removal(68))),
        new ReferenceCase(
            "08-untreated-southern-from-1-September", "southern-temperate", 244, 60, 0, List.of()));
  }

  private static List<Happening> apply(String method, int... days) {
    return IntStream.of(days)
        .mapToObj(
            day ->
                (Happening)
                    first ->
                        new PlanStep.Application(
                            first.plusDays(day), MethodCatalogue.shipped().get(method), 1))
        .toList();
  }

  private static Happening removal(int day) {
    return first -> new PlanStep.DroneCombRemoval(first.plusDays(day), 0.9);
  }

  private static List<Happening> join(List<Happening> a, List<Happening> b) {
    List<Happening> both = new ArrayList<>(a);
    both.addAll(b);
    return both;
  }

  List<CsvRow> rows() {
    return CsvResource.read(ReferenceCase.class, "/org/undercap/reference/" + name + ".csv");
  }

  /**
   * A first day in a common year with the right day of the year, so that no 29 February lies within
   * the shorter tables.
   */
  LocalDate firstDay() {
    return LocalDate.ofYearDay(2021, startDoy);
  }

  Climate climate() {
    return ClimateCatalogue.shipped().get(climateId);
  }

  DailyDrivers drivers() {
    List<CsvRow> rows = rows();
    SortedMap<LocalDate, Double> temperatures = new TreeMap<>();
    for (int day = 0; day < rows.size(); day++) {
      temperatures.put(firstDay().plusDays(day), rows.get(day).number("temperature_c"));
    }
    Climate daily =
        climate().withTemperature(new DailyTemperatures(temperatures, climate().temperature()));
    return DailyDrivers.of(daily, firstDay(), rows.size(), date -> arrivals, 1);
  }

  List<PlanStep> steps() {
    return happenings.stream().map(h -> h.on(firstDay())).toList();
  }

  ColonyLanes listedStart() {
    JsonNode state = json();
    ColonyLanes colony = ColonyLanes.empty(PARAMETERS);
    colony.set(Part.HEALTHY_ADULTS, 0, numbers(state, "healthy_stages"));
    colony.set(Part.WEAKENED_ADULTS, 0, numbers(state, "weakened_stages"));
    colony.set(Part.WORKER_EGGS, 0, numbers(state, "eggs_worker"));
    colony.set(Part.WORKER_LARVAE, 0, numbers(state, "larvae_worker"));
    colony.set(Part.SEALED_WORKERS, 0, numbers(state, "sealed_worker_cells"));
    colony.set(Part.MITES_IN_WORKER_CELLS, 0, numbers(state, "mothers_in_sealed_worker_cells"));
    colony.set(Part.DRONE_EGGS, 0, numbers(state, "eggs_drone"));
    colony.set(Part.DRONE_LARVAE, 0, numbers(state, "larvae_drone"));
    colony.set(Part.SEALED_DRONES, 0, numbers(state, "sealed_drone_cells"));
    colony.set(Part.MITES_IN_DRONE_CELLS, 0, numbers(state, "mothers_in_sealed_drone_cells"));
    colony.set(Part.MITES_ON_BEES, 0, state.get("mites_on_bees").doubleValue());
    colony.set(Part.ADULT_DRONES, 0, state.get("adult_drones").doubleValue());
    return colony;
  }

  /** The same state made by the recipe of start states; table 01 starts without one. */
  ColonyLanes shapedStart() {
    if (mites == 0) {
      return listedStart();
    }
    ColonyLanes colony = StartShape.at(climate(), startDoy, PARAMETERS);
    colony.scaleMites(0, mites);
    return colony;
  }

  private JsonNode json() {
    try (InputStream in =
        ReferenceCase.class.getResourceAsStream(
            "/org/undercap/reference/" + name + ".start.json")) {
      return new JsonMapper().readTree(in);
    } catch (IOException e) {
      throw new AssertionError(name, e);
    }
  }

  private static double[] numbers(JsonNode state, String field) {
    double[] values = new double[state.get(field).size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = state.get(field).get(i).doubleValue();
    }
    return values;
  }

  @Override
  public String toString() {
    return name;
  }
}
