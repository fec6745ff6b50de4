package org.undercap.cli.output;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.LongSupplier;

/**
 * One line on standard error that says how far a long run has come and how long it will still take.
 * It appears after a second and is wiped at the end. Safe for use by many threads.
 */
public final class Progress implements AutoCloseable {
  private static final long SECOND = 1_000_000_000L;
  private static final long BETWEEN = SECOND / 4;
  private static final int SECONDS_A_MINUTE = 60;
  private static final int MINUTES_AN_HOUR = 60;

  private final PrintWriter err;
  private final boolean shown;
  private final String what;
  private final long total;
  private final LongSupplier clock;
  private final long begun;
  private long before;
  private long done;
  private long lastShown;
  private int width;

  /**
   * Begins.
   *
   * @param err takes the line
   * @param shown whether a person is watching who wants it
   * @param what what is counted, as in {@code runs}
   * @param total how many there will be, at least 0
   */
  public Progress(PrintWriter err, boolean shown, String what, long total) {
    this(err, shown, what, total, System::nanoTime);
  }

  /** Begins with a clock (nanoseconds) of the test's own. */
  Progress(PrintWriter err, boolean shown, String what, long total, LongSupplier clock) {
    this.err = err;
    this.shown = shown;
    this.what = what;
    this.total = total;
    this.clock = clock;
    begun = clock.getAsLong();
    lastShown = begun + SECOND - BETWEEN;
  }

  /**
   * Counts what was done by an earlier run that is taken up again; it says nothing about the speed.
   *
   * @param count how many
   */
  public synchronized void skip(long count) {
    before += count;
  }

  /**
   * Counts what has been done.
   *
   * @param count how many more
   */
  public synchronized void add(long count) {
    done += count;
    long now = clock.getAsLong();
    if (shown && now - lastShown >= BETWEEN) {
      lastShown = now;
      show(line(now - begun));
    }
  }

  private String line(long nanoseconds) {
    long ready = before + done;
    String text =
        String.format(
            Locale.ROOT,
            "%d of %d %s (%d %%)",
            ready,
            total,
            what,
            100 * ready / Math.max(1, total));
    double left = (double) nanoseconds / SECOND / Math.max(1, done) * Math.max(0, total - ready);
    return text + ", " + duration(left) + " left";
  }

  private static String duration(double seconds) {
    long whole = (long) StrictMath.ceil(seconds);
    if (whole < 2 * SECONDS_A_MINUTE) {
      return whole + " s";
    }
    long minutes = (whole + SECONDS_A_MINUTE / 2) / SECONDS_A_MINUTE;
    return minutes < 2 * MINUTES_AN_HOUR
        ? minutes + " min"
        : minutes / MINUTES_AN_HOUR + " h " + minutes % MINUTES_AN_HOUR + " min";
  }

  private void show(String text) {
    err.print("\r" + text + " ".repeat(Math.max(0, width - text.length())));
    err.flush();
    width = text.length();
  }

  /** Wipes the line. */
  @Override
  public synchronized void close() {
    if (width > 0) {
      show("");
      err.print("\r");
      err.flush();
    }
  }
}
