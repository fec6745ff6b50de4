package org.undercap.cli.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.ParameterWords;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.ensemble.Outcome;
import org.undercap.hive.FrameCatalogue;
import org.undercap.hive.FrameType;
import org.undercap.hive.KeeperUnit;
import org.undercap.hive.KeeperUnits;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.InputLimits;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;

/**
 * A page of help that belongs to no command. Its facts come from the schema and the catalogues.
 *
 * @param name by which a user asks for it
 * @param about what it is about, in a few words
 * @param content makes the page, at most 80 columns wide
 */
public record HelpTopic(String name, String about, Supplier<TextPage> content) {
  private static final String RUNS = "batch runs";

  /**
   * The topics.
   *
   * @param exitCodes the codes that the program ends with, each with its meaning
   * @return all topics but the cards of methods
   */
  public static List<HelpTopic> all(Map<String, String> exitCodes) {
    return List.of(
        new HelpTopic("scenario", "every key of a scenario file", HelpTopic::scenario),
        new HelpTopic(
            "units", "frames, pounds, hands and cups, and what they hold", HelpTopic::units),
        new HelpTopic(
            "counts", "washes, boards and drone cells, and how they are read", HelpTopic::counts),
        new HelpTopic("outcomes", "what plans are judged by", HelpTopic::outcomes),
        new HelpTopic(
            "methods",
            "treatments side by side",
            () -> MethodPages.table(MethodCatalogue.shipped().all())),
        new HelpTopic("glossary", "words that reports use", HelpTopic::glossary),
        new HelpTopic(
            "exit-codes",
            "what the program tells scripts when it ends",
            () -> exitCodes(exitCodes)));
  }

  /**
   * The card of a method as a topic.
   *
   * @param name id of a method
   * @return the topic, if there is such a method
   */
  public static Optional<HelpTopic> ofMethod(String name) {
    return MethodCatalogue.shipped().all().stream()
        .filter(method -> method.id().equals(name))
        .findFirst()
        .map(method -> new HelpTopic(name, method.name(), () -> MethodPages.card(method)));
  }

  /**
   * The names of the topics that are cards of methods.
   *
   * @return ids of the shipped methods
   */
  public static List<String> methodNames() {
    return MethodCatalogue.shipped().all().stream().map(Method::id).toList();
  }

  private static TextPage scenario() {
    TextPage page = new TextPage().title("Scenario files");
    SchemaWords.addTo(page);
    page.paragraph(
        "Write one: undercap new FILE. Look through one: undercap check FILE. What it does not say"
            + " is assumed: undercap check --assumptions FILE.");
    return page;
  }

  private static TextPage units() {
    TextPage page = new TextPage().title("Units");
    page.fact("bees", SchemaWords.meaning("colony", "bees"))
        .fact("brood", SchemaWords.meaning("colony", "brood"))
        .fact("temperatures", SchemaWords.kind("temperature"))
        .fact("shares", SchemaWords.kind("share"))
        .fact("dates", "year-month-day, as in 2026-09-24");
    page.table(unitTable());
    page.heading("One side of a frame, full of bees or of brood").table(frameTable());
    page.paragraph("A frame or a seam counts two sides. Derived from nominal sizes of combs.");
    return page;
  }

  private static TextTable unitTable() {
    TextTable table =
        new TextTable().name("unit").number("stands for").name("of").text("how we know");
    for (KeeperUnit unit : KeeperUnits.shipped().all()) {
      table.row(
          unit.id(),
          Numbers.exact(unit.amount()),
          unit.of(),
          (unit.assumption() ? "assumption" : "definition")
              + (unit.note().isEmpty() ? "" : ": " + unit.note()));
    }
    Parameter hand = ParameterCatalogue.shipped().get(ParameterId.HAND_AREA);
    return table.row(
        "hand", Numbers.exact(hand.values()), hand.unit(), hand.kind().word() + note(hand));
  }

  private static TextTable frameTable() {
    TextTable table =
        new TextTable().name("frame").number("comb (dm2)").number("bees").number("worker cells");
    for (FrameType frame : FrameCatalogue.shipped().all()) {
      table.row(
          frame.id(),
          Numbers.exact(frame.combPerSide()),
          Numbers.exact(frame.beesPerSide()),
          Numbers.exact(frame.cellsPerSide()));
    }
    return table;
  }

  private static TextPage counts() {
    TextPage page = new TextPage().title("Counts of mites");
    SchemaWords.addPart(page, "mites");
    page.heading("How a count is read");
    TextTable table = new TextTable().text("what").number("value").number("range").text("unit");
    ParameterCatalogue.shipped().all().stream()
        .filter(parameter -> parameter.id().id().startsWith("count."))
        .forEach(
            parameter ->
                table.row(
                    parameter.id().id() + ": " + parameter.kind().word() + note(parameter),
                    Numbers.exact(parameter.values()),
                    ParameterWords.range(parameter),
                    ParameterWords.unit(parameter)));
    return page.table(table)
        .paragraph(
            "The oldest count that tells the mites of a colony: "
                + InputLimits.shipped().get("mites.counts.age").range()
                + " before its date; where the file says what was done since: "
                + InputLimits.shipped().get("mites.counts.age.done").range()
                + ".")
        .paragraph(
            "From a count to the colony: undercap estimate. Whether a treatment worked: undercap"
                + " efficacy. At which counts others act: undercap thresholds.");
  }

  private static TextPage outcomes() {
    TextPage page = new TextPage().title("Outcomes");
    page.paragraph("Plans are ranked by the first.");
    TextTable table = new TextTable().name("outcome").text("meaning").text("unit");
    for (Outcome outcome : Outcome.values()) {
      Columns.Column column = Columns.find(RUNS, outcome.header()).orElseThrow();
      table.row(column.name(), column.meaning(), column.unit());
    }
    return page.table(table).paragraph("All columns of all files: undercap columns.");
  }

  private static TextPage glossary() {
    TextPage page = new TextPage().title("Words that reports use");
    Glossary.TERMS.forEach(term -> page.item(term.name() + ": " + term.text()));
    return page;
  }

  private static TextPage exitCodes(Map<String, String> codes) {
    TextPage page = new TextPage().title("Exit codes");
    codes.forEach((code, meaning) -> page.fact(code.strip(), meaning));
    return page;
  }

  private static String note(Parameter parameter) {
    return parameter.note().isEmpty() ? "" : "; " + parameter.note();
  }
}
