package org.undercap.cli.lesson;

import java.util.List;

/**
 * The book of a pack as a page: everything that is written in it.
 *
 * @param words says what stands under each heading
 * @param place the place in words
 * @param home three things to take home
 * @param chapters the lessons
 * @param sheet the worksheet
 * @param film the treatment day by day as SVG
 * @param glossary words of the trade
 * @param cautions cautions
 */
public record BookPage(
    Headings words,
    String place,
    List<String> home,
    List<Chapter> chapters,
    List<Entry> sheet,
    String film,
    List<Entry> glossary,
    List<String> cautions) {
  /**
   * Copies the lists.
   *
   * @param words headings
   * @param place the place in words
   * @param home three things to take home
   * @param chapters the lessons
   * @param sheet the worksheet
   * @param film the treatment day by day as SVG
   * @param glossary words of the trade
   * @param cautions cautions
   */
  public BookPage {
    home = List.copyOf(home);
    chapters = List.copyOf(chapters);
    sheet = List.copyOf(sheet);
    glossary = List.copyOf(glossary);
    cautions = List.copyOf(cautions);
  }

  /**
   * A lesson.
   *
   * @param text its words
   * @param picture its chart as SVG
   * @param file name of its table
   */
  public record Chapter(LessonText text, String picture, String file) {}

  /**
   * A word and what it means, or a head and its value.
   *
   * @param name the word
   * @param text what it means
   */
  public record Entry(String name, String text) {}
}
