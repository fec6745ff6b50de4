package org.undercap.cli.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Digests (SHA-256, hexadecimal) by which files can be known again. */
public final class Digests {
  private Digests() {}

  /**
   * The digest of a text in UTF-8.
   *
   * @param text the text
   * @return 64 hexadecimal digits
   */
  public static String of(String text) {
    return of(text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * The digest of a file.
   *
   * @param file the file
   * @return 64 hexadecimal digits
   * @throws UncheckedIOException if it cannot be read
   */
  public static String of(Path file) {
    try {
      return of(Files.readAllBytes(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String of(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
