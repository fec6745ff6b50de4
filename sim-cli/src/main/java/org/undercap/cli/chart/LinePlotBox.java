package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** A plot of lines in its place. */
final class LinePlotBox implements PlotBox {
  private static final double TICK = 4;
  private static final double GAP = 3;

  /** Lowest plot that can be read (lines of text). */
  private static final double LEAST_LINES = 8;

  private final LinePlot plot;
  private final ChartStyle style;
  private final Letters letters;
  private final Scale scale;
  private final double width;
  private final PlotHead head;
  private Rectangle2D area = new Rectangle2D.Double();
  private Rectangle2D box = new Rectangle2D.Double();
  private FlagStrip flags;
  private LineLabels labels;
  private final LineEnds lineEnds;
  private final Set<String> keyed;
  private final Set<String> unlabelled = new HashSet<>();
  private double leastHead;
  private double leastSide;
  private double leastEnd;

  LinePlotBox(
      LinePlot plot,
      ChartStyle style,
      Letters letters,
      Scale scale,
      double width,
      Set<String> keyed) {
    this.plot = plot;
    this.keyed = keyed;
    this.style = style;
    this.letters = letters;
    this.scale = scale;
    this.width = width;
    head = new PlotHead(letters, plot, width);
    boolean roomless = plot.lines().stream().anyMatch(line -> keyed.contains(line.words()));
    lineEnds = new LineEnds(plot, style, letters.text(), width, roomless);
    flags = flags(new Rectangle2D.Double(leftRoom(), 0, width - leftRoom() - rightRoom(), 1), 0);
    labels = new LineLabels(new LabelPlacer(box, List.of(), 0, true));
  }

  private double leftRoom() {
    double numbers = letters.text().width(scale.label(scale.top())) + TICK + GAP;
    double firstTick = letters.text().width(plot.ticks().get(0).words()) / 2 + 1;
    return Math.max(leastSide, Math.max(numbers, firstTick));
  }

  @Override
  public double headRoom() {
    return Math.max(leastHead, head.height() + flags.height() + topRoom());
  }

  @Override
  public double sideRoom() {
    return leftRoom();
  }

  @Override
  public double endRoom() {
    return rightRoom();
  }

  @Override
  public void align(double headRoom, double sideRoom, double endRoom) {
    leastHead = headRoom;
    leastSide = sideRoom;
    leastEnd = endRoom;
  }

  private double rightRoom() {
    double lastTick =
        letters.text().width(plot.ticks().get(plot.ticks().size() - 1).words()) / 2 + 1;
    return Math.max(leastEnd, Math.max(lastTick, lineEnds.width()));
  }

  private double bottomRoom() {
    int lines = plot.across().isEmpty() ? 1 : 1 + acrossLines().size();
    return TICK + GAP + lines * letters.text().lineHeight();
  }

  private List<String> acrossLines() {
    return letters.text().wrap(plot.across(), width);
  }

  /** The topmost number of the axis reaches half a line above the plot. */
  private double topRoom() {
    return letters.text().lineHeight() / 2;
  }

  @Override
  public double leastHeight() {
    double least = Math.max(LEAST_LINES * letters.text().lineHeight(), lineEnds.leastHeight());
    return headRoom() + least + bottomRoom();
  }

  private FlagStrip flags(Rectangle2D plotBox, double left) {
    FlagStrip strip = new FlagStrip(letters, left, left + width);
    List<LinePlot.SpanMark> rightmostFirst = new ArrayList<>(plot.spans());
    rightmostFirst.sort(Comparator.comparingDouble(LinePlot.SpanMark::from).reversed());
    for (LinePlot.SpanMark mark : rightmostFirst) {
      if (!mark.words().isEmpty()) {
        double middle = x(plotBox, Math.max(mark.from(), plot.from()));
        strip.place(new Flag(wrapped(mark.words()), List.of(middle), false));
      }
    }
    return strip;
  }

  private List<String> wrapped(String words) {
    return letters.text().wrap(words, width * 0.45);
  }

  private double x(Rectangle2D plotBox, double value) {
    return plotBox.getX() + plotBox.getWidth() * (value - plot.from()) / (plot.to() - plot.from());
  }

  private double y(double value) {
    return box.getMaxY() - box.getHeight() * value / scale.top();
  }

  @Override
  public void place(Rectangle2D where) {
    area = where;
    double left = where.getX() + leftRoom();
    double right = where.getMaxX() - rightRoom();
    Rectangle2D across = new Rectangle2D.Double(left, 0, right - left, 1);
    flags = flags(across, where.getX());
    double top = where.getY() + headRoom();
    box = new Rectangle2D.Double(left, top, right - left, where.getMaxY() - bottomRoom() - top);
    placeLabels();
  }

