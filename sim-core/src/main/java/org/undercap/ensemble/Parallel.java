package org.undercap.ensemble;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Does pieces of work that do not depend on each other, on one or several threads. */
final class Parallel {
  private Parallel() {}

  static void run(List<? extends Runnable> work, int threads) {
    if (threads == 1 || work.size() < 2) {
      work.forEach(Runnable::run);
      return;
    }
    ExecutorService pool = Executors.newFixedThreadPool(Math.min(threads, work.size()));
    try {
      List<Future<?>> running = new ArrayList<>();
      work.forEach(piece -> running.add(pool.submit(piece)));
      for (Future<?> done : running) {
        done.get();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    } catch (ExecutionException e) {
      throw e.getCause() instanceof RuntimeException known
          ? known
          : new IllegalStateException(e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }
}
