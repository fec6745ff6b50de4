/**
 * When to treat, with what, and a whole yard at once.
 *
 * <p>Start with {@link org.undercap.planning.Timing}: a usual course of a method begun on one date
 * after another, and what waiting costs. {@link org.undercap.planning.PlanSearch} looks for good
 * schedules of several courses; what it may propose is in {@link org.undercap.treatment.Courses}.
 * {@link org.undercap.planning.Yard} holds the plans of a scenario against all colonies of an
 * apiary.
 */
package org.undercap.planning;
