package org.undercap.cli.output;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Collectors;
import java.util.zip.CRC32;

/**
 * The journal of files that grow together: a line that says what run it is, then a line for each
 * state up to which the files are good. Each line ends with a check sum; the first that does not
 * match was being written when the run was killed, and ends the journal. It is locked while open.
 */
final class Journal implements AutoCloseable {
  private static final String COMPLETE = "complete";

  private final Path file;
  private final FileChannel channel;
  private String identity = "";
  private long pieces;
  private long tally;
  private long[] lengths = {};
  private boolean complete;

  private Journal(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /** Opens a journal, a new one or one that is there. */
  static Journal open(Path file) throws IOException {
    FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
    if (!isLocked(channel)) {
      channel.close();
      throw new UsageException(file.getParent() + ": another batch is writing to this folder");
    }
    Journal journal = new Journal(file, channel);
    journal.read();
    return journal;
  }

  private static boolean isLocked(FileChannel channel) throws IOException {
    try {
      return channel.tryLock() != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  private void read() throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate((int) channel.size());
    int read = channel.read(bytes);
    while (read >= 0 && bytes.hasRemaining()) {
      read = channel.read(bytes);
    }
    String text = new String(bytes.array(), StandardCharsets.UTF_8);
    int good = 0;
    for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', good)) {
      String line = text.substring(good, end);
      int sum = line.lastIndexOf(' ');
      if (sum < 0 || !line.substring(sum + 1).equals(checkSum(line.substring(0, sum)))) {
        break;
      }
      take(line.substring(0, sum));
      good = end + 1;
    }
    long length = text.substring(0, good).getBytes(StandardCharsets.UTF_8).length;
    channel.truncate(length);
    channel.position(length);
  }

  private void take(String line) {
    if (identity.isEmpty()) {
      identity = line;
    } else if (line.equals(COMPLETE)) {
      complete = true;
    } else {
      String[] words = line.split(" ", -1);
      pieces = Long.parseLong(words[0]);
      tally = Long.parseLong(words[1]);
      lengths = new long[words.length - 2];
      for (int i = 0; i < lengths.length; i++) {
        lengths[i] = Long.parseLong(words[i + 2]);
      }
    }
  }

  /** What run it is; empty if it is new. */
  String identity() {
    return identity;
  }

  long pieces() {
    return pieces;
  }

  /** What was counted beside the pieces. */
  long tally() {
    return tally;
  }

  /** Up to which byte a file is good. */
  long length(int place) {
    return place < lengths.length ? lengths[place] : 0;
  }

  boolean isComplete() {
    return complete;
  }

  Path file() {
    return file;
  }

  /** Begins anew. */
  void begin(String newIdentity) throws IOException {
    channel.truncate(0);
    channel.position(0);
    identity = newIdentity;
    pieces = 0;
    tally = 0;
    lengths = new long[0];
    complete = false;
    write(newIdentity);
  }

  void add(long count, long counted, List<Long> goodUntil) throws IOException {
    write(
        count
            + " "
            + counted
            + goodUntil.stream().map(length -> " " + length).collect(Collectors.joining()));
  }

  void complete() throws IOException {
    if (!complete) {
      write(COMPLETE);
      complete = true;
    }
  }

  private void write(String line) throws IOException {
    ByteBuffer bytes =
        ByteBuffer.wrap((line + " " + checkSum(line) + "\n").getBytes(StandardCharsets.UTF_8));
    while (bytes.hasRemaining()) {
      channel.write(bytes);
    }
    channel.force(false);
  }

  private static String checkSum(String line) {
    CRC32 sum = new CRC32();
    sum.update(line.getBytes(StandardCharsets.UTF_8));
    return Long.toHexString(sum.getValue());
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
