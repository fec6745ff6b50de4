package org.undercap.calibration;

/**
 * The mites that a colony began with, as its counts and the fitted parameters tell.
 *
 * @param colony name of the colony
 * @param median middle value (mites)
 * @param low 2.5 % of the belief lies below (mites)
 * @param high 2.5 % of the belief lies above (mites)
 */
public record FittedStart(String colony, double median, double low, double high) {}
