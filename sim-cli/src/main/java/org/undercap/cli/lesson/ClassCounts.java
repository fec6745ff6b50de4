package org.undercap.cli.lesson;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.undercap.cli.chart.ChartPage;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.chart.ChartText;
import org.undercap.cli.chart.ChartWriter;
import org.undercap.cli.chart.LinePlot;
import org.undercap.cli.chart.Look;
import org.undercap.cli.chart.TeachingChart;
import org.undercap.cli.output.CsvOutput;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.cli.output.UsageException;
import org.undercap.climate.Climate;
import org.undercap.ensemble.CurveBands;
import org.undercap.ensemble.Ensemble;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.ensemble.Series;
import org.undercap.ensemble.StartMites;
import org.undercap.lesson.LessonPlace;
import org.undercap.model.ColonyLanes;
import org.undercap.monitoring.ExactIntervals;
import org.undercap.monitoring.Interval;
import org.undercap.monitoring.WashMethod;
import org.undercap.parameter.ParameterSet;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ScenarioReader;

/** The washes of a class held against runs of the model that begin with the first of them. */
public final class ClassCounts {
  private static final String CHART = "class";
  private static final String CSV = "class.csv";
  private static final double LOW = 0.1;
  private static final double HIGH = 0.9;
  private static final double LEVEL = 0.95;
  private static final double PER_100 = 100;

  private final List<Compared> counts;
  private final double[][] bands;
  private final Climate climate;
  private final Speech speech;

  /** A wash with its range and the range of the model (mites per 100 bees). */
  private record Compared(
      ClassCountsFile.Row row, double low, double middle, double high, double from, double to) {
    boolean missed() {
      return high < from || low > to;
    }
  }

  private ClassCounts(List<Compared> counts, double[][] bands, Climate climate, Speech speech) {
    this.counts = counts;
    this.bands = bands;
    this.climate = climate;
    this.speech = speech;
  }

  /**
   * Runs the model from the first count on.
   *
   * @param rows washes by date, at least two
   * @param treated treatments as {@code id=date}
   * @param climate where the colony stands
   * @param settings how many runs
   * @param speech how to speak
   * @return the comparison
   * @throws UsageException if a treatment is not known or lies outside the counts
   */
  public static ClassCounts of(
      List<ClassCountsFile.Row> rows,
      List<String> treated,
      Climate climate,
      EnsembleSettings settings,
      Speech speech) {
    Scenario scenario = scenario(rows, treated, climate);
    Plan plan = scenario.plans().get(scenario.plans().size() - 1);
    StartMites mites = StartMites.of(scenario, settings.seed());
    CurveBands curves =
        new Ensemble(scenario, mites.belief(), settings)
            .run(List.of(plan), List.of(), done -> {})
            .get(0)
            .bands();
    double[][] bands = {
      curves.quantile(Series.MITES_PER_100_BEES, LOW),
      curves.quantile(Series.MITES_PER_100_BEES, 0.5),
      curves.quantile(Series.MITES_PER_100_BEES, HIGH)
    };
    double recovery = ParameterSet.shipped().value(WashMethod.ALCOHOL.recovery());
    List<Compared> counts = new ArrayList<>();
    for (ClassCountsFile.Row row : rows) {
      Interval range = ExactIntervals.clopperPearson(row.mites(), row.bees(), LEVEL);
      int day = (int) ChronoUnit.DAYS.between(scenario.start(), row.date());
      counts.add(
          new Compared(
              row,
              PER_100 * range.low() / recovery,
              PER_100 * row.mites() / row.bees() / recovery,
              PER_100 * range.high() / recovery,
              bands[0][day],
              bands[2][day]));
    }
    return new ClassCounts(counts, bands, climate, speech);
  }

