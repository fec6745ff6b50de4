package org.undercap.scenario.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.undercap.scenario.Place;
import org.undercap.scenario.Problems;

/** Looks through a file of any size before it is read line by line: is it made of lines of text? */
final class DesignBytes {
  private static final int BUFFER = 65_536;
  private static final int LONGEST_LINE = 20_000;

  private DesignBytes() {}

  /** Whether lines are of bounded length and hold no control characters; if not, a problem. */
  static boolean areText(Path file, Problems problems) throws IOException {
    byte[] buffer = new byte[BUFFER];
    int line = 1;
    int column = 0;
    try (InputStream stream = Files.newInputStream(file)) {
      for (int size = stream.read(buffer); size >= 0; size = stream.read(buffer)) {
        for (int i = 0; i < size; i++) {
          byte b = buffer[i];
          column = b == '\n' || b == '\r' ? 0 : column + 1;
          line += b == '\n' ? 1 : 0;
          if (column > LONGEST_LINE || isControl(b)) {
            String message =
                column > LONGEST_LINE
                    ? "the line is longer than the " + LONGEST_LINE + " bytes that are accepted"
                    : String.format(Locale.ROOT, "the control character U+%04X is not text", b);
            Place place = new Place(file.toString(), line, column);
            problems.add(place, "", message, "is this a text file in UTF-8?");
            return false;
          }
        }
      }
    }
    return true;
  }

  private static boolean isControl(byte b) {
    return b >= 0 && b < ' ' && b != '\n' && b != '\r' && b != '\t';
  }
}
