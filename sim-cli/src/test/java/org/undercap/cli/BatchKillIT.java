package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A batch that is killed ten times ends with the bytes of one that was left in peace. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class BatchKillIT {
  private static final int KILLS = 10;
  private static final int RUNS = 4000;

  @TempDir private Path folder;

  private Process batch(String out, String threads) throws IOException {
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    return new ProcessBuilder(
            java.toString(),
            "-Xmx256m",
            "-XX:+UseSerialGC",
            "-jar",
            Path.of("target", "undercap.jar").toAbsolutePath().toString(),
            "batch",
            "design.csv",
            "--scenario=small.yaml",
            "--threads=" + threads,
            "--out=" + out)
        .directory(folder.toFile())
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.appendTo(folder.resolve(out + ".log").toFile()))
        .start();
  }

  private static long size(Path file) throws IOException {
    return Files.exists(file) ? Files.size(file) : 0;
  }

  /** Waits until the run has come further, then a little longer; true if it still runs. */
  private static boolean hasComeFurther(Process run, Path journal, long before, int longer)
      throws Exception {
    while (run.isAlive() && size(journal) <= before) {
      Thread.sleep(5);
    }
    Thread.sleep(longer);
    return run.isAlive();
  }

  @Test
  void killedTenTimesItLosesAndDoublesNothing() throws Exception {
    SmallScenario.in(folder, "small.yaml");
    StringBuilder design = new StringBuilder("mites,plan\n");
    for (int i = 0; i < RUNS; i++) {
      design.append(50 + i).append(i % 2 == 0 ? ",\n" : ",Dribble\n");
    }
    Files.writeString(folder.resolve("design.csv"), design);
    Path journal = folder.resolve("killed").resolve(".batch.journal");
    Random random = new Random(20261125);
    int kills = 0;
    for (int i = 0; i < KILLS; i++) {
      long before = size(journal);
      Process run = batch("killed", "1");
      if (hasComeFurther(run, journal, before, random.nextInt(60))) {
        run.destroyForcibly();
        kills++;
      }
      run.waitFor();
    }
    String log = Files.readString(folder.resolve("killed.log"));
    assertEquals(KILLS, kills, log);
    assertTrue(log.contains("a batch begun before is there"), log);
    assertEquals(0, batch("killed", "2").waitFor());
    assertEquals(0, batch("quiet", "2").waitFor());
    for (String name : new String[] {"runs.csv", "daily.csv", "manifest.json"}) {
      assertEquals(
          -1,
          Files.mismatch(folder.resolve("quiet/" + name), folder.resolve("killed/" + name)),
          name);
    }
    try (var left = Files.list(folder.resolve("killed"))) {
      assertEquals(3, left.count(), "nothing else is left");
    }
  }
}
