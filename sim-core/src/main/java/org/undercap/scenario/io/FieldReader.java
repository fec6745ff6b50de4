package org.undercap.scenario.io;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.undercap.internal.Nearest;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.InputLimits;
import org.undercap.scenario.Lookup;
import org.undercap.scenario.Place;
import org.undercap.scenario.Problems;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Written;

/**
 * Reads the keys of one map of a file. A value that cannot be used becomes a problem and counts as
 * not given, so that reading goes on and all problems are found. {@link #done} must be called at
 * the end: it finds the keys that nobody asked for.
 */
final class FieldReader {

  private static final int MOST_ENTRIES = 1_000;

  private final Node.Mapping node;
  private final String path;
  private final Problems problems;
  private final KeyListener listener;
  private final Set<String> asked = new LinkedHashSet<>();
  private final Set<String> missing = new LinkedHashSet<>();

  /**
   * Prepares to read a map.
   *
   * @param node the map
   * @param path name of the map in messages, empty for the whole file
   * @param problems takes what is wrong
   * @param listener hears which keys are accepted
   */
  FieldReader(Node.Mapping node, String path, Problems problems, KeyListener listener) {
    this.node = node;
    this.path = path;
    this.problems = problems;
    this.listener = listener;
  }

  /** Hears of every key that a map may have. */
  @FunctionalInterface
  interface KeyListener {
    /** A key of the map of that path may be given. */
    void accepts(String path, String key);
  }

  /** Where the map begins. */
  Place place() {
    return node.place();
  }

