package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.cli.CliRun;
import org.undercap.cli.report.HelpTopic;
import org.undercap.ensemble.Outcome;
import org.undercap.hive.FrameCatalogue;
import org.undercap.hive.FrameType;
import org.undercap.internal.CsvResource;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;

class HelpCommandTest {
  private static final int WIDTH = 80;

  static List<String> pages() {
    List<String> pages = new ArrayList<>(HelpTopic.methodNames());
    HelpTopic.all(Map.of()).forEach(topic -> pages.add(topic.name()));
    pages.add("topics");
    return pages;
  }

  @ParameterizedTest
  @MethodSource("pages")
  void pageFitsTheTerminal(String name) {
    CliRun run = CliRun.of("help", name);
    assertEquals(0, run.exitCode(), run.err());
    assertEquals("", run.err());
    assertTrue(run.out().lines().count() > 5, run.out());
    run.out().lines().forEach(line -> assertTrue(line.length() <= WIDTH, line));
  }

  @Test
  void listNamesEveryPage() {
    String list = CliRun.of("help", "topics").out();
    pages().forEach(name -> assertTrue(list.contains(name) || name.equals("topics"), name));
  }

  @Test
  void scenarioTellsEveryKeyAndWord() throws IOException {
    String page = words(CliRun.of("help", "scenario").out());
    JsonNode schema = new ObjectMapper().readTree(CliRun.of("schema").out());
    List<String> keys = new ArrayList<>();
    schema
        .findValues("properties")
        .forEach(group -> group.fieldNames().forEachRemaining(keys::add));
    assertTrue(keys.size() > 70, keys.toString());
    keys.forEach(key -> assertTrue(page.contains(" " + key + " "), key));
    for (JsonNode choice : schema.findValues("enum")) {
      choice.forEach(word -> assertTrue(page.contains(word.asText()), word.asText()));
    }
    assertTrue(page.contains("18000 bees or 18000. Needed. Accepted: 500 to 150000."), page);
  }

  @Test
  void unitsTellEveryFrameAndPound() {
    String page = words(CliRun.of("help", "units").out());
    for (FrameType frame : FrameCatalogue.shipped().all()) {
      assertTrue(page.contains(frame.id()), frame.id());
    }
    assertTrue(page.contains("national-deep 6.6 825 2650"), page);
    assertTrue(page.contains("worker 0.113 g assumption"), page);
  }

  @Test
  void outcomesAreToldInTheOrderOfTheProgram() {
    String page = CliRun.of("help", "outcomes").out();
    int last = 0;
    for (Outcome outcome : Outcome.values()) {
      int at = page.indexOf("\n" + outcome.header() + " ");
      assertTrue(at > last, outcome.header());
      last = at;
    }
  }

  @Test
  void exitCodesAreThoseOfEveryHelp() {
    String page = words(CliRun.of("help", "exit-codes").out());
    assertTrue(page.contains("3 a file that was read is not valid"), page);
    assertTrue(page.contains("4 a check that was asked for says no"), page);
  }

  @Test
  void cardTellsHowItWorksWhenItFailsAndWhatToWatch() {
    for (Method method : MethodCatalogue.shipped().all()) {
      String card = CliRun.of("help", method.id()).out();
      assertEquals(CliRun.of("methods", method.id()).out(), card);
      for (String heading : List.of("How it works", "When it fails", "What to watch", "Cautions")) {
        assertTrue(card.contains("\n" + heading + "\n"), card);
      }
      boolean reaches = method.profile().reachesSealedBrood();
      assertEquals(!reaches, words(card).contains("mites under the cappings were out of"), card);
      assertEquals(!method.organic(), words(card).contains("half of the mites resist"), card);
      assertEquals(method.profile().evaporates(), words(card).contains("days were too cold"), card);
    }
  }

  @Test
  void everyCardBelongsToATreatment() {
    List<String> ids =
        CsvResource.read(HelpTopic.class, "method-cards.csv").stream()
            .map(row -> row.required("id"))
            .toList();
    assertEquals(HelpTopic.methodNames(), ids);
  }

  @Test
  void commandsKeepTheirHelp() {
    assertEquals(CliRun.of("compare", "--help").out(), CliRun.of("help", "compare").out());
    assertEquals(
        CliRun.of("lesson", "class", "--help").out(), CliRun.of("help", "lesson", "class").out());
    String both = CliRun.of("help", "methods").out();
    assertEquals(CliRun.of("methods", "--help").out() + "\n" + CliRun.of("methods").out(), both);
  }

  @ParameterizedTest
  @CsvSource({
    "scenrio, scenario",
    "thymol-jel, thymol-gel",
    "outcome, outcomes",
    "comapre, compare"
  })
  void nearestIsSuggested(String typed, String meant) {
    CliRun run = CliRun.of("help", typed);
    assertEquals(2, run.exitCode());
    assertEquals("", run.out());
    assertTrue(run.err().contains("no help on '" + typed + "'; did you mean " + meant), run.err());
  }

  @Test
  void nothingIsGuessedForAWordFarFromAll() {
    String err = CliRun.of("help", "qqqqqqqqqq").err();
    assertTrue(err.contains("'undercap help topics' the topics"), err);
    assertFalse(err.contains("did you mean"), err);
  }

  private static String words(String text) {
    return text.replaceAll("\\s+", " ");
  }
}
