package org.undercap.scenario.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.undercap.parameter.ParameterChanges;
import org.undercap.parameter.ParameterSet;
import org.undercap.scenario.Arrivals;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.ChosenThreshold;
import org.undercap.scenario.Horizon;
import org.undercap.scenario.InputLimits;
import org.undercap.scenario.Problems;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.ScenarioResolver;
import org.undercap.scenario.WorkLimits;
import org.undercap.scenario.Written;
import org.undercap.scenario.WrittenScenario;
import org.undercap.scenario.WrittenStep;
import org.undercap.source.Source;

/**
 * Reads scenario files, in YAML or, if the name ends in {@code .json}, in JSON.
 *
 * <p>Keys are in lower case with hyphens. A whole example:
 *
 * <pre>
 * undercap: 1                        # version of the format
 * name: Saltmere Garth
 * about: Cool wet island coast, syrup just finished.
 * site:
 *   climate: cool-oceanic            # or latitude: 57.5
 * colony:
 *   date: 2026-09-24                 # day of these facts, first day of the run
 *   bees: 9 frames                   # or seams, sides, boxes, bees
 *   brood: 3 frames                  # or sides, hands, cm2, cells, none seen
 *   frame: national-deep
 * mites:
 *   counts:
 *     - wash: {date: 2026-09-24, bees: 305, mites: 11, method: alcohol}
 * arrivals: low                      # or none, dense, collapsing, 1.5 mites a day
 * plans:
 *   - name: Gel twice
 *     steps:
 *       - {date: 2026-09-26, treatment: thymol-gel}
 *       - {date: 2026-10-10, treatment: thymol-gel}
 * </pre>
 *
 * <p>The resource {@code scenario.schema.json} beside this class lists every key with its meaning
 * and unit. Dates are written year-month-day, shares as {@code 20 %} or {@code 0.2}, temperatures
 * as {@code 15 C} or {@code 59 F}. What could mean two things is refused. All problems of a file
 * are told at once.
 */
public final class ScenarioReader {

  /** The version of the format that is read. */
  public static final int FORMAT = 1;

  private static final int LARGEST = 200_000;
  private static final int LONGEST_NAME = 80;
  private static final int LONGEST_ABOUT = 4_000;
  private static final int LONGEST_COST = 20;
  private static final int MOST_PLANS = 100;

  private final Problems problems = new Problems();
  private final List<Path> named = new ArrayList<>();
  private final Optional<Path> file;
  private final ParameterChanges changes;
  private final FieldReader.KeyListener listener;

  private ScenarioReader(
      Optional<Path> file, ParameterChanges changes, FieldReader.KeyListener listener) {
    this.file = file;
    this.changes = changes;
    this.listener = listener;
  }

  /**
   * Reads a scenario file.
   *
   * @param file the file; temperatures that it names are looked for beside it
   * @return the scenario, or all problems, also that the file is not there
   */
  public static Reading<Scenario> read(Path file) {
    return read(file, ParameterChanges.none());
  }

  /**
   * Reads a scenario file for a run with parameters of one's own.
   *
   * @param file the file; temperatures that it names are looked for beside it
   * @param changes values that stand above those of the file
   * @return the scenario, or all problems, also that the file is not there
   */
  public static Reading<Scenario> read(Path file, ParameterChanges changes) {
    return read(file, changes, (path, key) -> {});
  }

  /**
   * The files of which a scenario consists, so that they can be kept or checked together.
   *
   * @param file the scenario file
   * @return the file itself, then those that it names and that could be looked for
   */
  public static List<Path> filesOf(Path file) {
    ScenarioReader reader =
        new ScenarioReader(Optional.of(file), ParameterChanges.none(), (path, key) -> {});
    String name = file.toString();
    reader.scenario(name, new FileText(name, LARGEST, reader.problems).read(file));
    List<Path> files = new ArrayList<>(List.of(file));
    files.addAll(reader.named);
    return List.copyOf(files);
  }

  /** Reads a scenario file and tells which keys are accepted where. */
  static Reading<Scenario> read(Path file, FieldReader.KeyListener listener) {
    return read(file, ParameterChanges.none(), listener);
  }

  private static Reading<Scenario> read(
      Path file, ParameterChanges changes, FieldReader.KeyListener listener) {
    ScenarioReader reader = new ScenarioReader(Optional.of(file), changes, listener);
    String name = file.toString();
    return reader.scenario(name, new FileText(name, LARGEST, reader.problems).read(file));
  }

  /**
   * Reads a scenario from a stream, which is not closed. It cannot name a file of temperatures.
   *
   * @param name name for messages; the ending {@code .json} stands for JSON, all else for YAML
   * @param stream the bytes in UTF-8
   * @return the scenario, or all problems
   * @throws IOException if the stream cannot be read
   */
  public static Reading<Scenario> read(String name, InputStream stream) throws IOException {
    ScenarioReader reader =
        new ScenarioReader(Optional.empty(), ParameterChanges.none(), (path, key) -> {});
    return reader.scenario(name, new FileText(name, LARGEST, reader.problems).read(stream));
  }

  private Reading<Scenario> scenario(String name, Optional<String> text) {
    Optional<Node> root = text.flatMap(found -> new DocumentParser(name, problems).parse(found));
    if (root.isEmpty()) {
      return Reading.failed(problems);
    }
    if (!(root.get() instanceof Node.Mapping mapping)) {
      problems.add(
          root.get().place(), "", "must be a group of keys with values", "begin: undercap: 1");
      return Reading.failed(problems);
    }
    FieldReader fields = new FieldReader(mapping, "", problems, listener);
    return ScenarioResolver.resolve(written(fields), problems);
  }

