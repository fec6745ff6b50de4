package org.undercap.cli.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The folder that a command writes its files to. Start with {@link #prepare}, which finds what
 * would go wrong before the long run begins.
 *
 * @param path the folder, as the user wrote it; need not exist
 * @param ifExists what to do with files that exist already
 */
public record OutputFolder(Path path, IfExists ifExists) {

  /**
   * Makes the folder if need be and checks that the files can be written to it.
   *
   * @param names names of all files that the command will write, without folders
   * @return the files, ready to be written
   * @throws UsageException if the path is a file, or a name is taken by a folder, or by a file that
   *     must not be overwritten
   * @throws UncheckedIOException if the folder cannot be made or written to
   * @throws IllegalArgumentException if a name is blank, holds a folder, or is repeated (upper and
   *     lower case count as the same, as they do on some systems)
   */
  public OutputFiles prepare(List<String> names) {
    checkNames(names);
    if (Files.exists(path) && !Files.isDirectory(path)) {
      throw new UsageException(path + ": is a file, not a folder; name another folder");
    }
    Set<String> kept = checkExisting(names);
    try {
      List<Path> made = missingFolders();
      Files.createDirectories(path);
      OutputFiles files = new OutputFiles(this, names, kept, made);
      files.checkWritable();
      return files;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The names of the files that exist and stay. */
  private Set<String> checkExisting(List<String> names) {
    List<String> existing = new ArrayList<>();
    for (String name : names) {
      Path file = path.resolve(name);
      if (Files.isDirectory(file)) {
        throw new UsageException(file + ": is a folder; move it away or name another folder");
      }
      if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        existing.add(name);
      }
    }
    if (ifExists == IfExists.ERROR && !existing.isEmpty()) {
      throw new UsageException(alreadyThere(existing));
    }
    return ifExists == IfExists.SKIP ? new HashSet<>(existing) : Set.of();
  }

  private String alreadyThere(List<String> existing) {
    int others = existing.size() - 1;
    String what = path.resolve(existing.get(0)).toString();
    if (others > 0) {
      what += " and " + others + (others == 1 ? " other file" : " other files");
    }
    return what
        + (others > 0 ? " exist" : " exists")
        + " already; name another folder, or give --if-exists=overwrite or --if-exists=skip";
  }

  /** The folders that have to be made, the innermost first. */
  private List<Path> missingFolders() {
    Deque<Path> missing = new ArrayDeque<>();
    for (Path at = path.toAbsolutePath(); at != null && !Files.exists(at); at = at.getParent()) {
      missing.addLast(at);
    }
    return List.copyOf(missing);
  }

  private static void checkNames(List<String> names) {
    Set<String> seen = new HashSet<>();
    for (String name : names) {
      boolean plain = !name.isBlank() && name.indexOf('/') < 0 && name.indexOf('\\') < 0;
      if (!plain || name.equals(".") || name.equals("..")) {
        throw new IllegalArgumentException("'" + name + "' must be the plain name of a file");
      }
      if (!seen.add(name.toLowerCase(Locale.ROOT))) {
        throw new IllegalArgumentException("file " + name + " is named twice");
      }
    }
  }
}
