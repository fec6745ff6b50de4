package org.undercap.scenario.io;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercap.batch.BatchRow;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.hive.ArrivalLevel;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.scenario.Arrivals;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.InputLimits;
import org.undercap.scenario.Lookup;
import org.undercap.scenario.Place;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Problems;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.PlanStep;

/** One row of a design while it is read. */
final class DesignRow {
  private static final int LONGEST_LABEL = 80;

  private final Place begin;
  private final Map<String, CsvField> fields = new HashMap<>();
  private final DesignScenarios scenarios;
  private final Problems problems;
  private boolean good = true;

  DesignRow(
      Place begin,
      List<String> header,
      List<CsvField> row,
      DesignScenarios scenarios,
      Problems problems) {
    this.begin = begin;
    this.scenarios = scenarios;
    this.problems = problems;
    for (int i = 0; i < header.size(); i++) {
      if (!row.get(i).text().isEmpty()) {
        fields.put(header.get(i), row.get(i));
      }
    }
  }

  Optional<BatchRow> read(long number) {
    DesignScenarios.Base base = value(DesignReader.SCENARIO, scenarios::find, null);
    if (base == null && good) {
      base = orFail(DesignReader.SCENARIO, scenarios::usual);
    }
    if (base == null) {
      return Optional.empty();
    }
    Scenario scenario = base.scenario();
    String label = value(DesignReader.LABEL, text -> Texts.text(text, LONGEST_LABEL), "");
    LocalDate start = value(DesignReader.START, Quantities::date, scenario.start());
    LocalDate end = value(DesignReader.END, Quantities::date, scenario.end());
    Climate climate = value(DesignReader.CLIMATE, DesignRow::climate, scenario.climate());
    ArrivalLevel arrivals = value(DesignReader.ARRIVALS, Arrivals::parse, scenario.arrivals());
    double bees = limited(DesignReader.BEES, "colony.bees", scenario.hive().bees());
    double brood = limited(DesignReader.BROOD, "colony.brood", scenario.hive().broodCells());
    double queen =
        limited(DesignReader.QUEEN, "colony.queen-quality", scenario.hive().queenQuality());
    double mites = mites(base);
    double warmer = value(DesignReader.WARMER, DesignRow::warmth, 0.0);
    Plan plan = plan(base);
    ParameterSet parameters = parameters(scenario.parameters());
    checkDays(start, end, plan);
    return good
        ? Optional.of(
            new BatchRow(
                number,
                label,
                scenario,
                climate,
                start,
                end,
                plan,
                parameters,
                bees,
                brood,
                mites,
                queen,
                arrivals,
                warmer))
        : Optional.empty();
  }

  private static Climate climate(String text) throws BadValueException {
    ClimateCatalogue shipped = ClimateCatalogue.shipped();
    List<String> ids = shipped.all().stream().map(Climate::id).toList();
    return Lookup.find("climate", text, shipped::find, ids);
  }

  private static double warmth(String text) throws BadValueException {
    return InputLimits.shipped().get("design.warmer").check(Quantities.number(text));
  }

  private double mites(DesignScenarios.Base base) {
    if (fields.containsKey(DesignReader.MITES)) {
      return limited(DesignReader.MITES, "mites.in-colony", 0);
    }
    Double known = orFail(DesignReader.MITES, base::mites);
    return known == null ? 0 : known;
  }

  private Plan plan(DesignScenarios.Base base) {
    int shift =
        value(
            DesignReader.SHIFT,
            text -> (int) InputLimits.shipped().get("design.shift").check(Quantities.number(text)),
            0);
    return value(DesignReader.PLAN, text -> base.plan(text, shift), base.nothing());
  }

  private void checkDays(LocalDate start, LocalDate end, Plan plan) {
    if (!good) {
      return;
    }
    long days = end.toEpochDay() - start.toEpochDay() + 1;
    String field = fields.containsKey(DesignReader.END) ? DesignReader.END : DesignReader.START;
    if (days < 2) {
      fail(field, "the last day " + end + " must lie after the first day " + start, "");
      return;
    }
    orFail(field, () -> InputLimits.shipped().get("horizon").check((double) days));
    for (PlanStep step : plan.steps()) {
      if (step.date().isBefore(start) || step.date().isAfter(end)) {
        fail(
            DesignReader.PLAN,
            plan.name() + " has a step on " + step.date() + ", outside the run",
            "the run lasts from " + start + " to " + end + "; move the plan with shift_days");
        return;
      }
    }
  }

  private ParameterSet parameters(ParameterSet base) {
    ParameterSet set = base;
    for (Map.Entry<String, CsvField> field : fields.entrySet()) {
      if (!DesignReader.COLUMNS.contains(field.getKey())) {
        ParameterSet before = set;
        ParameterId id = ParameterId.of(field.getKey());
        set = value(field.getKey(), text -> changed(before, id, text), before);
      }
    }
    return set;
  }

  /** Several values are separated by semicolons, as in the catalogue. */
  private static ParameterSet changed(ParameterSet set, ParameterId id, String text)
      throws BadValueException {
    String[] parts = text.split(";", -1);
    double[] values = new double[parts.length];
    for (int i = 0; i < parts.length; i++) {
      values[i] = Quantities.number(parts[i].strip());
    }
    if (Arrays.equals(values, set.values(id))) {
      return set;
    }
    try {
      return set.with(id, values);
    } catch (IllegalArgumentException e) {
      String unit = ParameterCatalogue.shipped().get(id).unit();
      throw new BadValueException(String.valueOf(e.getMessage()), "unit: " + unit);
    }
  }

  private double limited(String column, String limit, double usual) {
    return value(
        column, text -> InputLimits.shipped().get(limit).check(Quantities.number(text)), usual);
  }

  private <T> T value(String column, ValueParser<T> parser, T usual) {
    CsvField field = fields.get(column);
    T found = field == null ? usual : orFail(column, () -> parser.parse(field.text()));
    return found == null ? usual : found;
  }

  private <T> T orFail(String column, Source<T> source) {
    try {
      return source.get();
    } catch (BadValueException e) {
      fail(column, e.getMessage(), e.hint());
      return null;
    }
  }

  private void fail(String column, String message, String hint) {
    good = false;
    CsvField field = fields.get(column);
    Place place = field == null ? begin : new Place(begin.file(), begin.line(), field.column());
    problems.add(place, column, message, hint);
  }

  /** Gives a value, or says why not. */
  @FunctionalInterface
  private interface Source<T> {
    T get() throws BadValueException;
  }
}
