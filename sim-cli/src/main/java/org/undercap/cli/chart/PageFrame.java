package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** What surrounds every plot: the finding and the title above it, the limit below it. */
final class PageFrame {
  private final ChartStyle style;
  private final Letters letters;
  private final List<String> finding;
  private final List<String> title;
  private final List<String> limit;

  PageFrame(ChartStyle style, Letters letters, ChartText text, String note) {
    this.style = style;
    this.letters = letters;
    double width = right() - left();
    String subject =
        text.subtitle().isEmpty() ? text.title() : text.title() + ". " + text.subtitle();
    this.finding = letters.headline().wrap(text.finding(), width);
    String stop = subject.endsWith(".") ? " " : ". ";
    this.title = letters.text().wrap(note.isEmpty() ? subject : subject + stop + note, width);
    this.limit = letters.text().wrap(text.limit(), width);
  }

  double left() {
    return style.textSize() * 0.6;
  }

  double right() {
    return style.width() - style.textSize() * 0.6;
  }

  /** Where the body begins (points from the top). */
  double bodyTop() {
    return margin()
        + finding.size() * letters.headline().lineHeight()
        + title.size() * letters.text().lineHeight()
        + margin();
  }

  /** Height below the body (points). */
  double footerHeight() {
    return 2 * margin() + limit.size() * letters.text().lineHeight();
  }

  private double margin() {
    return style.textSize() * 0.7;
  }

  void draw(Graphics2D g, double pageHeight) {
    g.setColor(Palette.WHITE);
    g.fill(new Rectangle2D.Double(0, 0, style.width(), pageHeight));
    double y = lines(g, letters.headline(), finding, Palette.BLACK, margin());
    lines(g, letters.text(), title, Palette.DARK_GREY, y);
    double footer = pageHeight - footerHeight() + margin();
    g.setColor(Palette.MIDDLE_GREY);
    g.setStroke(new BasicStroke(0.5f));
    double rule = footer - margin() / 2;
    g.draw(new Line2D.Double(left(), rule, right(), rule));
    lines(g, letters.text(), limit, Palette.DARK_GREY, footer);
  }

  /** Draws lines of text from a height on; returns where they end. */
  private double lines(
      Graphics2D g, Lettering lettering, List<String> lines, Color color, double top) {
    g.setFont(lettering.font());
    g.setColor(color);
    double y = top;
    for (String line : lines) {
      g.drawString(line, (float) left(), (float) (y + lettering.ascent()));
      y += lettering.lineHeight();
    }
    return y;
  }
}