  /** A usual colony of the season on the day of the first count. */
  private static Scenario scenario(
      List<ClassCountsFile.Row> rows, List<String> treated, Climate climate) {
    ClassCountsFile.Row first = rows.get(0);
    LocalDate last = rows.get(rows.size() - 1).date();
    ColonyLanes usual = LessonPlace.in(climate).usualColony(first.date());
    StringBuilder text = new StringBuilder("undercap: 1\nname: class\n");
    text.append("site: {climate: ").append(climate.id()).append("}\n");
    text.append("colony: {date: ").append(first.date());
    text.append(", bees: ").append(Math.round(usual.adults(0)));
    text.append(", brood: ").append(Math.round(usual.brood(0))).append(" cells}\n");
    text.append("mites:\n  counts:\n    - wash: {date: ").append(first.date());
    text.append(", bees: ").append(first.bees()).append(", mites: ").append(first.mites());
    text.append(", method: alcohol}\n");
    text.append("horizon: ").append(ChronoUnit.DAYS.between(first.date(), last) + 1);
    text.append(" days\n").append(plan(treated));
    try {
      Reading<Scenario> reading =
          ScenarioReader.read(
              "class.yaml",
              new ByteArrayInputStream(text.toString().getBytes(StandardCharsets.UTF_8)));
      if (!reading.problems().isEmpty()) {
        throw new UsageException(
            reading.problems().stream()
                .map(problem -> problem.message())
                .collect(Collectors.joining("; ")));
      }
      return reading.orThrow().withClimate(climate);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String plan(List<String> treated) {
    if (treated.isEmpty()) {
      return "";
    }
    StringBuilder plan = new StringBuilder("plans:\n  - name: as done\n    steps:\n");
    for (String step : treated) {
      if (!step.matches("[a-z-]+=\\d{4}-\\d{2}-\\d{2}")) {
        throw new UsageException(
            "--treated '" + step + "' must be of the form ID=DATE, as thymol-gel=2026-08-10");
      }
      String[] parts = step.split("=", 2);
      plan.append("      - {date: ").append(parts[1]);
      plan.append(", treatment: ").append(parts[0]).append("}\n");
    }
    return plan.toString();
  }

  private long missed() {
    return counts.stream().filter(Compared::missed).count();
  }

  private Map<String, Object> figures() {
    Map<String, Object> figures = new LinkedHashMap<>();
    figures.put("counts", counts.size());
    figures.put("missed", (int) missed());
    figures.put("inside", counts.size() - (int) missed());
    figures.put("first", counts.get(0).row().date());
    figures.put("last", counts.get(counts.size() - 1).row().date());
    figures.put("place", speech.place(climate));
    figures.put(
        "dates",
        counts.stream()
            .filter(Compared::missed)
            .map(count -> speech.date(count.row().date()))
            .collect(Collectors.joining(", ")));
    return figures;
  }

  private String finding() {
    return missed() == 0
        ? speech.say("class.finding.all", figures())
        : speech.say("class.finding", figures()) + " " + speech.say("class.missed", figures());
  }

  /**
   * The comparison as text.
   *
   * @return lines
   */
  public String page() {
    TextTable table =
        new TextTable()
            .name(speech.say("class.column.date"))
            .number(speech.say("class.column.counted"))
            .number(speech.say("class.column.model"))
            .text("");
    for (Compared count : counts) {
      table.row(
          count.row().date().toString(),
          range(count.low(), count.high()),
          range(count.from(), count.to()),
          count.missed() ? speech.say("class.column.missed") : "");
    }
    return new TextPage()
        .title(speech.say("class.title"))
        .paragraph(finding())
        .table(table)
        .paragraph(speech.say("class.limit"))
        .render();
  }

  private static String range(double low, double high) {
    return Speech.number(low) + " - " + Speech.number(high);
  }

  /**
   * Looks early whether the files can be written.
   *
   * @param folder where
   * @param svg whether the chart is written as SVG too
   */
  public static void check(OutputFolder folder, boolean svg) {
    folder.prepare(names(svg)).close();
  }

  private static List<String> names(boolean svg) {
    return svg ? List.of(CHART + ".png", CHART + ".svg", CSV) : List.of(CHART + ".png", CSV);
  }

  /**
   * Writes chart and table.
   *
   * @param folder where
   * @param style size of the chart
   * @param svg whether the chart is written as SVG too
   * @param err told which files were written
   */
  public void write(OutputFolder folder, ChartStyle style, boolean svg, PrintWriter err) {
    ChartPage page = chart(style).pages().get(0);
    try (OutputFiles files = folder.prepare(names(svg))) {
      files.bytes(CHART + ".png", out -> out.write(ChartWriter.png(page)));
      if (svg) {
        files.bytes(CHART + ".svg", out -> out.write(ChartWriter.svg(page, "chart")));
      }
      files.text(
          CSV,
          writer -> {
            CsvOutput csv =
                CsvOutput.withHeader(
                    writer,
                    List.of(
                        "date",
                        "bees",
                        "mites",
                        "counted_low_per_100",
                        "counted_high_per_100",
                        "model_low_per_100",
                        "model_high_per_100",
                        "missed"));
            for (Compared c : counts) {
              csv.row(
                  c.row().date(),
                  c.row().bees(),
                  c.row().mites(),
                  c.low(),
                  c.high(),
                  c.from(),
                  c.to(),
                  c.missed());
            }
          });
      files.publish(err);
    }
  }

  /** The counts over the band of the model. */
  TeachingChart chart(ChartStyle style) {
    LocalDate first = counts.get(0).row().date();
    LocalDate last = counts.get(counts.size() - 1).row().date();
    List<Double> days =
        IntStream.range(0, bands[0].length)
            .mapToObj(day -> (double) first.toEpochDay() + day)
            .toList();
    LinePlot plot =
        new LinePlot(
            "",
            speech.say("unit.mites-per-100-bees"),
            "",
            new LessonCharts(speech, style).dateTicks(first, last),
            (double) first.toEpochDay() - 1,
            (double) last.toEpochDay() + 1,
            List.of(
                new LinePlot.Band(speech.say("class.band"), days, list(bands[0]), list(bands[2]))),
            List.of(),
            List.of(
                new LinePlot.Line(
                    speech.say("class.median"), Look.ofPlan(1), days, list(bands[1]))),
            counts.stream().map(ClassCounts::range).toList(),
            List.of(),
            List.of());
    ChartText text =
        new ChartText(
            speech.say("class.title"),
            speech.say("class.subtitle", figures()) + " " + speech.say("chart.subtitle", figures()),
            finding(),
            speech.say("class.limit"),
            speech.say("class.alternative", figures()));
    return new TeachingChart(List.of(plot), text, style);
  }

  private static LinePlot.Range range(Compared count) {
    return new LinePlot.Range(
        (double) count.row().date().toEpochDay(),
        count.low(),
        count.middle(),
        count.high(),
        count.missed());
  }

  private static List<Double> list(double[] values) {
    return IntStream.range(0, values.length).mapToObj(i -> values[i]).toList();
  }
}
