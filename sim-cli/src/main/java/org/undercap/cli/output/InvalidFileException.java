package org.undercap.cli.output;

import java.util.List;
import java.util.stream.Collectors;
import org.undercap.scenario.Problem;

/**
 * Ends a command because a file that it read is not valid.
 *
 * <p>The message is shown to the user as it stands. It lists all problems of the file, one to a
 * line, each with file, line and column.
 */
public final class InvalidFileException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param problems all problems of the file, one to a line, without a line end after the last
   */
  public InvalidFileException(String problems) {
    super(problems);
  }

  /**
   * The problems of one or several files with their count.
   *
   * @param problems at least one
   * @return lines without a line end after the last
   */
  public static String text(List<Problem> problems) {
    String count = problems.size() == 1 ? "1 problem" : problems.size() + " problems";
    return problems.stream().map(Problem::text).collect(Collectors.joining("\n")) + "\n" + count;
  }
}
