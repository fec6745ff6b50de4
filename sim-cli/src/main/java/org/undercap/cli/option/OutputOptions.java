package org.undercap.cli.option;

import java.nio.file.Path;
import java.util.Optional;
import org.undercap.cli.output.IfExists;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.UsageException;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The options about files of a command that draws charts. */
public final class OutputOptions {
  @Mixin private FolderOptions files = new FolderOptions();

  @Option(names = "--svg", description = "Write each chart as SVG too, not only as PNG.")
  private boolean svg;

  /** Creates the options. */
  public OutputOptions() {}

  /**
   * The folder to write to, if files are wanted.
   *
   * @return the folder
   * @throws UsageException if another of these options was given without a folder
   */
  public Optional<OutputFolder> folder() {
    if (!files.named() && svg) {
      throw new UsageException("--svg needs a folder to write to: give --out=DIR too");
    }
    return files.folder();
  }

  /**
   * Whether charts are wanted as SVG too.
   *
   * @return true if so
   */
  public boolean svg() {
    return svg;
  }

  /**
   * The folder to write to, for commands that always write.
   *
   * @param usual the folder unless the user names one
   * @return the folder
   */
  public OutputFolder folderOr(Path usual) {
    return files.folderOr(usual);
  }

  /**
   * Whether the user named a folder.
   *
   * @return true if so
   */
  public boolean named() {
    return files.named();
  }

  /**
   * What to do with files that exist already, where a command names single files.
   *
   * @return the choice; empty if the user named none
   */
  public Optional<IfExists> ifExists() {
    return files.ifExists();
  }
}