  /** The full name of a key of this map. */
  String field(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  /** Whether a key is given, with whatever value. */
  boolean has(String key) {
    return node.entries().containsKey(key);
  }

  /** Where the value of a given key stands. */
  Place placeOf(String key) {
    return node.entries().get(key).value().place();
  }

  /** Notes a problem with the value of a given key. */
  void refuse(String key, String message, String hint) {
    problems.add(placeOf(key), field(key), message, hint);
  }

  /** Notes a problem with the map as a whole. */
  void refuse(String message, String hint) {
    problems.add(place(), path, message, hint);
  }

  /** Notes a problem with a given key itself. */
  void refuseKey(String key, String message) {
    problems.add(keyPlace(key), path, message, "");
  }

  /** Lets keys pass without reading them. */
  void accept(String... keys) {
    asked.addAll(List.of(keys));
  }

  /** Has {@link #done} note each of these keys that is not given. */
  void require(String... keys) {
    for (String key : keys) {
      if (!has(key)) {
        missing.add(key);
      }
    }
  }

  /** The single value of a key. */
  <T> Optional<Written<T>> value(String key, ValueParser<T> parser) {
    return entry(key).flatMap(value -> parse(field(key), value, parser));
  }

  /** A plain number within the limits of the field. */
  Optional<Written<Double>> number(String key) {
    return value(key, limited(key, Quantities::number));
  }

  /** A number that is read in some other way, within the limits of the field. */
  Optional<Written<Double>> number(String key, ValueParser<Double> parser) {
    return value(key, limited(key, parser));
  }

  /** A whole number within the limits of the field. */
  Optional<Written<Integer>> whole(String key, ValueParser<Double> parser) {
    ValueParser<Double> limited = limited(key, parser);
    return value(key, text -> (int) StrictMath.rint(limited.parse(text)));
  }

  /** One of two words; true stands for the first. */
  Optional<Written<Boolean>> choice(String key, String yes, String no) {
    return value(
        key,
        text -> {
          if (!text.equals(yes) && !text.equals(no)) {
            throw new BadValueException(
                Quantities.quote(text) + " is not accepted: write " + yes + " or " + no, "");
          }
          return text.equals(yes);
        });
  }

  /** A truth value. */
  Optional<Written<Boolean>> flag(String key) {
    return value(
        key,
        text ->
            switch (text.toLowerCase(Locale.ROOT)) {
              case "true", "yes", "on" -> true;
              case "false", "no", "off" -> false;
              default ->
                  throw new BadValueException(
                      Quantities.quote(text) + " is not accepted: write true or false", "");
            });
  }

  /** Single values in a list. */
  <T> List<Written<T>> values(String key, ValueParser<T> parser) {
    List<Written<T>> values = new ArrayList<>();
    for (Node item : items(key)) {
      parse(field(key), item, parser).ifPresent(values::add);
    }
    return List.copyOf(values);
  }

  /** A list of exactly twelve values, one a month, or nothing if one of them cannot be used. */
  List<Written<Double>> months(String key, ValueParser<Double> parser) {
    List<Node> items = items(key);
    List<Written<Double>> values = values(key, limited(key, parser));
    if (has(key) && !items.isEmpty() && items.size() != 12) {
      refuse(
          key,
          "has " + items.size() + " values, must have 12",
          "one a month, January first, as in [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]");
    }
    return values.size() == 12 ? values : List.of();
  }

  /** The map that is the value of a key. */
  Optional<FieldReader> map(String key) {
    return entry(key).flatMap(value -> toMap(field(key), value));
  }

  /** The maps of a list. */
  List<FieldReader> maps(String key) {
    return maps(key, MOST_ENTRIES);
  }

  /** The same of a list with at most so many entries. */
  List<FieldReader> maps(String key, int most) {
    List<FieldReader> maps = new ArrayList<>();
    List<Node> items = items(key);
    if (items.size() > most) {
      problems.add(
          keyPlace(key),
          field(key),
          "has " + items.size() + " entries, at most " + most + " are accepted",
          "split the file");
      return maps;
    }
    for (Node item : items) {
      toMap(field(key), item).ifPresent(maps::add);
    }
    return maps;
  }

  /** All keys in the order of the file, where any name is accepted as a key. */
  Set<String> names() {
    asked.addAll(node.entries().keySet());
    return node.entries().keySet();
  }

  private Place keyPlace(String key) {
    return node.entries().get(key).keyPlace();
  }

  /** Notes the keys that are given but were never asked for, and those that are missing. */
  void done() {
    for (String key : node.entries().keySet()) {
      if (!asked.contains(key)) {
        addUnknown(key);
      }
    }
    for (String key : missing) {
      problems.add(place(), field(key), "is missing", meaning(key));
    }
  }

  /** What a missing key should say, in the words of the schema. */
  private String meaning(String key) {
    return ScenarioKeys.find(field(key)).map(ScenarioKeys.Key::description).stream()
        .filter(words -> !words.isEmpty())
        .map(words -> key + ": " + words)
        .findFirst()
        .orElse("");
  }

  /** A key that was probably meant to be a missing one is not told twice. */
  private void addUnknown(String key) {
    String message = "unknown key " + Quantities.quote(key);
    int colon = key.indexOf(':');
    if (colon > 0 && asked.contains(key.substring(0, colon))) {
      missing.remove(key.substring(0, colon));
      problems.add(keyPlace(key), path, message, "put a space behind the colon");
      return;
    }
    Nearest.to(key, asked)
        .ifPresent(
            near -> {
              missing.remove(near);
              problems.suspect(field(near));
            });
    problems.add(
        keyPlace(key),
        path,
        message + Lookup.suggestion(key, asked),
        "accepted here: " + String.join(", ", asked));
  }

  private Optional<Node> entry(String key) {
    asked.add(key);
    listener.accepts(path, key);
    return Optional.ofNullable(node.entries().get(key)).map(Node.Entry::value);
  }

  private List<Node> items(String key) {
    Optional<Node> value = entry(key);
    if (value.isEmpty()) {
      return List.of();
    }
    if (value.get() instanceof Node.Sequence sequence) {
      return sequence.items();
    }
    String hint = "begin each entry with a hyphen on a line of its own, or put them into [ ]";
    problems.add(value.get().place(), field(key), "must be a list", hint);
    return List.of();
  }

  private Optional<FieldReader> toMap(String field, Node value) {
    if (value instanceof Node.Mapping mapping) {
      return Optional.of(new FieldReader(mapping, field, problems, listener));
    }
    problems.add(
        value.place(),
        field,
        isEmpty(value) ? "has no value" : "must be a group of keys with values",
        "write it as key: value, indented below, or in { }");
    return Optional.empty();
  }

  private <T> Optional<Written<T>> parse(String field, Node value, ValueParser<T> parser) {
    if (!(value instanceof Node.Scalar scalar)) {
      String what = value instanceof Node.Sequence ? "a list" : "a group of keys";
      problems.add(value.place(), field, "must be a single value, not " + what, "");
      return Optional.empty();
    }
    String text = scalar.text().strip();
    if (text.isEmpty()) {
      problems.add(value.place(), field, "has no value", "");
      return Optional.empty();
    }
    try {
      return Optional.of(new Written<>(parser.parse(text), text, value.place()));
    } catch (BadValueException e) {
      problems.add(value.place(), field, e);
      return Optional.empty();
    }
  }

  private ValueParser<Double> limited(String key, ValueParser<Double> parser) {
    return text -> InputLimits.shipped().get(field(key)).check(parser.parse(text));
  }

  private static boolean isEmpty(Node value) {
    return value instanceof Node.Scalar scalar && scalar.text().isEmpty();
  }
}
