package org.undercap.batch;

import java.util.ArrayList;
import java.util.List;
import org.undercap.simulation.DailyColumn;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.SimulationDay;

/** Keeps some columns of some days of all colonies of a block, each until it is lost. */
final class DailyRows implements DayObserver {
  private final DailyColumn[] columns;
  private final int every;
  private final List<List<BatchResult.BatchDay>> kept = new ArrayList<>();
  private final double[][] today;

  DailyRows(DailyChoice choice, int lanes) {
    columns = choice.columns().toArray(new DailyColumn[0]);
    every = choice.every();
    today = new double[lanes][];
    for (int lane = 0; lane < lanes; lane++) {
      kept.add(new ArrayList<>());
    }
  }

  List<BatchResult.BatchDay> of(int lane) {
    return kept.get(lane);
  }

  private boolean isKept(SimulationDay day) {
    return every > 0 && day.index() % every == 0;
  }

  @Override
  public void dayBegins(SimulationDay day) {
    if (!isKept(day)) {
      return;
    }
    for (int lane = 0; lane < today.length; lane++) {
      today[lane] = day.isLost(lane) ? null : new double[columns.length];
      for (int i = 0; today[lane] != null && i < columns.length; i++) {
        if (!columns[i].isFlow()) {
          today[lane][i] = columns[i].atStart(day, lane);
        }
      }
    }
  }

  @Override
  public void dayEnds(SimulationDay day) {
    if (!isKept(day)) {
      return;
    }
    for (int lane = 0; lane < today.length; lane++) {
      if (today[lane] != null) {
        for (int i = 0; i < columns.length; i++) {
          if (columns[i].isFlow()) {
            today[lane][i] = columns[i].atEnd(day, lane);
          }
        }
        kept.get(lane).add(new BatchResult.BatchDay(day.date(), today[lane]));
      }
    }
  }
}
