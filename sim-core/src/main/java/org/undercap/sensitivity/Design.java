package org.undercap.sensitivity;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import org.undercap.internal.Checks;

/** The points at which a study asks for an outcome. */
public interface Design {
  /** Points that are run side by side (points). */
  int BLOCK = 64;

  /**
   * Number of points.
   *
   * @return points, at least 1
   */
  int size();

  /**
   * One point.
   *
   * @param index number of the point, from 0
   * @return a new array, each coordinate strictly between 0 and 1
   */
  double[] point(int index);

  /**
   * The outcome at all points, block by block in this thread.
   *
   * @param function the outcome
   * @return one value a point
   * @throws IllegalStateException if the function gives too few values or one that is not finite
   */
  default double[] evaluate(UnitCubeFunction function) {
    double[] values = new double[size()];
    for (int from = 0; from < size(); from += BLOCK) {
      evaluateBlock(function, from, values);
    }
    return values;
  }

  /**
   * The outcome at all points, in blocks handed to threads. The values do not depend on the number
   * of threads.
   *
   * @param function the outcome; several threads call it at the same time
   * @param threads the threads; stays open
   * @return one value a point
   * @throws IllegalStateException if the function gives too few values or one that is not finite
   * @throws InterruptedException if this thread is interrupted; blocks not yet begun are cancelled
   */
  default double[] evaluate(UnitCubeFunction function, ExecutorService threads)
      throws InterruptedException {
    double[] values = new double[size()];
    List<Callable<Void>> blocks = new ArrayList<>();
    for (int from = 0; from < size(); from += BLOCK) {
      int first = from;
      blocks.add(
          () -> {
            evaluateBlock(function, first, values);
            return null;
          });
    }
    for (Future<Void> block : threads.invokeAll(blocks)) {
      try {
        block.get();
      } catch (ExecutionException e) {
        if (e.getCause() instanceof RuntimeException cause) {
          throw cause;
        }
        throw new IllegalStateException("a block of points failed", e.getCause());
      }
    }
    return values;
  }

  private void evaluateBlock(UnitCubeFunction function, int from, double[] values) {
    double[][] points = new double[Math.min(BLOCK, size() - from)][];
    for (int i = 0; i < points.length; i++) {
      points[i] = point(from + i);
    }
    double[] block = function.values(points);
    if (block.length != points.length) {
      throw new IllegalStateException(block.length + " values for " + points.length + " points");
    }
    for (int i = 0; i < points.length; i++) {
      if (!Double.isFinite(block[i])) {
        throw new IllegalStateException("the value of point " + (from + i) + " is " + block[i]);
      }
      values[from + i] = block[i];
    }
  }

  /**
   * Checks the values of a study against its points.
   *
   * @param values one value a point
   * @throws IllegalArgumentException if their number does not fit or one is not finite
   */
  default void check(double[] values) {
    if (values.length != size()) {
      throw new IllegalArgumentException(values.length + " values for " + size() + " points");
    }
    for (double value : values) {
      Checks.finite(value, "value of a point");
    }
  }
}
