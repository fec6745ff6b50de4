package org.undercap.cli.output;

import java.util.ArrayList;
import java.util.List;

/** A page of text for a terminal: headings, paragraphs, facts with labels, and tables. */
public final class TextPage {
  private static final int LABEL = 18;
  private static final String BULLET = "- ";

  private final StringBuilder text = new StringBuilder();
  private Part last = Part.NONE;

  /** Creates an empty page. */
  public TextPage() {}

  /**
   * Adds the title of the page.
   *
   * @param words the title
   * @return this page
   */
  public TextPage title(String words) {
    begin(Part.TITLE);
    text.append(words).append('\n');
    return this;
  }

  /**
   * Adds a heading; what follows stands right below it.
   *
   * @param words the heading
   * @return this page
   */
  public TextPage heading(String words) {
    begin(Part.HEADING);
    text.append(words).append('\n');
    return this;
  }

  /**
   * Adds a paragraph.
   *
   * @param words its text
   * @return this page
   */
  public TextPage paragraph(String words) {
    begin(Part.PARAGRAPH);
    append("", words, 0);
    return this;
  }

  /**
   * Adds an item of a list.
   *
   * @param words its text
   * @return this page
   */
  public TextPage item(String words) {
    begin(Part.ITEM);
    append(BULLET, words, BULLET.length());
    return this;
  }

  /**
   * Adds a fact: a short label, and beside it what there is to say. Nothing is added if there is
   * nothing to say.
   *
   * @param label the label, shorter than 18 characters
   * @param words what there is to say, possibly empty
   * @return this page
   */
  public TextPage fact(String label, String words) {
    if (label.length() >= LABEL) {
      throw new IllegalArgumentException("label '" + label + "' must be shorter than " + LABEL);
    }
    if (!words.isEmpty()) {
      begin(Part.FACT);
      append(label + " ".repeat(LABEL - label.length()), words, LABEL);
    }
    return this;
  }

  /**
   * Adds a table.
   *
   * @param table the table
   * @return this page
   */
  public TextPage table(TextTable table) {
    begin(Part.TABLE);
    text.append(table.render());
    return this;
  }

  /**
   * The page as text.
   *
   * @return lines without blanks at their ends, each ended by a line feed
   */
  public String render() {
    return text.toString();
  }

  /** Leaves a line free, but not below a heading and not between facts or items. */
  private void begin(Part part) {
    boolean together = part == last && (part == Part.FACT || part == Part.ITEM);
    if (last != Part.NONE && last != Part.HEADING && !together) {
      text.append('\n');
    }
    last = part;
  }

  private void append(String start, String words, int indent) {
    String before = start;
    for (String line : wrap(words, TextTable.WIDTH - indent)) {
      text.append((before + line).stripTrailing()).append('\n');
      before = " ".repeat(indent);
    }
  }

  /**
   * Breaks a text into lines that fit a terminal, all indented.
   *
   * @param words the text
   * @param indent blanks before each line
   * @return the lines, each ended by a line feed
   */
  public static String indented(String words, int indent) {
    StringBuilder lines = new StringBuilder();
    for (String line : wrap(words, TextTable.WIDTH - indent)) {
      lines.append(" ".repeat(indent)).append(line).append('\n');
    }
    return lines.toString();
  }

  /** Breaks a text into lines between its words; a word that is too long keeps its own line. */
  static List<String> wrap(String words, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : Unbroken.join(words).strip().split("\\s+", -1)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(Unbroken.release(word));
    }
    lines.add(line.toString());
    return lines;
  }

  private enum Part {
    NONE,
    TITLE,
    HEADING,
    PARAGRAPH,
    ITEM,
    FACT,
    TABLE
  }
}
