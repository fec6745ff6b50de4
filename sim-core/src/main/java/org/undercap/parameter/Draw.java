package org.undercap.parameter;

/**
 * How a parameter differs from colony to colony around the value of a study: as the catalogue says.
 * A value outside the bounds of the catalogue counts as known.
 */
@FunctionalInterface
public interface Draw {
  /**
   * The value below which a share of the colonies lies.
   *
   * @param share the share, strictly between 0 and 1
   * @return the value (unit of the parameter)
   * @throws IllegalArgumentException if the share is not between 0 and 1
   */
  double at(double share);

  /**
   * The spread of a parameter.
   *
   * @param id a parameter that varies between the members of an ensemble
   * @param parameters the values of the study
   * @return the spread
   * @throws IllegalArgumentException if the parameter does not vary
   */
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
