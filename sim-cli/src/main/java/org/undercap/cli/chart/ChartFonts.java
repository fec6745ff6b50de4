package org.undercap.cli.chart;

import java.awt.AWTError;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The letters of the charts: DejaVu Sans from the jar, whatever the machine has installed. */
final class ChartFonts {
  /** Name that an SVG file asks for, with faces of about the same width in reserve. */
  static final String SVG_FAMILY = "'DejaVu Sans', Verdana, sans-serif";

  /** System property by which Java on Linux finds its list of fonts. */
  private static final String FONT_LIST = "sun.awt.fontconfig";

  /** A list without fonts: quick to read, and enough, since the charts bring their own. */
  private static final String EMPTY_LIST = "version=1\nsequence.allfonts=default\n";

  private static Optional<ChartFonts> loaded = Optional.empty();

  private final Font regular;
  private final Font bold;

  private ChartFonts(Font regular, Font bold) {
    this.regular = regular;
    this.bold = bold;
  }

  /**
   * The fonts, read at the first call.
   *
   * @throws ChartsUnavailableException if Java cannot draw on this machine
   */
  static synchronized ChartFonts shipped() {
    if (loaded.isEmpty()) {
      try {
        loaded = Optional.of(load());
      } catch (IOException | LinkageError | InternalError | AWTError error) {
        throw new ChartsUnavailableException(
            "charts need Java's drawing library, which cannot start here ("
                + rootOf(error).getMessage()
                + "); on Debian or Ubuntu: apt-get install libfreetype6 libharfbuzz0b"
                + " libfontconfig1 fontconfig-config fonts-dejavu-core",
            error);
      }
    }
    return loaded.get();
  }

  private static Throwable rootOf(Throwable error) {
    Throwable root = error;
    while (root.getCause() != null) {
      root = root.getCause();
    }
    return root;
  }

  Font regular(float size) {
    return regular.deriveFont(size);
  }

  Font bold(float size) {
    return bold.deriveFont(Font.BOLD, size);
  }

  private static ChartFonts load() throws IOException {
    if (System.getProperty(FONT_LIST) != null) {
      return read();
    }
    Optional<Path> list = writeList();
    list.ifPresent(file -> System.setProperty(FONT_LIST, file.toString()));
    try {
      return read();
    } finally {
      System.clearProperty(FONT_LIST);
      list.ifPresent(file -> file.toFile().delete());
    }
  }

  /** Empty if there is no place for temporary files: then Java looks for fonts by itself. */
  private static Optional<Path> writeList() {
    try {
      Path file = Files.createTempFile("undercap-fonts", ".properties");
      return Optional.of(Files.writeString(file, EMPTY_LIST));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static ChartFonts read() throws IOException {
    return new ChartFonts(read("DejaVuSans.ttf"), read("DejaVuSans-Bold.ttf"));
  }

  /** Java reports a drawing library that does not start as an error of reading, too. */
  private static Font read(String resource) throws IOException {
    try (InputStream in = ChartFonts.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("font " + resource + " is missing from the jar");
      }
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (FontFormatException e) {
      throw new IllegalStateException("font " + resource + " in the jar is damaged", e);
    }
  }
}
