package org.undercap.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.undercap.cli.output.MethodWords;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.SourceWords;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.internal.Catalogue;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;
import org.undercap.monitoring.FailureCause;
import org.undercap.source.Access;
import org.undercap.source.Bibliography;
import org.undercap.treatment.Caution;
import org.undercap.treatment.CautionCatalogue;
import org.undercap.treatment.Method;

/** The treatments as a table, and each as a card. */
public final class MethodPages {
  private static final Catalogue<Trade> TRADE =
      Catalogue.of(
          "method card", CsvResource.read(MethodPages.class, "method-cards.csv"), "id", Trade::of);

  private MethodPages() {}

  /** What the trade says of a method; common practice, no source. */
  private record Trade(String how, String fails, String watch) {
    static Trade of(CsvRow row) {
      return new Trade(row.required("how"), row.required("fails"), row.required("watch"));
    }
  }

  /**
   * Methods side by side.
   *
   * @param methods the methods
   * @return a table and what its marks mean
   */
  public static TextPage table(List<Method> methods) {
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

  /**
   * The card of a method: how it works, when it fails, what to watch, numbers, sources, cautions.
   *
   * @param method the method
   * @return the card
   */
  public static TextPage card(Method method) {
    TextPage page = new TextPage().title(method.name());
    profile(page, method);
    trade(page, method);
    page.heading("Published efficacy").paragraph(method.aimsAt());
    SourceWords.citations(method.sourceKeys()).forEach(page::item);
    page.paragraph(
        "The figures of the profile above were chosen so that this efficacy comes out; they were"
            + " not measured (assumption). The share of all mites in a colony that dies depends on"
            + " how many are in sealed brood.");
    page.heading("Cautions");
    cautions(method).forEach(c -> page.item(c.title() + ": " + c.text()));
    return page;
  }

  private static void profile(TextPage page, Method method) {
    MethodWords words = new MethodWords(method);
    page.fact("treatment", method.id())
        .fact("substance", substance(method))
        .fact("note", method.note())
        .fact("when it acts", words.release())
        .fact("which mites", words.reach())
        .fact("kills on bees", words.strength())
        .fact("temperature", words.temperature())
        .fact("place", words.circumstances())
        .fact("bees and brood", words.sideEffects())
        .fact(
            "time", Numbers.exact(method.minutes()) + " minutes per colony and visit (assumption)")
        .fact("organic schemes", method.organic() ? "often allow it" : "usually do not allow it");
  }

  private static void trade(TextPage page, Method method) {
    Trade trade = TRADE.get(method.id());
    page.heading("How it works").paragraph(trade.how());
    page.heading("When it fails").paragraph(trade.fails());
    page.heading("What to watch").paragraph(trade.watch());
    page.paragraph("If counts stay high, what may lie behind it, and how to tell:");
    FailureCause.all().stream()
        .filter(cause -> mayExplain(cause, method))
        .forEach(cause -> page.item(cause.words() + ". " + cause.next()));
    page.paragraph("How it works, when it fails and what to watch: common practice, no source.");
  }

  private static boolean mayExplain(FailureCause cause, Method method) {
    boolean bySealedBrood = cause.change() == FailureCause.Change.NONE;
    return cause.concerns(method) && !(bySealedBrood && method.profile().reachesSealedBrood());
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

  /**
   * The cautions of a method, and those of any treatment that a keeper has to judge.
   *
   * @param method the method
   * @return each caution once
   */
  public static List<Caution> cautions(Method method) {
    CautionCatalogue catalogue = CautionCatalogue.shipped();
    Set<Caution> cautions = new LinkedHashSet<>(catalogue.of(List.of(method)));
    cautions.add(catalogue.get("supers"));
    cautions.add(catalogue.get("small-colony"));
    if (method.organic()) {
      cautions.add(catalogue.get("organic"));
    }
    return new ArrayList<>(cautions);
  }
}
