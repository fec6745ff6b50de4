package org.undercap.cli.chart;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.jfree.chart.text.TextUtils;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Writes a page as SVG with real text and a text alternative. */
final class SvgWriter {
  private static final String NAMESPACE = "http://www.w3.org/2000/svg";

  private SvgWriter() {}

  /** The page as an element without prologue, fit for a file of its own and for a web page. */
  static byte[] write(ChartPage page, String idPrefix) {
    if (!idPrefix.matches("[A-Za-z][A-Za-z0-9_-]*")) {
      throw new IllegalArgumentException(
          "prefix '" + idPrefix + "' must begin with a letter and hold letters, digits, - and _");
    }
    TextUtils.setUseDrawRotatedStringWorkaround(false);
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(newDocument());
    context.setComment(null);
    context.setPrecision(2);
    context.setIDGenerator(
        new SVGIDGenerator() {
          @Override
          public String generateID(String prefix) {
            return super.generateID(idPrefix + prefix);
          }
        });
    SVGGraphics2D g = new SVGGraphics2D(context, false);
    page.draw(g);
    Element root = g.getRoot();
    describe(root, page, idPrefix);
    finish(root, idPrefix);
    StringWriter out = new StringWriter();
    try {
      g.stream(root, out, false, false);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    String text = out.toString().replace("\r\n", "\n");
    return text.substring(text.indexOf("<svg")).getBytes(StandardCharsets.UTF_8);
  }

  private static Document newDocument() {
    try {
      return DocumentBuilderFactory.newDefaultInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument(NAMESPACE, "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("Java's own XML parser is missing", e);
    }
  }

  private static void describe(Element root, ChartPage page, String idPrefix) {
    String width = number(page.width());
    String height = number(page.height());
    root.setAttribute("width", width + "pt");
    root.setAttribute("height", height + "pt");
    root.setAttribute("viewBox", "0 0 " + width + " " + height);
    root.setAttribute("role", "img");
    root.setAttribute("aria-labelledby", idPrefix + "title " + idPrefix + "desc");
    Node first = root.getFirstChild();
    root.insertBefore(element(root, "title", idPrefix, page.text().finding()), first);
    root.insertBefore(element(root, "desc", idPrefix, page.text().alternative()), first);
  }

  private static Element element(Element root, String name, String idPrefix, String words) {
    Element element = root.getOwnerDocument().createElementNS(NAMESPACE, name);
    element.setAttribute("id", idPrefix + name);
    element.setTextContent(words);
    return element;
  }

  private static String number(double points) {
    return String.format(Locale.ROOT, "%.0f", points);
  }

  /** Names faces in reserve for readers without the charts' own, and makes identifiers unique. */
  private static void finish(Element element, String idPrefix) {
    if (element.hasAttribute("font-family")) {
      element.setAttribute("font-family", ChartFonts.SVG_FAMILY);
    }
    String id = element.getAttribute("id");
    if (!id.isEmpty() && !id.startsWith(idPrefix)) {
      element.setAttribute("id", idPrefix + id);
    }
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner) {
        finish(inner, idPrefix);
      }
    }
  }
}
