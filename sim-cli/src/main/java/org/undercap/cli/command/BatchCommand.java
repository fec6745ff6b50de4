package org.undercap.cli.command;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.undercap.batch.DailyChoice;
import org.undercap.cli.batch.BatchTables;
import org.undercap.cli.batch.BatchWork;
import org.undercap.cli.batch.Shard;
import org.undercap.cli.option.FolderOptions;
import org.undercap.cli.option.ParameterOption;
import org.undercap.cli.option.ScenarioOptions;
import org.undercap.cli.output.Digests;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.IfExists;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.ProgramVersion;
import org.undercap.cli.output.Progress;
import org.undercap.cli.output.ResumableFiles;
import org.undercap.cli.output.RowFormat;
import org.undercap.cli.output.UsageException;
import org.undercap.cli.report.Manifest;
import org.undercap.scenario.Reading;
import org.undercap.scenario.io.DesignReader;
import org.undercap.simulation.DailyColumn;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs a design. */
@Command(
    name = "batch",
    description = {
      "Runs a design of any length: a table with one row a run. Writes a table of runs and a daily table.",
      "A batch that was broken off goes on where it stopped when the same command is given again."
    },
    footerHeading = "%nA design:%n",
    footer = {
      "  " + BatchCommand.SAMPLE_HEADER,
      "  " + BatchCommand.SAMPLE_ROW_1,
      "  " + BatchCommand.SAMPLE_ROW_2,
      "  " + BatchCommand.SAMPLE_ROW_3,
      "",
      "Examples:",
      "  undercap batch design.csv --scenario scenarios/saltmere-garth.yaml --out results",
      "  undercap batch design.csv --scenario my-colony.yaml --every 0 --gzip",
      "  undercap batch design.csv --shard 3/10 --out results"
    })
final class BatchCommand implements Callable<Integer> {
  static final String SAMPLE_HEADER = "label,plan,mites,arrivals,invasion.worker";
  static final String SAMPLE_ROW_1 = "gel few,Gel twice,400,low,";
  static final String SAMPLE_ROW_2 = "gel many,Gel twice,1500,dense,0.7";
  static final String SAMPLE_ROW_3 = "nothing,,1500,dense,0.7";

