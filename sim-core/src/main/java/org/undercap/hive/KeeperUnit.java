package org.undercap.hive;

import java.util.List;

/** A unit that keepers use, and what one of it stands for. */
public record KeeperUnit(
    String id, double amount, String of, boolean assumption, List<String> sources, String note) {

  /**
   * Checks the amount.
   *
   * @param id name of the unit
   * @param amount what one stands for (in {@code of}, above 0)
   * @param of the unit of the amount
   * @param assumption whether the amount is a habit of the trade, not a definition
   * @param sources keys of the bibliography
   * @param note remarks, possibly empty
   * @throws IllegalArgumentException if the amount is not finite and above 0
   */
  public KeeperUnit {
    if (!(amount > 0 && Double.isFinite(amount))) {
      throw new IllegalArgumentException(
          "amount " + amount + " of unit " + id + " must be finite and > 0");
    }
    sources = List.copyOf(sources);
  }
}