  private WrittenScenario written(FieldReader all) {
    all.require("undercap", "name", "site", "colony", "mites");
    all.value("undercap", ScenarioReader::version);
    ParameterChanges own =
        all.map("parameters").map(ParameterReader::read).orElseGet(ParameterChanges::none);
    ParameterSet parameters = changes.applyTo(own.applyTo(ParameterSet.shipped()));
    MethodReader methods = new MethodReader(parameters);
    all.maps("methods").forEach(methods::read);
    boolean study = all.flag("study").map(Written::value).orElse(false);
    PlanReader plans = new PlanReader(methods, study);
    WrittenScenario written =
        new WrittenScenario(
            all.value("name", text -> Texts.text(text, LONGEST_NAME)),
            all.value("about", text -> Texts.text(text, LONGEST_ABOUT)),
            all.map("site").map(site -> SiteReader.read(site, this::temperatures)),
            all.map("colony").map(ColonyReader::colony),
            all.map("mites").map(MitesReader::read),
            all.value("arrivals", Arrivals::parse),
            all.maps("feeding").stream()
                .flatMap(period -> PeriodReader.read(period).stream())
                .toList(),
            done(all, plans),
            all.value("horizon", Horizon::parse),
            all.map("threshold").flatMap(ScenarioReader::threshold),
            all.map("resistance").map(map -> resistance(map, methods)).orElse(Map.of()),
            parameters,
            methods.own(),
            plans.read(all.maps("plans", MOST_PLANS)),
            study,
            all.values("allowed", methods::find),
            all.flag("organic").map(Written::value).orElse(false),
            all.map("treated-before").map(map -> treatedBefore(map, methods)).orElse(Map.of()),
            all.map("costs").map(map -> costs(map, methods)).orElse(Map.of()),
            all.map("limits").map(ScenarioReader::limits).orElse(WorkLimits.NONE));
    all.done();
    return written;
  }

  private static Integer version(String text) throws BadValueException {
    if (!text.equals(Integer.toString(FORMAT))) {
      throw new BadValueException(
          "format " + Quantities.quote(text) + " is not known", "this program reads: " + FORMAT);
    }
    return FORMAT;
  }

  private static Optional<ChosenThreshold> threshold(FieldReader threshold) {
    threshold.require("mites-per-100-bees");
    Optional<Written<Double>> limit = threshold.number("mites-per-100-bees");
    Optional<Written<Source>> source = threshold.value("source", Texts::source);
    threshold.done();
    return limit.map(value -> new ChosenThreshold(value.value(), source.map(Written::value)));
  }

  private static Map<String, Double> resistance(FieldReader map, MethodReader methods) {
    Map<String, Double> shares = new TreeMap<>();
    for (String substanceClass : methods.substanceClasses()) {
      map.value(substanceClass, Quantities::share)
          .ifPresent(share -> shares.put(substanceClass, share.value()));
    }
    map.done();
    return shares;
  }

  private static Map<String, Integer> treatedBefore(FieldReader map, MethodReader methods) {
    Map<String, Integer> times = new TreeMap<>();
    for (String substanceClass : methods.substanceClasses()) {
      map.value(substanceClass, limited("treated-before"))
          .ifPresent(number -> times.put(substanceClass, number.value().intValue()));
    }
    map.done();
    return times;
  }

  /** A number within the limits of a group of keys. */
  private static ValueParser<Double> limited(String group) {
    return text -> InputLimits.shipped().get(group).check(Quantities.number(text));
  }

  private static Double cost(String text) throws BadValueException {
    String number = text.replaceAll("[^0-9.]", "");
    if (text.length() <= LONGEST_COST
        && !number.equals(text)
        && text.matches("\\p{Sc}? ?[0-9]+(\\.[0-9]+)? ?(\\p{Sc}|[A-Z]{3})?")) {
      throw new BadValueException(
          Quantities.quote(text) + " is not a plain number",
          "write " + number + " without the currency; all costs count in the same money");
    }
    return InputLimits.shipped().get("costs").check(Quantities.number(text));
  }

  private static Map<String, Double> costs(FieldReader map, MethodReader methods) {
    Map<String, Double> costs = new TreeMap<>();
    for (String method : methods.ids()) {
      map.value(method, ScenarioReader::cost)
          .ifPresent(number -> costs.put(method, number.value()));
    }
    map.done();
    return costs;
  }

  /** An empty list says that nothing was done; without the key nothing is known. */
  private static Optional<List<WrittenStep>> done(FieldReader all, PlanReader plans) {
    List<WrittenStep> steps = plans.steps(all.maps("done"));
    return all.has("done") ? Optional.of(steps) : Optional.empty();
  }

  private static WorkLimits limits(FieldReader map) {
    Optional<Written<Double>> cost = map.number("cost");
    Optional<Written<Double>> minutes = map.number("minutes");
    map.done();
    return new WorkLimits(optional(cost), optional(minutes));
  }

  private static OptionalDouble optional(Optional<Written<Double>> value) {
    return value.isPresent() ? OptionalDouble.of(value.get().value()) : OptionalDouble.empty();
  }

  private SortedMap<LocalDate, Double> temperatures(String text) throws BadValueException {
    Path relative;
    try {
      relative = Path.of(text);
    } catch (InvalidPathException e) {
      throw new BadValueException(Quantities.quote(text) + " is not the name of a file", "");
    }
    if (relative.isAbsolute() || file.isEmpty()) {
      throw new BadValueException(
          Quantities.quote(text) + " cannot be looked for",
          "name a file beside the scenario file, as in saltmere.csv");
    }
    Path beside = file.get().resolveSibling(relative);
    named.add(beside);
    return TemperatureFile.read(beside, problems)
        .orElseThrow(() -> new BadValueException(Quantities.quote(text) + " cannot be used", ""));
  }
}
