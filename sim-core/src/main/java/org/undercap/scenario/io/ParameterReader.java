package org.undercap.scenario.io;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterChanges;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.scenario.Lookup;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Written;

/** Reads parameters that a user changes. */
final class ParameterReader {

  private ParameterReader() {}

  /** The values of a map. */
  static ParameterChanges read(FieldReader map) {
    Map<ParameterId, List<Double>> changes = new EnumMap<>(ParameterId.class);
    for (String id : map.names()) {
      Optional<Parameter> parameter = ParameterCatalogue.shipped().find(id);
      if (parameter.isEmpty()) {
        List<String> ids =
            ParameterCatalogue.shipped().all().stream().map(p -> p.id().id()).toList();
        map.refuseKey(id, "unknown parameter " + Quantities.quote(id) + Lookup.suggestion(id, ids));
        continue;
      }
      int count = parameter.get().values().size();
      List<Double> values =
          count == 1
              ? map.value(id, Quantities::number).map(Written::value).stream().toList()
              : map.values(id, Quantities::number).stream().map(Written::value).toList();
      if (values.isEmpty()) {
        continue;
      }
      try {
        ParameterSet.shipped()
            .with(parameter.get().id(), values.stream().mapToDouble(v -> v).toArray());
        changes.put(parameter.get().id(), values);
      } catch (IllegalArgumentException e) {
        map.refuse(id, e.getMessage(), "");
      }
    }
    return new ParameterChanges(changes);
  }
}
