package org.undercap.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The map of this module's packages in DEVELOPERS.md agrees with the code. */
class MapTest {
  private static final String ROOT = "org.undercap.cli.";

  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.undercap.cli");

  /** Packages that stand side by side; each may use those before. */
  private static List<List<String>> levels() throws IOException {
    String map =
        Files.readAllLines(Path.of("..", "DEVELOPERS.md")).stream()
            .filter(line -> line.startsWith("sim-cli: "))
            .findFirst()
            .orElseThrow();
    return List.of(map.substring(map.indexOf(' ') + 1).split(" <- ", -1)).stream()
        .map(level -> List.of(level.split(", ", -1)))
        .toList();
  }

  @Test
  void arrowsAreThoseOfTheCode() throws IOException {
    List<String> later = new ArrayList<>(levels().stream().flatMap(List::stream).toList());
    for (List<String> level : levels()) {
      for (String name : level) {
        String[] others =
            later.stream()
                .filter(other -> !other.equals(name))
                .map(ROOT::concat)
                .toArray(String[]::new);
        if (others.length > 0) {
          noClasses()
              .that()
              .resideInAPackage(ROOT + name)
              .should()
              .dependOnClassesThat()
              .resideInAnyPackage(others)
              .check(PROGRAM);
        }
      }
      later.removeAll(level);
    }
  }

  @Test
  void everyPackageHasItsPlaceAndLine() throws IOException {
    Set<String> found =
        PROGRAM.stream()
            .map(each -> each.getPackageName())
            .filter(name -> name.startsWith(ROOT) && !name.equals(ROOT + "spark"))
            .map(name -> name.substring(ROOT.length()))
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> shown = new TreeSet<>(levels().stream().flatMap(List::stream).toList());
    assertFalse(found.isEmpty());
    assertEquals(found, shown);
    String guide = Files.readString(Path.of("..", "DEVELOPERS.md"));
    for (String name : found) {
      assertTrue(guide.matches("(?s).*\n\\| sim-cli [^|]*`" + name + "`[^|]*\\|.*"), name);
    }
  }
}
