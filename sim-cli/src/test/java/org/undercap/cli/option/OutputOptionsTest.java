package org.undercap.cli.option;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.undercap.cli.output.IfExists;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.UsageException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;

class OutputOptionsTest {
  @Test
  void noFolderNoFiles() {
    assertEquals(Optional.empty(), parse().folder());
    assertFalse(parse().svg());
  }

  @Test
  void existingFilesAreAnErrorUnlessSaidOtherwise() {
    OutputFolder folder = parse("--out", "there", "--svg").folder().orElseThrow();
    assertEquals(new OutputFolder(Path.of("there"), IfExists.ERROR), folder);
    assertTrue(parse("--out", "there", "--svg").svg());
  }

  @ParameterizedTest
  @EnumSource
  void wordsAreLowerCase(IfExists choice) {
    OutputOptions options = parse("--out=there", "--if-exists=" + choice.word());
    assertEquals(choice, options.folder().orElseThrow().ifExists());
  }

  @Test
  void unknownWordIsAnsweredWithTheKnownOnes() {
    ParameterException error =
        assertThrows(ParameterException.class, () -> parse("--out=x", "--if-exists=replace"));
    assertEquals(
        "Invalid value for option '--if-exists': 'replace' is not one of error, skip,"
            + " overwrite",
        error.getMessage());
  }

  @Test
  void drawingNeedsAFolder() {
    UsageException error = assertThrows(UsageException.class, () -> parse("--svg").folder());
    assertTrue(error.getMessage().contains("give --out=DIR too"), error::getMessage);
  }

  @Test
  void helpNamesTheWords() {
    String help = new CommandLine(new Trial()).getUsageMessage();
    assertTrue(
        help.replaceAll("\\s+", " ").contains("error, skip, overwrite (default: error)"), help);
  }

  private static OutputOptions parse(String... args) {
    Trial trial = new Trial();
    new CommandLine(trial).parseArgs(args);
    return trial.options;
  }

  @Command(name = "trial")
  private static final class Trial {
    @CommandLine.Mixin private OutputOptions options;
  }
}
