/**
 * From counts to a colony. {@link org.undercap.monitoring.ExactIntervals} tells how much a count
 * can say.
 */
package org.undercap.monitoring;
