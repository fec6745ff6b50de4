package org.undercap.cli.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;

/** Says in words what happened to a file that cannot be read or written. */
public final class FileFailure {
  private static final String OTHER_FOLDER = "name another folder";

  private FileFailure() {}

  /**
   * A failure to write, under the name that the user knows.
   *
   * @param place file or folder that could not be written, as the user wrote it
   * @param cause what happened to it, or to a hidden file that stands for it
   * @param advice what the user can do about it
   * @return the failure, to be thrown
   */
  public static UncheckedIOException at(Path place, IOException cause, String advice) {
    IOException named =
        new FileSystemException(place.toString(), null, reason(cause) + "; " + advice);
    named.initCause(cause);
    return new UncheckedIOException(named);
  }

  /**
   * A failure to write a file of which nothing is left.
   *
   * @param place file or folder that could not be written, as the user wrote it
   * @param cause what happened to it, or to a hidden file that stands for it
   * @return the failure, to be thrown
   */
  public static UncheckedIOException at(Path place, IOException cause) {
    return at(place, cause, isFull(cause) ? "make room or name another folder" : OTHER_FOLDER);
  }

  /** A system of another language may say it otherwise; then the advice is less exact. */
  private static boolean isFull(IOException cause) {
    return reason(cause).contains("space") || reason(cause).contains("quota");
  }

  /**
   * What happened, without the name of the file.
   *
   * @param error the failure
   * @return words that begin with a lower-case letter
   */
  public static String reason(IOException error) {
    if (error instanceof NoSuchFileException) {
      return "no such file or folder";
    }
    if (error instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (error instanceof FileAlreadyExistsException) {
      return "exists already";
    }
    if (error instanceof FileSystemException system && system.getReason() != null) {
      return firstLower(system.getReason());
    }
    return firstLower(String.valueOf(error.getMessage()));
  }

  /** Messages begin with a lower-case letter, unless it is that of an abbreviation. */
  private static String firstLower(String words) {
    boolean word = words.length() > 1 && Character.isLowerCase(words.charAt(1));
    return word ? words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1) : words;
  }
}
