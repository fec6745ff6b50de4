package org.undercap.scenario.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.batch.BatchRow;
import org.undercap.parameter.ParameterChanges;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Problem;
import org.undercap.scenario.Reading;

/** Designs: what they say, and what is wrong with them. */
class DesignReaderTest {
  @TempDir private Path folder;
  private Path scenario;

  @BeforeEach
  void writeScenario() throws IOException {
    scenario =
        Files.writeString(
            folder.resolve("base.yaml"),
            """
            undercap: 1
            name: Base
            site: {climate: central-european}
            colony: {date: 2026-08-08, bees: 18000, brood: 9000 cells}
            mites: {in-colony: 500}
            horizon: 100 days
            plans:
              - name: Gel, twice
                steps:
                  - {date: 2026-08-10, treatment: thymol-gel}
                  - {date: 2026-08-24, treatment: thymol-gel}
            """);
  }

  private Reading<DesignReader> check(String text) throws IOException {
    Path design = Files.writeString(folder.resolve("design.csv"), text);
    return DesignReader.check(design, Optional.of(scenario), ParameterChanges.none());
  }

  private static List<BatchRow> rows(DesignReader design) {
    List<BatchRow> rows = new ArrayList<>();
    design.rows(
        row -> {
          rows.add(row.orElseThrow());
          return true;
        });
    return rows;
  }

  @Test
  void readsWhatTheRowsChange() throws IOException {
    DesignReader design =
        check(
                """
                label,plan,shift_days,climate,mites,arrivals,warmer_c,end,invasion.worker,brood.worker.days
                first,"Gel, twice",3,mediterranean,120,low,-1.5,2026-12-01,0.5,3;6;11

                ,,,,,,,,,
                """)
            .orThrow();
    assertEquals(2, design.runs());
    assertEquals(List.of(scenario), design.scenarioFiles());
    List<BatchRow> rows = rows(design);
    BatchRow first = rows.get(0);
    assertEquals("first", first.label());
    assertEquals("2026-08-13", first.plan().steps().get(0).date().toString());
    assertEquals("mediterranean", first.climate().id());
    assertEquals(120, first.mites());
    assertEquals("low", first.arrivals().id());
    assertEquals(-1.5, first.warmer());
    assertEquals("2026-12-01", first.end().toString());
    assertEquals(0.5, first.parameters().value(ParameterId.INVASION_WORKER));
    assertEquals(11, first.parameters().value(ParameterId.BROOD_WORKER_DAYS, 2));
    BatchRow second = rows.get(1);
    assertEquals(2, second.number());
    assertEquals("Do nothing", second.plan().name());
    assertEquals(500, second.mites());
    assertEquals("2026-11-16", second.end().toString());
  }

  @Test
  void lineAloneIsTheSameRun() throws IOException {
    DesignReader design = check("mites,plan\n7,\n8,\"Gel, twice\"\n").orThrow();
    assertEquals(rows(design).get(1), design.row(2, "8,\"Gel, twice\""));
  }

  @Test
  void tellsAllProblemsWithTheirPlaces() throws IOException {
    List<Problem> problems =
        check(
                """
                mites,climate,plan,start,invasion.worker
                x,atlantis,Gel twce,2026-08-20,-1
                5,,"Gel, twice",2026-08-20,
                1,2
                5,,,2027-08-20,
                """)
            .problems();
    List<String> places =
        problems.stream().map(p -> p.line() + ":" + p.column() + " " + p.field()).toList();
    assertEquals(
        List.of(
            "2:1 mites",
            "2:3 climate",
            "2:12 plan",
            "2:32 invasion.worker",
            "3:4 plan",
            "4:1 ",
            "5:5 start"),
        places,
        problems.toString());
    assertTrue(problems.get(2).hint().contains("Gel, twice"), problems.get(2)::text);
    assertTrue(problems.get(4).message().contains("2026-08-10"), problems.get(4)::text);
  }

  @Test
  void refusesColumnsThatItDoesNotKnow() throws IOException {
    Problem unknown = check("mites,climat\n1,\n").problems().get(0);
    assertEquals(7, unknown.column());
    assertTrue(unknown.message().contains("did you mean \"climate\"?"), unknown::text);
    assertTrue(check("mites;climate\n").problems().get(0).hint().contains("commas"));
    assertTrue(check("mites,mites\n1,1\n").problems().get(0).message().contains("twice"));
  }

  @Test
  void stopsLookingAfterManyProblems() throws IOException {
    List<Problem> problems = check("mites\n" + "x\n".repeat(5000)).problems();
    assertEquals(51, problems.size());
  }

  @Test
  void emptyOrMissingDesignIsNone() throws IOException {
    assertTrue(check("mites\n").problems().get(0).message().contains("no run"));
    Reading<DesignReader> missing =
        DesignReader.check(
            folder.resolve("none.csv"), Optional.of(scenario), ParameterChanges.none());
    assertEquals("there is no such file", missing.problems().get(0).message());
  }

  @Test
  void rowsNeedAScenario() throws IOException {
    Path design =
        Files.writeString(
            folder.resolve("design.csv"), "mites,scenario\n5,\n6,base.yaml\n7,none.yaml\n");
    List<Problem> problems =
        DesignReader.check(design, Optional.empty(), ParameterChanges.none()).problems();
    assertEquals(2, problems.size(), problems.toString());
    assertTrue(problems.get(0).hint().contains("--scenario"), problems.get(0)::text);
    assertTrue(problems.get(1).message().contains("none.yaml"), problems.get(1)::text);
  }
}
