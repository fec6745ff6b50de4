package org.undercap.evidence;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What came out when a published finding was held against the model.
 *
 * @param check the finding
 * @param measured numbers of the model; several where a check asks for several climates or days
 * @param conditions directions and rank orders
 * @param inside whether the model agrees
 * @param remark how it was measured, where the finding leaves that open
 * @param reason why the model misses it or why it was not run; empty if the model agrees, and for a
 *     miss that is not known
 */
public record CheckResult(
    PublishedCheck check,
    List<Measured> measured,
    List<Condition> conditions,
    Inside inside,
    String remark,
    String reason) {
  /**
   * Copies the lists.
   *
   * @param check the finding
   * @param measured numbers of the model
   * @param conditions directions and rank orders
   * @param inside whether the model agrees
   * @param remark how it was measured
   * @param reason why the model misses it or why it was not run
   */
  public CheckResult {
    measured = List.copyOf(measured);
    conditions = List.copyOf(conditions);
  }

  /**
   * The answer of the model in one line.
   *
   * @return numbers and conditions, separated by semicolons; empty if it was not run
   */
  public String ours() {
    return Stream.concat(
            measured.stream().map(Measured::toText), conditions.stream().map(Condition::toText))
        .collect(Collectors.joining("; "));
  }
}
