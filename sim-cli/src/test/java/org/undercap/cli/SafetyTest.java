package org.undercap.cli;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;

/** What no part of the project does, so that no file that is read can make it do harm. */
class SafetyTest {
  private static final Path SUMS = Path.of("src", "test", "resources", "resources.sha256");

  private static final Set<String> XML =
      Set.of("parse", "newSAXParser", "createXMLStreamReader", "newTransformer");

  private static final Set<String> COMMANDS =
      Set.of("java.lang.Runtime.exec", "java.lang.Class.forName");

  private static final JavaClasses PROJECT =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.undercap", "gg.jte.generated");

  private static final List<ArchRule> RULES =
      List.of(
          never("speaks to no network", "java.net..", "javax.net..", "java.rmi.."),
          never("runs no scripts", "javax.script..", "javax.naming.."),
          noClasses()
              .should()
              .dependOnClassesThat()
              .haveFullyQualifiedName("java.lang.ProcessBuilder")
              .orShould()
              .dependOnClassesThat()
              .haveFullyQualifiedName("java.io.ObjectInputStream")
              .orShould()
              .dependOnClassesThat()
              .haveNameMatching("java\\.nio\\.channels\\..*(Socket|Datagram).*")
              .because("nothing is started, connected, or made of bytes that were read"),
          noClasses()
              .should()
              .callMethodWhere(
                  describe(
                      "XML that is read, classes that a file names, commands",
                      SafetyTest::letsAFileDecide))
              .because("a file must not decide what is loaded"));

  private static ArchRule never(String what, String... packages) {
    return noClasses().should().dependOnClassesThat().resideInAnyPackage(packages).because(what);
  }

  private static boolean letsAFileDecide(JavaMethodCall call) {
    String owner = call.getTargetOwner().getFullName();
    String name = call.getTarget().getName();
    boolean readsXml =
        (owner.startsWith("javax.xml.") || owner.startsWith("org.xml.")) && XML.contains(name);
    boolean choosesType = owner.startsWith("com.fasterxml.") && name.contains("DefaultTyping");
    return readsXml || choosesType || COMMANDS.contains(owner + "." + name);
  }

  @Test
  void projectNeitherConnectsNorRunsWhatAFileSays() {
    assertTrue(PROJECT.contain("org.undercap.simulation.Simulator"), "the library is looked at");
    assertTrue(PROJECT.contain(Main.class.getName()), "the program is looked at");
    assertTrue(
        PROJECT.stream().anyMatch(type -> type.getName().startsWith("gg.jte.generated")),
        "the pages are looked at");
    RULES.forEach(rule -> rule.check(PROJECT));
  }

  /** The rules can fail: this class breaks them. */
  @Test
  void rulesNoticeWhatTheyForbid() {
    JavaClasses broken = new ClassFileImporter().importClasses(BadHabits.class);
    for (ArchRule rule : RULES) {
      assertThrows(AssertionError.class, () -> rule.check(broken), rule.getDescription());
    }
  }

  @Test
  void noTypeIsChosenByWhatIsRead() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .haveNameMatching("com\\.fasterxml\\..*(JsonTypeInfo|PolymorphicTypeValidator).*")
        .check(PROJECT);
  }

  /** Only {@code $unsafe} writes text into a page as it is: pictures that the program drew. */
  @Test
  void pagesTakeOnlyPicturesAsTheyAre() throws IOException {
    List<String> unsafe = new ArrayList<>();
    for (Path page : files(Path.of("src", "main", "jte"))) {
      Files.readAllLines(page).stream()
          .filter(line -> line.contains("$unsafe"))
          .forEach(unsafe::add);
    }
    assertEquals(4, unsafe.size(), unsafe::toString);
    assertTrue(
        unsafe.stream().allMatch(line -> line.matches("<figure>\\$unsafe\\{[a-z.()]+}</figure>")),
        unsafe::toString);
  }

  /** Values with sources, texts and fonts change only when someone means it. */
  @Test
  void shippedResourcesAreThoseThatWereLookedAt() throws Exception {
    List<String> found = new ArrayList<>();
    for (String module : List.of("sim-cli", "sim-core")) {
      Path resources = Path.of("..", module, "src", "main", "resources");
      for (Path file : files(resources)) {
        byte[] sum = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
        found.add(HexFormat.of().formatHex(sum) + "  " + file.toString().substring(3));
      }
    }
    assertEquals(
        String.join("\n", found),
        Files.readString(SUMS).strip(),
        "after a change that is meant: see DEVELOPERS.md, 'a shipped resource'");
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }

  /** All that must not be done. */
  private static final class BadHabits {
    @SuppressWarnings("unused")
    void practise(String file) throws Exception {
      InetAddress.getByName(file);
      new javax.script.ScriptEngineManager();
      new ProcessBuilder(file).start();
      DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file);
    }
  }
}
