package org.undercap.calibration;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.undercap.climate.Climate;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.StartShape;

/**
 * Shapes of colonies at their start under many sets of parameters. Colonies of one climate and day
 * share them, and so do sets that are one object, as making a shape costs more than most runs.
 * Several threads may ask at the same time.
 */
final class StartShapes {
  private final List<ParameterSet> sets;
  private final Map<Key, ColonyLanes> known = new HashMap<>();

  private record Key(Climate climate, int seasonDay, List<Integer> group) {}

  StartShapes(List<ParameterSet> sets) {
    this.sets = sets;
  }

  List<ParameterSet> sets() {
    return sets;
  }

  /** Copies of the shapes under some of the sets, one lane a set. */
  ColonyLanes of(ObservedColony.Start start, List<Integer> group) {
    Key key = new Key(start.climate(), SeasonDay.of(start.date()), group);
    synchronized (known) {
      return known.computeIfAbsent(key, this::make).copy();
    }
  }

  private ColonyLanes make(Key key) {
    IdentityHashMap<ParameterSet, Integer> places = new IdentityHashMap<>();
    List<ParameterSet> different = new ArrayList<>();
    int[] place = new int[key.group().size()];
    for (int i = 0; i < place.length; i++) {
      ParameterSet set = sets.get(key.group().get(i));
      if (places.putIfAbsent(set, different.size()) == null) {
        different.add(set);
      }
      place[i] = places.get(set);
    }
    return StartShape.at(key.climate(), key.seasonDay(), ModelParameters.of(different)).pick(place);
  }
}
