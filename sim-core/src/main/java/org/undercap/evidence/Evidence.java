package org.undercap.evidence;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.undercap.internal.Catalogue;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;

/**
 * Published findings and what the model says to them. All of them together take seconds.
 *
 * <p>A finding that the model misses stays in the list, with the reason. No parameter and no
 * accepted interval is changed to make one fit.
 */
public final class Evidence {
  private static final Catalogue<PublishedCheck> CHECKS =
      Catalogue.of("check", rows("published-checks.csv"), "id", PublishedCheck::of);
  private static final Map<String, KnownMiss> MISSES =
      rows("misses.csv").stream()
          .map(KnownMiss::of)
          .collect(Collectors.toUnmodifiableMap(KnownMiss::id, miss -> miss));
  private static final Map<String, String> NOT_RUN =
      rows("not-run.csv").stream()
          .collect(
              Collectors.toUnmodifiableMap(
                  row -> row.required("id"), row -> row.required("reason")));
  private static final Map<String, Consumer<Findings>> METHODS = methods();

  private Evidence() {}

  private static List<CsvRow> rows(String file) {
    return CsvResource.read(Evidence.class, file);
  }

  private static Map<String, Consumer<Findings>> methods() {
    Map<String, Consumer<Findings>> all = new HashMap<>();
    Stream.of(
            GrowthChecks.all(),
            BiologyChecks.all(),
            CountingChecks.all(),
            CourseChecks.all(),
            ArrivalChecks.all(),
            EfficacyChecks.all(),
            OpenDataCheck.all(),
            TimingChecks.all(),
            BeeChecks.all(),
            DriverChecks.all(),
            StatisticsChecks.all(),
            RiskChecks.all())
        .forEach(all::putAll);
    Set<String> answered = new TreeSet<>(all.keySet());
    answered.addAll(NOT_RUN.keySet());
    Set<String> listed = CHECKS.all().stream().map(PublishedCheck::id).collect(Collectors.toSet());
    if (!answered.equals(listed) || answered.size() != all.size() + NOT_RUN.size()) {
      throw new IllegalStateException("checks listed " + listed + ", but answered " + answered);
    }
    return Map.copyOf(all);
  }

  /**
   * The findings.
   *
   * @return in the order of the table
   */
  public static List<PublishedCheck> all() {
    return CHECKS.all();
  }

  /**
   * The misses that are known.
   *
   * @return in no particular order
   */
  public static List<KnownMiss> knownMisses() {
    return List.copyOf(MISSES.values());
  }

  /**
   * Holds one finding against the model.
   *
   * @param id short name of the finding
   * @return what came out
   * @throws IllegalArgumentException if there is no such finding; the message suggests the nearest
   */
  public static CheckResult run(String id) {
    PublishedCheck check = CHECKS.get(id);
    String notRun = NOT_RUN.get(id);
    if (notRun != null) {
      return new CheckResult(check, List.of(), List.of(), Inside.NOT_RUN, "", notRun);
    }
    Findings findings = new Findings(check);
    METHODS.get(id).accept(findings);
    return findings.result(MISSES.containsKey(id) ? MISSES.get(id).reason() : "");
  }

  /**
   * Holds all findings against the model.
   *
   * @return what came out, in the order of the table
   */
  public static List<CheckResult> runAll() {
    return all().stream().map(check -> run(check.id())).toList();
  }
}
