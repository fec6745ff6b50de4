package org.undercap.hive;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercap.internal.Catalogue;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;
import org.undercap.source.Bibliography;

/** The frame types that ship with the library. */
public final class FrameCatalogue {

  private static final String FILE = "colony-conversions.csv";

  private final Catalogue<FrameType> frames;
  private final Set<String> sourceKeys = new LinkedHashSet<>();

  private FrameCatalogue(List<CsvRow> rows) {
    frames = Catalogue.of("frame", rows, "frame", FrameCatalogue::toFrame);
    rows.forEach(row -> sourceKeys.addAll(row.parts("source")));
  }

  /**
   * The catalogue that ships with the library.
   *
   * @return the one shared, immutable catalogue
   */
  public static FrameCatalogue shipped() {
    return Holder.SHIPPED;
  }

  /**
   * The frame of a name.
   *
   * @param id name of the frame
   * @return the frame
   * @throws IllegalArgumentException if the name is unknown; the message suggests the nearest
   */
  public FrameType get(String id) {
    return frames.get(id);
  }

  /**
   * The frame of a name, if there is one.
   *
   * @param id name of the frame
   * @return the frame
   */
  public Optional<FrameType> find(String id) {
    return frames.find(id);
  }

  /**
   * All frames.
   *
   * @return an unmodifiable list in the order of the table
   */
  public List<FrameType> all() {
    return frames.all();
  }

  /**
   * Sources of the bees and cells per side.
   *
   * @return keys of the bibliography
   */
  public List<String> sourceKeys() {
    return List.copyOf(sourceKeys);
  }

  private static FrameType toFrame(CsvRow row) {
    Bibliography.shipped().checkKeys(row.parts("source"));
    return new FrameType(
        row.required("frame"),
        row.number("comb_dm2_per_side"),
        row.number("worker_cells_per_side"),
        row.number("bees_per_side"));
  }

  private static final class Holder {
    static final FrameCatalogue SHIPPED =
        new FrameCatalogue(CsvResource.read(FrameCatalogue.class, FILE));
  }
}
