package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Ctrl-C at random moments: all files or none, and a batch that goes on to the same bytes. */
@EnabledOnOs(OS.LINUX)
class StopIT {
  private static final String COMPARE = "compare small.yaml --members=200 --out=";
  private static final String BATCH = "batch design.csv --scenario=small.yaml --threads=1 --out=";
  private static final int STOPPED = 130;
  private static final int RUNS = 3000;

  @TempDir private static Path folder;

  @BeforeAll
  static void prepare() throws IOException {
    SmallScenario.in(folder, "small.yaml");
    StringBuilder design = new StringBuilder("mites\n");
    for (int i = 0; i < RUNS; i++) {
      design.append(50 + i).append('\n');
    }
    Files.writeString(folder.resolve("design.csv"), design);
  }

  /** Starts it so that it listens to Ctrl-C, which programs in the background may not do. */
  private static Process start(String command) throws IOException {
    String java =
        Path.of(System.getProperty("java.home"), "bin", "java")
            + " -XX:+UseSerialGC -jar "
            + Path.of("target", "undercap.jar").toAbsolutePath();
    return new ProcessBuilder("sh", "-c", "exec env --default-signal=INT " + java + " " + command)
        .directory(folder.toFile())
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.appendTo(folder.resolve("log.txt").toFile()))
        .start();
  }

  /** Time that a command takes if it is left in peace (ms). */
  private static int finish(String command) throws Exception {
    long start = System.nanoTime();
    assertEquals(0, start(command).waitFor(), command);
    return (int) ((System.nanoTime() - start) / 1_000_000);
  }

  /** Stops it at a moment; true if that came before its end. */
  private static boolean stop(String command, int moment) throws Exception {
    Process run = start(command);
    Thread.sleep(moment);
    new ProcessBuilder("kill", "-INT", Long.toString(run.pid())).start().waitFor();
    int exitCode = run.waitFor();
    assertTrue(exitCode == STOPPED || exitCode == 0, command + " ended with " + exitCode);
    return exitCode == STOPPED;
  }

  private static void allOrNothing(int times) throws Exception {
    String quiet = "quiet-" + times;
    int time = finish(COMPARE + quiet);
    Map<String, String> whole = SmallScenario.files(folder.resolve(quiet));
    Random random = new Random(20261126);
    int stopped = 0;
    // On a busy machine the quiet run may take longer than those that follow, and few are stopped.
    for (int i = 0; i < times || (stopped <= times / 4 && i < 4 * times); i++) {
      Path out = folder.resolve("stopped-" + times + "-" + i);
      stopped += stop(COMPARE + out.getFileName(), random.nextInt(time)) ? 1 : 0;
      Map<String, String> files = Files.exists(out) ? SmallScenario.files(out) : Map.of();
      if (!files.isEmpty()) {
        assertEquals(whole.keySet(), files.keySet());
        files.remove("manifest.json"); // It names the folder.
        files.forEach((name, content) -> assertEquals(whole.get(name), content, name));
      }
    }
    assertTrue(stopped > times / 4, stopped + " of " + times + " or more were stopped");
  }

  private static void goesOn(int times) throws Exception {
    String out = "batch-" + times;
    int time = finish(BATCH + "quiet-" + out);
    Random random = new Random(20261127);
    int stopped = 0;
    for (int i = 0; i < times; i++) {
      if (stop(BATCH + out + " --if-exists=skip", random.nextInt(time / 2))) {
        stopped++;
      }
    }
    finish(BATCH + out + " --if-exists=skip");
    for (String name : List.of("runs.csv", "daily.csv")) {
      assertEquals(
          -1,
          Files.mismatch(
              folder.resolve("quiet-" + out).resolve(name), folder.resolve(out).resolve(name)),
          name);
    }
    assertEquals(3, SmallScenario.files(folder.resolve(out)).size(), "nothing else is left");
    assertTrue(stopped > times / 4, stopped + " of " + times + " were stopped");
  }

  @Test
  void comparisonThatIsStoppedLeavesAllFilesOrNone() throws Exception {
    allOrNothing(3);
  }

  @Test
  void batchThatIsStoppedGoesOn() throws Exception {
    goesOn(3);
  }

  @Test
  @Tag("slow")
  void comparisonThatIsStoppedFiftyTimes() throws Exception {
    allOrNothing(50);
  }

  @Test
  @Tag("slow")
  void batchThatIsStoppedFiftyTimes() throws Exception {
    goesOn(50);
  }
}