  private static final String ALL = "all";

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "DESIGN",
      description = {
        "One row a run, separated by commas. Columns, all of them optional: label, scenario, plan, shift_days, climate, start, end, bees, brood_cells, mites, queen_quality, arrivals, warmer_c, and the ids of parameters.",
        "An empty field is as in the scenario; without a plan nothing is done. ('undercap columns' explains them.)"
      })
  private Path file;

  @Option(
      names = "--scenario",
      paramLabel = "SCENARIO",
      description = "The scenario of the rows that name none.")
  private Path scenario;

  @Option(
      names = "--every",
      paramLabel = "DAYS",
      description =
          "Days from one row of the daily table to the next; 0 for no daily table (default: ${DEFAULT-VALUE}).")
  private int every = 1;

  @Option(
      names = "--columns",
      split = ",",
      paramLabel = "NAME",
      description = "Columns of the daily table, or all (default: bees, sealed brood and mites).")
  private List<String> columns = List.of();

  @Option(
      names = "--format",
      paramLabel = "WORD",
      description = "csv or jsonl, JSON Lines (default: csv).")
  private String format = RowFormat.CSV.word();

  @Option(names = "--gzip", description = "Compress the tables.")
  private boolean gzip;

  @Option(
      names = "--shard",
      paramLabel = "K/N",
      description =
          "Run the K-th of N parts only; the files of the parts, joined in their order, are those of the whole.")
  private String shard = "1/1";

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Processors to use; results do not depend on it (default: all).")
  private int threads;

  @Mixin private ParameterOption parameters;
  @Mixin private FolderOptions output;

  @Override
  public Integer call() {
    BatchTables tables = new BatchTables(rowFormat(), choice(), gzip);
    Shard part = part();
    OutputFolder folder = output.folderOr(Path.of(ScenarioOptions.stem(file) + "-batch"));
    Reading<DesignReader> reading =
        DesignReader.check(file, Optional.ofNullable(scenario), parameters.read());
    if (!reading.problems().isEmpty()) {
      throw new InvalidFileException(InvalidFileException.text(reading.problems()));
    }
    PrintWriter err = spec.commandLine().getErr();
    List<String> names = names(tables, part);
    if (folder.ifExists() == IfExists.SKIP && areThere(folder, names)) {
      names.forEach(name -> err.print("kept " + folder.path().resolve(name) + "\n"));
      err.flush();
      return ExitCodes.DONE;
    }
    refuseFinished(folder, names, part);
    return run(reading.orThrow(), tables, part, folder, names);
  }

  /** A design of three rows to begin with; its plan is one of those shipped. */
  static String sample() {
    return Stream.of(SAMPLE_HEADER, SAMPLE_ROW_1, SAMPLE_ROW_2, SAMPLE_ROW_3)
        .map(row -> "  " + row + "\n")
        .collect(Collectors.joining());
  }

  private static void refuseFinished(OutputFolder folder, List<String> names, Shard part) {
    List<String> all = new ArrayList<>(names);
    all.add(manifestName(part));
    boolean finished =
        all.stream().allMatch(name -> Files.exists(folder.path().resolve(name)))
            && !ResumableFiles.areBrokenOff(folder, runName(part));
    if (finished && folder.ifExists() == IfExists.ERROR) {
      throw new UsageException(
          folder.path()
              + ": holds a finished batch already; --if-exists=skip keeps it,"
              + " --if-exists=overwrite runs it anew, --out names another folder");
    }
  }

  private static String runName(Shard part) {
    return "batch" + part.suffix();
  }

  private static String manifestName(Shard part) {
    return "manifest" + part.suffix() + ".json";
  }

  private int run(
      DesignReader design,
      BatchTables tables,
      Shard part,
      OutputFolder folder,
      List<String> names) {
    PrintWriter err = spec.commandLine().getErr();
    long blocks = BatchWork.blocks(design.runs());
    Manifest manifest = manifest(design);
    long failed;
    try (ResumableFiles files =
        ResumableFiles.open(folder, names, runName(part), identity(manifest, part))) {
      write(design, tables, part, blocks, files);
      failed = files.tally();
      files.publish(err);
      new OutputFolder(folder.path(), IfExists.OVERWRITE)
          .writeManifest(manifestName(part), names, manifest, err);
      files.forget();
    }
    if (failed > 0) {
      err.print(
          (failed == 1 ? "1 run" : failed + " runs")
              + " could not be run; the column problem of the table of runs says why\n");
      err.flush();
      return ExitCodes.INVALID_FILE;
    }
    return ExitCodes.DONE;
  }

  private void write(
      DesignReader design, BatchTables tables, Shard part, long blocks, ResumableFiles files) {
    PrintWriter err = spec.commandLine().getErr();
    long from = part.from(blocks);
    long until = part.until(blocks);
    boolean header = part.isFirst();
    if (header && files.pieces() == 0) {
      files.append(tables.headers(), 0);
    }
    long next = from + files.pieces() - (header ? 1 : 0);
    long runs = runs(design, from, until);
    long before = runs(design, from, next);
    if (before > 0) {
      long done = runs(design, 0, next);
      err.print(
          next < until
              ? "a batch begun before is there; going on at run "
                  + (done + 1)
                  + " of "
                  + design.runs()
                  + "\n"
              : "a batch begun before is there, and all of its runs; its files get their names\n");
      err.flush();
    }
    try (Progress progress = RootCommand.progress(spec, "runs", runs)) {
      progress.skip(before);
      if (next < until) {
        new BatchWork(design, tables, threads())
            .run(
                next,
                until,
                piece -> {
                  files.append(piece.tables(), piece.failed());
                  progress.add(piece.runs());
                });
      }
    }
  }

  private static long runs(DesignReader design, long from, long until) {
    return BatchWork.runs(design.runs(), until) - BatchWork.runs(design.runs(), from);
  }

  private static boolean areThere(OutputFolder folder, List<String> names) {
    return names.stream().anyMatch(name -> Files.exists(folder.path().resolve(name)));
  }

  private static List<String> names(BatchTables tables, Shard part) {
    String ending =
        part.suffix() + "." + tables.format().word() + (tables.compressed() ? ".gz" : "");
    List<String> names = new ArrayList<>(List.of("runs" + ending));
    if (tables.hasDays()) {
      names.add("daily" + ending);
    }
    return names;
  }

  private Manifest manifest(DesignReader design) {
    List<Path> inputs = new ArrayList<>(List.of(file));
    inputs.addAll(design.scenarioFiles());
    parameters.file().ifPresent(inputs::add);
    return CommandWords.manifest(spec, inputs);
  }

  /** What the bytes of the tables depend on. */
  private static String identity(Manifest manifest, Shard part) {
    return "undercap "
        + ProgramVersion.text()
        + " batch "
        + Digests.of(String.join("\n", manifest.command()) + manifest.inputs() + part.suffix());
  }

  private RowFormat rowFormat() {
    try {
      return RowFormat.of(format);
    } catch (IllegalArgumentException e) {
      throw new UsageException("--format: " + e.getMessage());
    }
  }

  private Shard part() {
    try {
      return Shard.of(shard);
    } catch (IllegalArgumentException e) {
      throw new UsageException("--shard: " + e.getMessage());
    }
  }

  private DailyChoice choice() {
    if (every < 0) {
      throw new UsageException("--every " + every + " must be at least 0");
    }
    if (every == 0) {
      return DailyChoice.NONE;
    }
    return new DailyChoice(chosen(), every);
  }

  private List<DailyColumn> chosen() {
    if (columns.isEmpty()) {
      return DailyChoice.USUAL;
    }
    List<DailyColumn> all = Arrays.asList(DailyColumn.values());
    if (columns.equals(List.of(ALL))) {
      return all;
    }
    List<DailyColumn> chosen = new ArrayList<>();
    for (String name : columns) {
      chosen.add(
          all.stream()
              .filter(column -> column.header().equals(name) && !chosen.contains(column))
              .findFirst()
              .orElseThrow(
                  () ->
                      new UsageException(
                          "--columns: '"
                              + name
                              + "' is unknown or there twice; columns: "
                              + String.join(
                                  ", ", all.stream().map(DailyColumn::header).toList()))));
    }
    return chosen;
  }

  private int threads() {
    if (threads < 0) {
      throw new UsageException("--threads " + threads + " must be at least 1");
    }
    return threads == 0 ? Runtime.getRuntime().availableProcessors() : threads;
  }
}
