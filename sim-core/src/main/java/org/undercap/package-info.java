/**
 * Simulates the population of varroa mites in one honey bee colony, day by day.
 *
 * <p>Everything lives in the packages below this one. They build on each other in one direction:
 * published sources and parameters first, then climate and hive, then the day step of the model,
 * the simulation that runs it, treatments, and at last scenarios, which put a whole season on
 * dates.
 *
 * <p>The library prints nothing, never ends the program, and reads neither the clock nor the
 * machine's language or time zone: the same input gives the same result everywhere.
 */
package org.undercap;
