/**
 * What keepers count in and around the hive: frames ({@link org.undercap.hive.FrameCatalogue}),
 * mites that arrive from other colonies ({@link org.undercap.hive.ArrivalCatalogue}) and published
 * thresholds ({@link org.undercap.hive.ThresholdCatalogue}). Start with {@link
 * org.undercap.hive.FrameType}.
 */
package org.undercap.hive;