  private void placeLabels() {
    List<Trace> traces = new ArrayList<>();
    plot.areas().forEach(line -> traces.add(trace(line.x(), line.y())));
    plot.lines().forEach(line -> traces.add(trace(line.x(), line.y())));
    plot.levels().forEach(level -> traces.add(level(level.value())));
    plot.bands().forEach(band -> traces.add(trace(band.x(), band.high())));
    LabelPlacer placer = new LabelPlacer(box, traces, style.lineWidth() + 1, true);
    for (LinePlot.SpanMark mark : plot.spans()) {
      placer.avoid(upright(mark.from()));
      placer.avoid(upright(mark.to()));
    }
    for (LinePlot.Range range : plot.ranges()) {
      double top = y(range.high());
      double middle = x(box, range.x());
      double pad = 2 * style.lineWidth();
      placer.avoid(
          new Rectangle2D.Double(middle - pad, top - pad, 2 * pad, y(range.low()) - top + 2 * pad));
    }
    labels = new LineLabels(placer);
    unlabelled.clear();
    int next = 0;
    for (LinePlot.Line line : plot.areas()) {
      Trace edge = traces.get(next++);
      List<Trace> covering = traces.subList(next, plot.areas().size());
      label(line.words(), words -> labels.addToArea(edge, covering, words, letters.text()));
    }
    for (LinePlot.Line line : plot.lines()) {
      Trace curve = traces.get(next++);
      Color color = line.look().color();
      label(
          line.words(),
          words -> lineEnds.wanted() || labels.addToCurve(curve, words, letters.bold(), color));
    }
    for (LinePlot.LevelMark level : plot.levels()) {
      Trace curve = traces.get(next++);
      label(
          level.words(),
          words -> labels.addToCurve(curve, words, letters.text(), Palette.DARK_GREY));
    }
    for (LinePlot.Band band : plot.bands()) {
      Trace edge = traces.get(next++);
      label(band.words(), words -> labels.addToArea(edge, List.of(), words, letters.text()));
    }
  }

  /** Writes words that no key explains, and notes those without room. */
  private void label(String words, Predicate<String> writing) {
    if (!keyed.contains(words) && !writing.test(words)) {
      unlabelled.add(words);
    }
  }

  private Trace trace(List<Double> xs, List<Double> ys) {
    double[] across = new double[xs.size()];
    double[] down = new double[xs.size()];
    for (int i = 0; i < across.length; i++) {
      across[i] = x(box, xs.get(i));
      down[i] = y(ys.get(i));
    }
    return Trace.through(across, down);
  }

  private Trace level(double value) {
    return new Trace(new double[] {box.getX(), box.getMaxX()}, new double[] {y(value), y(value)});
  }

  private Rectangle2D upright(double at) {
    return new Rectangle2D.Double(x(box, at) - 1, box.getY(), 2, box.getHeight());
  }

  @Override
  public Set<String> unlabelled() {
    return unlabelled;
  }

  @Override
  public List<SampleRow.Item> key(Set<String> lines) {
    List<SampleRow.Item> items = new ArrayList<>();
    plot.areas().forEach(l -> items.add(new SampleRow.BandItem(l.words(), l.look())));
    plot.bands().forEach(b -> items.add(new SampleRow.BandItem(b.words(), Meaning.BEES.look())));
    plot.levels()
        .forEach(l -> items.add(new SampleRow.LineItem(l.words(), Meaning.THRESHOLD.look())));
    items.removeIf(item -> !lines.contains(item.words()));
    return items;
  }

  @Override
  public void draw(Graphics2D g) {
    head.draw(g, area.getX(), area.getY());
    for (LinePlot.Band band : plot.bands()) {
      fill(g, band.x(), band.high(), band.low(), Meaning.BEES.look());
      edge(g, band.x(), band.high(), Meaning.BEES.look());
    }
    for (LinePlot.Line each : plot.areas()) {
      List<Double> zero = each.x().stream().map(at -> 0.0).toList();
      fill(g, each.x(), each.y(), zero, each.look());
    }
    // Edges after all fillings, so that no area hides where another one ends.
    plot.areas().forEach(each -> edge(g, each.x(), each.y(), each.look()));
    axes(g);
    plot.spans().forEach(mark -> span(g, mark));
    flags.draw(g, box.getY());
    plot.levels().forEach(level -> level(g, level.value()));
    plot.ranges().forEach(range -> range(g, range));
    for (int i = 0; i < plot.lines().size(); i++) {
      line(g, plot.lines().get(i), i);
    }
    lineEnds.draw(g, box, plot.lines().stream().map(this::end).toList());
    labels.draw(g);
  }

  private Point2D end(LinePlot.Line line) {
    int last = line.x().size() - 1;
    return new Point2D.Double(x(box, line.x().get(last)), y(line.y().get(last)));
  }

  private void fill(Graphics2D g, List<Double> xs, List<Double> high, List<Double> low, Look look) {
    Path2D filling = path(xs, high);
    for (int i = xs.size() - 1; i >= 0; i--) {
      filling.lineTo(x(box, xs.get(i)), y(low.get(i)));
    }
    filling.closePath();
    g.setColor(look.color());
    g.fill(filling);
  }

  private void edge(Graphics2D g, List<Double> xs, List<Double> ys, Look look) {
    g.setColor(Palette.DARK_GREY);
    g.setStroke(look.dash().stroke(style.lineWidth() / 2));
    g.draw(path(xs, ys));
  }

