/**
 * Plans held against each other.
 *
 * <p>Start with {@link org.undercap.comparison.Comparison}: each plan run once with the middle
 * values, for the curves that people look at, and over an ensemble, for what can be said about it;
 * then ranked by harm to winter bees. {@link org.undercap.comparison.WinterRisk} is the loss of
 * colonies that surveys found, shown apart from the model.
 */
package org.undercap.comparison;
