package org.undercap.scenario;

/**
 * A value as the user wrote it, with its place.
 *
 * @param <T> type of the value
 * @param value what the text says
 * @param text the text as it was typed
 * @param place where it stands
 */
public record Written<T>(T value, String text, Place place) {}
