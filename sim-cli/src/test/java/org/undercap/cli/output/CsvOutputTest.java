package org.undercap.cli.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.StringWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvOutputTest {
  private final StringWriter writer = new StringWriter();

  @Test
  void numbersKeepAllFiguresAndWhatIsNotKnownIsEmpty() {
    CsvOutput csv =
        CsvOutput.withHeader(
            writer, List.of("date", "mites_per_100_bees", "days", "lost", "limit", "note"));
    csv.row(LocalDate.of(2026, 8, 5), 0.1 + 0.2, 7, true, OptionalDouble.empty(), "a");
    csv.row(LocalDate.of(2026, 8, 6), -1e-9, 8L, false, OptionalDouble.of(3), Optional.empty());
    assertEquals(
        """
        date,mites_per_100_bees,days,lost,limit,note
        2026-08-05,0.30000000000000004,7,true,,a
        2026-08-06,-1.0E-9,8,false,3.0,
        """,
        writer.toString());
  }

  @Test
  void fieldIsQuotedWhereNeeded() {
    CsvOutput csv = CsvOutput.withHeader(writer, List.of("a", "b"));
    csv.row("x, y", "he said \"no\"\nand left");
    assertEquals("a,b\n\"x, y\",\"he said \"\"no\"\"\nand left\"\n", writer.toString());
  }

  @ParameterizedTest
  @CsvSource({"=1+1, '''=1+1'", "+3, '''+3'", "-3, '''-3'", "@x, '''@x'", "a=b, a=b"})
  void textCannotBecomeAFormula(String text, String written) {
    CsvOutput.withHeader(writer, List.of("a")).row(Optional.of(text));
    assertEquals("a\n" + written + "\n", writer.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"Mites", "mites per day", "_x", "x_", ""})
  void namesAreLowerCaseWordsJoinedByUnderscores(String name) {
    assertThrows(IllegalArgumentException.class, () -> CsvOutput.withHeader(writer, List.of(name)));
  }

  @Test
  void namesMustDiffer() {
    assertThrows(
        IllegalArgumentException.class, () -> CsvOutput.withHeader(writer, List.of("a", "a")));
    assertThrows(IllegalArgumentException.class, () -> CsvOutput.withHeader(writer, List.of()));
  }

  @Test
  void wrongCellsAreRefusedAndLeaveNoHalfRow() {
    CsvOutput csv = CsvOutput.withHeader(writer, List.of("a", "b"));
    assertThrows(IllegalArgumentException.class, () -> csv.row("x"));
    assertThrows(IllegalArgumentException.class, () -> csv.row("x", Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> csv.row("x", new Object()));
    assertEquals("a,b\n", writer.toString());
  }
}
