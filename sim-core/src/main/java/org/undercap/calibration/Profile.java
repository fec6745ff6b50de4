package org.undercap.calibration;

/**
 * Ends of a profile interval: how far one coordinate can be moved, with all others refitted, until
 * the misfit has risen by half of the 95 % point of chi squared with one degree of freedom.
 */
final class Profile {
  /** Square root of that point: a normal misfit reaches it at so many standard deviations. */
  private static final double DEVIATIONS = 1.959963984540054;

  private static final double CLOSE_ENOUGH = 0.01;
  private static final int MOST_ROUNDS = 15;
  private static final double NARROWEST = 1e-6;

  private final Misfit misfit;
  private final Curvature curvature;
  private final double[] bottom;
  private final double lowest;
  private final int axis;
  private final Descent descent;

  Profile(Misfit misfit, Curvature curvature, double[] bottom, double lowest, int axis) {
    this.misfit = misfit;
    this.curvature = curvature;
    this.bottom = bottom;
    this.lowest = lowest;
    this.axis = axis;
    descent = new Descent(misfit, curvature, axis);
  }

  /**
   * One end of the interval.
   *
   * @param coordinate where it lies
   * @param open whether the misfit does not rise enough up to the bound of the parameter
   */
  record End(double coordinate, boolean open) {}

  End below() {
    return end(-1, bottom[axis]);
  }

  End above() {
    return end(1, 1 - bottom[axis]);
  }

  /** Far from the bottom the rise is about quadratic, so its root is followed like a line. */
  private End end(int way, double room) {
    double inside = 0;
    double outside = room;
    double reach = Math.min(room, DEVIATIONS * curvature.deviation(axis));
    boolean boundSeen = false;
    for (int round = 0; round < MOST_ROUNDS && outside - inside > NARROWEST; round++) {
      double rise = deviations(way, reach);
      if (Math.abs(rise - DEVIATIONS) < CLOSE_ENOUGH) {
        return new End(bottom[axis] + way * reach, false);
      }
      if (rise < DEVIATIONS) {
        if (reach >= room) {
          return new End(bottom[axis] + way * room, true);
        }
        inside = reach;
      } else {
        outside = reach;
        boundSeen = true;
      }
      double next = rise > 0 ? reach * DEVIATIONS / rise : outside;
      reach = next > inside && next < outside ? next : boundSeen ? (inside + outside) / 2 : room;
    }
    return new End(bottom[axis] + way * outside, !boundSeen);
  }

  /** The rise at a distance, as a number of standard deviations. */
  private double deviations(int way, double reach) {
    double[] start = new double[bottom.length];
    double variance = curvature.covariance().getEntry(axis, axis);
    for (int i = 0; i < start.length; i++) {
      double slope = i == axis ? 1 : curvature.covariance().getEntry(i, axis) / variance;
      start[i] = Math.max(0, Math.min(1, bottom[i] + slope * way * reach));
    }
    double rise =
        bottom.length == 1 ? misfit.at(start) - lowest : descent.from(start).misfit() - lowest;
    return StrictMath.sqrt(2 * Math.max(0, rise));
  }
}
