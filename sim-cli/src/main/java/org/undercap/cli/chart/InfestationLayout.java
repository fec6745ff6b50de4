package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.DefaultXYDataset;
import org.undercap.climate.Hemisphere;

/** Puts everything of an infestation chart in its place. */
final class InfestationLayout {
  private static final String LEFT_TITLE = "mites on 100 bees";
  private static final int MOST_NAME_LINES = 3;

  /** Share of the page for the names of the plans. */
  private static final double NAMES_SHARE = 0.27;

  /** Lowest plot that holds the words of its axis (letters). */
  private static final double LOWEST_PLOT = 11;

  /** Distance of two markers on a curve (letters). */
  private static final double MARKER_DISTANCE = 6;

  /** How much wider a line is than the next one (fraction of the usual width). */
  private static final double WIDENING = 0.35;

  private static final double MOST_WIDENING = 1.4;

  private final List<Course> courses;
  private final Optional<ThresholdLine> threshold;
  private final TreatmentBands bands;
  private final FlagStrip flags;
  private final ChartText text;
  private final Hemisphere hemisphere;
  private final ChartStyle style;
  private final Letters letters;
  private final PageFrame frame;
  private final Scale scale;
  private final DaySpan span;
  private final double height;
  private final Rectangle2D box;

  InfestationLayout(
      List<Course> courses,
      Optional<PlanCourse> treated,
      Optional<ThresholdLine> threshold,
      ChartText text,
      Hemisphere hemisphere,
      ChartStyle style) {
    this.courses = courses;
    this.threshold = threshold;
    this.text = text;
    this.hemisphere = hemisphere;
    this.style = style;
    this.letters = Letters.of(style);
    InfestationScale axis =
        new InfestationScale(
            courses.stream().map(Course::plan).toList(),
            courses.stream().map(InfestationLayout::largest).toList(),
            threshold.map(ThresholdLine::mitesPer100Bees).orElse(0.0));
    this.scale = axis.scale();
    PageFrame bare = new PageFrame(style, letters, text, "");
    double left = Math.rint(bare.left() + Axes.sideRoom(letters, scale));
    double right = Math.rint(bare.right() - namesWidth() - sampleWidth());
    this.span = DaySpan.of(courses, left, right - left);
    List<PlanCourse> flagged = treated.stream().toList();
    FlagTexts flagTexts = FlagTexts.of(flagged, span, letters, bare.left(), bare.right());
    this.flags =
        treated
            .map(plan -> flagTexts.strip(plan, span))
            .orElse(new FlagStrip(letters, bare.left(), bare.right()));
    this.frame = new PageFrame(style, letters, text, (flagTexts.key() + " " + axis.note()).strip());
    double top = Math.rint(frame.bodyTop() + flags.height());
    double below = Axes.bottomRoom(letters) + frame.footerHeight();
    List<List<String>> words = new ArrayList<>(courses.stream().map(this::name).toList());
    threshold.ifPresent(line -> words.add(words(line)));
    double names = EndLabels.height(words, letters.text());
    double lowest = top + Math.max(LOWEST_PLOT * style.textSize(), names) + below;
    this.height = Math.ceil(Math.max(style.chartHeight(), lowest));
    this.box = new Rectangle2D.Double(left, top, right - left, Math.rint(height - below - top));
    List<Mark> marks = treated.map(PlanCourse::marks).orElse(List.of());
    this.bands = new TreatmentBands(marks, span, box);
  }

  private double namesWidth() {
    return NAMES_SHARE * style.width();
  }

  private double sampleWidth() {
    return 4.2 * style.textSize();
  }

  private static double largest(Course course) {
    return Curves.largest(course.shown(course.mitesPer100Bees()));
  }

  ChartPage page() {
    return new ChartPage(style, text, height, this::draw);
  }

  private void draw(Graphics2D g) {
    List<Trace> traces = new ArrayList<>();
    for (Course course : courses) {
      double[] values = course.shown(course.mitesPer100Bees());
      traces.add(Trace.of(values, course.start(), span, box, scale.top()));
    }
    frame.draw(g, height);
    flags.draw(g, box.getY());
    bands.draw(g);
    PlotParts.draw(g, plot(), box);
    threshold.ifPresent(line -> drawThreshold(g, line));
    drawNames(g, traces);
    Axes.leftTitle(g, letters, LEFT_TITLE, frame.left(), box);
    Axes.dateTitle(g, letters, span, hemisphere, frame.right(), box.getMaxY());
  }

