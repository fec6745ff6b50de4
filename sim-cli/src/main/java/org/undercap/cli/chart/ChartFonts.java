package org.undercap.cli.chart;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The letters of the charts: DejaVu Sans from the jar, whatever the machine has installed. */
final class ChartFonts {
  /** Name that an SVG file asks for, with faces of about the same width in reserve. */
  static final String SVG_FAMILY = "'DejaVu Sans', Verdana, sans-serif";

  /** System property by which Java on Linux finds its list of fonts. */
  private static final String FONT_LIST = "sun.awt.fontconfig";

  /** A list without fonts: quick to read, and enough, since the charts bring their own. */
  private static final String EMPTY_LIST = "version=1\nsequence.allfonts=default\n";

  private final Font regular;
  private final Font bold;

  private ChartFonts(Font regular, Font bold) {
    this.regular = regular;
    this.bold = bold;
  }

  /** Reads the fonts once. */
  private static final class Holder {
    static final ChartFonts FONTS = load();
  }

  /**
   * The fonts, read at the first call.
   *
   * @throws ChartsUnavailableException if Java cannot draw on this machine
   */
  static ChartFonts shipped() {
    try {
      return Holder.FONTS;
    } catch (LinkageError error) {
      Throwable cause = error.getCause() == null ? error : error.getCause();
      throw new ChartsUnavailableException(
          "charts need Java's drawing library, which cannot start here ("
              + cause.getMessage()
              + "); on Debian or Ubuntu: apt-get install libfreetype6 libharfbuzz0b",
          error);
    }
  }

  Font regular(float size) {
    return regular.deriveFont(size);
  }

  Font bold(float size) {
    return bold.deriveFont(Font.BOLD, size);
  }

  private static ChartFonts load() {
    if (System.getProperty(FONT_LIST) != null) {
      return read();
    }
    try {
      Path list = Files.createTempFile("undercap-fonts", ".properties");
      try {
        Files.writeString(list, EMPTY_LIST);
        System.setProperty(FONT_LIST, list.toString());
        return read();
      } finally {
        System.clearProperty(FONT_LIST);
        Files.delete(list);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static ChartFonts read() {
    return new ChartFonts(read("DejaVuSans.ttf"), read("DejaVuSans-Bold.ttf"));
  }

  private static Font read(String resource) {
    try (InputStream in = ChartFonts.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("font " + resource + " is missing from the jar");
      }
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FontFormatException e) {
      throw new IllegalStateException("font " + resource + " in the jar is damaged", e);
    }
  }
}
