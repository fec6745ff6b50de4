package org.undercap.cli.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class ChartWriterTest {
  private static final Pattern SVG_COLOR =
      Pattern.compile("(?:fill|stroke)=\"(?!none|url)([^\"]+)\"");

  static Stream<Arguments> charts() {
    return InventedCharts.all(ChartStyle.A4);
  }

  private static ChartPage page() {
    return InventedCharts.miteCurve(ChartStyle.A4).pages().get(0);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("charts")
  void bitmapHasItsSizeAndIsNotBlank(String name, Chart chart) throws IOException {
    for (ChartPage page : chart.pages()) {
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(ChartWriter.png(page)));
      double scale = page.dotsPerInch() / 72.0;
      assertEquals(Math.round(page.width() * scale), image.getWidth());
      assertEquals(Math.round(page.height() * scale), image.getHeight());
      double ink = 1 - shareOf(image, Color.WHITE);
      assertTrue(ink > 0.02 && ink < 0.75, "ink " + ink);
    }
  }

  @Test
  void linesAndAreasShowInTheBitmap() {
    BufferedImage image = ChartWriter.bitmap(page());
    for (Color color :
        List.of(Palette.VERMILION, Palette.BLUE, Palette.LIGHT_SKY, Palette.LIGHT_YELLOW)) {
      assertTrue(shareOf(image, color) > 0.001, "share of " + color);
    }
  }

  private static double shareOf(BufferedImage image, Color color) {
    int same = 0;
    int[] pixels =
        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    for (int pixel : pixels) {
      same += pixel == color.getRGB() ? 1 : 0;
    }
    return (double) same / pixels.length;
  }

  @Test
  void onlyColoursOfThePaletteAreUsed() {
    Set<String> allowed = allowedColours();
    for (Chart chart :
        List.of(
            InventedCharts.miteCurve(ChartStyle.A4),
            InventedCharts.plans(ChartStyle.A4),
            InventedCharts.infestation(ChartStyle.A4))) {
      Matcher colors = SVG_COLOR.matcher(svg(chart.pages().get(0), "c"));
      int count = 0;
      while (colors.find()) {
        assertTrue(allowed.contains(colors.group(1)), colors.group(1));
        count++;
      }
      assertTrue(count > 10, "colours " + count);
    }
  }

  private static Set<String> allowedColours() {
    Set<String> allowed = new HashSet<>(Set.of("black", "white", "rgb(0,0,0)"));
    for (Color color :
        List.of(
            Palette.BLUE,
            Palette.VERMILION,
            Palette.GREEN,
            Palette.PURPLE,
            Palette.LIGHT_SKY,
            Palette.LIGHT_YELLOW,
            Palette.DARK_GREY,
            Palette.MIDDLE_GREY,
            Palette.LIGHT_GREY)) {
      allowed.add(
          String.format(
              Locale.ROOT, "rgb(%d,%d,%d)", color.getRed(), color.getGreen(), color.getBlue()));
    }
    return allowed;
  }

  @Test
  void sameChartGivesSameBytes() {
    assertArrayEquals(ChartWriter.png(page()), ChartWriter.png(page()));
    assertArrayEquals(ChartWriter.svg(page(), "a"), ChartWriter.svg(page(), "a"));
  }

  @Test
  void bitmapHoldsNeitherTimeNorProgramName() throws IOException {
    List<String> chunks = new ArrayList<>();
    int dotsPerMetre = 0;
    try (DataInputStream in =
        new DataInputStream(new ByteArrayInputStream(ChartWriter.png(page())))) {
      in.skipNBytes(8);
      while (in.available() > 0) {
        int length = in.readInt();
        String type = new String(in.readNBytes(4), StandardCharsets.US_ASCII);
        byte[] data = in.readNBytes(length);
        in.skipNBytes(4);
        chunks.add(type);
        if (type.equals("pHYs")) {
          dotsPerMetre = new DataInputStream(new ByteArrayInputStream(data)).readInt();
        }
      }
    }
    assertEquals(List.of("IHDR", "pHYs", "IDAT", "IEND"), chunks);
    assertEquals(5906, dotsPerMetre, "150 dots per inch");
  }

  @Test
  void svgCarriesTextAlternativeAndRealText() throws Exception {
    Document document = parse(svg(page(), "a"));
    Element root = document.getDocumentElement();
    assertEquals("img", root.getAttribute("role"));
    assertEquals("0 0 496 350", root.getAttribute("viewBox"));
    assertEquals(InventedCharts.text().finding(), textOf(document, "title"));
    assertEquals(InventedCharts.text().alternative(), textOf(document, "desc"));
    int texts = document.getElementsByTagName("text").getLength();
    assertEquals(TextSpy.textsOf(page()).size(), texts, "no text is drawn as outlines");
  }

  @Test
  void svgNamesFontsInReserveAndKeepsBold() {
    String svg = svg(page(), "a");
    Matcher families = Pattern.compile("font-family=\"([^\"]+)\"").matcher(svg);
    int count = 0;
    while (families.find()) {
      assertEquals(ChartFonts.SVG_FAMILY, families.group(1));
      count++;
    }
    assertTrue(count > 0, svg);
    assertTrue(svg.contains("font-weight=\"bold\""), svg);
  }

  @Test
  void identifiersOfTwoChartsDiffer() throws Exception {
    Set<String> first = ids(parse(svg(page(), "first-")));
    Set<String> second = ids(parse(svg(page(), "second-")));
    assertTrue(first.size() > 2, "ids " + first);
    first.retainAll(second);
    assertEquals(Set.of(), first);
  }

  @Test
  void prefixThatIsNoIdentifierIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> ChartWriter.svg(page(), "1 a"));
    assertThrows(IllegalArgumentException.class, () -> ChartWriter.svg(page(), ""));
  }

  private static String svg(ChartPage page, String idPrefix) {
    return new String(ChartWriter.svg(page, idPrefix), StandardCharsets.UTF_8);
  }

  private static Document parse(String svg) throws Exception {
    return DocumentBuilderFactory.newDefaultInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
  }

  private static String textOf(Document document, String element) {
    NodeList found = document.getElementsByTagName(element);
    assertEquals(1, found.getLength(), element);
    return found.item(0).getTextContent();
  }

  private static Set<String> ids(Document document) {
    Set<String> ids = new HashSet<>();
    NodeList all = document.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      if (all.item(i) instanceof Element element && element.hasAttribute("id")) {
        ids.add(element.getAttribute("id"));
      }
    }
    return ids;
  }
}
