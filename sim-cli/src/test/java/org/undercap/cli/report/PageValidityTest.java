package org.undercap.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;
import org.xml.sax.SAXException;

/** The checker of the W3C finds no error in any page that the program writes. */
class PageValidityTest {
  private static final String GOOD = "Document checking completed. No errors found.";
  @TempDir private Path folder;

  @Test
  void awkwardNamesLeavePageAndSheetValid() throws Exception {
    Path results =
        AwkwardScenario.answered(folder, AwkwardScenario.MARKUP, true, AwkwardScenario.MARKUP);
    assertValid(results.resolve("answer.html"));
    assertValid(results.resolve("record-sheet.html"));
  }

  @Test
  void refusalIsValid() throws Exception {
    Path results = folder.resolve("refused");
    CliRun.of("compare", "../scenarios/serra-do-ipe-roxo.yaml", "--out=" + results);
    assertValid(results.resolve("answer.html"));
  }

  @Test
  void shippedReportsAreValid() throws Exception {
    try (Stream<Path> files = Files.walk(Path.of("..", "reports"))) {
      List<Path> pages = files.filter(file -> file.toString().endsWith(".html")).sorted().toList();
      assertTrue(pages.size() >= 20, "the pages were found");
      for (Path page : pages) {
        assertValid(page);
      }
    }
  }

  @Test
  void checkerFindsErrors() throws Exception {
    String page = "<!DOCTYPE html><html lang=\"en\"><title>x</title><p><img src=\"x\">";
    String messages = check(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)));
    assertFalse(messages.contains(GOOD), messages);
    assertTrue(messages.contains("alt"), messages);
  }

  private static void assertValid(Path page) throws IOException, SAXException {
    try (InputStream in = Files.newInputStream(page)) {
      assertEquals(GOOD, check(in), page.toString());
    }
  }

  private static String check(InputStream page) throws IOException, SAXException {
    EmbeddedValidator checker = new EmbeddedValidator();
    checker.setOutputFormat(EmbeddedValidator.OutputFormat.TEXT);
    return checker
        .validate(page)
        // A remark on the slashes that let strict parsers of XML read the page too.
        .replaceAll("Info: Trailing slash on void elements.*\n(From line .*\n)?", "")
        .strip();
  }
}
