package org.undercap.cli.output;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

/**
 * Files that grow together, piece by piece, over a run that may be killed at any moment and taken
 * up again. They grow under hidden names; a journal beside them says up to which byte each is good
 * after which piece. What was written after the last line of the journal is cut off when the run is
 * taken up, so that no piece is lost or doubled. {@link #publish} gives the files their names.
 */
public final class ResumableFiles implements AutoCloseable {
  private static final long BETWEEN_COMMITS = 250_000_000L;
  private static final String GO_ON = "what was done is kept; mend that and give the command again";

  private final OutputFolder folder;
  private final List<String> names;
  private final Journal journal;
  private final List<FileChannel> channels = new ArrayList<>();
  private long pieces;
  private long tally;
  private long committed;
  private long lastCommit = System.nanoTime();

  private ResumableFiles(OutputFolder folder, List<String> names, Journal journal) {
    this.folder = folder;
    this.names = List.copyOf(names);
    this.journal = journal;
  }

  /**
   * Opens the files of a run, a new one or one that was broken off.
   *
   * @param folder where they are written
   * @param names names of the files, without folders
   * @param run name of the run, without folders, for the journal
   * @param identity all that the bytes of the files depend on, in one line; a run that was broken
   *     off is taken up only by the same
   * @return the files
   * @throws UsageException if files are there that must stay, another run was broken off in the
   *     folder, or one is writing to it
   * @throws UncheckedIOException if the files cannot be written
   */
  public static ResumableFiles open(
      OutputFolder folder, List<String> names, String run, String identity) {
    Path journalFile = journal(folder, run);
    if (!Files.exists(journalFile)) {
      folder.prepare(names).close();
    }
    try {
      Files.createDirectories(folder.path());
      Journal journal = Journal.open(journalFile);
      ResumableFiles files = new ResumableFiles(folder, names, journal);
      try {
        files.takeUp(identity);
        return files;
      } catch (IOException | RuntimeException e) {
        files.close();
        throw e;
      }
    } catch (IOException e) {
      throw FileFailure.at(folder.path(), e);
    }
  }

  /**
   * Whether a run was broken off.
   *
   * @param folder where its files are written
   * @param run name of the run, as in {@link #open}
   * @return true if its journal is there
   */
  public static boolean areBrokenOff(OutputFolder folder, String run) {
    return Files.exists(journal(folder, run));
  }

  private static Path journal(OutputFolder folder, String run) {
    return folder.path().resolve("." + run + ".journal");
  }

  private void takeUp(String identity) throws IOException {
    boolean same = journal.identity().equals(identity);
    if (!same) {
      if (!journal.identity().isEmpty() && folder.ifExists() != IfExists.OVERWRITE) {
        throw new UsageException(
            folder.path()
                + ": holds a batch that was broken off, with another design, other options or"
                + " another version of the program; repeat that command to finish it, name another"
                + " folder, or give --if-exists=overwrite");
      }
      folder.prepare(names).close();
      journal.begin(identity);
    }
    pieces = journal.pieces();
    tally = journal.tally();
    committed = pieces;
    for (int i = 0; i < names.size(); i++) {
      channels.add(openPart(names.get(i), journal.length(i)));
    }
  }

  private FileChannel openPart(String name, long length) throws IOException {
    Path part = part(name);
    if (!Files.exists(part) && length > 0 && isPublished(name, length)) {
      return FileChannel.open(folder.path().resolve(name), StandardOpenOption.READ);
    }
    FileChannel channel =
        FileChannel.open(part, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    if (channel.size() < length) {
      channel.close();
      throw new UsageException(
          part + ": is shorter than its journal says; remove " + journal.file() + " to begin anew");
    }
    channel.truncate(length);
    channel.position(length);
    return channel;
  }

  /** A run may be killed while its files get their names. */
  private boolean isPublished(String name, long length) throws IOException {
    Path file = folder.path().resolve(name);
    return journal.isComplete() && Files.exists(file) && Files.size(file) == length;
  }

  /**
   * Pieces that are there already.
   *
   * @return number of pieces; 0 in a new run
   */
  public long pieces() {
    return pieces;
  }

  /**
   * What was counted over all pieces.
   *
   * @return sum of the counts given with the pieces, those of a run that was broken off included
   */
  public long tally() {
    return tally;
  }

  /**
   * Adds the next piece.
   *
   * @param parts what is added to each file, in the order of their names
   * @param count what to add to the tally
   * @throws UncheckedIOException if it cannot be written
   */
  public void append(List<byte[]> parts, long count) {
    try {
      for (int i = 0; i < parts.size(); i++) {
        ByteBuffer buffer = ByteBuffer.wrap(parts.get(i));
        while (buffer.hasRemaining()) {
          channels.get(i).write(buffer);
        }
      }
      pieces++;
      tally += count;
      if (System.nanoTime() - lastCommit >= BETWEEN_COMMITS) {
        commit();
      }
    } catch (IOException e) {
      throw failure(e);
    }
  }

  private void commit() throws IOException {
    if (pieces > committed) {
      List<Long> lengths = new ArrayList<>();
      for (FileChannel channel : channels) {
        channel.force(false);
        lengths.add(channel.position());
      }
      journal.add(pieces, tally, lengths);
      committed = pieces;
    }
    lastCommit = System.nanoTime();
  }

  /**
   * Gives the files their names and lists them. The journal stays until {@link #forget}, so that a
   * run that is killed in between can be taken up.
   *
   * @param err takes one line for each file
   * @throws UncheckedIOException if a file cannot be renamed
   */
  public void publish(PrintWriter err) {
    try {
      commit();
      journal.complete();
      for (int i = 0; i < names.size(); i++) {
        channels.get(i).close();
        Path part = part(names.get(i));
        Path file = folder.path().resolve(names.get(i));
        if (Files.exists(part)) {
          if (folder.ifExists() == IfExists.OVERWRITE) {
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
          } else {
            Files.move(part, file);
          }
        }
        err.print("wrote " + file + "\n");
      }
      err.flush();
    } catch (IOException e) {
      throw failure(e);
    }
  }

  /**
   * Removes the journal of a run that is published.
   *
   * @throws UncheckedIOException if it cannot be removed
   */
  public void forget() {
    try {
      Files.deleteIfExists(journal.file());
    } catch (IOException e) {
      throw failure(e);
    }
  }

  private UncheckedIOException failure(IOException cause) {
    return FileFailure.at(folder.path(), cause, GO_ON);
  }

  private Path part(String name) {
    return folder.path().resolve("." + name + ".part");
  }

  /** Closes the files as they are; they can be taken up again. */
  @Override
  public void close() {
    try {
      for (FileChannel channel : channels) {
        channel.close();
      }
      journal.close();
    } catch (IOException e) {
      throw failure(e);
    }
  }
}
