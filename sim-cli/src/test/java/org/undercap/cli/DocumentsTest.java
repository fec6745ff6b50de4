package org.undercap.cli;

import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.ParseResult;

/**
 * The blocks of code in README.md, DEVELOPERS.md and the handbook do what they say: those of each
 * document are run one after another in a folder that holds nothing but the scenarios. Links lead
 * somewhere.
 */
class DocumentsTest {
  private static final Path TOP = Path.of("..");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final Pattern PROGRAM = Pattern.compile("^(sim-cli/)?undercap ");

  /** Lines and blocks that begin like this are not run here, but as the second text says. */
  private static final Map<String, String> ELSEWHERE =
      Map.ofEntries(
          entry("unzip undercap-", "ArchivesIT unpacks the archive"),
          entry("bin/undercap compare scenarios/saltmere-garth.yaml", "ArchivesIT"),
          entry("sim-cli/undercap growth", "PackedProgramIT, as all such lines of README.md"),
          entry("sim-cli/undercap fit --growth", "PackedProgramIT"),
          entry("sim-cli/undercap lesson all --climate southern", "PackedProgramIT"),
          entry("LIBRARIES=$(echo sim-cli/target/lib", "for Spark: BatchJobTest in src/spark-test"),
          entry("spark-submit --class org.undercap.cli.spark", "BatchJobTest"),
          entry("runs <- read.csv(\"results/runs.csv\")\ndaily", "OtherLanguagesTest"),
          entry("import pandas", "OtherLanguagesTest"),
          entry("find sim-cli/src/main/resources", "SafetyTest holds the sums"),
          entry("sim-cli/undercap compare scenarios/*.yaml", "ReportsTest"),
          entry("sim-cli/undercap gallery reports", "GalleryTest"),
          entry("sim-cli/undercap fit scenarios/research/", "minutes; see Plot7ReportTest"),
          entry("sim-cli/undercap lesson all --climate temperate-oceanic", "LessonReportsTest"));

  /**
   * What is added: a slow command is spared time, one that asks is given no questions ({@code
   * NewCommandTest} answers them), and one is told where it works.
   */
  private static final Map<String, List<String>> ADDED =
      Map.of(
          "new", List.of("--defaults"),
          "compare", List.of("--members=20"),
          "apiary", List.of("--members=20"),
          "rerun", List.of("--inputs", "."));

  /** How the program of a language is started; the name of its file follows. */
  private static final Map<String, List<String>> LANGUAGES =
      Map.of(
          "java",
          List.of(
              Path.of(System.getProperty("java.home"), "bin", "java").toString(),
              "--class-path",
              absolute(System.getProperty("java.class.path"))),
          "python",
          List.of("python3"),
          "r",
          List.of("Rscript"));

  private static final String JAVA =
      """
      import java.nio.file.Path;
      import org.undercap.scenario.*;
      import org.undercap.scenario.io.*;
      import org.undercap.simulation.*;
      import org.undercap.comparison.*;

      class Example {
        public static void main(String[] args) {
      %s
        }
      }
      """;

  private static String absolute(String classPath) {
    return Arrays.stream(classPath.split(File.pathSeparator, -1))
        .map(part -> Path.of(part).toAbsolutePath().toString())
        .collect(Collectors.joining(File.pathSeparator));
  }

  static List<Path> documents() throws IOException {
    List<Path> all =
        new ArrayList<>(List.of(TOP.resolve("README.md"), TOP.resolve("DEVELOPERS.md")));
    try (Stream<Path> pages = Files.list(Path.of("src", "handbook"))) {
      pages.sorted().forEach(all::add);
    }
    return all;
  }

  /** A block of code. */
  private record Block(String language, String file, String text) {
    static List<Block> of(Path document) throws IOException {
      List<Block> blocks = new ArrayList<>();
      Handbook.PARSER
          .parse(Files.readString(document))
          .accept(
              new AbstractVisitor() {
                @Override
                public void visit(FencedCodeBlock code) {
                  String[] info = code.getInfo().split(" ", 2);
                  blocks.add(new Block(info[0], info[info.length - 1], code.getLiteral()));
                }
              });
      return blocks;
    }

    /** Commands, or else the whole block. */
    List<String> parts() {
      return language.equals("sh")
          ? text.replaceAll("\\\\\n *", "").lines().toList()
          : List.of(text);
    }
  }

  @TestFactory
  Stream<DynamicContainer> everyBlockOfCodeRuns(@TempDir Path place) throws IOException {
    List<DynamicContainer> all = new ArrayList<>();
    for (Path document : documents()) {
      Path folder = Files.createDirectories(place.resolve(document.getFileName()));
      copyScenarios(folder);
      List<DynamicTest> tests = new ArrayList<>();
      for (Block block : Block.of(document)) {
        for (String part : block.parts()) {
          if (!block.language().isEmpty()
              && ELSEWHERE.keySet().stream().noneMatch(part::startsWith)) {
            tests.add(DynamicTest.dynamicTest(part, () -> run(block, part, folder)));
          }
        }
      }
      all.add(DynamicContainer.dynamicContainer(document.toString(), tests));
    }
    return all.stream();
  }

