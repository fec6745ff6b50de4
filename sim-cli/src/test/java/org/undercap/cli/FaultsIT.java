package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Full disks, folders that cannot be written to, and a machine without a network. The disks are
 * mounted in a name space of their own; where that is not allowed these tests are left out.
 */
@EnabledOnOs(OS.LINUX)
class FaultsIT {
  private static final String ISOLATED = "unshare --map-root-user --mount sh -c '";

  @TempDir private static Path folder;

  private static PackedProgram program;

  @BeforeAll
  static void prepare() throws IOException {
    program = PackedProgram.in(folder).withoutArchive();
    SmallScenario.in(folder, "small.yaml");
    Files.writeString(folder.resolve("yard.csv"), "colony,wash_bees,wash_mites\nA,300,4\n");
    Files.writeString(folder.resolve("design.csv"), "mites\n5\n6\n");
    Files.writeString(
        folder.resolve("class.csv"), "date,bees,mites\n2026-08-08,300,4\n2026-09-08,300,9\n");
    Files.createDirectory(folder.resolve("disk"));
  }

  /** Every command that writes; the place follows. */
  static List<String> writers() {
    return List.of(
        "new --defaults disk/out.yaml",
        "compare small.yaml --members=4 --out=disk/out",
        "simulate small.yaml --out=disk/out",
        "simulate small.yaml --plan=Dribble --trace=disk/out/day.csv",
        "simulate small.yaml --ledger=disk/out/account.csv",
        "timing small.yaml --method=thymol-gel --members=4 --out=disk/out",
        "plan small.yaml --schedules=30 --members=4 --out=disk/out",
        "apiary yard.csv --scenario=small.yaml --members=4 --out=disk/out",
        "batch design.csv --scenario=small.yaml --out=disk/out",
        "resistance small.yaml --years=2 --share=thymol=0.01 --out=disk/out",
        "sensitivity small.yaml --plan=Dribble --vary=mites --size=4 --out=disk/out",
        "fit --growth=0.021 --growth-interval=0.017:0.025 --free=reproduction.worker --starts=1 --out=disk/out",
        "flip-chart small.yaml --out=disk/out",
        "start-map small.yaml --out=disk/out",
        "lesson year --out=disk/out",
        "lesson class --counts=class.csv --members=20 --out=disk/out");
  }

  private static PackedProgram.Ended onDisk(String prepare, String command, String then)
      throws Exception {
    assumeTrue(
        program.shell(ISOLATED + "mount -t tmpfs tmpfs disk'").exitCode() == 0,
        "mounting is not allowed here");
    return program.shell(
        ISOLATED
            + "mount -t tmpfs -o size=64k tmpfs disk && "
            + prepare
            + " && LC_ALL=C undercap "
            + command
            + " >printed.txt; code=$?; "
            + then
            + "; exit $code'");
  }

  private static void assertOneLine(PackedProgram.Ended run, String reason) {
    assertEquals(1, run.exitCode(), run.err());
    List<String> lines = run.err().lines().filter(line -> !line.contains(": doubtful: ")).toList();
    assertEquals(1, lines.size(), run.err());
    assertTrue(lines.get(0).matches("disk\\S*: " + reason + "; .*"), run.err());
    assertFalse(run.err().contains(".part"), run.err());
  }

  private static void fullDisk(String command) throws Exception {
    PackedProgram.Ended run =
        onDisk(
            "head -c 64k /dev/zero > disk/filler",
            command,
            "find disk -name \"*out*\" -o -name \".*part\"");
    assertOneLine(run, "no space left on device");
    if (!command.startsWith("batch")) { // A batch keeps what it has, to go on with it.
      assertEquals("", run.out());
    }
  }

  private static void onlyToRead(String command) throws Exception {
    PackedProgram.Ended run = onDisk("mount -o remount,ro disk", command, "ls -A disk");
    assertOneLine(run, "read-only file system");
    assertEquals("", run.out());
  }

  private static void noNetwork(String command) throws Exception {
    String isolated = "unshare --map-root-user --net ";
    assumeTrue(
        program.shell(isolated + "true").exitCode() == 0, "name spaces are not allowed here");
    PackedProgram.Ended with = program.shell("undercap " + command.replace("disk", "on"));
    PackedProgram.Ended without =
        program.shell(isolated + "undercap " + command.replace("disk", "off"));
    assertEquals(0, without.exitCode(), without.err());
    assertEquals(with.out(), without.out(), command);
    String differences = "diff -r --exclude=\"*manifest.json\" on off; rm -r on off";
    assertEquals("", program.shell(differences).out(), command);
  }

  @Test
  void fullDiskTakesOneLineAndLeavesNothing() throws Exception {
    fullDisk(writers().get(0));
    fullDisk(writers().get(1));
  }

  @Test
  void folderThatCanOnlyBeReadTakesOneLine() throws Exception {
    onlyToRead(writers().get(1));
  }

  @Test
  void comparisonNeedsNoNetwork() throws Exception {
    noNetwork(writers().get(1));
  }

  @ParameterizedTest
  @Tag("slow")
  @MethodSource("writers")
  void everyCommandBearsFullDisksAndNeedsNoNetwork(String command) throws Exception {
    fullDisk(command);
    onlyToRead(command);
    noNetwork(command);
  }

  @Test
  @Tag("slow")
  void batchThatFilledTheDiskGoesOnWhenThereIsRoom() throws Exception {
    StringBuilder design = new StringBuilder("mites\n");
    for (int i = 0; i < 400; i++) {
      design.append(100 + i).append('\n');
    }
    Files.writeString(folder.resolve("long.csv"), design);
    String batch = "batch long.csv --scenario=small.yaml --every=30 --out=";
    assertEquals(0, program.shell("undercap " + batch + "room").exitCode());
    PackedProgram.Ended run =
        onDisk(
            "true",
            batch + "disk/out",
            "mount -o remount,size=9m disk && undercap "
                + batch
                + "disk/out && diff -r room disk/out");
    assertEquals(1, run.exitCode(), run.err());
    List<String> lines = run.err().lines().toList();
    assertEquals(
        "disk/out: no space left on device; what was done is kept; mend that and give the command"
            + " again",
        lines.get(0));
    assertEquals("", run.out(), "the same bytes as with room from the start");
  }

  @Test
  void userWithoutRightsIsToldSo() throws Exception {
    String other = "setpriv --reuid=65534 --regid=65534 --clear-groups ";
    Path locked = Files.createDirectory(folder.resolve("locked"));
    Files.writeString(locked.resolve("x.csv"), "kept");
    program.shell("chmod -R a+rX . && chmod 0755 locked");
    assumeTrue(program.shell(other + "test -x bin/undercap").exitCode() == 0, "only this user");
    PackedProgram.Ended run = program.shell(other + "undercap simulate small.yaml --out=locked");
    assertEquals("locked: permission denied; name another folder\n", run.err());
    assertEquals(1, run.exitCode());
    program.shell("chmod 0700 locked");
    PackedProgram.Ended read = program.shell(other + "undercap check locked/x.csv");
    assertEquals(3, read.exitCode(), read.err());
    assertTrue(read.err().startsWith("locked/x.csv: error: "), read.err());
    assertEquals("kept", Files.readString(locked.resolve("x.csv")));
  }
}
