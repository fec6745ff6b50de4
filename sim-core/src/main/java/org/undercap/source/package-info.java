/**
 * The publications behind the numbers. Start with {@link org.undercap.source.Bibliography}; every
 * parameter, threshold and level of arrivals names its {@link org.undercap.source.Source} by key.
 */
package org.undercap.source;
