package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The handbook is made, and its links lead somewhere. */
class HandbookTest {
  private static final Path SOURCES = Path.of("src", "handbook");
  private static final Pattern LINK = Pattern.compile("href=\"([^\"#]*)(?:#([^\"]+))?\"");

  @Test
  void linksLeadSomewhere() throws IOException {
    Map<String, String> pages = Handbook.pages(SOURCES);
    assertTrue(pages.size() >= 10, pages.keySet().toString());
    int links = 0;
    for (Map.Entry<String, String> page : pages.entrySet()) {
      assertFalse(page.getValue().contains("\n@"), page.getKey());
      Matcher link = LINK.matcher(page.getValue());
      while (link.find()) {
        if (!link.group(1).startsWith("http")) {
          String to = link.group(1).isEmpty() ? page.getKey() : link.group(1).replace(".html", "");
          assertTrue(pages.containsKey(to), page.getKey() + ": " + link.group());
          String anchor = link.group(2);
          assertTrue(
              anchor == null || pages.get(to).contains("id=\"" + anchor + "\""), link.group());
          links++;
        }
      }
    }
    assertTrue(links > 50, "links were found");
  }

  @Test
  void everyQuestionHasAnAnswerOfTheEngineOrSaysThatItHasNone() throws IOException {
    String[] questions = Files.readString(SOURCES.resolve("questions.md")).split("\n### ", -1);
    assertTrue(questions.length > 15, "questions were found");
    for (int i = 1; i < questions.length; i++) {
      String answer = questions[i];
      assertTrue(Pattern.compile("\n@|no source|`undercap |\\]\\(").matcher(answer).find(), answer);
    }
  }
}
