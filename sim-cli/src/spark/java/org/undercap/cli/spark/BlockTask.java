package org.undercap.cli.spark;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.apache.spark.SparkFiles;
import org.apache.spark.api.java.function.FlatMapFunction;
import org.undercap.batch.BatchBlock;
import org.undercap.batch.BatchRow;
import org.undercap.cli.batch.BatchTables;
import org.undercap.parameter.ParameterChanges;
import org.undercap.scenario.io.DesignReader;
import org.undercap.scenario.io.ParameterFile;

/** Runs blocks of a design on a machine of the cluster, where the files of the job lie together. */
final class BlockTask implements FlatMapFunction<Iterator<DesignBlock>, List<String>> {
  private static final long serialVersionUID = 1;

  private final String design;
  private final String scenario;
  private final String parameters;
  private final String format;
  private final int every;

  BlockTask(String design, String scenario, String parameters, String format, int every) {
    this.design = design;
    this.scenario = scenario;
    this.parameters = parameters;
    this.format = format;
    this.every = every;
  }

  @Override
  public Iterator<List<String>> call(Iterator<DesignBlock> blocks) {
    Optional<Path> usual =
        scenario.isEmpty() ? Optional.empty() : Optional.of(Path.of(SparkFiles.get(scenario)));
    ParameterChanges changes =
        parameters.isEmpty()
            ? ParameterChanges.none()
            : ParameterFile.read(Path.of(SparkFiles.get(parameters))).orThrow();
    DesignReader reader = DesignReader.open(Path.of(SparkFiles.get(design)), usual, changes);
    BatchTables tables = BatchJob.tables(format, every);
    BatchBlock engine = new BatchBlock(tables.choice());
    Iterable<DesignBlock> all = () -> blocks;
    return StreamSupport.stream(all.spliterator(), false)
        .map(block -> texts(reader, engine, tables, block))
        .iterator();
  }

  private static List<String> texts(
      DesignReader reader, BatchBlock engine, BatchTables tables, DesignBlock block) {
    List<BatchRow> rows = new ArrayList<>();
    for (int i = 0; i < block.lines().size(); i++) {
      rows.add(reader.row(block.first() + i, block.lines().get(i)));
    }
    List<byte[]> pieces = tables.rows(engine.run(rows));
    List<byte[]> headers = block.first() == 1 ? tables.headers() : List.of();
    List<String> texts = new ArrayList<>();
    for (int table = 0; table < pieces.size(); table++) {
      String header = headers.isEmpty() ? "" : text(headers.get(table));
      texts.add(withoutLastLineEnd(header + text(pieces.get(table))));
    }
    return texts;
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }

  /** Spark adds it again. */
  private static String withoutLastLineEnd(String text) {
    return text.endsWith("\n") ? text.substring(0, text.length() - 1) : text;
  }
}
