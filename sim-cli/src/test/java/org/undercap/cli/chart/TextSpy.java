package org.undercap.cli.chart;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.text.TextUtils;
import org.w3c.dom.Document;

/** A drawing ground that remembers where each piece of text stands. */
final class TextSpy extends SVGGraphics2D {
  /** A piece of text, its place on the page and the size of its letters, all in points. */
  record Written(String text, Rectangle2D box, double size) {}

  private final List<Written> written = new ArrayList<>();

  private TextSpy() throws ParserConfigurationException {
    super(newDocument());
  }

  private static Document newDocument() throws ParserConfigurationException {
    return DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().newDocument();
  }

  static List<Written> textsOf(ChartPage page) {
    try {
      TextUtils.setUseDrawRotatedStringWorkaround(false);
      TextSpy spy = new TextSpy();
      page.draw(spy);
      return spy.written;
    } catch (ParserConfigurationException e) {
      throw new AssertionError(e);
    }
  }

  @Override
  public void drawString(String text, float x, float y) {
    AffineTransform place = getTransform();
    place.translate(x, y);
    Rectangle2D letters =
        getFont().createGlyphVector(getFontRenderContext(), text).getVisualBounds();
    Rectangle2D box = place.createTransformedShape(letters).getBounds2D();
    written.add(new Written(text, box, getFont().getSize2D()));
    super.drawString(text, x, y);
  }
}
