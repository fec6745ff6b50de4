package org.undercap.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;
import org.undercap.cli.SmallScenario;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;

/** The answer page: what stands on it, in which order, and that it needs nothing else. */
class AnswerPageTest {
  /** Answer, how sure, cautions, dates, reason; then the details. */
  private static final List<String> ORDER =
      List.of(
          "answer",
          "sure",
          "cautions",
          "dates",
          "reason",
          "plans",
          "change",
          "surveys",
          "basis",
          "limits",
          "words");

  private static final Set<String> ADDRESSES =
      Set.of("href", "xlink:href", "src", "srcset", "data", "action", "poster", "background");

  private static final Set<String> LOADING =
      Set.of("script", "link", "iframe", "object", "embed", "img", "image", "base", "form");

  @TempDir private static Path folder;
  private static Path results;
  private static WebPage page;

  @BeforeAll
  static void answer() {
    results = AwkwardScenario.answered(folder, "Two hives", false, AwkwardScenario.MARKUP);
    page = WebPage.of(results.resolve("answer.html"));
  }

  @Test
  void needsNoNetworkNoScriptAndNoOtherFile() {
    assertSelfContained(page);
    assertSelfContained(WebPage.of(results.resolve("record-sheet.html")));
  }

  private static void assertSelfContained(WebPage page) {
    for (Element element : page.elements()) {
      assertFalse(LOADING.contains(element.getTagName()), element.getTagName());
      NamedNodeMap attributes = element.getAttributes();
      for (int i = 0; i < attributes.getLength(); i++) {
        Attr attribute = (Attr) attributes.item(i);
        assertFalse(attribute.getName().startsWith("on"), attribute.toString());
        if (ADDRESSES.contains(attribute.getName())) {
          assertTrue(attribute.getValue().startsWith("#"), attribute.toString());
        }
        assertOwnParts(attribute.getValue());
      }
    }
    page.texts("style").forEach(AnswerPageTest::assertOwnParts);
  }

  private static void assertOwnParts(String style) {
    assertFalse(style.contains("@import"), style);
    assertFalse(style.matches("(?s).*url\\((?!#).*"), style);
  }

  @Test
  void isReadInTheOrderThatAnswersFirst() {
    assertEquals(ORDER, page.elements("section").stream().map(s -> s.getAttribute("id")).toList());
    for (Element section : page.elements("section")) {
      Element heading = page.id(section.getAttribute("aria-labelledby"));
      assertEquals("h2", heading.getTagName());
      assertEquals(heading, WebPage.inside(section, "*").get(0), "it begins with its heading");
    }
  }

  @Test
  void headingsDescendOneStepAtATime() {
    List<Integer> levels =
        page.elements().stream()
            .filter(element -> element.getTagName().matches("h[1-6]"))
            .map(element -> element.getTagName().charAt(1) - '0')
            .toList();
    assertEquals(1, levels.get(0));
    assertEquals(1, levels.stream().filter(level -> level == 1).count());
    for (int i = 1; i < levels.size(); i++) {
      assertTrue(levels.get(i) <= levels.get(i - 1) + 1, levels.toString());
    }
    assertEquals("en", page.elements("html").get(0).getAttribute("lang"));
    assertEquals("Two hives", page.texts("title").get(0));
  }

  @Test
  void chartsAreToldToThoseWhoCannotSeeThem() {
    List<Element> charts = page.elements("svg");
    assertEquals(2, charts.size());
    for (Element chart : charts) {
      assertEquals("img", chart.getAttribute("role"));
      for (String id : chart.getAttribute("aria-labelledby").split(" ", -1)) {
        assertTrue(WebPage.text(page.id(id)).length() > 20, id);
      }
      assertTrue(WebPage.text(chart).matches(".*[0-9].* when nothing is done.*"), "a finding");
    }
    List<Element> ids = page.elements().stream().filter(e -> e.hasAttribute("id")).toList();
    assertEquals(ids.size(), ids.stream().map(e -> e.getAttribute("id")).distinct().count());
  }

  @Test
  void tablesNameTheirColumnsAndRows() {
    List<Element> tables = page.elements("table");
    assertEquals(4, tables.size());
    for (Element table : tables) {
      assertFalse(WebPage.text(WebPage.inside(table, "caption").get(0)).isBlank());
      for (Element head : WebPage.inside(table, "th")) {
        assertTrue(Set.of("col", "row").contains(head.getAttribute("scope")), WebPage.text(head));
      }
    }
  }

