/**
 * The numbers of the model as listed objects with unit, range, spread and source. Start with {@link
 * org.undercap.parameter.ParameterSet}, the values a model runs with; {@link
 * org.undercap.parameter.ParameterCatalogue} tells where each value comes from.
 */
package org.undercap.parameter;
