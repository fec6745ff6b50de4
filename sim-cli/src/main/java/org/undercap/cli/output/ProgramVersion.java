package org.undercap.cli.output;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version of this program, as the build wrote it into the program. */
public final class ProgramVersion {
  private static final String RESOURCE = "/org/undercap/cli/version.properties";

  private ProgramVersion() {}

  /**
   * Returns the version.
   *
   * @return the version, for example {@code 1.2.0}
   */
  public static String text() {
    Properties properties = new Properties();
    try (InputStream in = ProgramVersion.class.getResourceAsStream(RESOURCE)) {
      properties.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return properties.getProperty("version");
  }
}
