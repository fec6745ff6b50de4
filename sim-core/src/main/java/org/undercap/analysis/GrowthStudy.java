package org.undercap.analysis;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.undercap.climate.Climate;
import org.undercap.climate.Hemisphere;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ModelParameters;
import org.undercap.parameter.Domain;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.StartShape;

/**
 * Growth of the mites in a climate, told in several ways: over a season as {@link GrowthRates}
 * does, and in the middle of each month of that season with bees and brood held, by {@link
 * FrozenColony}; and which parameters the growth hangs on.
 *
 * <p>Run, matrix and daily equation of one month must be the same. The slope of the season and the
 * mean of the months are near each other only: in a season bees and brood change, and late in it
 * mites share cells.
 *
 * @param climate the place
 * @param season growth over the season
 * @param months growth with bees and brood held, in the middle of each month
 * @param elasticities all parameters that can be moved, those that matter most first
 */
public record GrowthStudy(
    Climate climate, SeasonGrowth season, List<MonthGrowth> months, List<Influence> elasticities) {
  private static final int YEAR = 2021;
  private static final int MIDDLE = 15;
  private static final int HALF_A_YEAR = 6;
  private static final int RUN_DAYS = 400;
  private static final double DIFFERENCE = 0.01;

  /** Months whose middles span the season of {@link GrowthRates}, in the north. */
  private static final List<Month> MONTHS =
      List.of(Month.APRIL, Month.MAY, Month.JUNE, Month.JULY, Month.AUGUST, Month.SEPTEMBER);

  private static final int JUNE = 2;

  /**
   * Keeps copies.
   *
   * @param climate the place
   * @param season growth over the season
   * @param months growth with bees and brood held
   * @param elasticities all parameters that can be moved
   */
  public GrowthStudy {
    months = List.copyOf(months);
    elasticities = List.copyOf(elasticities);
  }

  /**
   * Growth with bees and brood of one day held.
   *
   * @param date the day, in a common year
   * @param broodIndex open brood for each adult bee against a full brood nest (0 to 1)
   * @param run slope of a run of 400 days (per day)
   * @param matrix logarithm of the dominant eigenvalue of the day matrix (per day)
   * @param daily root of the delay equation in the model's days (per day)
   * @param continuous root of the delay equation in continuous time (per day)
   */
  public record MonthGrowth(
      LocalDate date,
      double broodIndex,
      double run,
      double matrix,
      double daily,
      double continuous) {}

  /**
   * How the growth hangs on a parameter: relative change of the growth rate for the same relative
   * change of the parameter.
   *
   * @param parameter the parameter
   * @param value its value
   * @param held by the eigenvectors of the day matrix in June (December in the south), with bees
   *     and brood held (ratio); empty if the parameter is not in the matrix
   * @param season by the slope of the season, run with the parameter one per cent higher and lower
   *     (ratio); empty where the model does not run with one of them
   */
  public record Influence(
      ParameterId parameter, double value, OptionalDouble held, OptionalDouble season) {
    private double size() {
      return Math.max(Math.abs(season.orElse(0)), Math.abs(held.orElse(0)));
    }
  }

  /**
   * Studies a climate.
   *
   * @param climate the place; its usual weather is used
   * @param parameters values of the parameters
   * @return the study
   * @throws IllegalArgumentException if a healthy colony does not live in this climate
   * @throws IllegalStateException if the mites kill the colony before autumn
   */
  public static GrowthStudy of(Climate climate, ParameterSet parameters) {
    SeasonGrowth season = GrowthRates.overSeason(climate, parameters);
    List<LocalDate> dates = MONTHS.stream().map(month -> middle(climate, month)).toList();
    List<FrozenColony> frozen = dates.stream().map(d -> frozen(climate, d, parameters)).toList();
    List<MonthGrowth> months = new ArrayList<>();
    for (int i = 0; i < dates.size(); i++) {
      FrozenColony colony = frozen.get(i);
      months.add(
          new MonthGrowth(
              dates.get(i),
              colony.broodIndex(),
              colony.growthByRun(RUN_DAYS),
              colony.growthByMatrix(),
              colony.brood().dailyGrowth(),
              colony.brood().continuousGrowth()));
    }
    return new GrowthStudy(
        climate, season, months, influences(climate, parameters, season, frozen.get(JUNE)));
  }

  private static LocalDate middle(Climate climate, Month month) {
    LocalDate north = LocalDate.of(YEAR, month, MIDDLE);
    return climate.hemisphere() == Hemisphere.SOUTH ? north.plusMonths(HALF_A_YEAR) : north;
  }

  private static FrozenColony frozen(Climate climate, LocalDate date, ParameterSet parameters) {
    return new FrozenColony(
        StartShape.at(climate, SeasonDay.of(date), ModelParameters.of(parameters)), parameters);
  }

  /**
   * Mean of the months, first and last counted by half, as the season begins and ends in their
   * middles.
   *
   * @return growth rate by the day matrix (per day)
   */
  public double meanByMatrix() {
    return mean(months.stream().mapToDouble(MonthGrowth::matrix).toArray());
  }

  /**
   * Mean of the months by the delay equation in continuous time.
   *
   * @return growth rate (per day)
   */
  public double meanByEquation() {
    return mean(months.stream().mapToDouble(MonthGrowth::continuous).toArray());
  }

  private static double mean(double[] rates) {
    double sum = -(rates[0] + rates[rates.length - 1]) / 2;
    for (double rate : rates) {
      sum += rate;
    }
    return sum / (rates.length - 1);
  }

  /**
   * Largest difference between run, matrix and daily equation, which are the same by theory.
   *
   * @return difference (per day)
   */
  public double disagreement() {
    return months.stream()
        .mapToDouble(m -> Math.max(Math.abs(m.run - m.matrix), Math.abs(m.daily - m.matrix)))
        .max()
        .orElse(0);
  }

  private static List<Influence> influences(
      Climate climate, ParameterSet parameters, SeasonGrowth season, FrozenColony frozen) {
    List<ParameterId> ids =
        ParameterCatalogue.shipped().all().stream()
            .filter(parameter -> moves(parameter, parameters))
            .map(Parameter::id)
            .toList();
    List<ParameterSet> sets = new ArrayList<>();
    for (ParameterId id : ids) {
      double value = parameters.value(id);
      sets.add(parameters.with(id, value - step(id, value)));
      sets.add(parameters.with(id, value + step(id, value)));
    }
    List<Optional<SeasonGrowth>> rates = GrowthRates.whereTheyLive(climate, sets);
    List<Influence> all = new ArrayList<>();
    for (int i = 0; i < ids.size(); i++) {
      all.add(
          new Influence(
              ids.get(i),
              parameters.value(ids.get(i)),
              held(frozen, ids.get(i)),
              slope(rates.get(2 * i), rates.get(2 * i + 1), season, parameters, ids.get(i))));
    }
    all.sort(Comparator.comparingDouble(Influence::size).reversed());
    return all;
  }

  /** Single numbers above 0 that have a zero; a per cent of degrees would mean nothing. */
  private static boolean moves(Parameter parameter, ParameterSet parameters) {
    Domain domain = parameter.id().domain();
    if (parameter.values().size() != 1
        || domain == Domain.ANY
        || domain == Domain.WHOLE
        || domain == Domain.COUNT) {
      return false;
    }
    double value = parameters.value(parameter.id());
    return value > 0 && Double.isFinite(value) && !(domain == Domain.FRACTION && value >= 1);
  }

  private static double step(ParameterId id, double value) {
    double room = id.domain() == Domain.FRACTION ? Math.min(value, 1 - value) : value;
    return DIFFERENCE * room;
  }

  private static OptionalDouble held(FrozenColony frozen, ParameterId id) {
    if (!MiteDayMatrix.PARAMETERS.contains(id)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        GrowthElasticities.of(frozen.colony(), frozen.parameters(), List.of(id))
            .get(0)
            .elasticity());
  }

  private static OptionalDouble slope(
      Optional<SeasonGrowth> below,
      Optional<SeasonGrowth> above,
      SeasonGrowth season,
      ParameterSet parameters,
      ParameterId id) {
    if (below.isEmpty() || above.isEmpty() || season.rate() == 0) {
      return OptionalDouble.empty();
    }
    double value = parameters.value(id);
    double slope = (above.get().rate() - below.get().rate()) / (2 * step(id, value));
    return OptionalDouble.of(slope * value / season.rate());
  }
}
