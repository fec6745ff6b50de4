package org.undercap.cli.chart;

import java.awt.Color;
import java.util.List;

/** How a line looks: colour, dash and marker together, so that it is known without colour. */
public record Look(Color color, Dash dash, Marker marker) {
  /** Colours that have no meaning of their own in {@link Meaning}. */
  private static final List<Color> PLAN_COLORS =
      List.of(Palette.BLACK, Palette.GREEN, Palette.PURPLE);

  private static final List<Dash> PLAN_DASHES =
      List.of(Dash.SOLID, Dash.DASHED, Dash.DASH_DOT, Dash.DOTTED, Dash.DASH_DOT_DOT);

  private static final List<Marker> PLAN_MARKERS =
      List.of(
          Marker.CIRCLE,
          Marker.SQUARE,
          Marker.TRIANGLE,
          Marker.DIAMOND,
          Marker.RING,
          Marker.POINT_DOWN,
          Marker.FRAME);

  /**
   * Keeps the parts.
   *
   * @param color colour of line and label
   * @param dash how the line is broken
   * @param marker shape set on the line here and there
   */
  public Look {}

  /**
   * Look of a whole plan where plans share one plot. Colours that mean mites on bees or in cells
   * are left out. Neighbours differ in all three parts, the first seven plans in their markers, the
   * first 35 in dash or marker. No plan has a cross, which marks what is lost or ruled out.
   *
   * @param index place of the plan in the list, from 0
   * @return its look
   */
  public static Look ofPlan(int index) {
    return new Look(
        PLAN_COLORS.get(index % PLAN_COLORS.size()),
        PLAN_DASHES.get(index % PLAN_DASHES.size()),
        PLAN_MARKERS.get(index % PLAN_MARKERS.size()));
  }
}
