package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercap.climate.Hemisphere;

/** Puts the two panels of a chart of start dates side by side, with the key above them. */
final class WaitingLayout {
  private static final String HARM_TITLE = "winter bees harmed (%)";
  private static final String UNTREATED = "no treatment";
  private static final String RULED_OUT = "this date is ruled out";
  private static final double GAP = 6;

  private final List<WaitingLine> lines;
  private final String mitesTitle;
  private final ChartText text;
  private final Hemisphere hemisphere;
  private final ChartStyle style;
  private final Letters letters;
  private final PageFrame frame;
  private final WaitingPanel harm;
  private final WaitingPanel mites;

  WaitingLayout(
      List<WaitingLine> lines,
      WaitingLine.Spread harmUntreated,
      WaitingLine.Spread mitesUntreated,
      String mitesTitle,
      ChartText text,
      Hemisphere hemisphere,
      ChartStyle style) {
    this.lines = lines;
    this.mitesTitle = mitesTitle;
    this.text = text;
    this.hemisphere = hemisphere;
    this.style = style;
    letters = Letters.of(style);
    String note =
        lines.size() <= WaitingPanel.MOST_RANGES
            ? "Line: middle of the simulated seasons; area: 8 in 10 of them."
            : "Middle of the simulated seasons; how far they scatter is in the table.";
    frame = new PageFrame(style, letters, text, note);
    harm = new WaitingPanel(lines, WaitingLine.Point::harm, harmUntreated.middle(), style, letters);
    mites =
        new WaitingPanel(lines, WaitingLine.Point::mites, mitesUntreated.middle(), style, letters);
  }

  private boolean anyRuledOut() {
    return lines.stream().flatMap(line -> line.points().stream()).anyMatch(p -> p.ruledOut());
  }

  private int keyRows() {
    return lines.size() + 1 + (anyRuledOut() ? 1 : 0);
  }

  private double keyHeight() {
    return keyRows() * (letters.text().lineHeight() + GAP / 2) + GAP;
  }

  ChartPage page() {
    double height = style.chartHeight() + (keyRows() - 1) * letters.text().lineHeight();
    return new ChartPage(style, text, height, g -> draw(g, Math.ceil(height)));
  }

  private void draw(Graphics2D g, double height) {
    frame.draw(g, height);
    drawKey(g);
    double top = Math.rint(frame.bodyTop() + keyHeight());
    double bottom = Math.rint(height - frame.footerHeight() - Axes.bottomRoom(letters));
    double middle = (frame.left() + frame.right()) / 2;
    panel(g, harm, HARM_TITLE, frame.left(), middle - style.textSize(), top, bottom);
    panel(g, mites, mitesTitle, middle + style.textSize() / 2, frame.right(), top, bottom);
  }

  private void panel(
      Graphics2D g,
      WaitingPanel panel,
      String title,
      double from,
      double until,
      double top,
      double bottom) {
    double left = Math.rint(from + Axes.sideRoom(letters, panel.scale()));
    double right = Math.rint(until - style.textSize());
    Rectangle2D box = new Rectangle2D.Double(left, top, right - left, bottom - top);
    DaySpan span = span(left, right - left);
    panel.draw(g, box, span);
    Axes.leftTitle(g, letters, title, from, box);
    Axes.startTitle(g, letters, span, hemisphere, frame.right(), bottom);
  }

  private DaySpan span(double left, double width) {
    List<LocalDate> dates =
        lines.stream()
            .flatMap(line -> line.points().stream())
            .map(WaitingLine.Point::date)
            .sorted()
            .toList();
    return new DaySpan(dates.get(0), dates.get(dates.size() - 1), left, width);
  }

  private void drawKey(Graphics2D g) {
    double y = frame.bodyTop();
    List<KeyEntry> rows = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      rows.add(new KeyEntry(Optional.of(Look.ofPlan(i)), lines.get(i).name()));
    }
    rows.add(new KeyEntry(Optional.of(Meaning.THRESHOLD.look()), UNTREATED));
    if (anyRuledOut()) {
      rows.add(new KeyEntry(Optional.empty(), RULED_OUT));
    }
    for (KeyEntry row : rows) {
      drawKeyRow(g, row, y);
      y += letters.text().lineHeight() + GAP / 2;
    }
  }

  /** A line and its words; a cross without a line where there is no look. */
  private record KeyEntry(Optional<Look> look, String words) {}

  private void drawKeyRow(Graphics2D g, KeyEntry row, double top) {
    double width = 3.2 * style.textSize();
    double middle = top + letters.text().lineHeight() / 2;
    AffineTransform place = AffineTransform.getTranslateInstance(frame.left() + width / 2, middle);
    if (row.look().isEmpty()) {
      g.setColor(Palette.BLACK);
      g.setStroke(new BasicStroke((float) style.lineWidth() / 2));
      g.draw(place.createTransformedShape(Marker.CROSS.shape(2 * style.lineWidth())));
    } else {
      Look look = row.look().get();
      g.setColor(look.color());
      g.setStroke(look.dash().stroke(style.lineWidth()));
      g.draw(new Line2D.Double(frame.left(), middle, frame.left() + width, middle));
      g.fill(place.createTransformedShape(look.marker().shape(1.6 * style.lineWidth())));
    }
    g.setFont(letters.text().font());
    g.setColor(Palette.BLACK);
    double room = frame.right() - frame.left() - width - GAP;
    String fitting = letters.text().wrap(row.words(), room, 1).get(0);
    g.drawString(
        fitting, (float) (frame.left() + width + GAP), (float) (top + letters.text().ascent()));
  }
}
