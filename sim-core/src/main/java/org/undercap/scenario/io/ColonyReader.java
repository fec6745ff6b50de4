package org.undercap.scenario.io;

import org.undercap.hive.FrameCatalogue;
import org.undercap.hive.FrameType;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.BeeUnit;
import org.undercap.scenario.BroodUnit;
import org.undercap.scenario.Lookup;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.WrittenColony;

/** Reads the colony of a scenario. */
final class ColonyReader {

  private ColonyReader() {}

  static WrittenColony colony(FieldReader colony) {
    colony.require("date", "bees", "brood");
    WrittenColony written =
        new WrittenColony(
            colony.place(),
            colony.value("date", Quantities::date),
            colony.value("bees", BeeUnit::parse),
            colony.value("brood", BroodUnit::parse),
            colony.value("frame", ColonyReader::frame),
            colony.number("frames-per-box"),
            colony.number("queen-quality"),
            colony.choice("floor", "open", "closed"),
            colony.choice("supers", "on", "off"),
            colony.value("supers-until", Quantities::date),
            colony.choice("stock", "africanized", "european"));
    colony.done();
    return written;
  }

  private static FrameType frame(String text) throws BadValueException {
    FrameCatalogue shipped = FrameCatalogue.shipped();
    return Lookup.find(
        "frame", text, shipped::find, shipped.all().stream().map(FrameType::id).toList());
  }
}
