package org.undercap.cli.report;

/** The answer as a page of text for the terminal. */
public final class AnswerPage {
  private final Answer answer;

  /**
   * A page of an answer.
   *
   * @param answer what to tell
   */
  public AnswerPage(Answer answer) {
    this.answer = answer;
  }

  /**
   * The page.
   *
   * @return lines of 80 characters
   */
  public String render() {
    return ReportText.of(AnswerWords.report(answer));
  }
}
