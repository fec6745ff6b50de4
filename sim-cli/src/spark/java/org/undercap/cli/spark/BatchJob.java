package org.undercap.cli.spark;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.storage.StorageLevel;
import org.undercap.batch.BatchBlock;
import org.undercap.batch.DailyChoice;
import org.undercap.cli.batch.BatchTables;
import org.undercap.cli.output.RowFormat;
import org.undercap.parameter.ParameterChanges;
import org.undercap.scenario.Problem;
import org.undercap.scenario.Reading;
import org.undercap.scenario.io.DesignReader;
import org.undercap.scenario.io.ParameterFile;
import org.undercap.scenario.io.ScenarioReader;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * Runs a design on a cluster. The part files of each table, joined in the order of their names, are
 * the bytes that the command {@code batch} writes.
 */
@Command(
    name = "BatchJob",
    mixinStandardHelpOptions = true,
    description = "Runs a design on a cluster; writes the folders runs and daily to --out.")
public final class BatchJob implements Callable<Integer> {
  private static final int INVALID = 3;

  /** Small pieces of work, so that a slow machine holds nobody up. */
  private static final int BLOCKS_A_TASK = 8;

  @Parameters(paramLabel = "DESIGN", description = "One row a run, as for the command batch.")
  private Path file;

  @Option(names = "--scenario", description = "The scenario of the rows that name none.")
  private Path scenario;

  @Option(names = "--parameters", description = "Values of one's own, as undercap fit writes them.")
  private Path parameters;

  @Option(
      names = "--out",
      required = true,
      description = "A folder that is not there yet, of any file system that Spark knows.")
  private String out;

  @Option(
      names = "--every",
      description = "Days from one row of the daily table to the next; 0 for no daily table.")
  private int every = 1;

  @Option(names = "--format", description = "csv or jsonl.")
  private String format = RowFormat.CSV.word();

  /** Creates the job. */
  public BatchJob() {}

  /**
   * Runs the job and ends with its exit code: 0 done, 3 a file that was read is not valid.
   *
   * @param args the words after the name of the job
   */
  public static void main(String[] args) {
    int exitCode = new CommandLine(new BatchJob()).execute(args);
    if (exitCode != 0) {
      System.exit(exitCode);
    }
  }

  @Override
  public Integer call() {
    Reading<ParameterChanges> changes =
        parameters == null ? Reading.of(ParameterChanges.none()) : ParameterFile.read(parameters);
    if (!changes.problems().isEmpty()) {
      return refuse(changes.problems());
    }
    Reading<DesignReader> reading =
        DesignReader.check(file, Optional.ofNullable(scenario), changes.orThrow());
    if (!reading.problems().isEmpty()) {
      return refuse(reading.problems());
    }
    try (JavaSparkContext spark =
        new JavaSparkContext(new SparkConf().setAppName("undercap batch " + file.getFileName()))) {
      run(spark, reading.orThrow());
    }
    return 0;
  }

  private static int refuse(List<Problem> problems) {
    problems.stream().map(Problem::text).forEach(System.err::println);
    return INVALID;
  }

  private void run(JavaSparkContext spark, DesignReader design) {
    spark.addFile(file.toAbsolutePath().toString());
    for (Path one : design.scenarioFiles()) {
      ScenarioReader.filesOf(one).forEach(part -> spark.addFile(part.toAbsolutePath().toString()));
    }
    List<DesignBlock> blocks = blocks(design);
    int tasks = Math.max(spark.defaultParallelism(), blocks.size() / BLOCKS_A_TASK);
    if (parameters != null) {
      spark.addFile(parameters.toAbsolutePath().toString());
    }
    JavaRDD<List<String>> pieces =
        spark
            .parallelize(blocks, Math.min(tasks, blocks.size()))
            .mapPartitions(
                new BlockTask(name(file), name(scenario), name(parameters), format, every))
            .persist(StorageLevel.DISK_ONLY());
    for (int table = 0; table < names().size(); table++) {
      int place = table;
      pieces
          .map(piece -> piece.get(place))
          .filter(text -> !text.isEmpty())
          .saveAsTextFile(out + "/" + names().get(table));
    }
  }

  private static String name(Path path) {
    return path == null ? "" : String.valueOf(path.getFileName());
  }

  private List<String> names() {
    return every > 0 ? List.of("runs", "daily") : List.of("runs");
  }

  /** The same blocks as those of the command {@code batch}. */
  private static List<DesignBlock> blocks(DesignReader design) {
    List<DesignBlock> blocks = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    design.lines(
        (number, line) -> {
          lines.add(line);
          if (lines.size() == BatchBlock.ROWS || number == design.runs()) {
            blocks.add(new DesignBlock(number - lines.size() + 1, new ArrayList<>(lines)));
            lines.clear();
          }
        });
    return blocks;
  }

  static BatchTables tables(String format, int every) {
    DailyChoice choice = every == 0 ? DailyChoice.NONE : new DailyChoice(DailyChoice.USUAL, every);
    return new BatchTables(RowFormat.of(format), choice, false);
  }
}
