package org.undercap.cli.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A report as one web page that needs nothing else: no network, no script, charts inside. The
 * templates stand in {@code src/main/jte}.
 */
final class ReportHtml {
  private static final TemplateEngine ENGINE = TemplateEngine.createPrecompiled(ContentType.Html);

  private ReportHtml() {}

  /**
   * The report as a web page.
   *
   * @param report the report
   * @param charts pages of each chart as SVG, by its name
   */
  static String of(Report report, Map<String, List<String>> charts) {
    Map<String, Object> parameters = new HashMap<>();
    parameters.put("report", report);
    parameters.put("charts", charts);
    return render("report.jte", parameters);
  }

  /** A page from its template, with line feeds only. */
  static String render(String template, Map<String, Object> parameters) {
    StringOutput output = new StringOutput();
    ENGINE.render(template, parameters, output);
    return output.toString().replace("\r\n", "\n");
  }
}
