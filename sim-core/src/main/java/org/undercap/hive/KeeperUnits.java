package org.undercap.hive;

import java.util.List;
import org.undercap.internal.Catalogue;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;
import org.undercap.source.Bibliography;

/** What pounds, square inches and cups of bees stand for, each with its source. */
public final class KeeperUnits {

  private static final String FILE = "keeper-units.csv";

  private final Catalogue<KeeperUnit> units;

  private KeeperUnits(List<CsvRow> rows) {
    units = Catalogue.of("unit", rows, "unit", KeeperUnits::toUnit);
  }

  /**
   * The units that ship with the library.
   *
   * @return the one shared, immutable table
   */
  public static KeeperUnits shipped() {
    return Holder.SHIPPED;
  }

  /**
   * All units.
   *
   * @return an unmodifiable list in the order of the table
   */
  public List<KeeperUnit> all() {
    return units.all();
  }

  /**
   * Bees in a pound of bees.
   *
   * @return the number (bees per pound)
   */
  public double beesPerPound() {
    return amount("pound") / amount("worker");
  }

  /**
   * Bees in a kilogram of bees.
   *
   * @return the number (bees per kg)
   */
  public double beesPerKilogram() {
    return amount("kilogram") / amount("worker");
  }

  /**
   * Bees in a level cup.
   *
   * @return the number (bees per US cup)
   */
  public double beesPerCup() {
    return amount("cup");
  }

  /**
   * The size of a square inch.
   *
   * @return the area (cm2)
   */
  public double squareInch() {
    return amount("square-inch");
  }

  /**
   * What keepers mean by a comb nearly full of brood.
   *
   * @return brood on a side of it (fraction of the side)
   */
  public double nearlyFull() {
    return amount("nearly-full");
  }

  /**
   * What keepers mean by a comb with patches of brood.
   *
   * @return brood on a side of it (fraction of the side)
   */
  public double patches() {
    return amount("patches");
  }

  private double amount(String unit) {
    return units.get(unit).amount();
  }

  private static KeeperUnit toUnit(CsvRow row) {
    return new KeeperUnit(
        row.required("unit"),
        row.number("amount"),
        row.required("of"),
        row.required("kind").equals("assumption"),
        Bibliography.shipped().checkKeys(row.parts("source")),
        row.text("note"));
  }

  private static final class Holder {
    static final KeeperUnits SHIPPED = new KeeperUnits(CsvResource.read(KeeperUnits.class, FILE));
  }
}
