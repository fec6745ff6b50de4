package org.undercap.monitoring;

import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.parameter.Prior;

/**
 * How a parameter differs from colony to colony around the value of a study: as the catalogue says.
 * A value outside the bounds of the catalogue counts as known.
 */
@FunctionalInterface
interface Draw {
  /** The value below which a share of the colonies lies. */
  double at(double share);

  static Draw of(ParameterId id, ParameterSet parameters) {
    Prior shipped = Prior.of(ParameterCatalogue.shipped().get(id));
    double centre = parameters.value(id);
    if (!(centre >= shipped.low() && centre <= shipped.high())) {
      return share -> centre;
    }
    return new Prior(shipped.shape(), centre, shipped.spread(), shipped.low(), shipped.high())
        ::quantile;
  }
}