  private XYPlot plot() {
    DayAxis days = DayAxis.over(span, letters.text());
    PlotParts.style(days, letters.text().font(), Palette.BLACK);
    double perDay = span.width() / span.days();
    SparseMarkers renderer =
        new SparseMarkers(
            (int) Math.round(MARKER_DISTANCE * style.textSize() / perDay), courses.size());
    DefaultXYDataset data = new DefaultXYDataset();
    for (Course course : courses) {
      int series = data.getSeriesCount();
      double[] values = course.shown(course.mitesPer100Bees());
      PlotParts.add(data, series + " " + course.plan(), course.start(), values);
      Look look = Look.ofPlan(series);
      renderer.setLook(series, look, style.lineWidth());
      renderer.setSeriesStroke(series, look.dash().stroke(style.lineWidth() * widening(series)));
    }
    XYPlot plot = PlotParts.plot(days, PlotParts.axis(scale, letters.text().font()));
    plot.setDataset(data);
    plot.setRenderer(renderer);
    return plot;
  }

  /** Later plans are drawn thinner on top of earlier ones, so that both show where they agree. */
  private double widening(int plan) {
    int later = courses.size() - 1 - plan;
    return 1 + Math.min(MOST_WIDENING, later * WIDENING);
  }

  private double thresholdY(ThresholdLine line) {
    return box.getMaxY() - box.getHeight() * line.mitesPer100Bees() / scale.top();
  }

  private void drawThreshold(Graphics2D g, ThresholdLine line) {
    Look look = Meaning.THRESHOLD.look();
    g.setColor(look.color());
    g.setStroke(look.dash().stroke(style.lineWidth() * 0.6));
    double y = thresholdY(line);
    g.draw(new Line2D.Double(box.getX(), y, box.getMaxX(), y));
  }

  private void drawNames(Graphics2D g, List<Trace> traces) {
    List<EndLabels.Label> labels = new ArrayList<>();
    for (int plan = 0; plan < courses.size(); plan++) {
      Course course = courses.get(plan);
      Point2D end = end(traces.get(plan));
      if (course.lostOnDay().isPresent()) {
        drawCross(g, end);
      }
      labels.add(new EndLabels.Label(name(course), Look.ofPlan(plan), end));
    }
    double right = box.getMaxX();
    for (ThresholdLine line : threshold.stream().toList()) {
      Point2D end = new Point2D.Double(right, thresholdY(line));
      labels.add(new EndLabels.Label(words(line), Meaning.THRESHOLD.look(), end));
    }
    EndLabels names = new EndLabels(style, letters.text(), labels);
    names.draw(g, right, right + style.textSize(), box.getY(), box.getMaxY());
  }

  private List<String> words(ThresholdLine line) {
    return letters.text().wrap(line.label(), namesWidth());
  }

  private List<String> name(Course course) {
    String name = course.plan();
    if (course.lostOnDay().isPresent()) {
      LocalDate day = course.start().plusDays(course.lostOnDay().getAsInt());
      name += " (" + Meaning.COLONY_LOST.label() + " " + Dates.dayAndMonth(day) + ")";
    }
    return letters.text().wrap(name, namesWidth(), MOST_NAME_LINES);
  }

  /** Last point with bees; the lower left corner if there is none. */
  private Point2D end(Trace trace) {
    for (int i = trace.length() - 1; i >= 0; i--) {
      if (!Double.isNaN(trace.y()[i])) {
        return new Point2D.Double(trace.x()[i], Math.max(box.getY(), trace.y()[i]));
      }
    }
    return new Point2D.Double(box.getX(), box.getMaxY());
  }

  private void drawCross(Graphics2D g, Point2D end) {
    Look look = Meaning.COLONY_LOST.look();
    g.setColor(look.color());
    g.setStroke(new BasicStroke((float) style.lineWidth()));
    AffineTransform place = AffineTransform.getTranslateInstance(end.getX(), end.getY());
    g.draw(place.createTransformedShape(look.marker().shape(2.5 * style.lineWidth())));
  }
}
