package org.undercap.cli.chart;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Small shape set on a line here and there, so that lines differ without colour. */
public enum Marker {
  /** No shape. */
  NONE,
  /** Round. */
  CIRCLE,
  /** Square. */
  SQUARE,
  /** Triangle, point up. */
  TRIANGLE,
  /** Square on its corner. */
  DIAMOND,
  /** Two crossing strokes. */
  CROSS,
  /** Round and open. */
  RING,
  /** Triangle, point down. */
  POINT_DOWN,
  /** Square and open. */
  FRAME;

  /** The shape around the origin, about as large as a circle of this radius (points). */
  Shape shape(double radius) {
    double r = radius;
    return switch (this) {
      case NONE -> new Path2D.Double();
      case CIRCLE -> new Ellipse2D.Double(-r, -r, 2 * r, 2 * r);
      case SQUARE -> new Rectangle2D.Double(-0.9 * r, -0.9 * r, 1.8 * r, 1.8 * r);
      case TRIANGLE -> polygon(0, -1.25 * r, 1.2 * r, 0.9 * r, -1.2 * r, 0.9 * r);
      case DIAMOND -> polygon(0, -1.3 * r, 1.3 * r, 0, 0, 1.3 * r, -1.3 * r, 0);
      case CROSS -> cross(r);
      case RING -> ring(r);
      case FRAME -> frame(r);
      case POINT_DOWN -> polygon(0, 1.25 * r, 1.2 * r, -0.9 * r, -1.2 * r, -0.9 * r);
    };
  }

  private static Path2D polygon(double... xy) {
    Path2D path = new Path2D.Double();
    path.moveTo(xy[0], xy[1]);
    for (int i = 2; i < xy.length; i += 2) {
      path.lineTo(xy[i], xy[i + 1]);
    }
    path.closePath();
    return path;
  }

  private static Path2D frame(double r) {
    Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    path.append(new Rectangle2D.Double(-1.15 * r, -1.15 * r, 2.3 * r, 2.3 * r), false);
    path.append(new Rectangle2D.Double(-0.6 * r, -0.6 * r, 1.2 * r, 1.2 * r), false);
    return path;
  }

  private static Path2D ring(double r) {
    Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    path.append(new Ellipse2D.Double(-1.25 * r, -1.25 * r, 2.5 * r, 2.5 * r), false);
    path.append(new Ellipse2D.Double(-0.65 * r, -0.65 * r, 1.3 * r, 1.3 * r), false);
    return path;
  }

  private static Path2D cross(double r) {
    Path2D path = new Path2D.Double();
    path.moveTo(-r, -r);
    path.lineTo(r, r);
    path.moveTo(-r, r);
    path.lineTo(r, -r);
    return path;
  }
}
