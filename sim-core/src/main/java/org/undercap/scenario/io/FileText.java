package org.undercap.scenario.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.undercap.scenario.Place;
import org.undercap.scenario.Problems;

/** Reads the text of a small file: bounded size, strict UTF-8, no control characters. */
public final class FileText {

  private static final int BYTE_ORDER_MARK = 0xFEFF;
  private static final int LAST_CHARACTER = 0xFFFD;

  private final String name;
  private final int limit;
  private final Problems problems;

  /**
   * Prepares to read a file.
   *
   * @param name name of the file for messages
   * @param limit greatest size accepted (bytes)
   * @param problems takes what is wrong
   */
  public FileText(String name, int limit, Problems problems) {
    this.name = name;
    this.limit = limit;
    this.problems = problems;
  }

  /**
   * Reads a file.
   *
   * @param path the file
   * @return its text without byte order mark; empty if it could not be read, which is then among
   *     the problems
   */
  public Optional<String> read(Path path) {
    if (Files.isDirectory(path)) {
      return fail("is a folder, not a file", "name the file in it");
    }
    try (InputStream stream = Files.newInputStream(path)) {
      return read(stream);
    } catch (NoSuchFileException e) {
      return fail("there is no such file", "check the name and the folder");
    } catch (AccessDeniedException e) {
      return fail("may not be read", "check the permissions of the file");
    } catch (IOException e) {
      return fail("cannot be read", "");
    }
  }

  Optional<String> read(InputStream stream) throws IOException {
    byte[] bytes = stream.readNBytes(limit + 1);
    if (bytes.length > limit) {
      return fail(
          "is larger than the "
              + String.format(Locale.ROOT, "%,d", limit).replace(',', ' ')
              + " bytes that are accepted",
          "is this the right file?");
    }
    return decode(bytes).filter(this::hasNoControls);
  }

  private Optional<String> decode(byte[] bytes) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CharBuffer chars = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), chars, true);
    String text = chars.flip().toString();
    if (result.isError()) {
      problems.add(
          placeOf(text, text.length()),
          "",
          "the file is not in UTF-8",
          "save it with the encoding UTF-8 in your editor");
      return Optional.empty();
    }
    boolean marked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
    return Optional.of(marked ? text.substring(1) : text);
  }

  private boolean hasNoControls(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (isControl(c)) {
        problems.add(
            placeOf(text, i),
            "",
            String.format(Locale.ROOT, "the control character U+%04X is not text", (int) c),
            "is this a text file in UTF-8?");
        return false;
      }
    }
    return true;
  }

  private static boolean isControl(char c) {
    boolean blank = c == '\n' || c == '\r' || c == '\t';
    return c > LAST_CHARACTER || (Character.isISOControl(c) && !blank);
  }

  private Place placeOf(String text, int index) {
    int lineStart = text.lastIndexOf('\n', index - 1) + 1;
    int line = 1 + (int) text.substring(0, lineStart).chars().filter(c -> c == '\n').count();
    return new Place(name, line, 1 + text.codePointCount(lineStart, index));
  }

  private Optional<String> fail(String message, String hint) {
    problems.add(Place.of(name), "", message, hint);
    return Optional.empty();
  }
}
