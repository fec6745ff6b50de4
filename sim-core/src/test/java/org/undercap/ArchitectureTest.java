package org.undercap;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The map of packages, and what the library never does. */
class ArchitectureTest {
  private static final String ROOT = "org.undercap.";

  /** Each package may use those before it, and {@code internal}, which uses none. */
  private static final List<String> ORDER =
      List.of(
          "sensitivity",
          "source",
          "parameter",
          "climate",
          "hive",
          "model",
          "simulation",
          "analysis",
          "treatment",
          "monitoring",
          "scenario",
          "calibration",
          "ensemble",
          "study",
          "comparison",
          "advice",
          "planning",
          "evidence",
          "batch",
          "resistance",
          "lesson",
          "scenario.io");

  private static final Set<String> STRICT_MATH =
      Set.of(
          "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "exp", "expm1", "log", "log10",
          "log1p", "pow", "cbrt", "sinh", "cosh", "tanh", "hypot");

  private static final JavaClasses LIBRARY =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.undercap");

  static List<String> packages() {
    return ORDER;
  }

  private static ArchRule mayNotUse(String from, String... to) {
    return noClasses()
        .that()
        .resideInAPackage(from)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(to)
        .allowEmptyShould(true);
  }

  private static ArchRule never(String what, DescribedPredicate<JavaMethodCall> call) {
    return noClasses().should().callMethodWhere(call).because(what);
  }

  private static DescribedPredicate<JavaMethodCall> call(String owner, Set<String> names) {
    return describe(
        owner + " " + names,
        call ->
            call.getTargetOwner().getFullName().startsWith(owner)
                && names.contains(call.getTarget().getName()));
  }

  private static DescribedPredicate<JavaMethodCall> withoutLocale(Set<String> names) {
    return describe(
        "text methods of the default locale",
        call ->
            names.contains(call.getTarget().getName())
                && call.getTargetOwner().getFullName().startsWith("java.")
                && !takesLocale(call.getTarget()));
  }

  private static boolean takesLocale(AccessTarget.MethodCallTarget target) {
    return target.getRawParameterTypes().stream()
        .anyMatch(type -> type.getFullName().equals("java.util.Locale"));
  }

  @ParameterizedTest
  @MethodSource("packages")
  void arrowsGoToTheLeftOnly(String name) {
    String[] later =
        ORDER.subList(ORDER.indexOf(name) + 1, ORDER.size()).stream()
            .map(ROOT::concat)
            .toArray(String[]::new);
    if (later.length > 0) {
      mayNotUse(ROOT + name, later).check(LIBRARY);
    }
    mayNotUse("org.undercap.internal", ROOT + name).check(LIBRARY);
  }

  @Test
  void calibrationDoesNotKnowSensitivity() {
    mayNotUse("org.undercap.calibration", "org.undercap.sensitivity").check(LIBRARY);
  }

  @Test
  void everyPackageIsOnTheMap() {
    Set<String> known = new TreeSet<>(ORDER.stream().map(ROOT::concat).toList());
    known.add("org.undercap.internal");
    known.add("org.undercap");
    Set<String> found =
        LIBRARY.stream()
            .map(c -> c.getPackageName())
            .collect(Collectors.toCollection(TreeSet::new));
    found.removeAll(known);
    assertEquals(Set.of(), found);
    assertTrue(LIBRARY.contain("org.undercap.simulation.Simulator"));
  }

  /** The map for developers and the order above are the same; its table has a line for each. */
  @Test
  void mapForDevelopersIsThisOne() throws IOException {
    String guide = Files.readString(Path.of("..", "DEVELOPERS.md"));
    int from = guide.indexOf("\nsource <- ") + 1;
    String map = guide.substring(from, guide.indexOf("\nsim-cli: ", from));
    assertEquals(ORDER.subList(1, ORDER.size()), List.of(map.split("\\s*<-\\s*", -1)));
    String table = guide.substring(guide.indexOf("\n| package |"), guide.indexOf("\n## Glossary"));
    for (String name : ORDER) {
      assertTrue(table.matches("(?s).*\n\\|[^|]*`" + name + "`[^|]*\\|.*"), name);
    }
  }

  @Test
  void onlyScenarioFilesKnowJackson() {
    noClasses()
        .that()
        .resideOutsideOfPackage("org.undercap.scenario.io")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("com.fasterxml..", "org.yaml..")
        .check(LIBRARY);
  }

  @Test
  void neverPrintsOrExits() {
    NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.check(LIBRARY);
    never("the caller decides", call("java.lang.System", Set.of("exit"))).check(LIBRARY);
    never("the caller decides", call("java.lang.Runtime", Set.of("exit", "halt"))).check(LIBRARY);
  }

  @Test
  void neverReadsTheClock() {
    Set<String> clocks = Set.of("currentTimeMillis", "nanoTime");
    never("results depend on input alone", call("java.lang.System", clocks)).check(LIBRARY);
    never("results depend on input alone", call("java.time.", Set.of("now", "systemDefault")))
        .check(LIBRARY);
    noClasses()
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.util.Date")
        .check(LIBRARY);
  }

  @Test
  void neverUsesTheDefaultLocale() {
    Set<String> text = Set.of("format", "formatted", "printf", "toLowerCase", "toUpperCase");
    never("results are the same everywhere", withoutLocale(text)).check(LIBRARY);
    never(
            "results are the same everywhere",
            call("java.util.Locale", Set.of("getDefault", "setDefault")))
        .check(LIBRARY);
  }

  @Test
  void neverUsesRandomNumbersWithoutASeed() {
    never("results depend on input alone", call("java.lang.Math", Set.of("random"))).check(LIBRARY);
    noClasses()
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.util.concurrent.ThreadLocalRandom")
        .check(LIBRARY);
  }

  /** {@code Math.exp} and its like may differ in the last bit from machine to machine. */
  @Test
  void usesStrictMathForAllButArithmetic() {
    never("bits are the same everywhere", call("java.lang.Math", STRICT_MATH)).check(LIBRARY);
  }

  /** The rules can fail: this class breaks them. */
  @Test
  void rulesNoticeWhatTheyForbid() {
    JavaClasses broken = new ClassFileImporter().importClasses(BadHabits.class);
    for (ArchRule rule :
        List.of(
            NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS,
            never("x", call("java.lang.System", Set.of("nanoTime"))),
            never("x", call("java.time.", Set.of("now"))),
            never("x", withoutLocale(Set.of("format"))),
            never("x", call("java.lang.Math", STRICT_MATH)))) {
      assertThrows(AssertionError.class, () -> rule.check(broken), rule.getDescription());
    }
  }

  /** All that the library must not do. */
  private static final class BadHabits {
    @SuppressWarnings({"unused", "StringFormatWithoutLocale", "JavaTimeDefaultTimeZone"})
    void practise() {
      System.out.println(
          String.format("%s %s %s", LocalDate.now(), Math.exp(2), System.nanoTime()));
    }
  }
}
