package org.undercap.cli.option;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.undercap.cli.output.UsageException;
import org.undercap.monitoring.CriticalCount;
import org.undercap.monitoring.Tally;
import picocli.CommandLine.Option;

/** Counts before and after a treatment, from options or from a table. */
public final class CountOptions {
  private static final String COUNT = "MITES/BEES";
  private static final String ALONE =
      "--counts cannot stand beside counts in other options; keep one of them";

  @Option(
      names = "--before",
      paramLabel = COUNT,
      converter = CountText.Converter.class,
      description =
          "Count before the treatment, as in 13/300; a number alone is a board. Once per colony.")
  private List<CountText> before = new ArrayList<>();

  @Option(
      names = "--after",
      paramLabel = COUNT,
      converter = CountText.Converter.class,
      description = "Count after it; colonies in the same order as for --before.")
  private List<CountText> after = new ArrayList<>();

  @Option(
      names = "--control-before",
      paramLabel = COUNT,
      converter = CountText.Converter.class,
      description = "Count in an untreated colony on the day of --before.")
  private List<CountText> controlBefore = new ArrayList<>();

  @Option(
      names = "--control-after",
      paramLabel = COUNT,
      converter = CountText.Converter.class,
      description = "Count in an untreated colony on the day of --after.")
  private List<CountText> controlAfter = new ArrayList<>();

  @Option(
      names = "--killed",
      paramLabel = "MITES",
      description = "Critical test: mites that fell under the treatment. Once per colony.")
  private List<Integer> killed = new ArrayList<>();

  @Option(
      names = "--followup",
      paramLabel = "MITES",
      description = "Critical test: mites that then fell under a treatment that kills the rest.")
  private List<Integer> followUp = new ArrayList<>();

  @Option(
      names = "--counts",
      paramLabel = "FILE",
      description =
          "Table (CSV) with the columns colony, group (treated or untreated), before_mites,"
              + " before_bees, after_mites, after_bees; without bees they are boards.")
  private Path file;

  /** Creates the options. */
  public CountOptions() {}

  /**
   * Whether no count was given at all.
   *
   * @return true if so
   */
  public boolean none() {
    return file == null && washes().isEmpty() && killed.isEmpty() && followUp.isEmpty();
  }

  /**
   * Counts after the treatment in the options.
   *
   * @return one for each treated colony
   */
  public List<CountText> after() {
    return List.copyOf(after);
  }

  /**
   * Whether counts of a single kind after the treatment are all that was given.
   *
   * @return true if there is nothing but {@code --after}
   */
  public boolean onlyAfter() {
    return file == null
        && !after.isEmpty()
        && washes().size() == after.size()
        && killed.isEmpty()
        && followUp.isEmpty();
  }

  /**
   * The counts.
   *
   * @return treated and untreated colonies
   * @throws UsageException if the options do not go together
   * @throws org.undercap.cli.output.InvalidFileException if the table has mistakes
   */
  public CountGroups groups() {
    if (file != null) {
      refuse(!washes().isEmpty() || !killed.isEmpty() || !followUp.isEmpty(), ALONE);
      return CountsFile.read(file);
    }
    if (!killed.isEmpty() || !followUp.isEmpty()) {
      return criticalTest();
    }
    refuse(
        after.isEmpty(),
        "no counts after the treatment: give --before and --after, as in"
            + " --before 13/300 --after 2/310");
    boolean abbott = before.isEmpty() && controlBefore.isEmpty();
    refuse(
        abbott && controlAfter.isEmpty(),
        "--after needs --before, or --control-after for colonies counted afterwards only");
    refuse(!abbott && before.isEmpty(), "--control-before needs --before");
    if (!abbott) {
      sameNumber("--before", before, "--after", after);
      sameNumber("--control-before", controlBefore, "--control-after", controlAfter);
    }
    boolean boards = after.get(0).board();
    refuse(
        washes().stream().anyMatch(count -> count.board() != boards),
        "washes (as in 13/300) and boards (as in 56) cannot be mixed; count in one way throughout");
    return new CountGroups(
        tallies(before),
        tallies(after),
        tallies(controlBefore),
        tallies(controlAfter),
        List.of(),
        boards);
  }

  private CountGroups criticalTest() {
    refuse(!washes().isEmpty(), "--killed and --followup cannot stand beside --before and --after");
    sameNumber("--killed", killed, "--followup", followUp);
    List<CriticalCount> counts = new ArrayList<>();
    for (int i = 0; i < killed.size(); i++) {
      counts.add(
          new CriticalCount(
              within("--killed", killed.get(i)), within("--followup", followUp.get(i))));
    }
    return CountGroups.criticalTest(counts);
  }

  private static int within(String option, int mites) {
    refuse(
        mites < 0 || mites > CountText.LARGEST,
        option + " " + mites + " must be in [0, " + CountText.LARGEST + "] mites");
    return mites;
  }

  private static void sameNumber(String one, List<?> ones, String other, List<?> others) {
    refuse(
        ones.size() != others.size(),
        one
            + " is given "
            + times(ones.size())
            + " and "
            + other
            + " "
            + times(others.size())
            + "; give both once per colony, in the same order");
  }

  private static String times(int number) {
    return number == 1 ? "once" : number + " times";
  }

  private static void refuse(boolean wrong, String message) {
    if (wrong) {
      throw new UsageException(message);
    }
  }

  private List<CountText> washes() {
    return Stream.of(before, after, controlBefore, controlAfter).flatMap(List::stream).toList();
  }

  private static List<Tally> tallies(List<CountText> counts) {
    return counts.stream().map(CountText::tally).toList();
  }
}
