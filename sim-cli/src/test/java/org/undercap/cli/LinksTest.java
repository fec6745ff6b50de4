package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every link and picture of the pages in reports leads to a file and a place that is there. */
class LinksTest {
  private static final Path REPORTS = Path.of("..", "reports");
  private static final Pattern HTML = Pattern.compile("(?:href|src)=\"([^\"#]*)(?:#([^\"]+))?\"");
  private static final Pattern MARKDOWN = Pattern.compile("\\]\\(([^)#\\s]*)(?:#([^)\\s]+))?\\)");
  private static final Pattern ELSEWHERE = Pattern.compile("(?:https?|data|mailto):.*");

  @Test
  void everyLinkOfThePagesLeadsSomewhere() throws IOException {
    List<String> broken = new ArrayList<>();
    int links = 0;
    for (Path page : pages()) {
      Matcher link =
          (page.toString().endsWith(".md") ? MARKDOWN : HTML).matcher(Files.readString(page));
      while (link.find()) {
        if (!ELSEWHERE.matcher(link.group(1)).matches()) {
          links++;
          if (!leadsSomewhere(page, link.group(1), link.group(2))) {
            broken.add(page + ": " + link.group());
          }
        }
      }
    }
    assertEquals(List.of(), broken);
    assertTrue(links > 100, "links were found: " + links);
  }

  private static List<Path> pages() throws IOException {
    try (Stream<Path> all = Files.walk(REPORTS)) {
      return all.filter(page -> page.toString().matches(".*\\.(html|md)")).sorted().toList();
    }
  }

  private static boolean leadsSomewhere(Path from, String file, String anchor) throws IOException {
    Path to = file.isEmpty() ? from : from.resolveSibling(file.replace("%20", " "));
    return Files.exists(to)
        && (anchor == null
            || !to.toString().endsWith(".html")
            || Files.readString(to).contains("id=\"" + anchor + "\""));
  }
}
