package org.undercap.climate;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.undercap.internal.Catalogue;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;

/** The climates that ship with the library. */
public final class ClimateCatalogue {

  private static final String FILE = "climates.csv";
  private static final double POLE = 90;

  private final Catalogue<Placed> climates;

  private ClimateCatalogue(List<CsvRow> rows) {
    climates = Catalogue.of("climate", rows, "climate", ClimateCatalogue::toPlaced);
  }

  /**
   * The catalogue that ships with the library.
   *
   * @return the one shared, immutable catalogue
   */
  public static ClimateCatalogue shipped() {
    return Holder.SHIPPED;
  }

  /**
   * The climate of a name.
   *
   * @param id name of the climate
   * @return the climate
   * @throws IllegalArgumentException if the name is unknown; the message suggests the nearest
   */
  public Climate get(String id) {
    return climates.get(id).climate;
  }

  /**
   * The climate of a name, if there is one.
   *
   * @param id name of the climate
   * @return the climate
   */
  public Optional<Climate> find(String id) {
    return climates.find(id).map(Placed::climate);
  }

  /**
   * All climates.
   *
   * @return an unmodifiable list in the order of the table
   */
  public List<Climate> all() {
    return climates.all().stream().map(Placed::climate).toList();
  }

  /**
   * The climate whose latitudes are nearest; of equally near ones the first of the table. In the
   * south the northern climates count too, mirrored. Latitude alone says little about a climate:
   * sea and mountains matter as much, so this is a first guess for the user to replace.
   *
   * @param latitude latitude (degrees, north positive, -90 to 90)
   * @return the climate, on the hemisphere of the latitude
   * @throws IllegalArgumentException if the latitude is not in -90 to 90
   */
  public Climate nearest(double latitude) {
    if (!(latitude >= -POLE && latitude <= POLE)) {
      throw new IllegalArgumentException(
          "latitude " + latitude + " degrees must be in [-90, 90], north positive");
    }
    Hemisphere hemisphere = latitude < 0 ? Hemisphere.SOUTH : Hemisphere.NORTH;
    return climates.all().stream()
        .filter(placed -> hemisphere == Hemisphere.SOUTH || placed.isIn(Hemisphere.NORTH))
        .min(
            Comparator.comparingDouble((Placed placed) -> placed.distance(latitude))
                .thenComparing(placed -> !placed.isIn(hemisphere)))
        .orElseThrow()
        .climate
        .in(hemisphere);
  }

  /**
   * How far a latitude, north or south, lies from the latitudes for which climates were made.
   *
   * @param latitude latitude (degrees, north positive)
   * @return distance (degrees), 0 where there is a climate
   */
  public double degreesAway(double latitude) {
    return climates.all().stream().mapToDouble(it -> it.distance(latitude)).min().orElseThrow();
  }

  /** Makes a catalogue from rows; open to tests that add some. */
  static ClimateCatalogue of(List<CsvRow> rows) {
    return new ClimateCatalogue(rows);
  }

  private static Placed toPlaced(CsvRow row) {
    double low = row.number("latitude_low");
    double high = row.number("latitude_high");
    if (!(low >= -POLE && low <= high && high <= POLE)) {
      throw row.defect("latitudes " + low + " to " + high + " are no range in [-90, 90]");
    }
    Climate climate =
        new Climate(
            row.required("climate"),
            row.required("description"),
            high < 0 ? Hemisphere.SOUTH : Hemisphere.NORTH,
            new Sinusoid(row.number("tm_c"), row.number("ta_c"), row.number("jmax_doy")),
            new MonthlyTable(row.months("eggs_")),
            new MonthlyTable(row.months("drone_")));
    return new Placed(climate, low, high);
  }

  private record Placed(Climate climate, double low, double high) {

    boolean isIn(Hemisphere hemisphere) {
      return climate.hemisphere() == hemisphere;
    }

    /** How far the latitude, taken without its sign, lies outside the range (degrees). */
    double distance(double latitude) {
      double wanted = Math.abs(latitude);
      double nearEquator = Math.min(Math.abs(low), Math.abs(high));
      double nearPole = Math.max(Math.abs(low), Math.abs(high));
      return Math.max(0, Math.max(nearEquator - wanted, wanted - nearPole));
    }
  }

  private static final class Holder {
    static final ClimateCatalogue SHIPPED = of(CsvResource.read(ClimateCatalogue.class, FILE));
  }
}
