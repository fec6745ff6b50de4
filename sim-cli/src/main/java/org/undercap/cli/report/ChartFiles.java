package org.undercap.cli.report;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.undercap.cli.chart.Chart;
import org.undercap.cli.chart.ChartPage;
import org.undercap.cli.chart.ChartWriter;
import org.undercap.cli.output.OutputFiles;

/** Charts as files: one PNG a page, and one SVG a page if wanted. */
public final class ChartFiles {
  private static final String NAME_SPACE = "\\s+xmlns(:\\w+)?=\"[^\"]*\"";
  private final Map<String, ChartPage> pages = new LinkedHashMap<>();
  private final boolean svg;

  /**
   * No charts yet.
   *
   * @param svg whether to write each chart as SVG too
   */
  public ChartFiles(boolean svg) {
    this.svg = svg;
  }

  /**
   * Adds a chart. Further pages get a number behind the name.
   *
   * @param name name of the file without ending
   * @param chart the chart
   */
  public void add(String name, Chart chart) {
    List<ChartPage> all = chart.pages();
    for (int i = 0; i < all.size(); i++) {
      pages.put(i == 0 ? name : name + "-" + (i + 1), all.get(i));
    }
  }

  /**
   * Names of the files.
   *
   * @return names with endings
   */
  public List<String> names() {
    List<String> names = new ArrayList<>();
    for (String name : pages.keySet()) {
      names.add(name + ".png");
      if (svg) {
        names.add(name + ".svg");
      }
    }
    return names;
  }

  /**
   * Draws and writes the charts that are wanted.
   *
   * @param files where to write
   */
  public void write(OutputFiles files) {
    pages.forEach(
        (name, page) -> {
          if (files.wants(name + ".png")) {
            files.bytes(name + ".png", out -> out.write(ChartWriter.png(page)));
          }
          if (svg && files.wants(name + ".svg")) {
            files.bytes(name + ".svg", out -> out.write(ChartWriter.svg(page, "chart")));
          }
        });
  }

  /**
   * Charts as SVG to stand inside a web page, which knows the name spaces by itself.
   *
   * @param charts charts by name
   * @return their pages by name
   */
  static Map<String, List<String>> inside(Map<String, Chart> charts) {
    Map<String, List<String>> inside = new LinkedHashMap<>();
    charts.forEach(
        (name, chart) -> {
          List<String> svgs = new ArrayList<>();
          for (ChartPage page : chart.pages()) {
            byte[] svg = ChartWriter.svg(page, name + svgs.size());
            svgs.add(new String(svg, StandardCharsets.UTF_8).replaceAll(NAME_SPACE, ""));
          }
          inside.put(name, svgs);
        });
    return inside;
  }
}
