/**
 * Reads scenario files. Start with {@link org.undercap.scenario.io.ScenarioReader}.
 *
 * <p>A file goes through four hands: {@code FileText} makes text of bytes, {@code DocumentParser}
 * makes a tree of values as they were typed, {@code FieldReader} and the readers named after the
 * parts of a scenario make a {@link org.undercap.scenario.WrittenScenario} of it, and {@link
 * org.undercap.scenario.ScenarioResolver} a {@link org.undercap.scenario.Scenario}. Each notes
 * every problem it finds and goes on. No other package knows Jackson.
 *
 * <p>To add a key, read it in the reader of its part, give it a row in {@code limits.csv} if it is
 * a number, and describe it in {@code scenario.schema.json}; a test compares the two.
 */
package org.undercap.scenario.io;
