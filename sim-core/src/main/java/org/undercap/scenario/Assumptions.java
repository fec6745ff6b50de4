package org.undercap.scenario;

import java.util.ArrayList;
import java.util.List;
import org.undercap.scenario.Assumption.Basis;

/** Gathers what is assumed while a scenario is worked out. */
final class Assumptions {

  private final List<Assumption> made = new ArrayList<>();

  void add(String field, Basis basis, String text) {
    made.add(new Assumption(field, basis, text));
  }

  List<Assumption> all() {
    return List.copyOf(made);
  }
}
