package org.undercap.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChartFontsTest {
  /** Prints the digest of a chart, in a process of its own. */
  static final class Child {
    private Child() {}

    /**
     * Draws a chart.
     *
     * @param args none
     */
    public static void main(String[] args) throws Exception {
      System.out.print(digest());
    }
  }

  private static String digest() throws Exception {
    byte[] png = ChartWriter.png(InventedCharts.miteCurve(ChartStyle.A4).pages().get(0));
    byte[] digest = java.security.MessageDigest.getInstance("SHA-256").digest(png);
    return HexFormat.of().formatHex(digest);
  }

  @Test
  void machineWithoutFontsDrawsTheSameChart(@TempDir Path empty) throws Exception {
    Path noFonts =
        Files.writeString(empty.resolve("fonts.conf"), "<?xml version=\"1.0\"?><fontconfig/>");
    ProcessBuilder child =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Djava.awt.headless=true",
            "-Duser.home=" + empty,
            "-cp",
            System.getProperty("java.class.path"),
            Child.class.getName());
    child.environment().put("FONTCONFIG_FILE", noFonts.toString());
    child.redirectErrorStream(true);
    assertEquals(digest(), output(child));
  }

  private static String output(ProcessBuilder builder) throws IOException, InterruptedException {
    Process process = builder.start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    return output;
  }

  @Test
  void fontsKnowTheSignsOfTheTrade() {
    for (String sign : new String[] {"\u00b0", "\u00b1", "\u2265", "\u2013", "\u2026", "\u00e9"}) {
      assertEquals(-1, ChartFonts.shipped().regular(10).canDisplayUpTo(sign), sign);
      assertEquals(-1, ChartFonts.shipped().bold(10).canDisplayUpTo(sign), sign);
    }
  }
}
