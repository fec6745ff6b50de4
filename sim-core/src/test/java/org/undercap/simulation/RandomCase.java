package org.undercap.simulation;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.undercap.climate.Climate;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.Interventions;
import org.undercap.treatment.PlanStep;

/**
 * A run with everything that can differ from one to another. Immutable; the {@code with} methods
 * make variants.
 *
 * @param climate place
 * @param start first day
 * @param days days to run
 * @param parameters values of the model
 * @param bees adult workers on the first day
 * @param brood brood on the first day against that of the season (ratio)
 * @param mites mites on the first day
 * @param arriving mites arriving each day
 * @param steps what the keeper does
 * @param circumstances hive and place
 */
record RandomCase(
    Climate climate,
    LocalDate start,
    int days,
    ParameterSet parameters,
    double bees,
    double brood,
    double mites,
    double arriving,
    List<PlanStep> steps,
    Circumstances circumstances) {

  /** A run that was kept day by day, with the end and the account of what was born. */
  record Result(DailyTable table, Simulator.RunEnd end, BornRecorder born) {}

  /** Shapes that were made before; the properties all meet the same places and dates. */
  private static final Map<List<?>, ColonyLanes> SHAPES = new ConcurrentHashMap<>();

  ColonyLanes colony() {
    double[] broodDays = parameters.values(ParameterId.BROOD_WORKER_DAYS);
    ParameterSet sameBroodDays =
        ParameterSet.shipped().with(ParameterId.BROOD_WORKER_DAYS, broodDays);
    int day = SeasonDay.of(start);
    ColonyLanes colony =
        SHAPES
            .computeIfAbsent(
                List.of(climate, day, sameBroodDays.toString()),
                key -> StartShape.at(climate, day, ModelParameters.of(sameBroodDays)))
            .copy();
    colony.scaleTo(0, bees, colony.brood(0) / colony.adults(0) * bees * brood, mites);
    return colony;
  }

  DailyDrivers drivers() {
    return DailyDrivers.of(climate, start, days, date -> arriving, 1);
  }

  Simulator simulator() {
    return new Simulator(ModelParameters.of(parameters), drivers());
  }

  List<Intervention> interventions() {
    return Interventions.of(steps, circumstances);
  }

  Result run() {
    return run(interventions());
  }

  Result run(List<Intervention> interventions) {
    DailyTable table = DailyTable.of(drivers(), 0);
    BornRecorder born = new BornRecorder(days);
    Simulator.RunEnd end = simulator().run(colony(), interventions, List.of(table, born));
    return new Result(table, end, born);
  }

  RandomCase withSteps(List<? extends PlanStep> other) {
    return new RandomCase(
        climate,
        start,
        days,
        parameters,
        bees,
        brood,
        mites,
        arriving,
        List.copyOf(other),
        circumstances);
  }

  RandomCase withMites(double inColony, double arrivingEachDay) {
    return new RandomCase(
        climate,
        start,
        days,
        parameters,
        bees,
        brood,
        inColony,
        arrivingEachDay,
        steps,
        circumstances);
  }

  RandomCase withDays(int other) {
    return new RandomCase(
        climate, start, other, parameters, bees, brood, mites, arriving, steps, circumstances);
  }

  RandomCase startingAfter(int later) {
    return new RandomCase(
        climate,
        start.plusDays(later),
        days - later,
        parameters,
        bees,
        brood,
        mites,
        arriving,
        steps,
        circumstances);
  }

  RandomCase withCircumstances(Circumstances other) {
    return new RandomCase(
        climate, start, days, parameters, bees, brood, mites, arriving, steps, other);
  }

  RandomCase withParameters(ParameterSet other) {
    return new RandomCase(
        climate, start, days, other, bees, brood, mites, arriving, steps, circumstances);
  }

  /** Cases to try when this one fails. */
  Stream<RandomCase> simpler() {
    Stream<RandomCase> variants =
        Stream.of(
            withSteps(List.of()),
            withParameters(ParameterSet.shipped()),
            withMites(mites, 0),
            withCircumstances(Circumstances.usual(circumstances.peakEggs())),
            withDays(Math.max(1, days / 2)));
    Stream<RandomCase> oneStepLess = IntStream.range(0, steps.size()).mapToObj(this::without);
    return Stream.concat(variants, oneStepLess).filter(c -> !c.toString().equals(toString()));
  }

  private RandomCase without(int step) {
    return withSteps(
        IntStream.range(0, steps.size()).filter(i -> i != step).mapToObj(steps::get).toList());
  }

  @Override
  public String toString() {
    String changed =
        parameters.changed().entrySet().stream()
            .map(e -> e.getKey().id() + "=" + Arrays.toString(e.getValue()))
            .collect(Collectors.joining(" "));
    String plan = steps.stream().map(RandomCase::words).collect(Collectors.joining("; "));
    return String.join(
        "\n  ",
        climate.id() + " " + climate.hemisphere() + " from " + start + ", " + days + " days",
        bees + " bees, brood x " + brood + ", " + mites + " mites, " + arriving + " arriving a day",
        "plan: " + plan,
        "floor open " + circumstances.openFloor() + ", humid " + circumstances.humid(),
        "resistant " + circumstances.resistantShares(),
        "parameters: " + changed);
  }

  private static String words(PlanStep step) {
    return step instanceof PlanStep.Application a
        ? a.date() + " " + a.method().id() + " dose " + a.dose()
        : step.toString();
  }
}
