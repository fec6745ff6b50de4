package org.undercap.hive;

import java.util.List;
import java.util.Optional;
import org.undercap.internal.Catalogue;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;
import org.undercap.source.Bibliography;

/** The levels of arriving mites that ship with the library, from none to collapsing neighbours. */
public final class ArrivalCatalogue {

  private static final String FILE = "arrivals.csv";

  private final Catalogue<ArrivalLevel> levels;

  private ArrivalCatalogue(List<CsvRow> rows) {
    levels = Catalogue.of("arrival level", rows, "level", ArrivalCatalogue::toLevel);
  }

  /**
   * The catalogue that ships with the library.
   *
   * @return the one shared, immutable catalogue
   */
  public static ArrivalCatalogue shipped() {
    return Holder.SHIPPED;
  }

  /**
   * The level of a name.
   *
   * @param id name of the level
   * @return the level
   * @throws IllegalArgumentException if the name is unknown; the message suggests the nearest
   */
  public ArrivalLevel get(String id) {
    return levels.get(id);
  }

  /**
   * The level of a name, if there is one.
   *
   * @param id name of the level
   * @return the level
   */
  public Optional<ArrivalLevel> find(String id) {
    return levels.find(id);
  }

  /**
   * All levels, lowest first.
   *
   * @return an unmodifiable list
   */
  public List<ArrivalLevel> all() {
    return levels.all();
  }

  private static ArrivalLevel toLevel(CsvRow row) {
    return new ArrivalLevel(
        row.required("level"),
        row.required("description"),
        row.months("mites_per_day_"),
        Bibliography.shipped().checkKeys(row.parts("source")));
  }

  private static final class Holder {
    static final ArrivalCatalogue SHIPPED =
        new ArrivalCatalogue(CsvResource.read(ArrivalCatalogue.class, FILE));
  }
}
