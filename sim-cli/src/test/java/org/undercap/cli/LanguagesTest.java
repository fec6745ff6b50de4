package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Results do not depend on the language of the machine. */
class LanguagesTest {
  /** Decimal comma; an i without a dot; digits of another script. */
  private static final List<String> LANGUAGES = List.of("de-DE", "tr-TR", "ar-EG");

  @TempDir private Path folder;

  @Test
  void comparisonIsTheSameToTheByte() {
    CliRun english = run(Locale.US, "compare", "--members=10", "--svg");
    for (String language : LANGUAGES) {
      CliRun other = run(Locale.forLanguageTag(language), "compare", "--members=10", "--svg");
      assertSame(language, english, other);
    }
  }

  @Test
  void simulationIsTheSameToTheByte() {
    CliRun english = run(Locale.US, "simulate", "--plan=GEL, TWICE");
    for (String language : LANGUAGES) {
      assertSame(
          language, english, run(Locale.forLanguageTag(language), "simulate", "--plan=GEL, TWICE"));
    }
  }

  @Test
  void languagesOfThisTestDoWriteNumbersInTheirOwnWay() {
    for (String language : LANGUAGES) {
      String number = String.format(Locale.forLanguageTag(language), "%.1f", 1234.5);
      assertNotEquals("1234.5", number, language);
    }
  }

  private CliRun run(Locale locale, String command, String... options) {
    Path place = folder.resolve(locale.toLanguageTag() + "-" + command);
    place.toFile().mkdirs();
    String[] words = new String[options.length + 3];
    words[0] = command;
    words[1] = SmallScenario.in(place, "small.yaml");
    words[2] = "--out=" + place.resolve("results");
    System.arraycopy(options, 0, words, 3, options.length);
    CliRun run = CliRun.in(locale, words);
    return new CliRun(run.exitCode(), run.out(), run.err().replace(place.toString(), ""));
  }

  private void assertSame(String language, CliRun english, CliRun other) {
    assertEquals(0, english.exitCode(), english.err());
    assertEquals(english, other, language);
    String command = english.err().contains("plans.png") ? "compare" : "simulate";
    assertEquals(
        SmallScenario.files(folder.resolve("en-US-" + command)),
        SmallScenario.files(folder.resolve(language + "-" + command)),
        language);
  }
}
