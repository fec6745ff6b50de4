package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.cli.CliRun;
import org.undercap.treatment.CautionCatalogue;
import org.undercap.treatment.MethodCatalogue;

class MethodsCommandTest {
  @Test
  void tableTellsDoseReachDurationTemperatureAndEfficacy() {
    String table = CliRun.of("methods").out();
    assertTrue(
        table.contains("\nformic-pads              slow    kills        7  7 to 25   49-88 %\n"),
        table);
    assertTrue(
        table.contains(
            "\noxalic-glycerine-strips  slow    -           42  over 6    52-93 % by climate *\n"),
        table);
    assertTrue(table.contains("\n* from memory"), table);
  }

  @Test
  void thymolGelIsExplainedInWords() {
    String page = words(CliRun.of("methods", "thymol-gel").out());
    assertTrue(page.startsWith("thymol gel treatment thymol-gel substance thymol note tray"), page);
    assertTrue(
        page.contains("builds up over about 1 day, then falls by half every 10 days. Acts until"),
        page);
    assertTrue(page.contains("Only mites on the bees."), page);
    assertTrue(page.contains("out of reach for up to 12 days (workers) or 14 days (drones)"), page);
    assertTrue(page.contains("6.3 % at 11 C, 24 % at 22 C, 27 % at 26 C"), page);
    assertTrue(page.contains("too weak below 11 C and harmful above 26 C"), page);
    assertTrue(page.contains("76 % with two trays 14 days apart"), page);
    assertTrue(page.contains("giacomelli-2016: Giacomelli A."), page);
    assertTrue(page.contains("they were not measured (assumption)"), page);
  }

  @Test
  void singleDoseIsTold() {
    String page = words(CliRun.of("methods", "oxalic-sublimation").out());
    assertTrue(page.contains("Single dose: 70 %, 20 % and 10 % of its effect"), page);
    assertTrue(page.contains("96 % per dose without brood, 60 % with a full brood nest"), page);
    assertTrue(page.contains("they come out with the young bees when it has stopped"), page);
    assertTrue(page.contains("[from memory, not read]"), page);
  }

  @Test
  void reachUnderTheCappingsIsTold() {
    String page = words(CliRun.of("methods", "formic-pads").out());
    assertTrue(page.contains("Under the cappings it kills at 42 % of the rate on"), page);
  }

  @Test
  void placeAndResistanceAreToldWhereTheyMatter() {
    String strips = words(CliRun.of("methods", "oxalic-glycerine-strips").out());
    assertTrue(strips.contains("In humid places 30 % of the amount acts (assumption)"), strips);
    assertTrue(strips.contains("Slow release: even once it is full, after 10 days"), strips);
    String pyrethroid = words(CliRun.of("methods", "pyrethroid-strips").out());
    assertTrue(
        pyrethroid.contains("(class: pyrethroid; mites resist a class as a whole"), pyrethroid);
    assertFalse(pyrethroid.contains("humid"), pyrethroid);
    assertTrue(words(CliRun.of("methods", "powdered-sugar").out()).contains("15 % per dose."));
  }

  @ParameterizedTest
  @ValueSource(strings = {"thymol-gel", "oxalic-sublimation", "amitraz-strips", "powdered-sugar"})
  void cautionsStandInFull(String id) {
    String page = words(CliRun.of("methods", id).out());
    CautionCatalogue cautions = CautionCatalogue.shipped();
    for (String common : new String[] {"every-report", "every-treatment", "supers"}) {
      assertTrue(page.contains(cautions.get(common).text()), page);
    }
    for (String own : MethodCatalogue.shipped().get(id).cautions()) {
      assertTrue(page.contains(cautions.get(own).text()), page);
    }
  }

  @Test
  void jsonHoldsTheProfile() throws IOException {
    CliRun run = CliRun.of("methods", "formic-dispenser", "--json");
    assertEquals(0, run.exitCode());
    assertEquals("", run.err());
    JsonNode method = new ObjectMapper().readTree(run.out()).get("methods").get(0);
    assertEquals("plateau", method.get("release").get("kind").asText());
    assertEquals(21, method.get("release").get("days").asInt());
    assertEquals(20, method.get("temperature").get("referenceCelsius").asDouble());
    assertEquals(0.15, method.get("response").get("hazardPerDay").asDouble());
    assertEquals(0.20, method.get("inCellRatio").asDouble());
    assertEquals(8, method.get("coolLimitCelsius").asDouble());
    assertEquals(
        CautionCatalogue.shipped().get("formic").text(),
        method.get("cautions").get("formic").asText());
  }

  @Test
  void jsonLeavesOutWhatIsNotKnown() throws IOException {
    CliRun run = CliRun.of("methods", "oxalic-dribble", "--json");
    JsonNode method = new ObjectMapper().readTree(run.out()).get("methods").get(0);
    assertFalse(method.has("hotLimitCelsius"), run.out());
    assertEquals(0.95, method.get("response").get("killedWithoutBroodFraction").asDouble());
  }

  /** The text without its line breaks, which are of no interest here. */
  private static String words(String text) {
    return text.replaceAll("\\n- ", " ").replaceAll("\\s+", " ");
  }
}
