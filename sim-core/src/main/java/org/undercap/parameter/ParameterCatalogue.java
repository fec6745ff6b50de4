package org.undercap.parameter;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercap.internal.Catalogue;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;
import org.undercap.source.Bibliography;

/** All parameters with value, unit, range, spread and source. */
public final class ParameterCatalogue {

  private static final String FILE = "parameters.csv";

  private final Catalogue<Parameter> byName;
  private final Map<ParameterId, Parameter> byId = new EnumMap<>(ParameterId.class);

  private ParameterCatalogue(List<CsvRow> rows) {
    byName = Catalogue.of("parameter", rows, "id", ParameterCatalogue::toParameter);
    byName.all().forEach(parameter -> byId.put(parameter.id(), parameter));
    for (ParameterId id : ParameterId.values()) {
      if (!byId.containsKey(id)) {
        throw new IllegalStateException(FILE + ": no row for " + id.id());
      }
    }
  }

  /**
   * The catalogue that ships with the library.
   *
   * @return the one shared, immutable catalogue
   */
  public static ParameterCatalogue shipped() {
    return Holder.SHIPPED;
  }

  /**
   * The parameter of an identity.
   *
   * @param id identity
   * @return the parameter
   */
  public Parameter get(ParameterId id) {
    return byId.get(id);
  }

  /**
   * The parameter of a dotted name, as in {@code invasion.worker}, if there is one.
   *
   * @param id dotted name
   * @return the parameter
   */
  public Optional<Parameter> find(String id) {
    return byName.find(id);
  }

  /**
   * All parameters in the order of the description of the model.
   *
   * @return an unmodifiable list
   */
  public List<Parameter> all() {
    return byName.all();
  }

  /**
   * Makes a catalogue from rows; open to tests of defective tables.
   *
   * @param rows rows of the table
   * @return the catalogue
   * @throws IllegalStateException if a row is defective or missing
   */
  static ParameterCatalogue of(List<CsvRow> rows) {
    return new ParameterCatalogue(rows);
  }

  private static Parameter toParameter(CsvRow row) {
    return new Parameter(
        ParameterId.of(row.required("id")),
        row.text("symbol"),
        row.numbers("value"),
        row.numbers("low"),
        row.numbers("high"),
        row.required("unit"),
        Spread.of(row.required("ensemble_spread")),
        Kind.of(row.required("kind")),
        Bibliography.shipped().checkKeys(row.parts("source")),
        row.required("read"),
        row.text("note"));
  }

  private static final class Holder {
    static final ParameterCatalogue SHIPPED = of(CsvResource.read(ParameterCatalogue.class, FILE));
  }
}
