package org.undercap.cli.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A report in plain words, the same whether it becomes text, a web page or Markdown. The order of
 * its sections is the order in which it is read, also aloud.
 *
 * @param title what it is about
 * @param subtitle from when to when; possibly empty
 * @param stamp what must stand on every page, if anything
 * @param front what fits on one page of paper
 * @param details all the rest
 */
public record Report(
    String title,
    String subtitle,
    Optional<String> stamp,
    List<Section> front,
    List<Section> details) {
  /** The stamp of a study run. */
  public static final String STUDY = "Study run, not advice";

  /**
   * Copies the lists.
   *
   * @param title what it is about
   * @param subtitle from when to when; possibly empty
   * @param stamp what must stand on every page, if anything
   * @param front what fits on one page of paper
   * @param details all the rest
   */
  public Report {
    front = List.copyOf(front);
    details = List.copyOf(details);
  }

  /**
   * All sections.
   *
   * @return in the order in which they are read
   */
  public List<Section> sections() {
    return Stream.concat(front.stream(), details.stream()).toList();
  }

  /**
   * A section under a heading.
   *
   * @param id name for looks and links, in small letters
   * @param heading its heading
   * @param blocks what stands below it, in order
   */
  public record Section(String id, String heading, List<Block> blocks) {
    /**
     * Copies the list.
     *
     * @param id name for looks and links
     * @param heading its heading
     * @param blocks what stands below it
     */
    public Section {
      blocks = List.copyOf(blocks);
    }
  }

  /** A part of a section. */
  public sealed interface Block {}

  /**
   * A smaller heading within a section.
   *
   * @param text its words
   */
  public record Subheading(String text) implements Block {}

  /**
   * A paragraph.
   *
   * @param text sentences
   */
  public record Paragraph(String text) implements Block {}

  /**
   * A list without order.
   *
   * @param items one text each
   */
  public record Items(List<String> items) implements Block {
    /**
     * Copies the list.
     *
     * @param items one text each
     */
    public Items {
      items = List.copyOf(items);
    }
  }

  /**
   * Things with what there is to say about each: dates, cautions, words.
   *
   * @param terms in order
   */
  public record Terms(List<Term> terms) implements Block {
    /**
     * Copies the list.
     *
     * @param terms in order
     */
    public Terms {
      terms = List.copyOf(terms);
    }
  }

  /**
   * One thing and what there is to say about it.
   *
   * @param name the thing
   * @param text sentences
   */
  public record Term(String name, String text) {}

  /**
   * A table. The first cell of a row names what the row is about.
   *
   * @param caption what it shows
   * @param columns headings, at least two
   * @param rows one text for each column
   */
  public record Grid(String caption, List<Column> columns, List<List<String>> rows)
      implements Block {
    /**
     * Copies the lists.
     *
     * @param caption what it shows
     * @param columns headings
     * @param rows one text for each column
     * @throws IllegalArgumentException if a row has not as many cells as there are columns
     */
    public Grid {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
      for (List<String> row : rows) {
        if (row.size() != columns.size()) {
          throw new IllegalArgumentException(
              row.size() + " cells for " + columns.size() + " columns: " + row);
        }
      }
    }
  }

  /**
   * A column of a table.
   *
   * @param heading its heading
   * @param numeric whether it holds numbers rather than words
   */
  public record Column(String heading, boolean numeric) {
    /**
     * A column of words.
     *
     * @param heading its heading
     * @return the column
     */
    public static Column words(String heading) {
      return new Column(heading, false);
    }

    /**
     * A column of numbers.
     *
     * @param heading its heading
     * @return the column
     */
    public static Column numbers(String heading) {
      return new Column(heading, true);
    }
  }

  /**
   * A chart.
   *
   * @param name name of its file without ending
   * @param alternative what a reader who cannot see it needs to hear
   */
  public record Picture(String name, String alternative) implements Block {}
}
