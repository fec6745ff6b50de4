package org.undercap.scenario.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.monitoring.Board;
import org.undercap.monitoring.Wash;
import org.undercap.monitoring.WashMethod;
import org.undercap.scenario.ApiaryColony;
import org.undercap.scenario.Problem;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;

class ApiaryReaderTest {
  private static final String HEADER =
      "colony,bees,brood,wash_bees,wash_mites,board_days,board_mites,method,note\n";
  private static final Scenario SITE =
      TestFiles.read(TestFiles.SMALL.replace("9000 cells", "9000 cells, frame: zander")).orThrow();
  @TempDir private Path folder;

  private Reading<List<ApiaryColony>> read(String text) throws IOException {
    Path file = folder.resolve("colonies.csv");
    Files.writeString(file, text);
    return ApiaryReader.read(file, SITE);
  }

  private String problems(String text) throws IOException {
    return TestFiles.texts(read(text).problems(), folder);
  }

  @Test
  void rowsBecomeColonies() throws IOException {
    List<ApiaryColony> colonies =
        read(HEADER
                + "A1,9 frames,4 frames,300,9,,,alcohol,\n"
                + "\n"
                + "\"A, 2\",18000,12 hands,,,3,24,,\"says \"\"hello\"\", calm\"\n"
                + "A3,11 seams,none seen,310,2,4,1.5,sugar,\n")
            .orThrow();
    Scenario first = colonies.get(0).scenario().orElseThrow();
    assertEquals("A1", first.name());
    assertEquals(List.of(new Wash(SITE.start(), 300, 9, WashMethod.ALCOHOL)), first.counts());
    assertEquals(SITE.hive().frame().orElseThrow().beesPerSide() * 18, first.hive().bees(), 1e-9);
    assertEquals("A, 2", colonies.get(1).name());
    assertEquals("says \"hello\", calm", colonies.get(1).note());
    assertEquals(18000, colonies.get(1).scenario().orElseThrow().hive().bees());
    Scenario third = colonies.get(2).scenario().orElseThrow();
    assertEquals(0, third.hive().broodCells());
    assertEquals(
        List.of(new Wash(SITE.start(), 310, 2, WashMethod.SUGAR), new Board(SITE.start(), 4, 1.5)),
        third.counts());
    assertTrue(colonies.stream().allMatch(colony -> colony.doubts().isEmpty()));
  }

  @Test
  void columnsMayStandInAnyOrderAndBeLeftOut() throws IOException {
    List<ApiaryColony> colonies =
        read("wash_mites, Colony ,wash_bees,method\n3,A1,300,soap\n").orThrow();
    assertEquals("A1", colonies.get(0).name());
    assertEquals(SITE.hive().bees(), colonies.get(0).scenario().orElseThrow().hive().bees());
  }

  @Test
  void doubtfulRowsAreKeptWithTheirPlaces() throws IOException {
    List<ApiaryColony> colonies =
        read(HEADER
                + "A1,2500,1 frames,60,9,,,,\n"
                + "A2,,,,,,,,\n"
                + "A3,9 frames,2 frames,150,200,,,soap,\n")
            .orThrow();
    assertEquals(
        List.of(
            "colonies.csv:2:18: wash_bees", "colonies.csv:2:25: method", "colonies.csv:2:4: bees"),
        places(colonies.get(0)));
    assertEquals(
        List.of("colonies.csv:3:4: bees", "colonies.csv:3:5: brood", "colonies.csv:3:1: colony"),
        places(colonies.get(1)));
    assertEquals(Optional.empty(), colonies.get(1).scenario());
    assertEquals(List.of("colonies.csv:4:26: wash_mites"), places(colonies.get(2)));
  }

  private List<String> places(ApiaryColony colony) {
    return colony.doubts().stream()
        .map(
            d ->
                Path.of(d.file()).getFileName()
                    + ":"
                    + d.line()
                    + ":"
                    + d.column()
                    + ": "
                    + d.field())
        .toList();
  }

  @Test
  void allMistakesAreToldAtOnce() throws IOException {
    String problems =
        problems(
            HEADER
                + "A1,9 frams,4 frames,300,9,,,alcohol,\n"
                + "A1,9 frames,4 frames,300,,,,alcohol,\n"
                + ",9 frames,4 frames,300,9,,,vodka,\n"
                + "A4,9 frames,4 frames,9,900,,,soap,\n"
                + "A5,9 frames\n"
                + "A6,9 frames,4 frames,1e9,NaN,,,soap,\n"
                + "A7,9 frames,4 frames,,,,,,\"open\n");
    assertEquals(
        """
        colonies.csv:2:4: error: bees: unknown unit "frams"
          hint: did you mean "frames"? write it as 9 frames, 11 seams, 17 sides, 1.5 boxes, 4 lb or 18000 bees
        colonies.csv:3:1: error: colony: A1 is there twice
          hint: rename one of them
        colonies.csv:3:22: error: wash_bees: needs wash_mites beside it
        colonies.csv:4:1: error: colony: the colony has no name
          hint: give each colony a name
        colonies.csv:4:28: error: method: unknown method "vodka"
          hint: accepted: alcohol, soap, sugar
        colonies.csv:5:24: error: wash_mites: 900 mites on 9 bees is not possible
          hint: are bees and mites swapped?
        colonies.csv:6:1: error: has 2 fields, the first line has 9
          hint: put " around texts that hold a comma; write 2.5, not 2,5
        colonies.csv:7:22: error: wash_bees: 1000000000 bees is outside what is accepted: 1 to 10000 bees
        colonies.csv:7:26: error: wash_mites: "NaN" is not a number
          hint: write digits, with a decimal point if needed, as in 1.5
        colonies.csv:8:1: error: a quoted field is not closed
          hint: write " at both ends of the text
        """,
        problems);
  }

  @Test
  void theFirstLineMustNameKnownColumns() throws IOException {
    assertEquals(
        """
        colonies.csv:1:1: error: the first line does not name the column colony
          hint: columns are separated by commas; write: colony,bees,brood,wash_bees,wash_mites,board_days,board_mites,method,note
        """,
        problems("colony;bees;brood\nA1;9 frames;3 frames\n"));
    assertEquals(
        """
        colonies.csv:1:8: error: unknown column "mites_washed"
          hint: accepted: colony, bees, brood, wash_bees, wash_mites, board_days, board_mites, method, note
        """,
        problems("colony,mites_washed\n"));
    assertTrue(problems("").contains("does not name the column colony"));
    assertTrue(problems("colony\n").contains("there is no colony in the file"));
    assertTrue(problems("colony,colony\nA,B\n").contains("this column is there twice"));
  }

  @Test
  void aMissingFileIsAProblem() {
    List<Problem> problems = ApiaryReader.read(folder.resolve("none.csv"), SITE).problems();
    assertTrue(problems.get(0).text().contains("there is no such file"));
  }

  @Test
  void theExampleOfTheManualIsRight() throws IOException {
    assertEquals(
        3,
        read(HEADER
                + "A1,9 frames,4 frames,300,9,,,alcohol,\n"
                + "A2,18000,12 hands,,,3,24,,\"young queen, calm\"\n"
                + "A3,11 seams,none seen,310,2,,,soap,\n")
            .orThrow()
            .size());
  }
}
