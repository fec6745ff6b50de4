package org.undercap.scenario;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.DailyTemperatures;
import org.undercap.climate.Hemisphere;
import org.undercap.climate.MonthlyNormals;
import org.undercap.climate.MonthlyTable;
import org.undercap.scenario.Assumption.Basis;

/** Makes a climate of the place that a user describes. */
final class SiteResolver {

  private final WrittenSite site;
  private final Problems problems;
  private final Assumptions assumptions;

  SiteResolver(WrittenSite site, Problems problems, Assumptions assumptions) {
    this.site = site;
    this.problems = problems;
    this.assumptions = assumptions;
  }

  /** The climate in the months of the place, unless neither climate nor latitude can be used. */
  Optional<Climate> climate() {
    return site.climate()
        .map(this::named)
        .or(() -> site.latitude().flatMap(this::nearest))
        .map(this::withTables);
  }

  private Climate named(Written<Climate> written) {
    Climate climate = written.value();
    if (site.hemisphere().isEmpty()) {
      assumptions.add(
          "site.hemisphere", Basis.DEFAULT, "the place lies in the " + word(climate.hemisphere()));
      return climate;
    }
    Hemisphere wanted = site.hemisphere().get().value();
    if (wanted != climate.hemisphere()) {
      assumptions.add(
          "site.hemisphere",
          Basis.DERIVED,
          "climate " + climate.id() + " is used with its seasons half a year later");
    }
    return climate.in(wanted);
  }

  private Optional<Climate> nearest(Written<Double> latitude) {
    double degrees = latitude.value();
    ClimateCatalogue shipped = ClimateCatalogue.shipped();
    InputLimit farthest = InputLimits.shipped().get("site.latitude.distance");
    if (shipped.degreesAway(degrees) > farthest.high() && !tropical(degrees)) {
      problems.add(
          latitude.place(),
          "site.latitude",
          "there is no climate for latitude " + Quantities.format(degrees) + " degrees",
          "nothing was tested there; a climate can be named with climate: and changed by tables");
      return Optional.empty();
    }
    Climate climate = shipped.nearest(degrees);
    if (site.hemisphere().map(Written::value).filter(h -> h != climate.hemisphere()).isPresent()) {
      problems.add(
          site.hemisphere().get().place(),
          "site.hemisphere",
          "latitude " + Quantities.format(degrees) + " lies in the " + word(climate.hemisphere()),
          "southern latitudes are negative, as in latitude: -37");
    }
    assumptions.add(
        "site.climate",
        Basis.DERIVED,
        "climate "
            + climate.id()
            + " ("
            + climate.description()
            + "), the nearest to latitude "
            + Quantities.format(degrees)
            + " degrees; sea and mountains may make another fit better");
    return Optional.of(climate);
  }

  /** In the tropics there is no advice, but a file may say so. */
  private static boolean tropical(double degrees) {
    return Math.abs(degrees) < InputLimits.shipped().get("site.latitude.tropics").high();
  }

  private Climate withTables(Climate from) {
    Climate climate = from;
    if (!site.monthlyTemperatures().isEmpty()) {
      climate = climate.withTemperature(new MonthlyNormals(table(site.monthlyTemperatures())));
    } else {
      assumptions.add(
          "site.monthly-temperatures", Basis.DEFAULT, "usual temperatures of the climate");
    }
    if (site.dailyTemperatures().isPresent()) {
      SortedMap<LocalDate, Double> daily = site.dailyTemperatures().get().value();
      climate = climate.withTemperature(new DailyTemperatures(daily, climate.temperature()));
    }
    if (!site.eggsPerDay().isEmpty()) {
      climate = climate.withEggs(table(site.eggsPerDay()));
      assumptions.add("site.eggs-per-day", Basis.CHANGED, "laying through the year as given");
    }
    if (!site.droneShare().isEmpty()) {
      climate = climate.withDroneShare(table(site.droneShare()));
      assumptions.add("site.drone-share", Basis.CHANGED, "drone brood through the year as given");
    }
    return climate;
  }

  /** Whether the place is humid. */
  boolean humid() {
    if (site.humid().isEmpty()) {
      assumptions.add(
          "site.humid", Basis.DEFAULT, "the place is not so humid that strips work less well");
    }
    return site.humid().map(Written::value).orElse(false);
  }

  /** Says how many days of a run lack a temperature of their own. */
  void checkDays(LocalDate start, LocalDate end) {
    if (site.dailyTemperatures().isEmpty()) {
      return;
    }
    Written<SortedMap<LocalDate, Double>> written = site.dailyTemperatures().get();
    int given = written.value().subMap(start, end.plusDays(1)).size();
    long lacking = end.toEpochDay() - start.toEpochDay() + 1 - given;
    if (given == 0) {
      problems.add(
          written.place(),
          "site.daily-temperatures",
          "holds no day of the run, which lasts from " + start + " to " + end,
          "");
    } else if (lacking > 0) {
      assumptions.add(
          "site.daily-temperatures",
          Basis.DERIVED,
          lacking + " days without a temperature in the file have the usual one of the season");
    }
  }

  private static MonthlyTable table(List<Written<Double>> months) {
    return new MonthlyTable(months.stream().map(Written::value).toList());
  }

  private static String word(Hemisphere hemisphere) {
    return hemisphere == Hemisphere.NORTH ? "north" : "south";
  }
}
