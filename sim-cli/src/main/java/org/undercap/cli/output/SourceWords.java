package org.undercap.cli.output;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercap.source.Access;
import org.undercap.source.Bibliography;
import org.undercap.source.Source;

/** Says how far a value rests on a publication. */
public final class SourceWords {
  /** The mark of a value that was not read in the publication that it is ascribed to. */
  public static final String MEMORY_MARK = "*";

  /** What the mark means. */
  public static final String MEMORY_MEANING =
      MEMORY_MARK + " from memory, at least in part: not read in the publication itself";

  private SourceWords() {}

  /**
   * How a source was read, in words.
   *
   * @param access how
   * @return for example {@code abstract read}
   */
  public static String read(Access access) {
    return switch (access) {
      case FULL -> "read in full";
      case ABSTRACT -> "abstract read";
      case TABLE -> "table read";
      case DATA -> "open data read";
      case SECONDARY -> "quoted by others, not read itself";
      case MEMORY -> "from memory, not read";
      case NONE -> "no publication";
    };
  }

  /**
   * How the sources of a value were read, in words.
   *
   * @param read one word of {@link Access}, or a remark that names several sources
   * @return for example {@code abstract read}, or the remark as it is
   */
  public static String read(String read) {
    Optional<Access> access =
        Arrays.stream(Access.values()).filter(a -> a.word().equals(read)).findFirst();
    return access.map(SourceWords::read).orElse(read);
  }

  /**
   * Whether a value is from memory, at least in part.
   *
   * @param read how its sources were read
   * @return true if so
   */
  public static boolean fromMemory(String read) {
    return read.contains(Access.MEMORY.word());
  }

  /**
   * Keys of sources, one to a line, each with the mark if the value is from memory.
   *
   * @param keys keys of the sources
   * @param read how the sources were read for this value
   * @return for example {@code winston-1987 *}
   */
  public static String marked(List<String> keys, String read) {
    String mark = fromMemory(read) ? " " + MEMORY_MARK : "";
    return keys.stream().map(key -> key + mark).collect(Collectors.joining("\n"));
  }

  /**
   * The sources of a value, each with what was read of it.
   *
   * @param keys keys of the sources
   * @return sentences
   */
  public static List<String> citations(List<String> keys) {
    return keys.stream().map(Bibliography.shipped()::get).map(SourceWords::citation).toList();
  }

  private static String citation(Source source) {
    return source.key() + ": " + source.citation() + " [" + read(source.read()) + "]";
  }
}
