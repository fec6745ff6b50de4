package org.undercap.cli.option;

import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import java.util.stream.Stream;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.lesson.Audience;
import org.undercap.cli.lesson.Speech;
import org.undercap.cli.lesson.Units;
import org.undercap.cli.lesson.Words;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Who listens, in which words and units, and how large the pictures are. */
public class SpeechOptions {
  @Option(
      names = "--audience",
      paramLabel = "WORD",
      converter = ToAudience.class,
      completionCandidates = Audiences.class,
      description = "Who listens: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
  private Audience audience = Audience.PRACTISED;

  @Option(
      names = "--paper",
      paramLabel = "WORD",
      converter = ToPaper.class,
      completionCandidates = Papers.class,
      description = "Size of the pictures: ${COMPLETION-CANDIDATES} (default: a4).")
  private ChartStyle paper = ChartStyle.A4;

  @Option(
      names = "--units",
      paramLabel = "WORD",
      converter = ToUnits.class,
      completionCandidates = UnitWords.class,
      description = "Units of temperatures: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
  private Units units = Units.METRIC;

  @Option(
      names = "--language-file",
      paramLabel = "FILE",
      description = "Words of charts and pages; 'undercap lesson words' prints them to translate.")
  private Path language;

  /** Creates the options. */
  public SpeechOptions() {}

  /**
   * How to speak.
   *
   * @return words, audience and units
   */
  public Speech speech() {
    return new Speech(words(), audience, units);
  }

  /**
   * The words.
   *
   * @return those of the program, or of the translation
   */
  public Words words() {
    return language == null ? Words.shipped() : Words.translated(language);
  }

  /**
   * Size of the pictures.
   *
   * @return sizes
   */
  public ChartStyle style() {
    return paper;
  }

  static <T> T of(String word, String what, Stream<T> all) {
    return all.filter(it -> named(it).equals(word.toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(() -> new TypeConversionException("'" + word + "' is no " + what));
  }

  static String named(Object value) {
    String name = value instanceof ChartStyle style ? style.name() : value.toString();
    return name.toLowerCase(Locale.ROOT);
  }

  private static Stream<ChartStyle> papers() {
    return Stream.of(ChartStyle.A4, ChartStyle.LETTER, ChartStyle.SLIDE);
  }

  private static final class ToAudience implements ITypeConverter<Audience> {
    @Override
    public Audience convert(String word) {
      return of(word, "audience: new, practised or vet", Stream.of(Audience.values()));
    }
  }

  private static final class ToUnits implements ITypeConverter<Units> {
    @Override
    public Units convert(String word) {
      return of(word, "kind of units: metric or imperial", Stream.of(Units.values()));
    }
  }

  private static final class ToPaper implements ITypeConverter<ChartStyle> {
    @Override
    public ChartStyle convert(String word) {
      return of(word, "paper: a4, letter or slide", papers());
    }
  }

  private static final class Audiences implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Stream.of(Audience.values()).map(SpeechOptions::named).iterator();
    }
  }

  private static final class UnitWords implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Stream.of(Units.values()).map(SpeechOptions::named).iterator();
    }
  }

  private static final class Papers implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return papers().map(SpeechOptions::named).iterator();
    }
  }
}
