package org.undercap.cli.report;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A page that the program wrote, read by a strict parser that forgives nothing. */
final class WebPage {
  private final String text;
  private final Document document;

  private WebPage(String text, Document document) {
    this.text = text;
    this.document = document;
  }

  static WebPage of(Path file) {
    try {
      String text = Files.readString(file);
      DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
      builder.setErrorHandler(null);
      return new WebPage(text, builder.parse(new InputSource(new StringReader(text))));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ParserConfigurationException | SAXException e) {
      throw new AssertionError(file + " is not well-formed: " + e.getMessage(), e);
    }
  }

  /** The page as it is in the file. */
  String source() {
    return text;
  }

  /** All elements in the order in which they are read. */
  List<Element> elements() {
    return elements("*");
  }

  /** All elements of a name in the order in which they are read. */
  List<Element> elements(String name) {
    return list(document.getElementsByTagName(name));
  }

  /** The element of an identifier. */
  Element id(String id) {
    return elements().stream()
        .filter(element -> element.getAttribute("id").equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no element has the id " + id));
  }

  /** The texts of all elements of a name. */
  List<String> texts(String name) {
    return elements(name).stream().map(WebPage::text).toList();
  }

  /** The text of an element as it is read, runs of white space as one blank. */
  static String text(Node node) {
    return node.getTextContent().replaceAll("\\s+", " ").strip();
  }

  /** The elements of a name inside another, in order. */
  static List<Element> inside(Element element, String name) {
    return list(element.getElementsByTagName(name));
  }

  private static List<Element> list(NodeList nodes) {
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }
}
