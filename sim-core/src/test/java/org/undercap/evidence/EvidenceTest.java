package org.undercap.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every published finding is held against the model. A finding that is missed and not listed among
 * the known misses fails, and so does a listed one that is not missed any more.
 */
class EvidenceTest {
  private static final Set<String> WAYS_OF_READING =
      Set.of(
          "full", "abstract", "table", "data", "secondary", "memory", "none", "derived", "exact");
  private static final List<CheckResult> RESULTS = new ArrayList<>();

  static List<String> ids() {
    return Evidence.all().stream().map(PublishedCheck::id).toList();
  }

  private static Set<String> knownMisses() {
    return Evidence.knownMisses().stream()
        .map(KnownMiss::id)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @ParameterizedTest
  @MethodSource("ids")
  void agreesUnlessKnownToMiss(String id) {
    CheckResult result = Evidence.run(id);
    RESULTS.add(result);
    PublishedCheck check = result.check();
    System.out.printf(
        "%s | %s | published %s | %s | ours %s | %s%n",
        id,
        check.quantity(),
        check.published(),
        String.join(", ", check.sourceKeys()),
        result.ours(),
        result.inside().words());
    boolean known = knownMisses().contains(id);
    switch (result.inside()) {
      case YES -> assertFalse(known, id + " is listed in misses.csv but agrees now");
      case NO -> assertTrue(known, "new miss: " + id + ": " + result.ours());
      case NOT_RUN -> assertFalse(known, id + " is listed in misses.csv but is not run");
    }
    assertEquals(result.inside() == Inside.YES, result.reason().isEmpty(), "reason of " + id);
    assertEquals(result.inside() == Inside.NOT_RUN, result.ours().isEmpty(), "answer of " + id);
  }

  @AfterAll
  static void writeTable() throws IOException {
    Path target = Path.of("target", "published-checks.md");
    Files.createDirectories(target.getParent());
    Files.writeString(target, EvidenceTable.markdown(RESULTS), StandardCharsets.UTF_8);
  }

  @Test
  void everyKnownMissIsACheck() {
    assertTrue(ids().containsAll(knownMisses()), () -> "unknown among " + knownMisses());
    assertEquals(Evidence.knownMisses().size(), knownMisses().size(), "listed twice");
  }

  @Test
  void everyCheckTellsHowItsSourceWasRead() {
    for (PublishedCheck check : Evidence.all()) {
      for (String way : check.read().split("; ", -1)) {
        assertTrue(WAYS_OF_READING.contains(way), () -> check.id() + ": read " + way);
      }
    }
  }

  @Test
  void sameAnswerEveryTime() {
    assertEquals(Evidence.run("amitraz-open-data"), Evidence.run("amitraz-open-data"));
    assertEquals(Evidence.run("fall-winter"), Evidence.run("fall-winter"));
  }

  @Test
  void tableHasOneRowForEachResult() {
    List<CheckResult> results = List.of(Evidence.run("wash-example"), Evidence.run("day-length"));
    assertEquals(
        """
        | id | kind | quantity | published | ours | inside? | source | read |
        | --- | --- | --- | --- | --- | --- | --- | --- |
        | day-length | formula | day length at 52 N on day 172 | 16.735 (hours) |  | not run: the model takes \
        the season from tables of laying and temperature and does not use the length of the day \
        | forsythe-1995 | table |
        | wash-example | formula | 43 mites in a wash of 310 bees | 13.87 per 100 | 13.87 per 100 | yes \
        | dietemann-2013 | secondary |
        """,
        EvidenceTable.markdown(results));
  }
}
