package org.undercap.cli.command;

import java.util.Iterator;
import java.util.List;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.report.MethodPages;
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
    return MethodPages.table(methods);
  }

  @Override
  TextPage detail(Method method) {
    return MethodPages.card(method);
  }

  @Override
  void write(JsonOutput out, Method method) {
    MethodJson.write(out, method);
  }

  private static final class Ids implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return MethodCatalogue.shipped().all().stream().map(Method::id).iterator();
    }
  }
}
