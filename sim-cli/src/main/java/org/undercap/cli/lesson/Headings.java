package org.undercap.cli.lesson;

import java.util.Map;

/** Gives page templates the words of keys. */
public final class Headings {
  private final Speech speech;

  Headings(Speech speech) {
    this.speech = speech;
  }

  /**
   * A text without figures.
   *
   * @param key its key
   * @return the text
   */
  public String of(String key) {
    return speech.say(key);
  }

  /**
   * A text with one figure.
   *
   * @param key its key
   * @param name name of the figure
   * @param value the figure, a word or a number
   * @return the text
   */
  public String of(String key, String name, Object value) {
    return speech.say(key, Map.of(name, value));
  }
}
