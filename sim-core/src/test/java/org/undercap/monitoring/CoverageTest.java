package org.undercap.monitoring;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.climate.ClimateCatalogue;

/** Intervals hold the true number of mites as often as they promise. */
class CoverageTest {
  private static final CountedColony BELIEVED =
      CountedColony.of(
          ClimateCatalogue.shipped().get("central-european"),
          LocalDate.of(2026, 7, 20),
          20_000,
          24_000);
  private static final int ROWS = 32;

  @Test
  void washesRollsAndDroneCells() {
    SimulatedColonies colonies = new SimulatedColonies(BELIEVED, 2026);
    Cover cover = new Cover();
    for (int i = 0; i < 2_000; i++) {
      SimulatedColonies.Colony colony = colonies.any();
      List<Count> counts =
          switch (i % 4) {
            case 0 -> List.of(colony.wash(300, WashMethod.ALCOHOL));
            case 1 -> List.of(colony.wash(300, WashMethod.SUGAR));
            case 2 -> List.of(colony.wash(150, WashMethod.SOAP), colony.droneCells(100));
            default -> List.of(colony.droneCells(60));
          };
      cover.add(colony.mites(), MitePosterior.of(BELIEVED, counts, i, ROWS).mites());
    }
    cover.check(0.93, 0.97, 0.78, 0.82);
  }

  @Test
  void boards() {
    SimulatedColonies colonies = new SimulatedColonies(BELIEVED, 7);
    Cover cover = new Cover();
    for (int i = 0; i < 200; i++) {
      SimulatedColonies.Colony colony = colonies.any();
      List<Count> counts = List.of(colony.board(4));
      cover.add(colony.mites(), MitePosterior.of(BELIEVED, counts, i, 16).mites());
    }
    cover.check(0.91, 0.985, 0.73, 0.87);
  }

  private static final class Cover {
    private int all;
    private int wide;
    private int narrow;

    void add(double truth, MiteDistribution estimate) {
      all++;
      wide += estimate.interval(0.95).contains(truth) ? 1 : 0;
      narrow += estimate.interval(0.8).contains(truth) ? 1 : 0;
    }

    void check(double wideLow, double wideHigh, double narrowLow, double narrowHigh) {
      double wideShare = wide / (double) all;
      double narrowShare = narrow / (double) all;
      String found = "95 % hold " + wideShare + ", 80 % hold " + narrowShare;
      assertTrue(wideShare >= wideLow && wideShare <= wideHigh, found);
      assertTrue(narrowShare >= narrowLow && narrowShare <= narrowHigh, found);
    }
  }
}
