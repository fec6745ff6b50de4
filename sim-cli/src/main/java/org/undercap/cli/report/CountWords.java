package org.undercap.cli.report;

import org.undercap.cli.output.Numbers;
import org.undercap.monitoring.Board;
import org.undercap.monitoring.Count;
import org.undercap.monitoring.DroneCells;
import org.undercap.monitoring.Wash;
import org.undercap.monitoring.WashMethod;
import org.undercap.monitoring.WorkerCells;

/** Says what was counted. */
final class CountWords {
  private CountWords() {}

  /** What kind of count it is, as in {@code alcohol wash}. */
  static String kind(Count count) {
    if (count instanceof Wash wash) {
      return wash.method() == WashMethod.SUGAR ? "sugar roll" : wash.method().id() + " wash";
    } else if (count instanceof DroneCells) {
      return "drone cells opened";
    }
    return count instanceof Board ? "board" : "worker cells opened";
  }

  /** What was found, as in {@code 8 on 300 bees}. */
  static String found(Count count) {
    String found = Numbers.exact(count.found());
    if (count instanceof Wash wash) {
      return found + " on " + wash.bees() + " bees";
    } else if (count instanceof Board board) {
      return found + " in " + board.days() + (board.days() == 1 ? " day" : " days");
    } else if (count instanceof DroneCells cells) {
      return found + " of " + cells.opened();
    }
    return found + " of " + ((WorkerCells) count).opened();
  }

  /** Unit of the exact interval of a count. */
  static String unit(Count count) {
    if (count instanceof Wash) {
      return "per 100 bees";
    }
    return count instanceof Board ? "per day" : "per 100 cells";
  }
}
