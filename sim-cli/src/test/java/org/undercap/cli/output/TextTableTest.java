package org.undercap.cli.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextTableTest {
  private static final String LONG = "mites that leave the cells with the young bees ".repeat(4);

  @Test
  void namesStandLeftAndNumbersRightBelowTheirUnit() {
    String table =
        new TextTable()
            .name("hive")
            .number("mites\n(%)")
            .row("A", "3.2")
            .row("Roof 9", "12")
            .render();
    assertEquals(
        """
        hive    mites
                  (%)
        -------------
        A         3.2
        Roof 9     12
        """,
        table);
  }

  @Test
  void widestTextIsWrappedSoThatTheTableFits() {
    String table =
        new TextTable().name("id").text("note").number("days").row("one", LONG, "7").render();
    List<String> lines = table.lines().toList();
    assertTrue(lines.stream().allMatch(line -> line.length() <= TextTable.WIDTH), table);
    assertEquals(TextTable.WIDTH, lines.get(1).length(), table);
    assertTrue(lines.get(2).startsWith("one  mites that leave"), table);
    assertTrue(lines.get(2).endsWith("   7"), table);
    assertTrue(lines.get(3).startsWith("     "), table);
    assertEquals(LONG.strip(), words(lines.subList(2, lines.size()), "one", "7"));
  }

  @Test
  void listsOfNumbersWrapOnTheRight() {
    String table =
        new TextTable().text("note").numbers("values").row(LONG, "1; ".repeat(30)).render();
    assertTrue(table.lines().allMatch(line -> line.length() <= TextTable.WIDTH), table);
    assertTrue(table.lines().skip(2).findFirst().orElseThrow().endsWith("1;"), table);
  }

  @Test
  void wordIsNeverBroken() {
    String id = "x".repeat(100);
    assertTrue(new TextTable().text("id").row(id).render().contains(id));
  }

  @Test
  void numberKeepsItsUnitAndWordItsMark() {
    String text = "a ".repeat(39) + "12 C " + "b ".repeat(35) + "book *";
    String table = new TextTable().text("t").row(text).render();
    assertTrue(table.contains("\n12 C b"), table);
    assertTrue(table.contains("\nbook *\n"), table);
  }

  @Test
  void noLineEndsWithABlank() {
    String table = new TextTable().text("a").text("b").row("x", "").row("", LONG).render();
    assertTrue(table.lines().allMatch(line -> line.equals(line.stripTrailing())), table);
  }

  @Test
  void rowNeedsOneCellPerColumn() {
    TextTable table = new TextTable().text("a").text("b");
    assertThrows(IllegalArgumentException.class, () -> table.row("only one"));
  }

  private static String words(List<String> lines, String first, String last) {
    String all = String.join(" ", lines).replaceAll("\\s+", " ").strip();
    return all.replaceFirst("^" + first + " ", "").replaceFirst(" " + last + " ", " ");
  }
}
