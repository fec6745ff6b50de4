package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYAreaRenderer;
import org.jfree.data.xy.DefaultXYDataset;

/** The plot of one colony: mites as lines; bees and brood, if wanted, as areas behind them. */
final class ColonyPlot {
  /** Distance of two markers on a curve (letters). */
  private static final double MARKER_DISTANCE = 6;

  private final ChartStyle style;
  private final Letters letters;
  private final Rectangle2D box;
  private final DaySpan span;
  private final Content content;
  private final TreatmentBands bands;
  private final LineLabels labels;
  private boolean allLabelled = true;

  /**
   * What is drawn.
   *
   * @param plan course and marks
   * @param lines daily mites, in drawing order
   * @param areas daily bees and brood, in drawing order; may be empty
   * @param mites left axis
   * @param bees right axis, empty without areas
   * @param brief whether curves carry only short words
   */
  record Content(
      PlanCourse plan,
      Map<Meaning, double[]> lines,
      Map<Meaning, double[]> areas,
      Scale mites,
      Optional<Scale> bees,
      boolean brief) {
    Course course() {
      return plan.course();
    }
  }

  /** Lays out a plot in a box of whole points, and the words on its curves. */
  ColonyPlot(ChartStyle style, Letters letters, Rectangle2D box, DaySpan span, Content content) {
    this.style = style;
    this.letters = letters;
    this.box = box;
    this.span = span;
    this.content = content;
    this.bands = new TreatmentBands(content.plan().marks(), span, box);
    this.labels = placeLabels();
  }

  /** Whether there was room for words on every curve. */
  boolean allLabelled() {
    return allLabelled;
  }

  private LineLabels placeLabels() {
    List<Trace> traces = new ArrayList<>();
    content.lines().values().forEach(values -> traces.add(trace(values, content.mites())));
    content
        .areas()
        .values()
        .forEach(values -> traces.add(trace(values, content.bees().orElseThrow())));
    LabelPlacer placer = new LabelPlacer(box, traces, style.lineWidth(), !content.brief());
    for (Mark mark : content.plan().marks()) {
      placer.avoid(edge(bands.left(mark), 1));
      placer.avoid(edge(bands.right(mark), 1));
    }
    content
        .course()
        .lostOnDay()
        .ifPresent(day -> placer.avoid(edge(lostX(day), 4 * style.lineWidth())));
    LineLabels result = new LineLabels(placer);
    int next = 0;
    for (Meaning meaning : content.lines().keySet()) {
      String words = content.brief() ? meaning.shortLabel() : meaning.label();
      allLabelled &=
          result.addToCurve(traces.get(next++), words, letters.bold(), meaning.look().color());
    }
    for (Meaning meaning : content.areas().keySet()) {
      Trace edge = traces.get(next++);
      List<Trace> covering = traces.subList(next, traces.size());
      allLabelled &= result.addToArea(edge, covering, meaning.label(), letters.text());
    }
    return result;
  }

  private Trace trace(double[] values, Scale scale) {
    return Trace.of(values, content.course().start(), span, box, scale.top());
  }

  private Rectangle2D edge(double x, double margin) {
    return new Rectangle2D.Double(x - margin, box.getY(), 2 * margin, box.getHeight());
  }

  void draw(Graphics2D g, boolean withDates) {
    if (content.bees().isPresent()) {
      PlotParts.draw(g, areaPlot(content.bees().get()), box);
    }
    bands.draw(g);
    PlotParts.draw(g, linePlot(withDates), box);
    content.course().lostOnDay().ifPresent(day -> drawLost(g, day));
    labels.draw(g);
  }

  private DayAxis days(boolean withDates) {
    DayAxis axis = DayAxis.over(span, letters.text());
    PlotParts.style(axis, letters.text().font(), Palette.BLACK);
    axis.setTickLabelsVisible(withDates);
    axis.setTickMarksVisible(withDates);
    return axis;
  }

  private XYPlot areaPlot(Scale scale) {
    DayAxis days = days(false);
    days.setVisible(false);
    XYPlot plot = PlotParts.behind(days, PlotParts.axis(scale, letters.text().font()));
    LocalDate start = content.course().start();
    SparseMarkers edges = new SparseMarkers(1);
    DefaultXYDataset edgeData = new DefaultXYDataset();
    int index = 0;
    for (Map.Entry<Meaning, double[]> area : content.areas().entrySet()) {
      XYAreaRenderer filling = new XYAreaRenderer(XYAreaRenderer.AREA);
      Look look = area.getKey().look();
      filling.setSeriesPaint(0, look.color());
      plot.setDataset(index, PlotParts.series(start, area.getValue()));
      plot.setRenderer(index, filling);
      PlotParts.add(edgeData, area.getKey().label(), start, area.getValue());
      Look dark = new Look(Palette.DARK_GREY, look.dash(), Marker.NONE);
      edges.setLook(index++, dark, style.lineWidth() / 2);
    }
    plot.setDataset(index, edgeData);
    plot.setRenderer(index, edges);
    return plot;
  }

  private XYPlot linePlot(boolean withDates) {
    double perDay = span.width() / span.days();
    SparseMarkers renderer =
        new SparseMarkers((int) Math.round(MARKER_DISTANCE * style.textSize() / perDay));
    DefaultXYDataset data = new DefaultXYDataset();
    for (Map.Entry<Meaning, double[]> line : content.lines().entrySet()) {
      int series = data.getSeriesCount();
      PlotParts.add(data, line.getKey().label(), content.course().start(), line.getValue());
      renderer.setLook(series, line.getKey().look(), style.lineWidth());
    }
    XYPlot plot =
        PlotParts.plot(days(withDates), PlotParts.axis(content.mites(), letters.text().font()));
    plot.setDataset(data);
    plot.setRenderer(renderer);
    return plot;
  }

  private double lostX(int day) {
    return span.x((double) content.course().start().toEpochDay() + day);
  }

  private void drawLost(Graphics2D g, int day) {
    Look look = Meaning.COLONY_LOST.look();
    double x = lostX(day);
    g.setColor(look.color());
    g.setStroke(look.dash().stroke(style.lineWidth() / 2));
    g.draw(new Line2D.Double(x, box.getY(), x, box.getMaxY()));
    g.setStroke(new BasicStroke((float) style.lineWidth()));
    double arm = 2.5 * style.lineWidth();
    AffineTransform top = AffineTransform.getTranslateInstance(x, box.getY() + 2 * arm);
    g.draw(top.createTransformedShape(look.marker().shape(arm)));
  }
}
