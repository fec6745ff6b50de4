package org.undercap.source;

import java.util.List;
import java.util.Optional;
import org.undercap.internal.Catalogue;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;

/** The sources that values may refer to. */
public final class Bibliography {

  private static final String FILE = "sources.csv";

  private final Catalogue<Source> sources;

  private Bibliography(List<CsvRow> rows) {
    sources = Catalogue.of("source", rows, "key", Bibliography::toSource);
  }

  /**
   * The bibliography that ships with the library.
   *
   * @return the one shared, immutable bibliography
   */
  public static Bibliography shipped() {
    return Holder.SHIPPED;
  }

  /**
   * The source of a key.
   *
   * @param key key of the source
   * @return the source
   * @throws IllegalArgumentException if the key is unknown; the message suggests the nearest
   */
  public Source get(String key) {
    return sources.get(key);
  }

  /**
   * The source of a key, if the bibliography has it.
   *
   * @param key key of the source
   * @return the source
   */
  public Optional<Source> find(String key) {
    return sources.find(key);
  }

  /**
   * All sources, by key.
   *
   * @return an unmodifiable list
   */
  public List<Source> all() {
    return sources.all();
  }

  /**
   * Checks the keys that an entry of another catalogue refers to.
   *
   * @param keys keys of sources
   * @return the same keys
   * @throws IllegalArgumentException if there is no key or one of them is unknown
   */
  public List<String> checkKeys(List<String> keys) {
    if (keys.isEmpty()) {
      throw new IllegalArgumentException("a value without a source");
    }
    keys.forEach(this::get);
    return keys;
  }

  private static Source toSource(CsvRow row) {
    return new Source(
        row.required("key"),
        row.required("authors"),
        row.text("year"),
        row.text("title"),
        row.text("journal"),
        row.text("volume"),
        row.text("pages"),
        row.text("doi"),
        Access.of(row.required("read")),
        row.text("note"));
  }

  private static final class Holder {
    static final Bibliography SHIPPED =
        new Bibliography(CsvResource.read(Bibliography.class, FILE));
  }
}
