package org.undercap.evidence;

import org.undercap.internal.CsvRow;

/**
 * A published finding that the model is known to miss.
 *
 * @param id short name of the finding
 * @param reason why the model misses it
 * @param since version of the program in which the miss was first listed
 */
public record KnownMiss(String id, String reason, String since) {
  static KnownMiss of(CsvRow row) {
    return new KnownMiss(row.required("id"), row.required("reason"), row.required("since"));
  }
}
