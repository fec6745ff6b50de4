package org.undercap.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.monitoring.Efficacy;
import org.undercap.monitoring.Interval;
import org.undercap.monitoring.RankedCause;
import org.undercap.monitoring.Tally;
import org.undercap.monitoring.Verdict;
import org.undercap.treatment.Caution;
import org.undercap.treatment.CautionCatalogue;

/** What counts say about a treatment, as a page of text for the terminal. */
public final class EfficacyPage {
  private static final int FIGURES = 2;
  private static final double PERCENT = 100;
  private static final double NEAR = 0.01;

  private final EfficacyReport report;
  private final Efficacy efficacy;

  /**
   * A page.
   *
   * @param report what the counts say
   */
  public EfficacyPage(EfficacyReport report) {
    this.report = report;
    efficacy = report.efficacy();
  }

  /**
   * The page.
   *
   * @return its text
   */
  public String render() {
    TextPage page = new TextPage().title("Did the treatment work?");
    page.paragraph(answer())
        .fact("efficacy", percent(efficacy.estimate()) + ", 95 % range " + range())
        .fact("minimum", percent(report.minimum()) + ", " + report.minimumWords())
        .fact("counts", counts())
        .fact("reckoned by", efficacy.formula().words() + " (" + how() + ")")
        .fact("which mites", which())
        .fact("mind", mind());
    causes(page);
    page.heading("Cautions");
    List<String> ids = new ArrayList<>(List.of("every-report"));
    if (report.verdict() != Verdict.WORKS) {
      ids.add("veterinary");
    }
    for (String id : ids) {
      Caution caution = CautionCatalogue.shipped().get(id);
      page.item(caution.title() + ": " + caution.text());
    }
    return page.render();
  }

  private String answer() {
    String minimum = percent(report.minimum());
    return switch (report.verdict()) {
      case WORKS -> "It worked: even the lower end of the range reaches " + minimum + ".";
      case POOR ->
          "Poor: even the upper end of the range lies below "
              + minimum
              + ". "
              + (report.counts().controlAfter().isEmpty()
                  ? "Without untreated colonies beside it this may as well be brood that emerged or"
                      + " mites that came in: count again, and look at the causes before you report it."
                  : "If it was used as the label says, report it to the medicines authority.");
      case CANNOT_TELL ->
          "These counts cannot tell: the range holds efficacies above and below "
              + minimum
              + ". "
              + settle();
    };
  }

  private String settle() {
    OptionalDouble effort = report.effort();
    if (effort.isEmpty()) {
      return "It lies so near the minimum that more counting would hardly settle it.";
    }
    double factor = effort.getAsDouble();
    String such = ", if they show the same efficacy.";
    if (!efficacy.exact()) {
      return "About "
          + more(efficacy.colonies(), factor)
          + " more treated colonies"
          + (report.counts().controlAfter().isEmpty() ? "" : ", with more untreated ones to match,")
          + " would settle it"
          + such;
    }
    if (!report.counts().critical().isEmpty()) {
      return "About " + more(1, factor) + " more such colonies would settle it" + such;
    }
    if (report.counts().boards()) {
      return "Boards that lie about "
          + Numbers.rounded(factor, FIGURES)
          + " times as long each time would settle it"
          + such;
    }
    List<Tally> before = report.counts().before();
    String earlier =
        before.isEmpty() ? "" : more(before.get(0).of(), factor) + " more bees before and ";
    return "About "
        + earlier
        + more(report.counts().after().get(0).of(), factor)
        + " more after"
        + (report.counts().controlAfter().isEmpty() ? "" : " (untreated colonies alike)")
        + " would settle it"
        + such
        + " Counts of several colonies that were treated alike can be put together.";
  }

  private static String more(double now, double factor) {
    return Numbers.rounded(Math.ceil(now * (factor - 1)), FIGURES);
  }

