package org.undercap.cli.output;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Digests (SHA-256, hexadecimal) by which files can be known again. */
public final class Digests {
  private static final int BUFFER = 1 << 16;

  private Digests() {}

  /**
   * The digest of a text in UTF-8.
   *
   * @param text the text
   * @return 64 hexadecimal digits
   */
  public static String of(String text) {
    return HexFormat.of().formatHex(sha256().digest(text.getBytes(StandardCharsets.UTF_8)));
  }

  /**
   * The digest of a file.
   *
   * @param file the file
   * @return 64 hexadecimal digits
   * @throws UncheckedIOException if it cannot be read
   */
  public static String of(Path file) {
    MessageDigest digest = sha256();
    try (InputStream stream = Files.newInputStream(file)) {
      byte[] buffer = new byte[BUFFER];
      for (int read = stream.read(buffer); read >= 0; read = stream.read(buffer)) {
        digest.update(buffer, 0, read);
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
