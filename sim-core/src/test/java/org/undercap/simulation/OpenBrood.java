package org.undercap.simulation;

import java.util.List;
import org.undercap.model.ColonyLanes;
import org.undercap.model.Part;

/** Takes eggs and larvae out of a start state, so that only sealed brood is left. */
final class OpenBrood {
  private OpenBrood() {}

  static void takeOut(ColonyLanes colony) {
    for (Part part : List.of(Part.WORKER_EGGS, Part.DRONE_EGGS)) {
      colony.set(part, 0, new double[3]);
    }
    colony.set(Part.DRONE_LARVAE, 0, new double[7]);
    int days = larvalDays(colony);
    colony.set(Part.WORKER_LARVAE, 0, new double[days]);
  }

  private static int larvalDays(ColonyLanes colony) {
    return colony.sealedWorkerCells().ages() == 12 ? 6 : 5;
  }
}
