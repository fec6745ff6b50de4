package org.undercap.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A browser opens and prints the answer pages. Left out with a message where there is no Chromium
 * or no poppler-utils (Debian packages of these names).
 */
@Tag("browser")
class PrintedPageTest {
  private static final long LONGEST_SECONDS = 120;
  private static final int WHITE = 0xFFFFFFFF;

  private static final List<String> QUIET =
      List.of(
          "--headless=new",
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync",
          "--hide-scrollbars",
          "--no-pdf-header-footer");

  @TempDir private static Path folder;

  @BeforeAll
  static void findPrograms() {
    for (String program : List.of("chromium", "pdftotext", "pdfinfo")) {
      assumeTrue(found(program), program + " is not installed, so no page is printed");
    }
  }

  static Stream<Path> answers() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("..", "reports"))) {
      return files.filter(f -> f.endsWith("answer.html")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("answers")
  void answerDatesReasonAndChartFitOnOnePageOfPaper(Path answer) throws Exception {
    boolean refusal = Files.readString(answer).contains("id=\"refusal\"");
    for (Paper paper : Paper.values()) {
      Path pdf = print(answer, paper);
      assertTrue(run("pdfinfo", pdf.toString()).contains("(" + paper.told + ")"), paper.told);
      String first = page(pdf, 1);
      assertTrue(first.contains(refusal ? "No advice" : "The answer"), first);
      assertTrue(first.contains("Cautions"), first);
      if (refusal) {
        assertTrue(run("pdfinfo", pdf.toString()).matches("(?s).*Pages: +1\\n.*"), "one page");
      } else {
        assertTrue(first.contains("What to do when") && first.contains("Why"), first);
        assertTrue(first.contains("date, 20"), "axis of the chart: " + first);
        assertTrue(first.contains("A typical season"), "foot of the chart: " + first);
        assertTrue(page(pdf, 2).strip().startsWith("The plans"), page(pdf, 2));
      }
    }
  }

  @Test
  void longNamesWithoutBlanksDoNotWidenThePage() throws Exception {
    Path results =
        AwkwardScenario.answered(folder, AwkwardScenario.LONG, false, AwkwardScenario.LONG);
    for (int width : new int[] {360, 1000}) {
      String dom = widthOf(results.resolve("answer.html"), width);
      assertTrue(dom.contains("data-overflow=\"0\""), width + " wide: " + dom);
    }
  }

  @Test
  void recordSheetFitsOnOnePage() throws Exception {
    for (Paper paper : Paper.values()) {
      Path pdf = print(Path.of("..", "reports", "old-ferry-landing", "record-sheet.html"), paper);
      assertTrue(run("pdfinfo", pdf.toString()).matches("(?s).*Pages: +1\\n.*"), paper.told);
    }
  }

  @Test
  void screenshotShowsThePage() throws Exception {
    Path picture = folder.resolve("screen.png");
    Path page = Path.of("..", "reports", "saltmere-garth", "answer.html");
    browse(page, "--window-size=900,1400", "--screenshot=" + picture);
    BufferedImage image = ImageIO.read(picture.toFile());
    assertEquals(900, image.getWidth());
    int[] dots = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    double ink = Arrays.stream(dots).filter(dot -> dot != WHITE).count() / (double) dots.length;
    assertTrue(ink > 0.03 && ink < 0.5, "share of dots that are not white: " + ink);
  }

  /** Sizes of paper. */
  private enum Paper {
    A4("A4"),
    LETTER("letter");

    private final String told;

    Paper(String told) {
      this.told = told;
    }
  }

  private static Path print(Path page, Paper paper) throws IOException, InterruptedException {
    String text = Files.readString(page);
    assertEquals(1, text.split("</style>", -1).length - 1, "the page has one style sheet");
    boolean wide = text.contains("size: landscape");
    String size =
        "@media print { @page { size: " + paper.told + (wide ? " landscape" : "") + " } }";
    Path sized = Files.createTempFile(folder, "sized", ".html");
    Files.writeString(sized, text.replace("</style>", size + "</style>"));
    Path pdf = Files.createTempFile(folder, "printed", ".pdf");
    browse(sized, "--print-to-pdf=" + pdf);
    return pdf;
  }

  /** The page after a script of the test has written down how far it is wider than the window. */
  private static String widthOf(Path page, int width) throws IOException, InterruptedException {
    String measure =
        "<script>document.documentElement.dataset.overflow ="
            + " Math.max(0, document.documentElement.scrollWidth - window.innerWidth);</script>";
    Path measured = Files.createTempFile(folder, "measured", ".html");
    Files.writeString(measured, Files.readString(page).replace("</body>", measure + "</body>"));
    String dom = browse(measured, "--window-size=" + width + ",900", "--dump-dom");
    return dom.substring(0, Math.min(dom.length(), 200));
  }

  private static String page(Path pdf, int number) throws IOException, InterruptedException {
    String page = Integer.toString(number);
    return run("pdftotext", "-f", page, "-l", page, pdf.toString(), "-");
  }

  private static String browse(Path page, String... options)
      throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(List.of("chromium"));
    words.addAll(QUIET);
    words.add("--user-data-dir=" + Files.createTempDirectory(folder, "profile"));
    words.addAll(List.of(options));
    words.add(page.toAbsolutePath().normalize().toUri().toString());
    return run(words.toArray(String[]::new));
  }

  private static String run(String... words) throws IOException, InterruptedException {
    Path out = Files.createTempFile(folder, "out", ".txt");
    Process process =
        new ProcessBuilder(words)
            .redirectOutput(out.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    if (!process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError(words[0] + " did not end");
    }
    assertEquals(0, process.exitValue(), String.join(" ", words));
    return Files.readString(out);
  }

  private static boolean found(String program) {
    return Stream.of(
            Optional.ofNullable(System.getenv("PATH")).orElse("").split(File.pathSeparator, -1))
        .anyMatch(place -> Files.isExecutable(Path.of(place, program)));
  }
}
