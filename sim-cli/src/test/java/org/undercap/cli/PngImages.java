package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import javax.imageio.ImageIO;
import org.undercap.cli.chart.ChartStyle;

/** What tests ask of a picture whose bytes they cannot know. */
public final class PngImages {
  private static final double INK = 0.01;
  private static final int WIDTH = (int) (ChartStyle.A4.width() * ChartStyle.A4.dotsPerInch() / 72);

  private PngImages() {}

  /** Fails unless the file is a page of A4 width that holds drawing in several colours. */
  public static void assertDrawn(Path file) {
    BufferedImage image;
    try {
      image = ImageIO.read(file.toFile());
    } catch (IOException e) {
      throw new AssertionError(file + " cannot be read", e);
    }
    assertNotNull(image, file + " is no picture");
    assertEquals(WIDTH, image.getWidth(), file + " width");
    assertTrue(image.getHeight() > WIDTH / 4, file + " height " + image.getHeight());
    Set<Integer> colours = new HashSet<>();
    long inked = 0;
    int paper = image.getRGB(0, 0);
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < WIDTH; x++) {
        int colour = image.getRGB(x, y);
        colours.add(colour);
        inked += colour == paper ? 0 : 1;
      }
    }
    assertTrue(colours.size() > 10, file + " has " + colours.size() + " colours only");
    double share = (double) inked / WIDTH / image.getHeight();
    assertTrue(share > INK, file + " is almost blank: " + share);
  }
}