  @Test
  void whatIsRunElsewhereIsStillThere() throws IOException {
    Set<String> unused = new HashSet<>(ELSEWHERE.keySet());
    for (Path document : documents()) {
      for (Block block : Block.of(document)) {
        block.parts().forEach(part -> unused.removeIf(part::startsWith));
      }
    }
    assertEquals(Set.of(), unused);
  }

  private static void copyScenarios(Path folder) throws IOException {
    Path from = TOP.resolve("scenarios");
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Files.copy(file, folder.resolve("scenarios").resolve(from.relativize(file)));
      }
    }
  }

  private static void run(Block block, String part, Path folder) throws Exception {
    switch (block.language()) {
      case "sh" -> runCommand(part, folder);
      case "csv", "yaml" -> Files.writeString(folder.resolve(block.file()), part);
      case "java" -> runProgram(block.language(), "Example.java", JAVA.formatted(part), folder);
      default -> runProgram(block.language(), "example." + block.language(), part, folder);
    }
  }

  private static void runCommand(String line, Path folder) {
    assertTrue(PROGRAM.matcher(line).find(), "a command of another program: " + line);
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(PROGRAM.matcher(line).replaceFirst(""));
    while (word.find()) {
      words.add(word.group(1) == null ? word.group(2) : word.group(1));
    }
    words.addAll(ADDED.getOrDefault(words.get(0), List.of()));
    Set<String> files = files(words);
    words.replaceAll(each -> files.contains(each) ? folder.resolve(each).toString() : each);
    CliRun run = CliRun.of(words.toArray(String[]::new));
    assertEquals(0, run.exitCode(), line + "\n" + run.out() + run.err());
    assertTrue(!run.out().isBlank() || !run.err().isBlank(), line);
  }

  /** The words that name files and folders. */
  private static Set<String> files(List<String> words) {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    CommandLine program = Main.commandLine(nowhere, nowhere, false, CliRun.REPORT);
    Set<String> files = new HashSet<>();
    for (ParseResult parsed = program.parseArgs(words.toArray(String[]::new));
        parsed != null;
        parsed = parsed.subcommand()) {
      for (ArgSpec arg : parsed.matchedArgs()) {
        if (arg.type() == Path.class || List.of(arg.auxiliaryTypes()).contains(Path.class)) {
          files.addAll(arg.originalStringValues());
        }
      }
    }
    return files;
  }

  private static void runProgram(String language, String file, String text, Path folder)
      throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(LANGUAGES.get(language));
    assumeTrue(isThere(words.get(0)), words.get(0) + " is not installed");
    words.add(file);
    Files.writeString(folder.resolve(file), text);
    Path out = folder.resolve("out.txt");
    int exitCode =
        new ProcessBuilder(words)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(out.toFile())
            .start()
            .waitFor();
    assertEquals(0, exitCode, text + "\n" + Files.readString(out));
    assertTrue(Files.readString(out).matches("(?s).*\\d.*"), text + "\nprints no number");
  }

  private static boolean isThere(String program) throws InterruptedException {
    try {
      return new ProcessBuilder(program, "--version")
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start()
              .waitFor()
          == 0;
    } catch (IOException e) {
      return false;
    }
  }

  @ParameterizedTest
  @MethodSource("documents")
  void linksLeadSomewhere(Path document) throws IOException {
    for (String link : links(document)) {
      String[] parts = link.split("#", 2);
      Path to = parts[0].isEmpty() ? document : document.resolveSibling(parts[0]);
      if (!madeByTheBuild(to)) {
        assertTrue(Files.exists(to), document + ": " + link);
        if (parts.length == 2) {
          String page = Handbook.html(Files.readString(to));
          assertTrue(page.contains("id=\"" + parts[1] + "\""), document + ": " + link);
        }
      }
    }
  }

  /** {@code HandbookTest} follows links to such pages. */
  private static boolean madeByTheBuild(Path page) {
    return page.startsWith(Path.of("src", "handbook")) && !Files.exists(page);
  }

  private static List<String> links(Path document) throws IOException {
    List<String> links = new ArrayList<>();
    Handbook.PARSER
        .parse(Files.readString(document))
        .accept(
            new AbstractVisitor() {
              @Override
              public void visit(Link link) {
                links.add(link.getDestination());
              }

              @Override
              public void visit(Image image) {
                links.add(image.getDestination());
              }
            });
    links.removeIf(link -> link.startsWith("http"));
    return links;
  }

  @Test
  void linksAreFound() throws IOException {
    assertTrue(links(TOP.resolve("README.md")).size() > 5);
  }
}
