package org.undercap.cli.output;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The folder that a command writes its files to. Start with {@link #prepare}, which finds what
 * would go wrong before the long run begins.
 *
 * @param path the folder, as the user wrote it; need not exist
 * @param ifExists what to do with files that exist already
 * @param listing the manifest, which is then among the files of every call; empty for none
 */
public record OutputFolder(Path path, IfExists ifExists, Optional<Listing> listing) {
  /** Name of the file that tells what the others were made from. */
  public static final String MANIFEST = "manifest.json";

  /** Writes the manifest of files. */
  @FunctionalInterface
  public interface Lister {
    /**
     * Writes the manifest.
     *
     * @param writer where to write; not closed
     * @param files digests of the other files by name
     */
    void write(Writer writer, Map<String, String> files);
  }

  /**
   * A manifest.
   *
   * @param name name of its file
   * @param lister writes it
   */
  public record Listing(String name, Lister lister) {}

  /**
   * A folder without manifest.
   *
   * @param path the folder, as the user wrote it; need not exist
   * @param ifExists what to do with files that exist already
   */
  public OutputFolder(Path path, IfExists ifExists) {
    this(path, ifExists, Optional.empty());
  }

  /**
   * The folder of a single file, without manifest.
   *
   * @param file the file, as the user wrote it
   * @param ifExists what to do if it exists already
   * @return the folder
   */
  public static OutputFolder of(Path file, IfExists ifExists) {
    Path parent = file.getParent();
    return new OutputFolder(parent == null ? Path.of("") : parent, ifExists);
  }

  /**
   * The same folder with a manifest of what is written to it.
   *
   * @param manifest writes it
   * @return the folder
   */
  public OutputFolder with(Lister manifest) {
    return with(MANIFEST, manifest);
  }

  /**
   * The same folder with a manifest of a name of its own, where single files are written.
   *
   * @param name name of the manifest
   * @param manifest writes it
   * @return the folder
   */
  public OutputFolder with(String name, Lister manifest) {
    return new OutputFolder(path, ifExists, Optional.of(new Listing(name, manifest)));
  }

  /**
   * A folder in this one, without manifest.
   *
   * @param name its name
   * @return the folder
   */
  public OutputFolder in(String name) {
    return new OutputFolder(path.resolve(name), ifExists);
  }

  /**
   * Makes the folder if need be and checks that the files can be written to it.
   *
   * @param names names of all files that the command will write, without folders and without the
   *     manifest
   * @return the files, ready to be written
   * @throws UsageException if the path is a file, or a name is taken by a folder, or by a file that
   *     must not be overwritten
   * @throws UncheckedIOException if the folder cannot be made or written to
   * @throws IllegalArgumentException if a name is blank, holds a folder, or is repeated (upper and
   *     lower case count as the same, as they do on some systems)
   */
  public OutputFiles prepare(List<String> names) {
    List<String> all = new ArrayList<>(names);
    listing.ifPresent(manifest -> all.add(manifest.name()));
    return prepareAll(all);
  }

  /**
   * Writes a manifest of files that are in this folder already.
   *
   * @param name name of the manifest
   * @param files names of the files
   * @param manifest writes it
   * @param err told of it
   */
  public void writeManifest(String name, List<String> files, Lister manifest, PrintWriter err) {
    Map<String, String> digests = new LinkedHashMap<>();
    files.forEach(file -> digests.put(file, Digests.of(path.resolve(file))));
    try (OutputFiles written = new OutputFolder(path, ifExists).prepare(List.of(name))) {
      written.text(name, writer -> manifest.write(writer, digests));
      written.publish(err);
    }
  }

  private OutputFiles prepareAll(List<String> names) {
    checkNames(names);
    if (Files.exists(path) && !Files.isDirectory(path)) {
      throw new UsageException(path + ": is a file, not a folder; name another folder");
    }
    if (Files.isSymbolicLink(path) && !Files.exists(path)) {
      throw new UsageException(
          path + ": is a link to a place that is not there; make that, or name another folder");
    }
    Set<String> kept = checkExisting(names);
    try {
      List<Path> made = missingFolders();
      Files.createDirectories(path);
      OutputFiles files = new OutputFiles(this, names, kept, made);
      files.checkWritable();
      return files;
    } catch (IOException e) {
      throw FileFailure.at(path, e);
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