  private Path2D path(List<Double> xs, List<Double> ys) {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < xs.size(); i++) {
      double across = x(box, xs.get(i));
      double down = y(ys.get(i));
      if (i == 0) {
        path.moveTo(across, down);
      } else {
        path.lineTo(across, down);
      }
    }
    return path;
  }

  private void axes(Graphics2D g) {
    g.setFont(letters.text().font());
    g.setStroke(new BasicStroke(0.5f));
    for (int i = 0; i * scale.step() <= scale.top() * (1 + 1e-9); i++) {
      double value = i * scale.step();
      g.setColor(i == 0 ? Palette.BLACK : Palette.LIGHT_GREY);
      g.draw(new Line2D.Double(box.getX(), y(value), box.getMaxX(), y(value)));
      String words = scale.label(value);
      double base = y(value) + letters.text().ascent() * 0.36;
      g.setColor(Palette.BLACK);
      g.drawString(words, (float) (box.getX() - TICK - letters.text().width(words)), (float) base);
    }
    double base = box.getMaxY() + TICK + GAP + letters.text().ascent();
    int every = tickStep();
    for (int i = 0; i < plot.ticks().size(); i++) {
      LinePlot.Tick tick = plot.ticks().get(i);
      double at = x(box, tick.at());
      g.setColor(Palette.MIDDLE_GREY);
      g.draw(new Line2D.Double(at, box.getMaxY(), at, box.getMaxY() + TICK));
      if (i % every == 0) {
        g.setColor(Palette.BLACK);
        g.drawString(
            tick.words(), (float) (at - letters.text().width(tick.words()) / 2), (float) base);
      }
    }
    if (!plot.across().isEmpty()) {
      double top = box.getMaxY() + TICK + GAP + letters.text().lineHeight();
      List<String> lines = acrossLines();
      double left = area.getMaxX() - letters.text().width(lines);
      PlotBox.write(g, letters.text(), lines, Palette.DARK_GREY, left, top);
    }
  }

  /** Every how many ticks carry their words, so that they stay apart. */
  private int tickStep() {
    double gap = letters.text().ascent() * 0.6;
    for (int every = 1; every < plot.ticks().size(); every++) {
      boolean apart = true;
      double free = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < plot.ticks().size(); i += every) {
        double at = x(box, plot.ticks().get(i).at());
        double half = letters.text().width(plot.ticks().get(i).words()) / 2;
        apart &= at - half > free;
        free = at + half + gap;
      }
      if (apart) {
        return every;
      }
    }
    return Math.max(1, plot.ticks().size());
  }

  private void span(Graphics2D g, LinePlot.SpanMark mark) {
    double left = x(box, Math.max(plot.from(), mark.from()));
    double right = Math.max(left + 1.5, x(box, Math.min(plot.to(), mark.to())));
    g.setStroke(new BasicStroke(0.75f));
    if (mark.from() == mark.to()) {
      g.setColor(Palette.DARK_GREY);
      g.draw(new Line2D.Double(left, box.getY(), left, box.getMaxY()));
      return;
    }
    g.setColor(Palette.VEIL);
    g.fill(new Rectangle2D.Double(left, box.getY(), right - left, box.getHeight()));
    g.setColor(Palette.DARK_GREY);
    // What goes on beyond the plot is left open there.
    if (mark.from() >= plot.from()) {
      g.draw(new Line2D.Double(left, box.getY(), left, box.getMaxY()));
    }
    if (mark.to() <= plot.to()) {
      g.draw(new Line2D.Double(right, box.getY(), right, box.getMaxY()));
    }
  }

  private void level(Graphics2D g, double value) {
    Look look = Meaning.THRESHOLD.look();
    g.setColor(look.color());
    g.setStroke(look.dash().stroke(style.lineWidth() / 2));
    g.draw(new Line2D.Double(box.getX(), y(value), box.getMaxX(), y(value)));
  }

  private void range(Graphics2D g, LinePlot.Range range) {
    double at = x(box, range.x());
    Marker marker = range.standsOut() ? Marker.CROSS : Marker.CIRCLE;
    g.setColor(Palette.BLACK);
    g.setStroke(new BasicStroke((float) style.lineWidth() / 2));
    g.draw(new Line2D.Double(at, y(range.low()), at, y(range.high())));
    SampleRow.marker(
        g, new Look(Palette.BLACK, Dash.SOLID, marker), at, y(range.middle()), style.lineWidth());
  }

  private void line(Graphics2D g, LinePlot.Line line, int number) {
    g.setColor(line.look().color());
    g.setStroke(line.look().dash().stroke(style.lineWidth()));
    g.draw(path(line.x(), line.y()));
    int points = line.x().size();
    double apart = 6 * style.textSize();
    double length = x(box, line.x().get(points - 1)) - x(box, line.x().get(0));
    int step = Math.max(1, (int) Math.round(apart * points / Math.max(1, length)));
    int offset = points <= 16 ? 0 : (step / 2 + number * step / 3) % step;
    for (int i = offset; i < points; i += points <= 16 ? 1 : step) {
      SampleRow.marker(
          g, line.look(), x(box, line.x().get(i)), y(line.y().get(i)), style.lineWidth());
    }
  }
}
