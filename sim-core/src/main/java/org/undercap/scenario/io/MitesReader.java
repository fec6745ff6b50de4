package org.undercap.scenario.io;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.undercap.monitoring.Board;
import org.undercap.monitoring.Count;
import org.undercap.monitoring.DroneCells;
import org.undercap.monitoring.Wash;
import org.undercap.monitoring.WashMethod;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.InputLimit;
import org.undercap.scenario.InputLimits;
import org.undercap.scenario.Lookup;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.SampleOfBees;
import org.undercap.scenario.Written;
import org.undercap.scenario.WrittenCount;
import org.undercap.scenario.WrittenMites;

/** Reads what is known about the mites of a scenario. */
final class MitesReader {

  private static final Pattern DECIMALS = Pattern.compile("[0-9]{1,4}[.,][0-9]{0,9}[1-9]");

  private MitesReader() {}

  static WrittenMites read(FieldReader mites) {
    Optional<Written<Double>> inColony = mites.number("in-colony");
    List<WrittenCount> counts =
        mites.maps("counts").stream().map(MitesReader::count).flatMap(Optional::stream).toList();
    if (!mites.has("in-colony") && !mites.has("counts")) {
      mites.refuse(
          "needs counts or in-colony",
          "write what was counted, as in counts: [{wash: {date: 2026-09-24, bees: 300, mites: 9,"
              + " method: alcohol}}]");
    } else if (mites.has("in-colony") && mites.has("counts")) {
      mites.refuse("in-colony", "is given beside counts", "keep one of them");
    }
    mites.done();
    return new WrittenMites(mites.place(), inColony, counts);
  }

  private static Optional<WrittenCount> count(FieldReader entry) {
    Optional<FieldReader> wash = entry.map("wash");
    Optional<FieldReader> board = entry.map("board");
    Optional<FieldReader> cells = entry.map("drone-cells");
    long given = List.of("wash", "board", "drone-cells").stream().filter(entry::has).count();
    if (given != 1) {
      entry.refuse(
          given == 0 ? "needs one of wash, board or drone-cells" : "holds more than one count",
          "write each count as an entry of its own, as in - wash: {...}");
    }
    entry.done();
    return wash.flatMap(MitesReader::wash)
        .or(() -> board.flatMap(MitesReader::board))
        .or(() -> cells.flatMap(MitesReader::droneCells));
  }

  private static Optional<WrittenCount> wash(FieldReader wash) {
    wash.require("date", "bees", "mites", "method");
    Optional<Written<LocalDate>> date = wash.value("date", Quantities::date);
    Optional<Written<Integer>> bees = wash.whole("bees", SampleOfBees::parse);
    Optional<Written<Integer>> mites = wash.whole("mites", MitesReader::counted);
    Optional<Written<WashMethod>> method = wash.value("method", MitesReader::method);
    wash.done();
    if (bees.isPresent() && mites.isPresent()) {
      InputLimit most = InputLimits.shipped().get(wash.field("mites-per-bee"));
      if (mites.get().value() > most.high() * bees.get().value()) {
        wash.refuse(
            "mites",
            mites.get().value() + " mites on " + bees.get().value() + " bees is not possible",
            "are bees and mites swapped?");
        return Optional.empty();
      }
    }
    if (date.isEmpty() || bees.isEmpty() || mites.isEmpty() || method.isEmpty()) {
      return Optional.empty();
    }
    Count count =
        new Wash(date.get().value(), bees.get().value(), mites.get().value(), method.get().value());
    return Optional.of(new WrittenCount(date.get(), count));
  }

  private static Optional<WrittenCount> board(FieldReader board) {
    board.require("date", "days", "mites");
    Optional<Written<LocalDate>> date = board.value("date", Quantities::date);
    Optional<Written<Integer>> days = board.whole("days", Quantities::days);
    Optional<Written<Double>> mites = board.number("mites");
    board.done();
    if (date.isEmpty() || days.isEmpty() || mites.isEmpty()) {
      return Optional.empty();
    }
    Count count = new Board(date.get().value(), days.get().value(), mites.get().value());
    return Optional.of(new WrittenCount(date.get(), count));
  }

  private static Optional<WrittenCount> droneCells(FieldReader cells) {
    cells.require("date", "opened", "infested");
    Optional<Written<LocalDate>> date = cells.value("date", Quantities::date);
    Optional<Written<Integer>> opened = cells.whole("opened", Quantities::number);
    Optional<Written<Integer>> infested = cells.whole("infested", Quantities::number);
    cells.done();
    if (date.isEmpty() || opened.isEmpty() || infested.isEmpty()) {
      return Optional.empty();
    }
    if (infested.get().value() > opened.get().value()) {
      cells.refuse(
          "infested",
          infested.get().value()
              + " infested cells are more than the "
              + opened.get().value()
              + " opened",
          "are the two swapped?");
      return Optional.empty();
    }
    Count count = new DroneCells(date.get().value(), opened.get().value(), infested.get().value());
    return Optional.of(new WrittenCount(date.get(), count));
  }

  /** Mites in the jar; a percent is not what was counted. */
  private static double counted(String text) throws BadValueException {
    String plain = text.replace('%', ' ').strip();
    InputLimit percent = InputLimits.shipped().get("mites.counts.wash.percent");
    boolean decimals = DECIMALS.matcher(plain).matches();
    if (text.contains("%")
        || (decimals && Double.parseDouble(plain.replace(',', '.')) <= percent.high())) {
      throw new BadValueException(
          Quantities.quote(text) + " is not a number of mites",
          "write the mites counted in the jar, not the percent");
    }
    return Quantities.number(text);
  }

  static WashMethod method(String text) throws BadValueException {
    List<WashMethod> all = List.of(WashMethod.values());
    return Lookup.find(
        "method",
        text,
        id -> all.stream().filter(method -> method.id().equals(id)).findFirst(),
        all.stream().map(WashMethod::id).toList());
  }
}
