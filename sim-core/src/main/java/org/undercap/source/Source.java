package org.undercap.source;

import java.util.ArrayList;
import java.util.List;

/**
 * An entry of the bibliography. Parts that were not found are empty.
 *
 * @param key name by which values refer to this source, as in {@code boot-1995}
 * @param authors the authors; the word "none" where nobody is named
 * @param year year of publication, several if several publications share the key, empty if undated
 * @param title title; trade names are left out
 * @param journal journal, or kind of publication
 * @param volume volume
 * @param pages pages or article number
 * @param doi digital object identifier, without a leading web address
 * @param read how it was read
 * @param note where it was read, and what is from memory
 */
public record Source(
    String key,
    String authors,
    String year,
    String title,
    String journal,
    String volume,
    String pages,
    String doi,
    Access read,
    String note) {

  /**
   * The source in one readable line: authors (year), title, journal volume: pages, DOI.
   *
   * @return one line of plain text
   */
  public String citation() {
    List<String> parts = new ArrayList<>();
    if (!authors.equals("none")) {
      parts.add(year.isEmpty() ? authors : authors + " (" + year + ")");
    }
    if (!title.isEmpty()) {
      parts.add(title);
    }
    String place = (journal + " " + volume).trim();
    if (!pages.isEmpty()) {
      place = place.isEmpty() ? pages : place + ": " + pages;
    }
    if (!place.isEmpty()) {
      parts.add(place);
    }
    if (!doi.isEmpty()) {
      parts.add("doi:" + doi);
    }
    return String.join(". ", parts);
  }
}
