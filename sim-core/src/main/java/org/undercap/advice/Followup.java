package org.undercap.advice;

import java.time.LocalDate;
import org.undercap.monitoring.Recheck;

/**
 * When to count again, and what the count will say.
 *
 * @param date day of the wash
 * @param expected counts if the treatment works as the model says
 * @param untreated mean count without any treatment (mites in the same wash)
 * @param noticed how often a colony in which nothing worked gives an alarming count (fraction)
 */
public record Followup(LocalDate date, Recheck expected, double untreated, double noticed) {}
