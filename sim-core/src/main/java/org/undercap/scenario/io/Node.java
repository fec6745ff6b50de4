package org.undercap.scenario.io;

import java.util.List;
import java.util.Map;
import org.undercap.scenario.Place;

/** A part of a YAML or JSON file as it was typed, with its place. */
sealed interface Node {

  /** Where it begins. */
  Place place();

  /**
   * Text, a number, a truth value or nothing, before anyone decided what it means: {@code 010} is
   * still {@code 010}.
   *
   * @param text as typed; empty if there is no value
   */
  record Scalar(String text, Place place) implements Node {}

  /** A list. */
  record Sequence(List<Node> items, Place place) implements Node {}

  /** Keys with their values, in the order of the file. */
  record Mapping(Map<String, Entry> entries, Place place) implements Node {}

  /** The value of a key, and where the key stands. */
  record Entry(Place keyPlace, Node value) {}
}
