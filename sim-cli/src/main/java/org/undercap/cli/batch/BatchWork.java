package org.undercap.cli.batch;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import org.undercap.batch.BatchBlock;
import org.undercap.batch.BatchResult;
import org.undercap.batch.BatchRow;
import org.undercap.scenario.io.DesignReader;

/**
 * Runs the blocks of a design on several threads and gives what came of them in the order of the
 * design. No more blocks are held at a time than a few for each thread, whatever the length of the
 * design.
 */
public final class BatchWork {
  private static final int AHEAD = 2;

  private final DesignReader design;
  private final BatchTables tables;
  private final int threads;
  private final BatchBlock engine;

  /**
   * Prepares to run a design.
   *
   * @param design the design
   * @param tables what is written of each run
   * @param threads threads, at least 1; results do not depend on it
   */
  public BatchWork(DesignReader design, BatchTables tables, int threads) {
    this.design = design;
    this.tables = tables;
    this.threads = threads;
    engine = new BatchBlock(tables.choice());
  }

  /**
   * Blocks of a design.
   *
   * @param runs number of runs
   * @return number of blocks, the last perhaps with fewer runs
   */
  public static long blocks(long runs) {
    return (runs + BatchBlock.ROWS - 1) / BatchBlock.ROWS;
  }

  /**
   * Runs in the first blocks of a design.
   *
   * @param all runs of the whole design
   * @param blocks number of blocks
   * @return number of runs
   */
  public static long runs(long all, long blocks) {
    return Math.min(all, blocks * BatchBlock.ROWS);
  }

  /**
   * What came of a block.
   *
   * @param runs number of its runs
   * @param failed number of those that could not be run
   * @param tables a piece for each table
   */
  public record Piece(int runs, int failed, List<byte[]> tables) {
    /**
     * Copies the list.
     *
     * @param runs number of its runs
     * @param failed number of those that could not be run
     * @param tables a piece for each table
     */
    public Piece {
      tables = List.copyOf(tables);
    }
  }

  /**
   * Runs some blocks.
   *
   * @param from the first block, from 0
   * @param until the first block after them
   * @param taker takes the pieces in the order of the design
   */
  public void run(long from, long until, Consumer<Piece> taker) {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    Deque<Future<Piece>> ahead = new ArrayDeque<>();
    List<BatchRow> block = new ArrayList<>();
    long first = from * BatchBlock.ROWS + 1;
    long last = Math.min(until * BatchBlock.ROWS, design.runs());
    try {
      design.rows(
          read -> {
            BatchRow row = read.orElseThrow();
            if (row.number() >= first && row.number() <= last) {
              block.add(row);
              if (block.size() == BatchBlock.ROWS || row.number() == last) {
                List<BatchRow> rows = List.copyOf(block);
                block.clear();
                ahead.add(pool.submit(() -> piece(rows)));
                if (ahead.size() > AHEAD * threads) {
                  taker.accept(done(ahead.remove()));
                }
              }
            }
            return row.number() < last;
          });
      while (!ahead.isEmpty()) {
        taker.accept(done(ahead.remove()));
      }
    } finally {
      pool.shutdownNow();
    }
  }

  private Piece piece(List<BatchRow> rows) {
    List<BatchResult> results = engine.run(rows);
    long failed = results.stream().filter(result -> result.problem().isPresent()).count();
    return new Piece(rows.size(), (int) failed, tables.rows(results));
  }

  private static Piece done(Future<Piece> running) {
    try {
      return running.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    } catch (ExecutionException e) {
      throw e.getCause() instanceof RuntimeException known
          ? known
          : new IllegalStateException(e.getCause());
    }
  }
}
