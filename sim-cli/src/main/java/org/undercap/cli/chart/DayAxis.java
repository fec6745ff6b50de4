package org.undercap.cli.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** Date axis on days since 1 January 1970, without time zones, with dates like {@code 15 Aug}. */
final class DayAxis extends NumberAxis {
  private static final long serialVersionUID = 1L;

  /** Beyond this length only years are written (days). */
  private static final int YEARS_ONLY = 4 * 366;

  /** Dates further apart than this are whole years apart (days). */
  private static final double SHORT_YEAR = 300;

  private final List<LocalDate> ticks;
  private final boolean yearsOnly;

  private DayAxis(List<LocalDate> ticks, boolean yearsOnly) {
    this.ticks = List.copyOf(ticks);
    this.yearsOnly = yearsOnly;
  }

  /** An axis over these days, with as many dates as fit. */
  static DayAxis over(DaySpan span, Lettering letters) {
    boolean yearsOnly = showsYears(span);
    double labelWidth = letters.width(yearsOnly ? "2000" : "30 Aug") + letters.ascent();
    double apart = labelWidth * span.days() / span.width();
    CalendarTicks ticks = new CalendarTicks(span.first(), span.last());
    DayAxis axis =
        new DayAxis(ticks.atLeastApart(yearsOnly ? Math.max(apart, SHORT_YEAR) : apart), yearsOnly);
    double first = span.first().toEpochDay();
    axis.setRange(first, first + span.days());
    return axis;
  }

  /** Whether the axis is so long that it shows years instead of dates. */
  static boolean showsYears(DaySpan span) {
    return span.days() > YEARS_ONLY;
  }

  @Override
  public List<NumberTick> refreshTicks(
      Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
    List<NumberTick> result = new ArrayList<>();
    for (LocalDate date : ticks) {
      String label = yearsOnly ? Integer.toString(date.getYear()) : Dates.dayAndMonth(date);
      result.add(
          new NumberTick(
              (double) date.toEpochDay(), label, TextAnchor.TOP_CENTER, TextAnchor.TOP_CENTER, 0));
    }
    return result;
  }
}
