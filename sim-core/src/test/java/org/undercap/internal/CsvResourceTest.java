package org.undercap.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvResourceTest {

  private static CsvRow row(String header, String fields) {
    return CsvResource.parse("t.csv", header + "\n" + fields + "\n").get(0);
  }

  @Test
  void readsFieldsByColumn() {
    List<CsvRow> rows = CsvResource.parse("t.csv", "a,b\n1, two \n,\n");
    assertEquals(List.of("1", "two"), rows.get(0).fields());
    assertEquals("two", rows.get(0).text("b"));
    assertEquals("", rows.get(1).text("a"));
    assertEquals(2, rows.size());
  }

  @Test
  void readsQuotedCommasQuotesAndLineBreaks() {
    List<CsvRow> rows = CsvResource.parse("t.csv", "a,b\n\"x, \"\"y\"\"\n# z\",2\n3,4");
    assertEquals("x, \"y\"\n# z", rows.get(0).text("a"));
    assertEquals(List.of("3", "4"), rows.get(1).fields());
    assertEquals("\"a\"", CsvResource.parse("t.csv", "a\n\"\"\"a\"\"\"\n").get(0).text("a"));
    assertEquals("", row("a,b", "\"\",1").text("a"));
    assertEquals(" x ", row("a,b", "\" x \",1").text("a"));
  }

  @Test
  void countsLinesOverCommentsEmptyLinesAndQuotedLineBreaks() {
    List<CsvRow> rows = CsvResource.parse("t.csv", "# c\n\na\n# c\n\"1\n2\"\n3\n");
    assertEquals(List.of(5, 7), rows.stream().map(CsvRow::line).toList());
  }

  @Test
  void acceptsWindowsLineEndsAndAMissingLastOne() {
    assertEquals(List.of("1", "2"), CsvResource.parse("t.csv", "a,b\r\n1,2\r\n").get(0).fields());
    assertEquals(List.of("1", ""), CsvResource.parse("t.csv", "a,b\n1,").get(0).fields());
  }

  @Test
  void anEmptyTextHasNoRows() {
    assertTrue(CsvResource.parse("t.csv", "").isEmpty());
    assertTrue(CsvResource.parse("t.csv", "# only a comment").isEmpty());
  }

  @Test
  void defectsNameFileAndLine() {
    assertEquals("t.csv:3: 1 fields, the header has 2", defect("a,b\n1,2\n3\n"));
    assertEquals("t.csv:2: a quoted field is not closed", defect("a\n\"1\n2\n"));
    assertEquals("t.csv:2: unexpected text after a quoted field", defect("a\n\"1\"2\n"));
  }

  private static String defect(String text) {
    return assertThrows(IllegalStateException.class, () -> CsvResource.parse("t.csv", text))
        .getMessage();
  }

  @Test
  void aMissingFileIsNamed() {
    IllegalStateException error =
        assertThrows(
            IllegalStateException.class,
            () -> CsvResource.read(CsvResourceTest.class, "missing.csv"));
    assertTrue(error.getMessage().startsWith("missing.csv: not found"), error.getMessage());
  }

  @Test
  void readsNumbersAndParts() {
    CsvRow row = row("n,list,none", "2.5,3; infinity,");
    assertEquals(2.5, row.number("n"));
    assertEquals(List.of(3.0, Double.POSITIVE_INFINITY), row.numbers("list"));
    assertEquals(List.of(), row.parts("none"));
  }

  @Test
  void readsTwelveMonths() {
    CsvRow row = row("m1,m2,m3,m4,m5,m6,m7,m8,m9,m10,m11,m12", "1,2,3,4,5,6,7,8,9,10,11,12");
    assertEquals(List.of(1., 2., 3., 4., 5., 6., 7., 8., 9., 10., 11., 12.), row.months("m"));
  }

  @ParameterizedTest
  @CsvSource({
    "x, n is not a number: x",
    "NaN, n is not finite: NaN",
    "Infinity, n is not finite: Infinity",
    "infinity, n is not finite",
    "'', n is empty"
  })
  void badNumbersAreDefects(String field, String message) {
    CsvRow row = row("n,other", field + ",1");
    IllegalStateException error = assertThrows(IllegalStateException.class, () -> row.number("n"));
    assertEquals("t.csv:2: " + message, error.getMessage());
  }

  @Test
  void emptyPartsAndMissingColumnsAreDefects() {
    CsvRow row = row("n,other", "1;;2,1");
    assertThrows(IllegalStateException.class, () -> row.parts("n"));
    assertThrows(IllegalStateException.class, () -> row.text("m"));
  }
}
