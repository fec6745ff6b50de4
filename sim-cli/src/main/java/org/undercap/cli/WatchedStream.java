package org.undercap.cli;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

/** A stream that remembers why it could not be written to: a {@code PrintWriter} forgets it. */
final class WatchedStream extends FilterOutputStream {
  private Optional<IOException> failure = Optional.empty();

  WatchedStream(OutputStream stream) {
    super(stream);
  }

  /** The first failure, if there was one. */
  Optional<IOException> failure() {
    return failure;
  }

  @Override
  public void write(int oneByte) throws IOException {
    write(new byte[] {(byte) oneByte}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int length) throws IOException {
    try {
      out.write(bytes, from, length);
    } catch (IOException e) {
      failure = failure.or(() -> Optional.of(e));
      throw e;
    }
  }
}
