package org.undercap.internal;

import java.util.Collections;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/** Does numbered pieces of work that do not depend on each other, on one or several threads. */
public final class Parallel {
  private Parallel() {}

  /**
   * Does all pieces. Each thread has a worker of its own and takes the next piece when it is done
   * with one.
   *
   * @param pieces number of pieces; they are numbered from 0
   * @param threads threads at most, at least 1
   * @param workers makes a worker; asked once a thread
   */
  public static void run(int pieces, int threads, Supplier<? extends IntConsumer> workers) {
    AtomicInteger next = new AtomicInteger();
    Runnable work =
        () -> {
          IntConsumer worker = workers.get();
          for (int piece = next.getAndIncrement(); piece < pieces; piece = next.getAndIncrement()) {
            worker.accept(piece);
          }
        };
    int busy = Math.min(threads, pieces);
    if (busy < 2) {
      work.run();
    } else {
      onThreads(busy, work);
    }
  }

  /** Ends when all threads have, also if one fails. */
  private static void onThreads(int threads, Runnable work) {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Object>> running =
          pool.invokeAll(Collections.nCopies(threads, Executors.callable(work)));
      for (Future<Object> done : running) {
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
