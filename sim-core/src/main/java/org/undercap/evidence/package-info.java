/**
 * The model held against published findings, misses shown beside hits.
 *
 * <p>Start with {@link org.undercap.evidence.Evidence}: it lists the findings ({@link
 * org.undercap.evidence.PublishedCheck}, from {@code published-checks.csv}), repeats each of them
 * with the model and judges the answer ({@link org.undercap.evidence.CheckResult}). {@link
 * org.undercap.evidence.EvidenceTable} prints the results. Reasons for misses stand in {@code
 * misses.csv}, what is not run in {@code not-run.csv}, and numbers that a publication does not tell
 * in {@code set-ups.csv}.
 *
 * <p>Each group of checks is a class ({@code GrowthChecks}, {@code EfficacyChecks}, ..) of small
 * methods, one a check; {@code ColonyRun} says in a line which colony is run.
 */
package org.undercap.evidence;
