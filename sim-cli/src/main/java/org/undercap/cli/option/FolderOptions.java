package org.undercap.cli.option;

import java.nio.file.Path;
import java.util.Iterator;
import java.util.Optional;
import org.undercap.cli.output.IfExists;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.UsageException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The folder that a command writes to, and what is done with files that are there already. */
public final class FolderOptions {
  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Write files to this folder, which is made if need be.")
  private Path folder;

  @Option(
      names = "--if-exists",
      paramLabel = "WORD",
      converter = ToIfExists.class,
      completionCandidates = IfExistsWords.class,
      description =
          "What to do if a file is there already: ${COMPLETION-CANDIDATES} (default: error).")
  private IfExists ifExists;

  /** Creates the options. */
  public FolderOptions() {}

  /**
   * The folder to write to, if files are wanted.
   *
   * @return the folder
   * @throws UsageException if its name is blank
   */
  public Optional<OutputFolder> folder() {
    refuseBlank();
    return Optional.ofNullable(folder)
        .map(path -> new OutputFolder(path, ifExists == null ? IfExists.ERROR : ifExists));
  }

  /**
   * The folder to write to, for commands that always write. A folder that the program itself names
   * holds its own results only, so they may be replaced.
   *
   * @param usual the folder unless the user names one
   * @return the folder
   * @throws UsageException if its name is blank
   */
  public OutputFolder folderOr(Path usual) {
    refuseBlank();
    IfExists unsaid = folder == null ? IfExists.OVERWRITE : IfExists.ERROR;
    return new OutputFolder(folder == null ? usual : folder, ifExists == null ? unsaid : ifExists);
  }

  private void refuseBlank() {
    if (folder != null && folder.toString().isBlank()) {
      throw new UsageException("--out needs the name of a folder; --out=. is the one you are in");
    }
  }

  /**
   * Whether the user named a folder.
   *
   * @return true if so
   */
  public boolean named() {
    return folder != null;
  }

  /**
   * What to do with files that exist already, where a command names single files.
   *
   * @return the choice; empty if the user named none
   */
  public Optional<IfExists> ifExists() {
    return Optional.ofNullable(ifExists);
  }

  private static final class ToIfExists implements ITypeConverter<IfExists> {
    @Override
    public IfExists convert(String word) {
      try {
        return IfExists.of(word);
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }

  private static final class IfExistsWords implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return IfExists.words().iterator();
    }
  }
}
