package org.undercap.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BibliographyTest {

  private static final Pattern KEY = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
  private static final Pattern DOI = Pattern.compile("10\\.\\d{4,9}/[^\\s\"]+");
  private static final Pattern YEAR = Pattern.compile("(\\d{4}(; \\d{4})*)?");

  static List<Source> sources() {
    return Bibliography.shipped().all();
  }

  @Test
  void holdsTheWholeTableInOrderOfKeys() {
    List<String> keys = sources().stream().map(Source::key).toList();
    assertEquals(89, keys.size());
    assertEquals(keys.stream().sorted().toList(), keys);
  }

  @ParameterizedTest
  @MethodSource("sources")
  void entriesHaveTheRightForm(Source source) {
    assertTrue(KEY.matcher(source.key()).matches(), source.key());
    assertTrue(YEAR.matcher(source.year()).matches(), source.year());
    assertTrue(source.doi().isEmpty() || DOI.matcher(source.doi()).matches(), source.doi());
    assertFalse(source.note().isEmpty() && source.read() != Access.FULL, "where was it read?");
    assertFalse(source.citation().isBlank());
    assertFalse(source.citation().contains("\n"));
  }

  @ParameterizedTest
  @MethodSource("sources")
  void entriesSayWhatIsFromMemory(Source source) {
    if (source.read() == Access.MEMORY) {
      assertTrue(source.note().contains("memory"), source.note());
    }
  }

  @ParameterizedTest
  @MethodSource("sources")
  void doisAreUnique(Source source) {
    if (!source.doi().isEmpty()) {
      assertEquals(1, sources().stream().filter(s -> s.doi().equals(source.doi())).count());
    }
  }

  @Test
  void looksUpByKey() {
    assertEquals("1995", Bibliography.shipped().get("boot-1995").year());
    assertEquals(Optional.empty(), Bibliography.shipped().find("boot-1996"));
    IllegalArgumentException error =
        assertThrows(IllegalArgumentException.class, () -> Bibliography.shipped().get("bot-1995"));
    assertTrue(
        error.getMessage().contains("; did you mean \"boot-1995\"? Accepted: "),
        error.getMessage());
  }

  @Test
  void citesInOneLine() {
    assertEquals(
        "Khoury D.S.; Barron A.B.; Myerscough M.R. (2013). Modelling food and population dynamics"
            + " in honey bee colonies. PLoS ONE 8: e59084. doi:10.1371/journal.pone.0059084",
        Bibliography.shipped().get("khoury-2013").citation());
    assertEquals(
        "common practice among keepers", Bibliography.shipped().get("common-practice").citation());
  }

  @Test
  void checksKeys() {
    Bibliography shipped = Bibliography.shipped();
    List<String> known = List.of("boot-1995", "martin-2001");
    assertEquals(known, shipped.checkKeys(known));
    assertThrows(IllegalArgumentException.class, () -> shipped.checkKeys(List.of()));
    assertThrows(IllegalArgumentException.class, () -> shipped.checkKeys(List.of("nobody-1900")));
  }

  @Test
  void wordsOfAccessReadBack() {
    for (Access access : Access.values()) {
      assertEquals(access, Access.of(access.word()));
    }
    assertThrows(IllegalArgumentException.class, () -> Access.of("skimmed"));
  }
}
