/**
 * Which parameters move an outcome. Start with {@link
 * org.undercap.sensitivity.SobolIndices#estimate}, or {@link
 * org.undercap.sensitivity.ElementaryEffects#estimate} to sort many parameters with few runs.
 *
 * <p>The methods know a model only as a {@link org.undercap.sensitivity.UnitCubeFunction}; {@link
 * org.undercap.parameter.ParameterSpace} turns points of the unit cube into parameters. Where one
 * run gives several outcomes, take the points from a {@link org.undercap.sensitivity.Design}, run
 * them once, and analyse each outcome.
 */
package org.undercap.sensitivity;
