package org.undercap.cli.output;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The files that a command writes, whole or not at all. Each is first written under a hidden name
 * in the same folder; {@link #publish} gives all of them their names at the end. A command that
 * fails before that leaves nothing behind.
 *
 * <pre>{@code
 * try (OutputFiles files = folder.prepare(List.of("season.csv"))) {
 *   files.text("season.csv", writer -> ...);
 *   files.publish(err);
 * }
 * }</pre>
 */
public final class OutputFiles implements AutoCloseable {
  private final OutputFolder folder;
  private final List<String> names;
  private final Set<String> kept;
  private final List<Path> madeFolders;
  private final Map<String, Path> written = new ConcurrentHashMap<>();
  private final Thread whenStopped = new Thread(this::stop, "undercap-stop");
  private boolean stopped;

  /** Takes over the folders that were made, the innermost first, to remove them on failure. */
  OutputFiles(OutputFolder folder, List<String> names, Set<String> kept, List<Path> madeFolders) {
    this.folder = folder;
    this.names = List.copyOf(names);
    this.kept = Set.copyOf(kept);
    this.madeFolders = List.copyOf(madeFolders);
    Runtime.getRuntime().addShutdownHook(whenStopped);
  }

  /**
   * Whether a file is to be written. One that stays as it is need not be computed.
   *
   * @param name one of the names that were prepared
   * @return false if the file exists and is kept
   */
  public boolean wants(String name) {
    if (!names.contains(name)) {
      throw new IllegalArgumentException("file " + name + " was not prepared");
    }
    return !kept.contains(name);
  }

  /**
   * Writes a text file in UTF-8, unless the file is kept.
   *
   * @param name one of the names that were prepared
   * @param content writes the text, with line feeds
   * @throws UncheckedIOException if it cannot be written, for example because the disk is full
   */
  public void text(String name, Content<Writer> content) {
    bytes(
        name,
        stream -> {
          Writer writer = new OutputStreamWriter(stream, StandardCharsets.UTF_8);
          content.writeTo(writer);
          writer.flush();
        });
  }

  /**
   * Writes a file of bytes, unless the file is kept. Several threads may write different files.
   *
   * @param name one of the names that were prepared
   * @param content writes the bytes
   * @throws UncheckedIOException if it cannot be written, for example because the disk is full
   */
  public void bytes(String name, Content<OutputStream> content) {
    if (!wants(name)) {
      return;
    }
    try (OutputStream stream = new BufferedOutputStream(open(name))) {
      content.writeTo(stream);
    } catch (IOException e) {
      throw FileFailure.at(folder.path().resolve(name), e);
    } catch (UncheckedIOException e) {
      throw FileFailure.at(folder.path().resolve(name), e.getCause());
    }
  }

  private synchronized OutputStream open(String name) throws IOException {
    if (stopped) {
      return OutputStream.nullOutputStream();
    }
    Path hidden = hidden(name);
    written.put(name, hidden);
    return Files.newOutputStream(
        hidden, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING);
  }

  /**
   * Gives the files their names and lists them. A program that is told to stop meanwhile ends after
   * the last of them.
   *
   * @param err takes one line for each file
   * @throws UncheckedIOException if a file cannot be renamed
   * @throws IllegalStateException if a file that was prepared was not written
   */
  public synchronized void publish(PrintWriter err) {
    if (stopped) {
      return;
    }
    folder
        .listing()
        .filter(manifest -> wants(manifest.name()))
        .ifPresent(
            manifest ->
                text(
                    manifest.name(),
                    writer -> manifest.lister().write(writer, digestsFor(manifest.name()))));
    for (String name : names) {
      if (wants(name) && !written.containsKey(name)) {
        throw new IllegalStateException("file " + name + " was prepared but not written");
      }
    }
    for (String name : names) {
      Path file = folder.path().resolve(name);
      Path hidden = written.remove(name);
      err.print(hidden != null && move(hidden, file) ? "wrote " + file : "kept " + file);
      err.print('\n');
    }
    err.flush();
  }

  /** Digests of the other files by name, in the order in which they were prepared. */
  private Map<String, String> digestsFor(String lister) {
    Map<String, String> digests = new LinkedHashMap<>();
    for (String name : names) {
      if (!name.equals(lister)) {
        Path file = wants(name) ? written.get(name) : folder.path().resolve(name);
        if (file == null) {
          throw new IllegalStateException("file " + name + " is not written yet");
        }
        digests.put(name, Digests.of(file));
      }
    }
    return digests;
  }

  /** Removes what was written but not published, and the folders that were made for it. */
  @Override
  public void close() {
    clear();
    try {
      Runtime.getRuntime().removeShutdownHook(whenStopped);
    } catch (IllegalStateException e) {
      return; // The program is being stopped; the files are gone in any case.
    }
  }

  /** The program was told to stop: what is still written goes nowhere. */
  private synchronized void stop() {
    stopped = true;
    clear();
  }

  private synchronized void clear() {
    List<Path> leftovers = new ArrayList<>(written.values());
    leftovers.addAll(madeFolders);
    for (Path leftover : leftovers) {
      try {
        Files.deleteIfExists(leftover);
      } catch (IOException e) {
        return; // A folder that holds results stays.
      }
    }
  }

  /** Writes and removes a file, to learn early that the folder can be written to. */
  void checkWritable() throws IOException {
    Path probe = hidden("probe");
    try {
      Files.write(probe, new byte[0]);
      Files.delete(probe);
    } catch (IOException e) {
      close();
      throw e;
    }
  }

  private boolean move(Path hidden, Path file) {
    try {
      if (folder.ifExists() == IfExists.OVERWRITE) {
        Files.move(hidden, file, StandardCopyOption.ATOMIC_MOVE);
      } else if (folder.ifExists() == IfExists.SKIP
          && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        Files.delete(hidden);
        return false;
      } else {
        Files.move(hidden, file); // Fails if the file has come to exist during the run.
      }
      return true;
    } catch (IOException e) {
      written.put(file.getFileName().toString(), hidden);
      throw FileFailure.at(file, e);
    }
  }

  private Path hidden(String name) {
    return folder.path().resolve("." + name + "." + ProcessHandle.current().pid() + ".part");
  }

  /**
   * Writes the content of a file.
   *
   * @param <T> what it writes to
   */
  @FunctionalInterface
  public interface Content<T> {
    /**
     * Writes the content.
     *
     * @param target takes it; need not be closed
     * @throws IOException if writing fails
     */
    void writeTo(T target) throws IOException;
  }
}
