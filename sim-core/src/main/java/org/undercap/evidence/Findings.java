package org.undercap.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercap.monitoring.Interval;

/** Collects what the model answers to one published finding, and judges it. */
final class Findings {
  private final PublishedCheck check;
  private final List<Measured> measured = new ArrayList<>();
  private final List<Condition> conditions = new ArrayList<>();
  private int judged;
  private String remark = "";

  Findings(PublishedCheck check) {
    this.check = check;
  }

  /** A number in the unit of the check that must lie inside its interval. */
  void judge(String what, double value) {
    judge(what, value, check.unit());
  }

  /** The next number that must lie inside its interval. */
  void judge(String what, double value, String unit) {
    List<Interval> all = check.accepted();
    if (all.isEmpty() || (all.size() > 1 && judged >= all.size())) {
      throw new IllegalStateException(check.id() + " has no interval for " + what);
    }
    Interval accepted = all.get(all.size() == 1 ? 0 : judged);
    judged++;
    measured.add(new Measured(what, value, unit, Optional.of(accepted)));
  }

  /** A number that is shown and not judged. */
  void show(String what, double value, String unit) {
    measured.add(new Measured(what, value, unit, Optional.empty()));
  }

  /** A direction or rank order that must hold. */
  void require(String words, boolean holds) {
    conditions.add(new Condition(words, holds));
  }

  /** How it was measured, where the finding leaves that open. */
  void remark(String words) {
    remark = words;
  }

  /** The verdict; the reasons of known misses come from elsewhere. */
  CheckResult result(String reasonOfMiss) {
    int intervals = check.accepted().size();
    if (judged + conditions.size() == 0 || (intervals > 1 && judged != intervals)) {
      throw new IllegalStateException(check.id() + " did not judge all that it has to");
    }
    boolean agrees =
        measured.stream().allMatch(Measured::inside)
            && conditions.stream().allMatch(Condition::holds);
    return new CheckResult(
        check,
        measured,
        conditions,
        agrees ? Inside.YES : Inside.NO,
        remark,
        agrees ? "" : reasonOfMiss);
  }
}