  @Test
  void markupInNamesIsShownAndDoesNothing() throws IOException {
    assertTrue(page.texts("dt").contains(AwkwardScenario.MARKUP), page.texts("dt").toString());
    assertTrue(WebPage.text(page.id("plans")).contains(AwkwardScenario.ABOUT));
    assertEquals(List.of(), page.elements("b"));
    String markdown = Files.readString(results.resolve("answer.md"));
    assertFalse(markdown.matches("(?s).*(?<!\\\\)<.*"), markdown);
    assertTrue(markdown.contains("\\<script\\>"), markdown);
    assertTrue(markdown.contains("\\*not\\* \\[a\\](b) \\| \\`c\\`"), markdown);
  }

  @Test
  void longNameStaysWhole() {
    WebPage named =
        WebPage.of(
            AwkwardScenario.answered(folder, AwkwardScenario.LONG, false, AwkwardScenario.LONG)
                .resolve("answer.html"));
    assertEquals(AwkwardScenario.LONG, named.texts("h1").get(0));
    assertTrue(named.texts("dt").contains(AwkwardScenario.LONG));
    assertSelfContained(named);
  }

  @Test
  void nameThatIsTooLongForAPageIsRefused() {
    Path file = AwkwardScenario.in(folder, "Yard", false, "W".repeat(200));
    CliRun run = CliRun.of("compare", file.toString());
    assertEquals(3, run.exitCode());
    assertTrue(run.err().contains("is longer than the 80 letters accepted"), run.err());
  }

  @Test
  void nameThatRunsFromRightToLeftDoesNotTurnItsSentence() {
    WebPage named =
        WebPage.of(
            AwkwardScenario.answered(
                    folder, AwkwardScenario.RIGHT_TO_LEFT, false, AwkwardScenario.RIGHT_TO_LEFT)
                .resolve("answer.html"));
    assertEquals("auto", named.elements("h1").get(0).getAttribute("dir"));
    assertTrue(named.texts("bdi").contains(AwkwardScenario.RIGHT_TO_LEFT));
    assertTrue(
        WebPage.text(named.id("reason"))
            .contains("under \"\u2068" + AwkwardScenario.RIGHT_TO_LEFT + "\u2069\""),
        "a name in a sentence is kept apart from it");
  }

  @Test
  void studyRunIsStampedEverywhere() {
    Path study = AwkwardScenario.answered(folder, "Study", true, "Gel");
    assertEquals("Study run, not advice", WebPage.text(stamp(study, "answer.html")));
    assertEquals("Study run, not advice", WebPage.text(stamp(study, "record-sheet.html")));
    var files = SmallScenario.files(study);
    assertTrue(files.get("answer.html").contains("content: \"study run, not advice\""), "in print");
    assertTrue(files.get("answer.md").contains("\n**Study run, not advice**\n"));
    assertTrue(files.get("comparison.json").contains("\"study\": true"));
    assertTrue(
        files.get("calendar.ics").replace("\r\n ", "").contains("(Study run\\, not advice)"));
    assertFalse(page.source().contains("not advice\""), "others are not");
  }

  private static Element stamp(Path folder, String file) {
    return WebPage.of(folder.resolve(file)).elements("p").stream()
        .filter(p -> p.getAttribute("class").equals("stamp"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void refusalGivesTheReasonAndNoFigure() {
    Path refused = folder.resolve("refused");
    CliRun run = CliRun.of("compare", "../scenarios/serra-do-ipe-roxo.yaml", "--out=" + refused);
    assertEquals(4, run.exitCode(), run.err());
    WebPage refusal = WebPage.of(refused.resolve("answer.html"));
    assertSelfContained(refusal);
    assertEquals(
        List.of("refusal", "instead", "cautions"),
        refusal.elements("section").stream().map(s -> s.getAttribute("id")).toList());
    assertTrue(WebPage.text(refusal.id("refusal")).contains("not tested for colonies in the"));
    assertEquals(List.of(), refusal.elements("svg"));
    assertEquals(List.of(), refusal.elements("table"));
    assertFalse(WebPage.text(refusal.elements("main").get(0)).contains("%"), "no figure");
  }

  @Test
  void threadsChangeNoByteAndTheSeedDoes() {
    Path one = AwkwardScenario.answered(folder, "x", false, "y", "--members=200", "--threads=1");
    Path two = AwkwardScenario.answered(folder, "x", false, "y", "--members=200", "--threads=2");
    Path seed = AwkwardScenario.answered(folder, "x", false, "y", "--members=200", "--seed=7");
    assertEquals(SmallScenario.files(one), SmallScenario.files(two));
    for (String name : List.of("answer.html", "outcomes.csv", "curves.csv", "comparison.json")) {
      assertNotEquals(
          SmallScenario.files(one).get(name), SmallScenario.files(seed).get(name), name);
    }
  }
}
