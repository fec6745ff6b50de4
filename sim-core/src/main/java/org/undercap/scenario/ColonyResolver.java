package org.undercap.scenario;

import java.util.Optional;
import java.util.stream.Collectors;
import org.undercap.hive.CombUnit;
import org.undercap.hive.FrameCatalogue;
import org.undercap.hive.FrameType;
import org.undercap.hive.KeeperUnits;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.scenario.Assumption.Basis;

/** Makes numbers of bees and cells of what a user counted in the hive. */
final class ColonyResolver {

  private static final String BEES = "colony.bees";
  private static final String BROOD = "colony.brood";
  private static final String BROOD_PER_BEE = "colony.brood-per-bee";
  private static final String FRAME = "colony.frame";
  private static final double CM2_PER_DM2 = 100;
  private static final double USUAL_FRAMES_PER_BOX = 10;
  private static final double GOOD_QUEEN = 1;

  private final WrittenColony colony;
  private final ParameterSet parameters;
  private final Problems problems;
  private final Assumptions assumptions;

  ColonyResolver(
      WrittenColony colony, ParameterSet parameters, Problems problems, Assumptions assumptions) {
    this.colony = colony;
    this.parameters = parameters;
    this.problems = problems;
    this.assumptions = assumptions;
  }

  /** The facts, unless bees or brood cannot be worked out. */
  Optional<HiveFacts> facts() {
    Optional<Double> bees = colony.bees().flatMap(this::bees);
    Optional<Double> cells = colony.brood().flatMap(this::cells);
    addDefaults();
    if (bees.isEmpty() || cells.isEmpty() || !canCover(bees.get(), cells.get())) {
      return Optional.empty();
    }
    return Optional.of(
        new HiveFacts(
            bees.get(),
            cells.get(),
            colony.frame().map(Written::value),
            colony.queenQuality().map(Written::value).orElse(GOOD_QUEEN),
            colony.openFloor().map(Written::value).orElse(false),
            colony.supersOn().map(Written::value).orElse(colony.supersUntil().isPresent())));
  }

  /** Bees keep brood warm on the combs that they cover; much more brood than that is a slip. */
  private boolean canCover(double bees, double cells) {
    InputLimit most = InputLimits.shipped().get(BROOD_PER_BEE);
    if (cells <= most.high() * bees || colony.brood().isEmpty()) {
      return true;
    }
    Written<?> written = colony.brood().get();
    problems.add(
        written.place(),
        BROOD,
        Quantities.quote(written.text())
            + " is "
            + Math.round(cells)
            + " cells, more brood than "
            + Math.round(bees)
            + " bees can cover",
        "are bees and brood swapped? count only the part of a comb that holds brood");
    return false;
  }

  private void addDefaults() {
    if (colony.queenQuality().isEmpty()) {
      assumptions.add("colony.queen-quality", Basis.DEFAULT, "a good queen");
    }
    if (colony.openFloor().isEmpty()) {
      assumptions.add("colony.floor", Basis.DEFAULT, "the floor is closed");
    }
    if (colony.supersOn().isEmpty() && colony.supersUntil().isEmpty()) {
      assumptions.add("colony.supers", Basis.DEFAULT, "no honey supers are on");
    }
  }

  private Optional<Double> bees(Written<Amount<BeeUnit>> written) {
    double number = written.value().number();
    BeeUnit unit = written.value().unit();
    if (unit == BeeUnit.BEES) {
      return checked(BEES, written, number);
    }
    if (unit == BeeUnit.POUNDS || unit == BeeUnit.KILOGRAMS) {
      KeeperUnits weights = KeeperUnits.shipped();
      double perUnit = unit == BeeUnit.POUNDS ? weights.beesPerPound() : weights.beesPerKilogram();
      return checked(BEES, written, number * perUnit)
          .map(
              bees -> {
                say(BEES, written, Math.round(bees) + " bees, by the weight of a worker");
                return bees;
              });
    }
    return frame(BEES, written)
        .map(frame -> number * sides(unit) * frame.beesPerSide())
        .flatMap(bees -> checked(BEES, written, bees))
        .map(
            bees -> {
              say(BEES, written, Math.round(bees) + " bees; every side counts as fully covered");
              return bees;
            });
  }