  private String range() {
    Interval interval = efficacy.interval();
    if (interval.low() < 0) {
      return "from none at all (mites may have become more) to "
          + (interval.high() < 0 ? "none at all" : percent(interval.high()));
    }
    return percent(interval.low()) + " to " + percent(interval.high());
  }

  private String percent(double share) {
    if (share < 0) {
      return "none (the mites became more)";
    }
    boolean near = share != report.minimum() && Math.abs(share - report.minimum()) < NEAR;
    return near ? Numbers.fixed(PERCENT * share, 1) + " %" : Numbers.percent(share);
  }

  private String counts() {
    if (!report.counts().critical().isEmpty()) {
      return colonies(efficacy.colonies(), "colony") + ", critical test";
    }
    int untreated = report.counts().controlAfter().size();
    return colonies(efficacy.colonies(), "treated colony")
        + (untreated == 0 ? ", none untreated" : ", " + untreated + " untreated")
        + (report.counts().boards() ? ", boards" : ", bees washed or rolled")
        + sums();
  }

  private String sums() {
    String before =
        report.counts().before().isEmpty() ? "" : found(report.counts().before()) + " before, ";
    return ": " + before + found(report.counts().after()) + " after";
  }

  private String found(List<Tally> counts) {
    long mites = counts.stream().mapToLong(Tally::mites).sum();
    double bees = counts.stream().mapToDouble(Tally::of).sum();
    return mites
        + (mites == 1 ? " mite" : " mites")
        + (report.counts().boards() ? "" : " on " + Numbers.exact(bees) + " bees");
  }

  private static String colonies(int number, String noun) {
    return number == 1 ? "1 " + noun : number + " " + noun.replace("colony", "colonies");
  }

  private String how() {
    return (efficacy.exact() ? "exact range" : "range from drawing the colonies again")
        + "; "
        + efficacy.formula().sourceKey();
  }

  private String which() {
    if (!report.counts().critical().isEmpty()) {
      return "All mites that the two treatments brought down.";
    }
    return report.counts().boards()
        ? "Mites that fall by themselves, which follow all mites in the colony."
        : "Mites on the bees. Those under the cappings are not in the jar; of all mites in the"
            + " colony the treatment may have killed fewer.";
  }

  private String mind() {
    return switch (efficacy.formula()) {
      case REDUCTION ->
          "What the season and arriving mites did meanwhile counts as the treatment's doing;"
              + " untreated colonies beside it (--control-before, --control-after) would take that"
              + " out.";
      case ABBOTT -> "Holds only if both groups had as many mites before.";
      case HENDERSON_TILTON -> "Holds if season and arrivals were alike for both groups.";
      case CRITICAL_TEST -> "Holds only if the follow-up killed nearly all mites that were left.";
    };
  }

  private void causes(TextPage page) {
    if (report.causes().isEmpty()) {
      return;
    }
    page.heading("What may lie behind it, best fit first");
    page.paragraph("To explain: " + report.explained() + ".");
    TextTable table =
        new TextTable()
            .text("cause")
            .number("weight")
            .number("would\ngive")
            .name("8 of 10\nlie in");
    for (RankedCause cause : report.causes()) {
      table.row(
          cause.cause().words(),
          Numbers.percent(Math.min(1, cause.weight())),
          Numbers.rounded(cause.expected(), FIGURES),
          Numbers.range(cause.range().low(), cause.range().high(), FIGURES));
    }
    page.table(table)
        .paragraph(
            "Weight: how likely each is if all were equally likely before the count. The size of"
                + " each is an example (assumption), several may act together, and a best fit is no"
                + " proof. Resistance named in the scenario is left out here.");
    page.heading("What to look at next");
    report.causes().forEach(cause -> page.item(next(cause)));
  }

  private static String next(RankedCause cause) {
    String words = cause.cause().words();
    return words.substring(0, 1).toUpperCase(Locale.ROOT)
        + words.substring(1)
        + "? "
        + cause.cause().next();
  }
}
