package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whoever adds or drops a library must say so in the notices that are handed out with it. */
class NoticesTest {
  private static final List<String> TEST_ONLY = List.of("junit", "opentest4j", "apiguardian");

  @Test
  void everyLibraryThatIsHandedOutIsNamed() throws IOException {
    String notices = resource("/META-INF/THIRD-PARTY.txt");
    Set<String> libraries = librariesOnClassPath();
    assertTrue(libraries.contains("picocli"), libraries::toString);
    Set<String> unnamed = new TreeSet<>(libraries);
    unnamed.removeIf(library -> notices.matches("(?s).*[ :]" + library + "[,.\n].*"));
    assertTrue(unnamed.isEmpty(), () -> "not in THIRD-PARTY.txt: " + unnamed);
  }

  @Test
  void licenceTextsAreHandedOut() throws IOException {
    assertTrue(resource("/META-INF/LGPL-2.1.txt").contains("GNU LESSER GENERAL PUBLIC LICENSE"));
    assertFalse(resource("/org/undercap/cli/chart/DejaVuSans-licence.txt").isBlank());
  }

  private static Set<String> librariesOnClassPath() {
    return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator, -1))
        .map(path -> new File(path).getName())
        .filter(name -> name.endsWith(".jar") && !name.startsWith("sim-core"))
        .filter(name -> !name.startsWith("surefire"))
        .filter(name -> TEST_ONLY.stream().noneMatch(name::startsWith))
        .map(name -> name.replaceFirst("-\\d.*", ""))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = NoticesTest.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
