package org.undercap.hive;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
  private final Map<String, List<String>> also = new HashMap<>();
  private final Set<String> sourceKeys = new LinkedHashSet<>();

  private FrameCatalogue(List<CsvRow> rows) {
    frames = Catalogue.of("frame", rows, "frame", FrameCatalogue::toFrame);
    rows.forEach(row -> sourceKeys.addAll(row.parts("source")));
    rows.forEach(row -> also.put(row.required("frame"), row.parts("also")));
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
   * The frames that a keeper may mean by a name of the trade, as in {@code Zander} or {@code
   * National}.
   *
   * @param said as typed; case does not matter, nor whether words are joined by blanks or hyphens
   * @return the frame of just this name; else all that have it as a part of theirs
   */
  public List<FrameType> meant(String said) {
    String name = said.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-");
    Optional<FrameType> exact =
        all().stream()
            .filter(frame -> frame.id().equals(name) || also.get(frame.id()).contains(name))
            .findFirst();
    List<String> words = List.of(name.split("-", -1));
    return exact
        .map(List::of)
        .orElseGet(
            () ->
                all().stream()
                    .filter(frame -> List.of(frame.id().split("-", -1)).containsAll(words))
                    .toList());
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
