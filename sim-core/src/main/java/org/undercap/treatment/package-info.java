/**
 * Treatments and keepers' measures.
 *
 * <p>A method is data: start with {@link org.undercap.treatment.Method} and its {@link
 * org.undercap.treatment.EfficacyProfile}; the shipped ones are in {@link
 * org.undercap.treatment.MethodCatalogue}, read from {@code methods.csv}, and a user's own are the
 * same record. What a plan says is a {@link org.undercap.treatment.PlanStep}; {@link
 * org.undercap.treatment.Interventions} turns the steps of a plan into what acts on the colony on
 * each day.
 *
 * <p>To add a method, add a row to {@code methods.csv}. To add a measure, add a record to the
 * sealed list of {@code PlanStep}.
 */
package org.undercap.treatment;
