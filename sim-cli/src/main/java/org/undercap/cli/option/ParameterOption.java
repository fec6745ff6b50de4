package org.undercap.cli.option;

import java.nio.file.Path;
import java.util.Optional;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.parameter.ParameterChanges;
import org.undercap.scenario.Reading;
import org.undercap.scenario.io.ParameterFile;
import picocli.CommandLine.Option;

/** Parameters of one's own, as a fit writes them. */
public final class ParameterOption {
  @Option(
      names = "--parameters",
      paramLabel = "FILE",
      description =
          "Run the model with the values of this file, as undercap fit writes it; they stand above those of a scenario.")
  private Path file;

  /** Creates the option. */
  public ParameterOption() {}

  /**
   * The file.
   *
   * @return its name as the user gave it; empty if none was given
   */
  public Optional<Path> file() {
    return Optional.ofNullable(file);
  }

  /**
   * Reads the file.
   *
   * @return its values; none if no file was given
   * @throws InvalidFileException if the file is not valid; the message holds all problems
   */
  public ParameterChanges read() {
    if (file == null) {
      return ParameterChanges.none();
    }
    Reading<ParameterChanges> reading = ParameterFile.read(file);
    if (!reading.problems().isEmpty()) {
      throw new InvalidFileException(InvalidFileException.text(reading.problems()));
    }
    return reading.orThrow();
  }
}
