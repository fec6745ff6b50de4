package org.undercap.cli.chart;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Makes a moving picture of pages: an endless GIF in colours of which the charts have few. */
public final class GifWriter {
  private static final String FORMAT = "javax_imageio_gif_image_1.0";

  /** Steps of each colour part: 6 * 6 * 6 colours, and greys between them. */
  private static final int STEPS = 6;

  private static final int GREYS = 39;

  /** Place in the table of colours that leaves a dot as it was in the frame before. */
  private static final int UNCHANGED = STEPS * STEPS * STEPS + GREYS;

  private static final int FULL = 255;

  private GifWriter() {}

  /**
   * A moving picture.
   *
   * @param frames pages of the same size, at least one
   * @param hundredths how long each of them is shown (hundredths of a second), as many as pages
   * @return a GIF file that begins anew at its end
   * @throws IllegalArgumentException if there is no frame, or not a time for each
   */
  public static byte[] write(List<ChartPage> frames, List<Integer> hundredths) {
    if (frames.isEmpty() || frames.size() != hundredths.size()) {
      throw new IllegalArgumentException("a moving picture needs frames, each with its time");
    }
    ImageWriter writer = ImageIO.getImageWritersByFormatName("gif").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    IndexColorModel colours = colours();
    try (ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.prepareWriteSequence(null);
      int[] before = {};
      for (int i = 0; i < frames.size(); i++) {
        BufferedImage full = ChartWriter.bitmap(frames.get(i));
        int[] dots = dots(full);
        BufferedImage image = image(full, dots, before, colours);
        before = dots;
        writer.writeToSequence(
            new IIOImage(image, null, metadata(writer, image, hundredths.get(i), i == 0)), null);
      }
      writer.endWriteSequence();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /** The dots as places in the table of colours; drawing with few colours would dither. */
  private static int[] dots(BufferedImage full) {
    int width = full.getWidth();
    int[] dots = full.getRGB(0, 0, width, full.getHeight(), null, 0, width);
    for (int i = 0; i < dots.length; i++) {
      dots[i] = index(dots[i]);
    }
    return dots;
  }

  /** A frame that tells only what changed. */
  private static BufferedImage image(
      BufferedImage full, int[] dots, int[] before, IndexColorModel colours) {
    int[] changed = dots.clone();
    for (int i = 0; i < before.length; i++) {
      if (dots[i] == before[i]) {
        changed[i] = UNCHANGED;
      }
    }
    BufferedImage image =
        new BufferedImage(
            full.getWidth(), full.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, colours);
    image.getRaster().setPixels(0, 0, full.getWidth(), full.getHeight(), changed);
    return image;
  }

  /** Place in the table of colours that is nearest to a colour. */
  private static int index(int rgb) {
    int red = (rgb >> 16) & FULL;
    int green = (rgb >> 8) & FULL;
    int blue = rgb & FULL;
    if (Math.max(red, Math.max(green, blue)) - Math.min(red, Math.min(green, blue)) < 12) {
      return STEPS * STEPS * STEPS + Math.round(green * (GREYS - 1f) / FULL);
    }
    return (step(red) * STEPS + step(green)) * STEPS + step(blue);
  }

  private static int step(int part) {
    return Math.round(part * (STEPS - 1f) / FULL);
  }

  private static IndexColorModel colours() {
    List<int[]> table = new ArrayList<>();
    for (int i = 0; i < STEPS * STEPS * STEPS; i++) {
      int level = FULL / (STEPS - 1);
      table.add(
          new int[] {i / (STEPS * STEPS) * level, i / STEPS % STEPS * level, i % STEPS * level});
    }
    for (int i = 0; i < GREYS; i++) {
      int grey = Math.round(i * FULL / (GREYS - 1f));
      table.add(new int[] {grey, grey, grey});
    }
    table.add(new int[] {0, 0, 0});
    byte[][] parts = new byte[3][table.size()];
    for (int i = 0; i < table.size(); i++) {
      for (int part = 0; part < parts.length; part++) {
        parts[part][i] = (byte) table.get(i)[part];
      }
    }
    return new IndexColorModel(8, table.size(), parts[0], parts[1], parts[2], UNCHANGED);
  }

  private static IIOMetadata metadata(
      ImageWriter writer, BufferedImage image, int hundredths, boolean first) throws IOException {
    IIOMetadata metadata =
        writer.getDefaultImageMetadata(
            new ImageTypeSpecifier(image), writer.getDefaultWriteParam());
    IIOMetadataNode root = (IIOMetadataNode) metadata.getAsTree(FORMAT);
    IIOMetadataNode control = child(root, "GraphicControlExtension");
    control.setAttribute("disposalMethod", "none");
    control.setAttribute("userInputFlag", "FALSE");
    control.setAttribute("transparentColorFlag", first ? "FALSE" : "TRUE");
    control.setAttribute("transparentColorIndex", Integer.toString(UNCHANGED));
    control.setAttribute("delayTime", Integer.toString(hundredths));
    if (first) {
      IIOMetadataNode loop = new IIOMetadataNode("ApplicationExtension");
      loop.setAttribute("applicationID", "NETSCAPE");
      loop.setAttribute("authenticationCode", "2.0");
      loop.setUserObject(new byte[] {1, 0, 0});
      child(root, "ApplicationExtensions").appendChild(loop);
    }
    metadata.setFromTree(FORMAT, root);
    return metadata;
  }

  private static IIOMetadataNode child(IIOMetadataNode root, String name) {
    for (int i = 0; i < root.getLength(); i++) {
      if (root.item(i).getNodeName().equals(name)) {
        return (IIOMetadataNode) root.item(i);
      }
    }
    IIOMetadataNode node = new IIOMetadataNode(name);
    root.appendChild(node);
    return node;
  }
}
