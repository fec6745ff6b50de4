package org.undercap.cli.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.UsageException;
import org.undercap.internal.Nearest;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * A command that shows a catalogue: all entries as a table, one entry in detail, or either as JSON.
 *
 * @param <T> what an entry is
 */
abstract class CatalogueCommand<T> implements Callable<Integer> {
  private static final int SCHEMA_VERSION = 1;
  private static final int MOST_SUGGESTIONS = 4;
  private static final int LEAST_PART = 3;

  @Spec private CommandSpec spec;
  @Mixin private JsonOption json;

  /** What one entry is called. */
  abstract String kind();

  /** All entries in the order to show. */
  abstract List<T> all();

  /** The name by which a user asks for an entry. */
  abstract String idOf(T entry);

  /** The name that the user asked for, null for all. */
  abstract String wanted();

  /** All entries as a table, with what its marks mean. */
  abstract TextPage table(List<T> entries);

  /** One entry in detail. */
  abstract TextPage detail(T entry);

  /** Writes the keys of one entry. */
  abstract void write(JsonOutput out, T entry);

  @Override
  public Integer call() {
    List<T> entries = wanted() == null ? all() : List.of(find(wanted()));
    PrintWriter out = spec.commandLine().getOut();
    if (json.wanted()) {
      String name = spec.name();
      JsonOutput.write(out, name, SCHEMA_VERSION, to -> to.list(name, entries, this::write));
    } else {
      TextPage page = wanted() == null ? table(entries) : detail(entries.get(0));
      out.print(page.render());
    }
    out.flush();
    return ExitCodes.DONE;
  }

  private T find(String id) {
    return all().stream()
        .filter(entry -> idOf(entry).equals(id))
        .findFirst()
        .orElseThrow(() -> new UsageException(unknown(id)));
  }

  private String unknown(String id) {
    List<String> near = suggestions(id, all().stream().map(this::idOf).toList());
    String hint =
        near.isEmpty()
            ? "; '" + spec.qualifiedName() + "' lists all"
            : "; did you mean " + String.join(" or ", near) + "?";
    return "unknown " + kind() + " '" + id + "'" + hint;
  }

  /** The names that hold the word, or else the one that is nearest to it. */
  static List<String> suggestions(String word, List<String> names) {
    List<String> holding = names.stream().filter(name -> holds(name, word)).toList();
    return holding.isEmpty() || holding.size() > MOST_SUGGESTIONS
        ? Nearest.to(word, names).stream().toList()
        : holding;
  }

  private static boolean holds(String name, String word) {
    return word.length() >= LEAST_PART
        && name.toLowerCase(Locale.ROOT).contains(word.toLowerCase(Locale.ROOT));
  }
}
