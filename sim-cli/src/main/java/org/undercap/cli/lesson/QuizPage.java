package org.undercap.cli.lesson;

import java.util.List;

/**
 * The quiz as a page.
 *
 * @param words headings
 * @param questions questions with their answers
 */
public record QuizPage(Headings words, List<Question> questions) {
  /**
   * Copies the list.
   *
   * @param words headings
   * @param questions questions with their answers
   */
  public QuizPage {
    questions = List.copyOf(questions);
  }

  /**
   * A question.
   *
   * @param number its number in words
   * @param picture the chart without words, as SVG
   * @param lines what the lines are
   * @param answer what the chart shows
   */
  public record Question(String number, String picture, List<String> lines, String answer) {
    /**
     * Copies the list.
     *
     * @param number its number in words
     * @param picture the chart without words
     * @param lines what the lines are
     * @param answer what the chart shows
     */
    public Question {
      lines = List.copyOf(lines);
    }
  }
}
