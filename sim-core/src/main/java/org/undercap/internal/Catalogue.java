package org.undercap.internal;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Entries that are looked up by a name, in the order in which they were listed.
 *
 * @param <T> type of the entries
 */
public final class Catalogue<T> {

  private final String kind;
  private final Map<String, T> entries;

  private Catalogue(String kind, Map<String, T> entries) {
    this.kind = kind;
    this.entries = Collections.unmodifiableMap(entries);
  }

  /**
   * Makes a catalogue from the rows of a table.
   *
   * @param <T> type of the entries
   * @param kind what an entry is, for messages, as in "climate"
   * @param rows rows of the table
   * @param column column that names the entry
   * @param read makes an entry from a row; what it throws becomes a defect of the row
   * @return the catalogue
   * @throws IllegalStateException if a row is defective or a name stands twice
   */
  public static <T> Catalogue<T> of(
      String kind, List<CsvRow> rows, String column, Function<CsvRow, T> read) {
    Map<String, T> entries = new LinkedHashMap<>();
    for (CsvRow row : rows) {
      String name = row.required(column);
      try {
        if (entries.put(name, read.apply(row)) != null) {
          throw row.defect("duplicate " + kind + " " + name);
        }
      } catch (IllegalArgumentException e) {
        throw row.defect(e);
      }
    }
    return new Catalogue<>(kind, entries);
  }

  /**
   * The entry of a name.
   *
   * @param name name of the entry
   * @return the entry
   * @throws IllegalArgumentException if there is none; the message lists the names and the nearest
   */
  public T get(String name) {
    return find(name).orElseThrow(() -> Nearest.unknown(kind, name, entries.keySet()));
  }

  /**
   * The entry of a name, if there is one.
   *
   * @param name name of the entry
   * @return the entry
   */
  public Optional<T> find(String name) {
    return Optional.ofNullable(entries.get(name));
  }

  /**
   * All entries in the order of the table.
   *
   * @return an unmodifiable list
   */
  public List<T> all() {
    return List.copyOf(entries.values());
  }
}
