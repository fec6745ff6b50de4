package org.undercap.cli.report;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.undercap.calibration.FittedParameter;
import org.undercap.calibration.Foretold;
import org.undercap.cli.chart.Chart;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.chart.ChartText;
import org.undercap.cli.chart.FittedCountsChart;
import org.undercap.cli.chart.FittedPanel;
import org.undercap.cli.output.CsvOutput;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.io.ParameterFile;

/** The files of a fit: parameters for other commands, a report, charts and tables. */
public final class FitFiles {
  /** The file that other commands take by the option for parameters. */
  public static final String PARAMETERS = "parameters.yaml";

  private static final String PAGE = "fit.html";
  private static final String MARKDOWN = "fit.md";
  private static final String JSON = "fit.json";
  private static final String COUNTS = "counts.csv";

  private final FitStudy study;
  private final Map<String, Chart> charts = new LinkedHashMap<>();
  private final ChartFiles pictures;

  /**
   * The files of a fit.
   *
   * @param study what was found
   * @param style paper or slide
   * @param svg whether to write charts as SVG too
   */
  public FitFiles(FitStudy study, ChartStyle style, boolean svg) {
    this.study = study;
    study.counts().ifPresent(counts -> addCharts(counts, style));
    pictures = new ChartFiles(svg);
    charts.forEach(pictures::add);
  }

  private void addCharts(FitStudy.Counts counts, ChartStyle style) {
    for (String kind :
        new LinkedHashSet<>(counts.foretold().stream().map(Foretold::kind).toList())) {
      charts.put(kind.replace(' ', '-'), chart(counts, kind, style));
    }
  }

  private FittedCountsChart chart(FitStudy.Counts counts, String kind, ChartStyle style) {
    Map<String, List<FittedPanel.Point>> byColony = new LinkedHashMap<>();
    int all = 0;
    int inside = 0;
    for (Foretold f : counts.foretold()) {
      if (f.kind().equals(kind)) {
        byColony
            .computeIfAbsent(f.colony(), name -> new ArrayList<>())
            .add(new FittedPanel.Point(f.date(), f.found(), f.mean(), f.low(), f.high()));
        all++;
        inside += f.inside() ? 1 : 0;
      }
    }
    String finding = inside + " of " + all + " counts lie in the band that the fit foretells";
    ChartText text =
        new ChartText(
            words(kind),
            study.name() + ".",
            finding,
            "The band holds the uncertainty of the fitted values and the scatter of counts.",
            "One panel a colony: counts over time as dots, with the band foretold. "
                + finding
                + ".");
    List<FittedPanel> panels = new ArrayList<>();
    byColony.forEach((name, points) -> panels.add(new FittedPanel(name, points)));
    return new FittedCountsChart(axis(kind), panels, text, counts.hemisphere(), style);
  }

  private static String words(String kind) {
    return switch (kind) {
      case "wash" -> "Mites in washed samples";
      case "board" -> "Mites on boards";
      case "drone cells" -> "Opened drone cells with mites";
      default -> kind.substring(0, 1).toUpperCase(Locale.ROOT) + kind.substring(1);
    };
  }

  private static String axis(String kind) {
    return switch (kind) {
      case "wash" -> "mites in a sample";
      case "board" -> "mites on the board";
      case "drone cells" -> "infested cells";
      default -> "mites";
    };
  }

  /** Names of the charts without endings. */
  private List<String> chartNames() {
    return List.copyOf(charts.keySet());
  }

  private List<String> names() {
    List<String> names = new ArrayList<>(List.of(PARAMETERS, PAGE, MARKDOWN, JSON));
    names.addAll(pictures.names());
    study.counts().ifPresent(counts -> names.add(COUNTS));
    return names;
  }

  /**
   * Looks early, before the long run, whether the files can be written.
   *
   * @param folder where they will be written
   * @throws org.undercap.cli.output.UsageException if files are there that must stay
   */
  public static void check(OutputFolder folder) {
    folder.prepare(List.of(PARAMETERS, PAGE, MARKDOWN, JSON)).close();
  }

  /**
   * Writes all files, or none.
   *
   * @param folder where to write
   * @param err told which files were written
   */
  public void write(OutputFolder folder, PrintWriter err) {
    Report report = FitPage.of(study, chartNames());
    try (OutputFiles files = folder.prepare(names())) {
      files.text(PARAMETERS, this::parameters);
      files.text(PAGE, out -> out.write(ReportHtml.of(report, ChartFiles.inside(charts))));
      files.text(MARKDOWN, out -> out.write(ReportMarkdown.of(report, pictures.names())));
      files.text(JSON, out -> FitJson.write(out, study));
      pictures.write(files);
      if (study.counts().isPresent()) {
        files.text(COUNTS, this::counts);
      }
      files.publish(err);
    }
  }

  private void parameters(Writer out) throws IOException {
    out.write("# Fitted values; take them with --parameters " + PARAMETERS + "\n");
    out.write(ParameterFile.KEY + ": " + ParameterFile.FORMAT + "\n");
    out.write("about: " + quoted("Fit: " + study.name()) + "\n");
    out.write("values:\n");
    Map<String, String> lines = new TreeMap<>();
    study
        .parameters()
        .changed()
        .forEach(
            (id, numbers) ->
                lines.put(
                    id.id(),
                    numbers.length == 1
                        ? Numbers.exact(numbers[0])
                        : "["
                            + Numbers.exact(Arrays.stream(numbers).boxed().toList())
                                .replace(";", ",")
                            + "]"));
    for (ParameterId id : study.space().ids()) {
      FittedParameter p = study.fit().parameter(id.id());
      lines.put(
          id.id(),
          Numbers.exact(p.value())
              + "   # 95 % interval "
              + Numbers.rounded(p.low(), 4)
              + " to "
              + Numbers.rounded(p.high(), 4));
    }
    for (Map.Entry<String, String> line : lines.entrySet()) {
      out.write("  " + line.getKey() + ": " + line.getValue() + "\n");
    }
  }

  private static String quoted(String text) {
    return "\"" + text.replaceAll("[\"\\\\]", "'") + "\"";
  }

  private void counts(Writer out) {
    CsvOutput csv = CsvOutput.withHeader(out, FitJson.COUNT_COLUMNS);
    FitStudy.Counts counts = study.counts().orElseThrow();
    for (Foretold f : counts.foretold()) {
      boolean fitted = counts.lastFitted().map(last -> !f.date().isAfter(last)).orElse(true);
      csv.row(f.colony(), f.date(), f.kind(), f.found(), f.mean(), f.low(), f.high(), fitted);
    }
  }
}
