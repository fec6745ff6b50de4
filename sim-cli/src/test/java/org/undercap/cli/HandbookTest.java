package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** The handbook is made, its links lead somewhere, and its command lines are right. */
class HandbookTest {
  private static final Path SOURCES = Path.of("src", "handbook");
  private static final Pattern LINK = Pattern.compile("href=\"([^\"#]*)(?:#([^\"]+))?\"");
  private static final Pattern SHELL = Pattern.compile("```sh\n(.*?)```", Pattern.DOTALL);
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

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

  static Stream<String> shellLines() throws IOException {
    List<String> lines = new ArrayList<>();
    try (Stream<Path> files = Files.list(SOURCES)) {
      for (Path file : files.sorted().toList()) {
        Matcher block = SHELL.matcher(Files.readString(file));
        while (block.find()) {
          block.group(1).lines().forEach(lines::add);
        }
      }
    }
    assertTrue(lines.size() > 15, lines.toString());
    return lines.stream();
  }

  @ParameterizedTest
  @MethodSource("shellLines")
  void shellLineIsUnderstood(String line) {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(line);
    while (word.find()) {
      words.add(word.group(1) == null ? word.group(2) : word.group(1));
    }
    assertEquals("undercap", words.get(0), line);
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    CommandLine program = Main.commandLine(nowhere, nowhere, false, CliRun.REPORT);
    try {
      program.parseArgs(words.subList(1, words.size()).toArray(String[]::new));
    } catch (ParameterException e) {
      throw new AssertionError(line, e);
    }
    words.stream()
        .filter(each -> each.startsWith("scenarios/"))
        .forEach(each -> assertTrue(Files.exists(Path.of("..").resolve(each)), line));
  }
}
