package org.undercap.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CatalogueTest {

  private static Catalogue<Double> catalogue(String body) {
    return Catalogue.of(
        "size", CsvResource.parse("t.csv", "name,v\n" + body), "name", CatalogueTest::positive);
  }

  private static double positive(CsvRow row) {
    if (!(row.number("v") > 0)) {
      throw new IllegalArgumentException("v must be > 0");
    }
    return row.number("v");
  }

  @Test
  void keepsTheOrderOfTheTable() {
    assertEquals(List.of(2.0, 1.0), catalogue("small,2\nbig,1\n").all());
  }

  @Test
  void findsByName() {
    assertEquals(1.0, catalogue("big,1\n").get("big"));
    assertEquals(Optional.empty(), catalogue("big,1\n").find("bag"));
    IllegalArgumentException error =
        assertThrows(IllegalArgumentException.class, () -> catalogue("big,1\n").get("bag"));
    assertEquals("unknown size \"bag\"; did you mean \"big\"? Accepted: big", error.getMessage());
  }

  @Test
  void defectsOfARowNameItsLine() {
    assertEquals("t.csv:3: duplicate size a", defect("a,1\na,2\n"));
    assertEquals("t.csv:3: v must be > 0", defect("a,1\nb,0\n"));
    assertEquals("t.csv:2: name is empty", defect(",1\n"));
  }

  private static String defect(String body) {
    return assertThrows(IllegalStateException.class, () -> catalogue(body)).getMessage();
  }
}
