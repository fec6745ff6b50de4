package org.undercap.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.hive.KeeperUnits;
import org.undercap.monitoring.Wash;
import org.undercap.monitoring.WashMethod;

class QuantitiesTest {

  @ParameterizedTest
  @CsvSource({"0, 0", "1.5, 1.5", "-3, -3", "1e3, 1000", "+2, 2", "18000, 18000", "2.50, 2.5"})
  void numbers(String text, double number) throws BadValueException {
    assertEquals(number, Quantities.number(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "010",
        "1_000",
        "1,000",
        "1.000,5",
        "0x1F",
        "NaN",
        ".nan",
        "Infinity",
        "-.inf",
        "1e999",
        "1e99999",
        "yes",
        "1d",
        "1f",
        "0b1",
        "1:30",
        "",
        " ",
        "1 2",
        "½",
        "٣",
        "--1",
        "1.",
        "1..2"
      })
  void whatIsNoPlainNumberIsRefused(String text) {
    assertThrows(BadValueException.class, () -> Quantities.number(text));
  }

  @ParameterizedTest
  @CsvSource({
    "20 %, 0.2",
    "20%, 0.2",
    "0.2, 0.2",
    "1, 1",
    "0, 0",
    "100 percent, 1",
    "0.5 %, 0.005"
  })
  void shares(String text, double share) throws BadValueException {
    assertEquals(share, Quantities.share(text), 1e-15);
  }

  @ParameterizedTest
  @ValueSource(strings = {"20", "101 %", "-0.1", "-5 %", "1.01", "half", "20 permille", "0,2"})
  void whatIsNoShareIsRefused(String text) {
    assertThrows(BadValueException.class, () -> Quantities.share(text));
  }

  @ParameterizedTest
  @CsvSource({
    "15 C, 15",
    "15C, 15",
    "59 F, 15",
    "-40 F, -40",
    "12.5, 12.5",
    "15 °C, 15",
    "32 f, 0"
  })
  void temperatures(String text, double celsius) throws BadValueException {
    assertEquals(celsius, Quantities.temperature(text), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"24, 24", "24 days, 24", "1 day, 1", "3 weeks, 21", "2d, 2"})
  void days(String text, double days) throws BadValueException {
    assertEquals(days, Quantities.days(text));
  }

  @Test
  void dates() throws BadValueException {
    assertEquals(LocalDate.of(2028, 2, 29), Quantities.date("2028-02-29"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2027-02-29",
        "2026-13-01",
        "2026-00-10",
        "2026-9-24",
        "24.09.2026",
        "09/24/2026",
        "20260924",
        "2026-09-24T00:00",
        "1026-09-24",
        "12026-09-24",
        "-2026-09-24",
        "today",
        "٢٠٢٦-09-24"
      })
  void otherDatesAreRefused(String text) {
    assertThrows(BadValueException.class, () -> Quantities.date(text));
  }

  @Test
  void hintsShowHowToWriteIt() {
    assertEquals("write 18000", hint("18,000"));
    assertEquals("write a decimal point: 9.5", hint("9,5"));
    assertEquals("write it without the leading zero", hint("010"));
  }

  private static String hint(String text) {
    return assertThrows(BadValueException.class, () -> Quantities.number(text)).hint();
  }

  @ParameterizedTest
  @CsvSource({
    "9 frames, 9, FRAMES",
    "1 Frame, 1, FRAMES",
    "11 seams, 11, SEAMS",
    "17 sides, 17, SIDES",
    "1.5 boxes, 1.5, BOXES",
    "18000 bees, 18000, BEES",
    "18000, 18000, BEES",
    "9 frames of bees, 9, FRAMES",
    "9  frames  of  bees, 9, FRAMES",
    "9frames, 9, FRAMES",
    "4 lb, 4, POUNDS",
    "2 1/2 lbs, 2.5, POUNDS",
    "1/2 box, 0.5, BOXES",
    "half a box, 0.5, BOXES",
    "2 kg, 2, KILOGRAMS"
  })
  void bees(String text, double number, BeeUnit unit) throws BadValueException {
    assertEquals(new Amount<>(number, unit), BeeUnit.parse(text));
  }

  @ParameterizedTest
  @CsvSource({
    "3 frames, 3, FRAMES",
    "5 sides, 5, SIDES",
    "12 hands, 12, HANDS",
    "9000 cells, 9000, CELLS",
    "900 cm2, 900, SQUARE_CENTIMETRES",
    "900 cm², 900, SQUARE_CENTIMETRES",
    "9 dm2, 9, SQUARE_DECIMETRES",
    "140 sq in, 140, SQUARE_INCHES",
    "1 1/2 frames, 1.5, FRAMES",
    "3 frames half full, 1.5, FRAMES",
    "'3 frames, two thirds full', 2, FRAMES",
    "3 frames 2/3 full, 2, FRAMES",
    "4 frames of brood three-quarters full, 3, FRAMES",
    "5 comb sides 60 % full, 3, SIDES",
    "5 sides 0.6 full, 3, SIDES",
    "1/2 frame Half Full, 0.25, FRAMES",
    "10 frames nearly full, 8.5, FRAMES",
    "10 combs in patches, 2, FRAMES",
    "3 frames full, 3, FRAMES",
    "5 comb sides, 5, SIDES",
    "3 frames of brood, 3, FRAMES",
    "none seen, 0, CELLS",
    "None, 0, CELLS",
    "0, 0, CELLS"
  })
  void brood(String text, double number, BroodUnit unit) throws BadValueException {
    assertEquals(new Amount<>(number, unit), BroodUnit.parse(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "3",
        "3 seams",
        "frames",
        "3 framez",
        "some",
        "-3 frames",
        "3 4 frames",
        "3 frames empty",
        "3 frames 0 % full",
        "3 frames 120 % full",
        "12 hands half full",
        "3 frames of honey"
      })
  void otherBroodIsRefused(String text) {
    assertThrows(BadValueException.class, () -> BroodUnit.parse(text));
  }

  @Test
  void whatIsNoFullnessIsToldWithWhatIs() {
    BadValueException e =
        assertThrows(BadValueException.class, () -> BroodUnit.parse("3 frames so so"));
    assertEquals("\"so so\" does not tell how full of brood the frames are", e.getMessage());
    assertTrue(e.hint().contains("two thirds") && e.hint().contains("60 %"), e.hint());
  }

  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      value = {
        "300, 9, -",
        "300, 150, -",
        "99, 1, -",
        "100, 0, -",
        "300, 151, is that mites in the whole wash",
        "300, 301, are the two swapped",
        "99, 0, tells next to nothing"
      })
  void doubtfulCountsAreNoticed(int bees, int mites, String part) {
    Optional<String> doubt =
        CountDoubts.of(new Wash(LocalDate.of(2026, 8, 1), bees, mites, WashMethod.ALCOHOL));
    assertEquals(part != null, doubt.isPresent(), doubt.toString());
    doubt.ifPresent(words -> assertTrue(words.contains(part), words));
  }

  @ParameterizedTest
  @CsvSource({"300, 300", "305 bees, 305", "half a cup, 300", "1/2 cup, 300", "1 cup, 600"})
  void samplesOfBees(String text, double bees) throws BadValueException {
    assertEquals(bees, SampleOfBees.parse(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1/0 cup", "/2 cup", "1/2", "-1/2 cup", "03/04/2026", "half"})
  void partsThatCouldMeanTwoThingsAreRefused(String text) {
    assertThrows(BadValueException.class, () -> BeeUnit.parse(text));
  }

  @Test
  void keepersUnitsFollowFromTheirTable() {
    KeeperUnits units = KeeperUnits.shipped();
    assertEquals(4014, units.beesPerPound(), 0.5);
    assertEquals(8850, units.beesPerKilogram(), 0.5);
    assertEquals(6.4516, units.squareInch());
    assertTrue(units.all().stream().noneMatch(unit -> unit.sources().isEmpty()));
  }

  @Test
  void arrivalsAreLevelsOrNumbers() throws BadValueException {
    assertEquals("dense", Arrivals.parse("Dense").id());
    assertEquals(1.5, Arrivals.parse("1.5").perMonth().get(0));
    assertEquals(1.5, Arrivals.parse("1.5 mites a day").perMonth().get(11));
    assertThrows(BadValueException.class, () -> Arrivals.parse("1.5 mites a week"));
  }

  @Test
  void numbersInMessagesHaveNoNeedlessDecimals() {
    assertEquals("500", Quantities.format(500));
    assertEquals("-0.25", Quantities.format(-0.25));
    assertEquals("1.0E20", Quantities.format(1e20));
  }

  @Test
  void quotedTextCannotDisturbATerminal() {
    assertEquals("\"a?[31mb?c\"", Quantities.quote("a\u001b[31mb\u202ec"));
    assertEquals("\"" + "x".repeat(40) + "...\"", Quantities.quote("x".repeat(41)));
    assertTrue(Quantities.isHarmless('\u00e4'));
    assertFalse(Quantities.isHarmless('\n'));
  }
}
