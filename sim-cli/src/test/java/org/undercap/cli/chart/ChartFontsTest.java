package org.undercap.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class ChartFontsTest {
  /** Prints the digest of a chart, or why there is none, in a process of its own. */
  static final class Child {
    private Child() {}

    public static void main(String[] args) throws Exception {
      try {
        System.out.print(digest());
      } catch (ChartsUnavailableException e) {
        System.out.print(e.getMessage());
      }
    }
  }

  private static String digest() throws Exception {
    byte[] png = ChartWriter.png(InventedCharts.miteCurve(ChartStyle.A4).pages().get(0));
    return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(png));
  }

  /** Runs the child where the system has no fonts. */
  private static String runWithoutFonts(Path empty, String... options) throws Exception {
    Path noFonts =
        Files.writeString(empty.resolve("fonts.conf"), "<?xml version=\"1.0\"?><fontconfig/>");
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Djava.awt.headless=true", "-Duser.home=" + empty));
    command.addAll(List.of(options));
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), Child.class.getName()));
    ProcessBuilder child = new ProcessBuilder(command);
    child.environment().put("FONTCONFIG_FILE", noFonts.toString());
    child.redirectErrorStream(true);
    return output(child);
  }

  @Test
  void machineWithoutFontsDrawsTheSameChart(@TempDir Path empty) throws Exception {
    assertEquals(digest(), runWithoutFonts(empty));
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void machineThatCannotDrawSaysWhatToInstall(@TempDir Path empty) throws Exception {
    String missing = empty.resolve("missing.properties").toString();
    String message = runWithoutFonts(empty, "-Dsun.awt.fontconfig=" + missing);
    assertTrue(message.startsWith("charts need Java's drawing library"), message);
    assertTrue(message.contains("apt-get install libfreetype6"), message);
    assertEquals(1, message.lines().count(), message);
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
