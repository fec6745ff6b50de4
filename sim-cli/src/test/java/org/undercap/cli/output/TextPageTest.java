package org.undercap.cli.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextPageTest {
  @Test
  void partsStandApartButFactsAndItemsTogether() {
    String page =
        new TextPage()
            .title("Saltmere Garth")
            .fact("bees", "9 frames")
            .fact("nothing", "")
            .fact("mites", "11 in a wash of 305 bees; " + "counted twice, ".repeat(4))
            .heading("Cautions")
            .item("Gloves.")
            .item("Goggles, " + "and again, ".repeat(8))
            .paragraph("Ask.")
            .table(new TextTable().name("a").row("b"))
            .render();
    assertEquals(
        """
        Saltmere Garth

        bees              9 frames
        mites             11 in a wash of 305 bees; counted twice, counted twice,
                          counted twice, counted twice,

        Cautions
        - Gloves.
        - Goggles, and again, and again, and again, and again, and again, and again, and
          again, and again,

        Ask.

        a
        -
        b
        """,
        page);
  }

  @Test
  void wordThatIsTooLongKeepsItsOwnLine() {
    assertEquals(List.of("a", "bbbbbbbb", "c d"), TextPage.wrap("a bbbbbbbb  c\nd", 4));
    assertEquals(List.of(""), TextPage.wrap(" ", 4));
  }

  @Test
  void numberIsNotPartedFromItsUnit() {
    assertEquals(
        List.of("below", "15 C,", "95 % or", "14 days."),
        TextPage.wrap("below 15 C, 95 % or 14 days.", 8));
    assertEquals(List.of("12", "Canes"), TextPage.wrap("12 Canes", 7));
  }

  @Test
  void labelMustLeaveRoom() {
    assertThrows(
        IllegalArgumentException.class, () -> new TextPage().fact("a label that is long", "x"));
  }
}
