package org.undercap.scenario.io;

import java.nio.file.Path;
import java.util.Optional;
import org.undercap.parameter.ParameterChanges;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.Problems;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Reading;

/**
 * Reads a file of parameters, in YAML or, if the name ends in {@code .json}, in JSON. A whole
 * example:
 *
 * <pre>
 * undercap-parameters: 1        # version of the format
 * about: Fitted to a growth rate of 0.021 per day.
 * values:
 *   reproduction.worker: 0.87   # unit as in the catalogue
 *   crowding.worker: [1, 1.05, 0.85, 0.65, 0.5, 0.35]
 * </pre>
 *
 * <p>What the file does not name keeps its value. Its values stand above those of a scenario.
 */
public final class ParameterFile {
  /** The version of the format that is read. */
  public static final int FORMAT = 1;

  /** The first key of a file of parameters. */
  public static final String KEY = "undercap-parameters";

  private static final int LARGEST = 100_000;
  private static final int LONGEST_ABOUT = 4_000;

  private ParameterFile() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @return the values, or all problems, also that the file is not there
   */
  public static Reading<ParameterChanges> read(Path file) {
    Problems problems = new Problems();
    String name = file.toString();
    Optional<Node> root =
        new FileText(name, LARGEST, problems)
            .read(file)
            .flatMap(text -> new DocumentParser(name, problems).parse(text));
    if (root.isEmpty()) {
      return Reading.failed(problems);
    }
    if (!(root.get() instanceof Node.Mapping mapping)) {
      problems.add(
          root.get().place(), "", "must be a group of keys with values", "begin: " + KEY + ": 1");
      return Reading.failed(problems);
    }
    FieldReader fields = new FieldReader(mapping, "", problems, (path, key) -> {});
    fields.require(KEY, "values");
    fields.value(KEY, ParameterFile::version);
    fields.value("about", text -> Texts.text(text, LONGEST_ABOUT));
    Optional<ParameterChanges> changes = fields.map("values").map(ParameterReader::read);
    fields.done();
    return problems.isEmpty() && changes.isPresent()
        ? Reading.of(changes.get())
        : Reading.failed(problems);
  }

  private static Integer version(String text) throws BadValueException {
    if (!text.equals(Integer.toString(FORMAT))) {
      throw new BadValueException(
          "format " + Quantities.quote(text) + " is not known", "this program reads: " + FORMAT);
    }
    return FORMAT;
  }
}
