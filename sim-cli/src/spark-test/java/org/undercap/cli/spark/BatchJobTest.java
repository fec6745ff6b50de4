package org.undercap.cli.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;
import org.undercap.cli.SmallScenario;
import picocli.CommandLine;

/** The job gives the rows of the command {@code batch}, here with two threads of one machine. */
class BatchJobTest {
  private static final Map<String, String> LOCAL =
      Map.of(
          "spark.master", "local[2]",
          "spark.ui.enabled", "false",
          "spark.driver.host", "127.0.0.1",
          "spark.driver.bindAddress", "127.0.0.1");
  private static final int RUNS = 700;

  @TempDir private Path folder;

  @BeforeEach
  void stayOnThisMachine() {
    LOCAL.forEach(System::setProperty);
  }

  @AfterEach
  void forget() {
    LOCAL.keySet().forEach(System::clearProperty);
  }

  private String design() throws IOException {
    StringBuilder text = new StringBuilder("label,mites,plan,invasion.worker,scenario\n");
    for (int i = 0; i < RUNS; i++) {
      text.append(i).append(',').append(100 + i).append(i % 2 == 0 ? ",\"Gel, twice\"," : ",,");
      text.append(0.5 + i / 10_000.0).append(i % 7 == 0 ? ",other.yaml\n" : ",\n");
    }
    Files.writeString(
        folder.resolve("other.yaml"),
        SmallScenario.TEXT.replace("climate: central-european", "climate: cool-oceanic"));
    return Files.writeString(folder.resolve("design.csv"), text).toString();
  }

  private static String joined(Path parts) throws IOException {
    Map<String, String> texts = new TreeMap<>(SmallScenario.files(parts));
    texts.keySet().removeIf(name -> !name.startsWith("part-"));
    assertTrue(texts.size() > 1, "several tasks wrote parts");
    return String.join("", texts.values());
  }

  @Test
  void rowsAreThoseOfTheBatch() throws IOException {
    String scenario = SmallScenario.in(folder, "small.yaml");
    String design = design();
    Path parameters =
        Files.writeString(
            folder.resolve("fitted.yaml"),
            "undercap-parameters: 1\nvalues:\n  adult.weight: 0.12\n");
    for (String format : List.of("csv", "jsonl")) {
      String spark = folder.resolve("spark-" + format).toString();
      String batch = folder.resolve("batch-" + format).toString();
      String[] options = {
        design,
        "--scenario=" + scenario,
        "--parameters=" + parameters,
        "--every=40",
        "--format=" + format,
        "--out=" + spark
      };
      assertEquals(0, new CommandLine(new BatchJob()).execute(options));
      CliRun run =
          CliRun.of(
              "batch",
              design,
              "--scenario=" + scenario,
              "--parameters=" + parameters,
              "--every=40",
              "--format=" + format,
              "--out=" + batch);
      assertEquals(0, run.exitCode(), run.err());
      for (String table : List.of("runs", "daily")) {
        assertEquals(
            Files.readString(Path.of(batch, table + "." + format)),
            joined(Path.of(spark, table)),
            table + " " + format);
      }
    }
  }

  @Test
  void wrongDesignIsRefusedBeforeTheClusterIsAsked() throws IOException {
    Path design = Files.writeString(folder.resolve("bad.csv"), "mites\nmany\n");
    String[] words = {design.toString(), "--out=" + folder.resolve("out")};
    assertEquals(3, new CommandLine(new BatchJob()).execute(words));
  }
}
