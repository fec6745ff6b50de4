package org.undercap.cli.command;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.MethodWords;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.SourceWords;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.source.Access;
import org.undercap.source.Bibliography;
import org.undercap.treatment.Caution;
import org.undercap.treatment.CautionCatalogue;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows the treatments that the program knows. */
@Command(
    name = "methods",
    description = "Shows the treatments: how they work, how well, and what to beware of.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap methods",
      "  undercap methods thymol-gel",
      "  undercap methods --json > methods.json"
    })
final class MethodsCommand extends CatalogueCommand<Method> {
  @Parameters(
      arity = "0..1",
      paramLabel = "ID",
      completionCandidates = Ids.class,
      description = "The treatment to explain; all if none is named.")
  private String id;

  @Override
  String kind() {
    return "treatment";
  }

  @Override
  List<Method> all() {
    return MethodCatalogue.shipped().all();
  }

  @Override
  String idOf(Method method) {
    return method.id();
  }

  @Override
  String wanted() {
    return id;
  }

  @Override
  TextPage table(List<Method> methods) {
    TextTable table =
        new TextTable()
            .name("treatment")
            .name("dose")
            .name("sealed\nbrood")
            .number("acts\n(days)")
            .name("outside\n(C)")
            .text("published efficacy");
    for (Method method : methods) {
      MethodWords words = new MethodWords(method);
      table.row(
          method.id(),
          method.profile().slowRelease() ? "slow" : "single",
          method.profile().reachesSealedBrood() ? "kills" : "-",
          Integer.toString(method.profile().release().days()),
          words.usualTemperatures(),
          method.aimsAt() + (fromMemory(method) ? " " + SourceWords.MEMORY_MARK : ""));
    }
    return new TextPage()
        .table(table)
        .paragraph(
            "Dose: single, or released slowly. All kill mites on the bees; \"kills\" marks those that"
                + " also kill mites in sealed brood. Outside: daily mean temperature at which it is"
                + " commonly used (no source).")
        .paragraph(SourceWords.MEMORY_MEANING)
        .paragraph("Explain one: undercap methods ID");
  }

  @Override
  TextPage detail(Method method) {
    MethodWords words = new MethodWords(method);
    TextPage page =
        new TextPage()
            .title(method.name())
            .fact("treatment", method.id())
            .fact("substance", substance(method))
            .fact("note", method.note())
            .fact("when it acts", words.release())
            .fact("which mites", words.reach())
            .fact("kills on bees", words.strength())
            .fact("temperature", words.temperature())
            .fact("place", words.circumstances())
            .fact("bees and brood", words.sideEffects())
            .fact(
                "time",
                Numbers.exact(method.minutes()) + " minutes per colony and visit (assumption)")
            .fact(
                "organic schemes", method.organic() ? "often allow it" : "usually do not allow it")
            .heading("Published efficacy")
            .paragraph(method.aimsAt());
    SourceWords.citations(method.sourceKeys()).forEach(page::item);
    page.paragraph(
        "The figures of the profile above were chosen so that this efficacy comes out; they were"
            + " not measured (assumption). The share of all mites in a colony that dies depends on"
            + " how many are in sealed brood.");
    page.heading("Cautions");
    cautions(method).forEach(c -> page.item(c.title() + ": " + c.text()));
    return page;
  }

  @Override
  void write(JsonOutput out, Method method) {
    MethodJson.write(out, method);
  }

  private static String substance(Method method) {
    boolean shared =
        !method.substanceClass().equals("none")
            && !method.substanceClass().equals(method.substance());
    return method.substance()
        + (shared
            ? " (class: "
                + method.substanceClass()
                + "; mites resist a class as a whole in the model)"
            : "");
  }

  private static boolean fromMemory(Method method) {
    return method.sourceKeys().stream()
        .map(key -> Bibliography.shipped().get(key).read())
        .anyMatch(read -> read == Access.MEMORY);
  }

  /** The cautions of the method, and those of any treatment that a keeper has to judge. */
  static List<Caution> cautions(Method method) {
    CautionCatalogue catalogue = CautionCatalogue.shipped();
    Set<Caution> cautions = new LinkedHashSet<>(catalogue.of(List.of(method)));
    cautions.add(catalogue.get("supers"));
    cautions.add(catalogue.get("small-colony"));
    if (method.organic()) {
      cautions.add(catalogue.get("organic"));
    }
    return new ArrayList<>(cautions);
  }

  private static final class Ids implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return MethodCatalogue.shipped().all().stream().map(Method::id).iterator();
    }
  }
}
