package org.undercap.treatment;

/**
 * A warning that is printed with every report that it concerns.
 *
 * @param id short name
 * @param title what it is about
 * @param text the warning
 */
public record Caution(String id, String title, String text) {}
