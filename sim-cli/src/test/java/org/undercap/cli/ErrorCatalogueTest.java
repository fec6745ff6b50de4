package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the command line says to wrong words and files, letter for letter: see {@code errors.txt}. A
 * block there is a command, its exit code, and what is printed; {@code ...} at the end of a line
 * stands for a list that grows with the program.
 */
class ErrorCatalogueTest {
  private static final String MORE = " ...";

  @TempDir private static Path folder;

  @BeforeAll
  static void prepare() throws IOException {
    SmallScenario.in(folder, "small.yaml");
    write("clean.yaml", SmallScenario.TEXT.replace("in-colony: 500", "in-colony: 0"));
    write("bare.yaml", SmallScenario.TEXT.substring(0, SmallScenario.TEXT.indexOf("plans:")));
    write("broken.yaml", "undercap: 1\nname: [\n");
    write("design.csv", "mites\n5\n");
    write("odd.csv", "mites,moon\n5,full\n");
    write("class.csv", "date,bees,mites\n2026-08-08,300,4\n2026-09-08,300,9\n");
    write("yard.csv", "colony,wash_bees,wash_mites\nA,300,4\n");
    write("file", "x\n");
    Files.createDirectory(folder.resolve("folder"));
    Files.createDirectory(folder.resolve("taken"));
    write("taken/daily.csv", "old\n");
  }

  private static void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  static List<String> blocks() throws IOException {
    try (InputStream in = ErrorCatalogueTest.class.getResourceAsStream("errors.txt")) {
      String all = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return Arrays.stream(all.split("\n\n(?=> )")).map(String::strip).toList();
    }
  }

  @ParameterizedTest
  @MethodSource("blocks")
  void saysWhatHappenedWhereAndWhatToDo(String block) {
    List<String> lines = block.lines().toList();
    String[] words = lines.get(0).substring(2).replace("DIR", folder.toString()).split(" ");
    CliRun run = CliRun.in(Locale.GERMANY, words);
    assertEquals(Integer.parseInt(lines.get(1)), run.exitCode(), run.err());
    assertEquals("", run.out(), "results and errors are kept apart");
    List<String> said = run.err().replace(folder.toString(), "DIR").strip().lines().toList();
    List<String> expected = lines.subList(2, lines.size());
    assertEquals(expected.size(), said.size(), run.err());
    for (int i = 0; i < expected.size(); i++) {
      String line = expected.get(i);
      if (line.endsWith(MORE)) {
        String begin = line.substring(0, line.length() - MORE.length());
        assertTrue(said.get(i).startsWith(begin), said.get(i));
      } else {
        assertEquals(line, said.get(i));
      }
    }
    assertEquals("old\n", taken(), "nothing is overwritten");
  }

  private static String taken() {
    return SmallScenario.files(folder.resolve("taken")).get("daily.csv");
  }
}
