package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;

/** The page {@code reports/index.html} shows all that lies beside it. */
class GalleryCommandTest {
  private static final Path REPORTS = Path.of("..", "reports");
  private static final long MOST_BYTES = 25_000_000;
  @TempDir private Path folder;

  @Test
  void shippedGalleryIsWhatTheProgramMakes() throws IOException {
    copyPagesAndNames();
    CliRun run = CliRun.of("gallery", folder.toString());
    assertEquals(0, run.exitCode(), run.err());
    assertEquals("", run.out());
    assertEquals(
        Files.readString(folder.resolve("index.html")),
        Files.readString(REPORTS.resolve("index.html")),
        "out of date; make it anew: sim-cli/undercap gallery reports");
  }

  @Test
  void everyReportPictureAndTableIsLinked() throws IOException {
    Matcher link =
        Pattern.compile("(?:href|src)=\"([^\"]+)\"")
            .matcher(Files.readString(REPORTS.resolve("index.html")));
    TreeSet<String> linked = new TreeSet<>(List.of("README.md", "index.html"));
    while (link.find()) {
      String file = URLDecoder.decode(link.group(1), StandardCharsets.UTF_8);
      assertTrue(Files.isRegularFile(REPORTS.resolve(file)), file);
      linked.add(file);
    }
    TreeSet<String> there = new TreeSet<>();
    long bytes = 0;
    for (Path file : files()) {
      there.add(REPORTS.relativize(file).toString().replace('\\', '/'));
      bytes += Files.size(file);
    }
    assertEquals(there, linked);
    assertTrue(bytes < MOST_BYTES, "size " + bytes);
  }

  @Test
  void answersTitlesAndMarkupAreShown() throws IOException {
    Path answer = Files.createDirectories(folder.resolve("a b"));
    Files.writeString(
        answer.resolve("answer.html"),
        "<title>A &amp; &lt;b&gt;</title><section id=\"answer\"><h2>x</h2>\n<p>Wait &amp; see.</p>");
    assertEquals(0, CliRun.of("gallery", folder.toString()).exitCode());
    String page = Files.readString(folder.resolve("index.html"));
    assertTrue(
        page.contains(">A &amp; &lt;b></a>") || page.contains(">A &amp; &lt;b&gt;</a>"), page);
    assertTrue(page.contains("<p>Wait &amp; see.</p>"), page);
    assertFalse(page.contains("Teaching packs"), page);
  }

  @Test
  void folderWithoutResultsIsRefused() {
    CliRun run = CliRun.of("gallery", folder.toString());
    assertEquals(2, run.exitCode());
    assertTrue(run.err().contains("no folder in it holds an answer"), run.err());
    assertEquals(2, CliRun.of("gallery", folder.resolve("none").toString()).exitCode());
    assertFalse(Files.exists(folder.resolve("index.html")));
  }

  /** Only pages and documents are read; of all else the name is enough. */
  private void copyPagesAndNames() throws IOException {
    for (Path file : files()) {
      Path copy = folder.resolve(REPORTS.relativize(file).toString());
      Files.createDirectories(copy.getParent());
      boolean read = file.toString().endsWith(".html") || file.toString().endsWith(".md");
      if (read) {
        Files.copy(file, copy);
      } else {
        Files.createFile(copy);
      }
    }
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.walk(REPORTS)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }
}
