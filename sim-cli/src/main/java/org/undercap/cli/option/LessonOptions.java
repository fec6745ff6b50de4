package org.undercap.cli.option;

import java.util.Iterator;
import java.util.stream.Stream;
import org.undercap.cli.output.UsageException;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.Hemisphere;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;

/** Where a lesson takes place, who listens, and how large the pictures are. */
public final class LessonOptions extends SpeechOptions {
  @Option(
      names = "--climate",
      paramLabel = "ID",
      description =
          "Climate of the colonies; 'undercap climates' lists them (default: ${DEFAULT-VALUE}).")
  private String climate = "temperate-oceanic";

  @Option(
      names = "--hemisphere",
      paramLabel = "WORD",
      converter = ToHemisphere.class,
      completionCandidates = Hemispheres.class,
      description =
          "Half of the earth: ${COMPLETION-CANDIDATES}; the other one mirrors the climate (default: its own).")
  private Hemisphere hemisphere;

  /** Creates the options. */
  public LessonOptions() {}

  /**
   * The climate.
   *
   * @return on the half of the earth that was asked for
   * @throws UsageException if there is none of this name
   */
  public Climate climate() {
    try {
      Climate found = ClimateCatalogue.shipped().get(climate);
      return hemisphere == null ? found : found.in(hemisphere);
    } catch (IllegalArgumentException e) {
      throw new UsageException(e.getMessage());
    }
  }

  private static final class ToHemisphere implements ITypeConverter<Hemisphere> {
    @Override
    public Hemisphere convert(String word) {
      return of(word, "half of the earth: north or south", Stream.of(Hemisphere.values()));
    }
  }

  private static final class Hemispheres implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Stream.of(Hemisphere.values()).map(SpeechOptions::named).iterator();
    }
  }
}
