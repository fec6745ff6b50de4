/**
 * Many runs of one scenario that differ in all that is not known: the mites behind the counts, bees
 * and brood, parameters of the model, the strength of each treatment, arrivals and weather.
 *
 * <p>Start with {@link org.undercap.ensemble.Ensemble}. The same member meets the same draws under
 * every plan, so plans are compared in pairs. Results depend on the seed and the number of members,
 * never on the number of threads, nor on which other plans are run.
 */
package org.undercap.ensemble;
