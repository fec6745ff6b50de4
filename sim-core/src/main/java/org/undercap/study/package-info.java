/**
 * Outcomes of plans as functions of what is not known, for studies of sensitivity. Start with
 * {@link org.undercap.study.OutcomeStudy}; {@link org.undercap.study.StudyAxes} knows what can be
 * varied: parameters, strengths of treatments, dates, weather, and the colony of the first day.
 */
package org.undercap.study;