  private double sides(BeeUnit unit) {
    return switch (unit) {
      case FRAMES -> CombUnit.FRAMES.sides();
      case SEAMS -> CombUnit.SEAMS.sides();
      case SIDES -> CombUnit.SIDES.sides();
      case BOXES -> framesPerBox() * CombUnit.FRAMES.sides();
      case POUNDS, KILOGRAMS, BEES -> throw new IllegalStateException(unit + " do not count sides");
    };
  }

  private double framesPerBox() {
    if (colony.framesPerBox().isEmpty()) {
      assumptions.add(
          "colony.frames-per-box",
          Basis.DEFAULT,
          Quantities.format(USUAL_FRAMES_PER_BOX) + " frames in a box");
    }
    return colony.framesPerBox().map(Written::value).orElse(USUAL_FRAMES_PER_BOX);
  }

  private Optional<Double> cells(Written<Amount<BroodUnit>> written) {
    double number = written.value().number();
    BroodUnit unit = written.value().unit();
    if (unit == BroodUnit.CELLS) {
      if (number == 0) {
        say(BROOD, written, "no brood at all, also no eggs");
      }
      return checked(BROOD, written, number);
    }
    return frame(BROOD, written)
        .map(frame -> number * cellsPer(unit, frame))
        .flatMap(cells -> checked(BROOD, written, cells))
        .map(
            cells -> {
              say(BROOD, written, Math.round(cells) + " cells; " + fullness(written.text()));
              return cells;
            });
  }

  private static String fullness(String text) {
    return BroodFullness.said(text).isPresent()
        ? "as full of brood as it says, on both sides"
        : "the area counts as full of brood";
  }

  private double cellsPer(BroodUnit unit, FrameType frame) {
    double perSquareDecimetre = frame.cellsPerSide() / frame.combPerSide();
    return switch (unit) {
      case FRAMES -> CombUnit.FRAMES.sides() * frame.cellsPerSide();
      case SIDES -> CombUnit.SIDES.sides() * frame.cellsPerSide();
      case HANDS -> parameters.value(ParameterId.HAND_AREA) * perSquareDecimetre;
      case SQUARE_CENTIMETRES -> perSquareDecimetre / CM2_PER_DM2;
      case SQUARE_DECIMETRES -> perSquareDecimetre;
      case SQUARE_INCHES -> KeeperUnits.shipped().squareInch() * perSquareDecimetre / CM2_PER_DM2;
      case CELLS -> 1;
    };
  }

  private Optional<FrameType> frame(String field, Written<?> written) {
    if (colony.frame().isEmpty() && !problems.concern(FRAME)) {
      problems.add(
          written.place(),
          field,
          Quantities.quote(written.text()) + " needs colony.frame, the type of the frames",
          "frame: one of "
              + FrameCatalogue.shipped().all().stream()
                  .map(FrameType::id)
                  .collect(Collectors.joining(", ")));
    }
    return colony.frame().map(Written::value);
  }

  private Optional<Double> checked(String field, Written<?> written, double number) {
    InputLimit limit = InputLimits.shipped().get(field);
    try {
      return Optional.of(limit.check(number));
    } catch (BadValueException e) {
      boolean unitForgotten =
          number < limit.low() && !written.text().contains(" ") && field.equals(BEES);
      String hint = unitForgotten ? "did you mean \"" + written.text() + " frames\"?" : e.hint();
      problems.add(written.place(), field, e.getMessage(), hint);
      return Optional.empty();
    }
  }

  private void say(String field, Written<?> written, String meaning) {
    assumptions.add(
        field, Basis.DERIVED, Quantities.quote(written.text()) + " is taken as " + meaning);
  }
}
