package org.undercap.cli.report;

import java.io.Writer;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.undercap.cli.output.CsvOutput;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.parameter.Prior;
import org.undercap.sensitivity.ElementaryEffects;
import org.undercap.sensitivity.SobolIndices;
import org.undercap.study.StudyAxis;

/** Which of the things that are not known move an outcome: for the terminal, as table and JSON. */
public final class SensitivityPage {
  private static final int VERSION = 1;
  private static final int FIGURES = 3;
  private static final double CURVED = 0.5;

  private final String scenario;
  private final String plan;
  private final String outcome;
  private final List<StudyAxis> axes;
  private final long seed;
  private final Optional<ElementaryEffects> effects;
  private final Optional<SobolIndices> indices;
  private final int runs;

  /**
   * A page without results.
   *
   * @param scenario name of the scenario
   * @param plan name of the plan
   * @param outcome name of the outcome
   * @param axes what was varied
   * @param seed seed of points and resamples
   */
  public SensitivityPage(
      String scenario, String plan, String outcome, List<StudyAxis> axes, long seed) {
    this(scenario, plan, outcome, axes, seed, Optional.empty(), Optional.empty(), 0);
  }

  private SensitivityPage(
      String scenario,
      String plan,
      String outcome,
      List<StudyAxis> axes,
      long seed,
      Optional<ElementaryEffects> effects,
      Optional<SobolIndices> indices,
      int runs) {
    this.scenario = scenario;
    this.plan = plan;
    this.outcome = outcome;
    this.axes = List.copyOf(axes);
    this.seed = seed;
    this.effects = effects;
    this.indices = indices;
    this.runs = runs;
  }

  /**
   * The page with elementary effects.
   *
   * @param found the effects
   * @param number runs of the model
   * @return the page
   */
  public SensitivityPage with(ElementaryEffects found, int number) {
    return new SensitivityPage(
        scenario, plan, outcome, axes, seed, Optional.of(found), Optional.empty(), number);
  }

  /**
   * The page with Sobol indices.
   *
   * @param found the indices
   * @param number runs of the model
   * @return the page
   */
  public SensitivityPage with(SobolIndices found, int number) {
    return new SensitivityPage(
        scenario, plan, outcome, axes, seed, Optional.empty(), Optional.of(found), number);
  }

  /** Importance of an axis with its interval: total index, or mean size of effects. */
  record Importance(String name, double value, double low, double high) {}

  /** Axes by importance, the largest first. */
  List<Importance> ranked() {
    return order().stream()
        .map(
            i -> {
              if (indices.isPresent()) {
                SobolIndices.Index total = indices.get().total().get(i);
                return new Importance(
                    axes.get(i).words(), total.value(), total.low(), total.high());
              }
              ElementaryEffects.Effect effect = effects.orElseThrow().effects().get(i);
              double twice = 2 * effect.standardError();
              return new Importance(
                  axes.get(i).words(),
                  effect.meanAbsolute(),
                  Math.max(0, effect.meanAbsolute() - twice),
                  effect.meanAbsolute() + twice);
            })
        .toList();
  }

  private List<Integer> order() {
    Comparator<Integer> byImportance =
        Comparator.comparingDouble(
            i ->
                indices.isPresent()
                    ? -indices.get().total().get(i).value()
                    : -effects.orElseThrow().effects().get(i).meanAbsolute());
    return IntStream.range(0, axes.size()).boxed().sorted(byImportance).toList();
  }

  /** What matters most, a sentence without its full stop. */
  String finding() {
    Importance first = ranked().get(0);
    if (!(first.value() > 0)) {
      return "Nothing that was varied moves " + outcome;
    }
    return indices.isPresent()
        ? first.name()
            + " explains "
            + Numbers.percent(Math.max(0, Math.min(1, first.value())))
            + " of the variance of "
            + outcome
        : first.name() + " moves " + outcome + " most";
  }

  /** What is shown, with its unit. */
  String measure() {
    return indices.isPresent()
        ? "total Sobol index (share of the variance)"
        : "mean size of the effect over the whole range (" + outcome + ")";
  }

  String subject() {
    return scenario + ", plan " + plan;
  }

  /**
   * The page for the terminal.
   *
   * @return its text
   */
  public String text() {
    TextPage page = new TextPage().title("What moves " + outcome + ": " + subject());
    page.paragraph(finding() + ".");
    page.table(indices.isPresent() ? sobol(indices.get()) : morris(effects.orElseThrow()));
    page.paragraph(
        indices.isPresent()
            ? "First: share of the variance that goes away when this alone is known. Total: share"
                + " that stays when all else is known. A total well above the first means that it"
                + " acts together with others. Intervals hold 95 of 100 resamples."
            : "Size: how far the outcome moves, over the whole range of each thing, in its unit;"
                + " +- twice its standard error. Scatter: how much that depends on the others or on"
                + " where it is measured; \"bends\" where that is more than half of the size.");
    page.paragraph(
        runs
            + " runs, seed "
            + seed
            + ". What is not varied has its middle value, daily weather is the usual one.");
    return page.render();
  }

  private TextTable sobol(SobolIndices found) {
    TextTable table = new TextTable().name("what").text("varied").number("first").number("total");
    for (int i : order()) {
      table.row(
          axes.get(i).words(),
          spread(axes.get(i).prior()),
          index(found.first().get(i)),
          index(found.total().get(i)));
    }
    return table;
  }

  private static String index(SobolIndices.Index index) {
    return Numbers.fixed(index.value(), 2)
        + " ("
        + Numbers.fixed(index.low(), 2)
        + " to "
        + Numbers.fixed(index.high(), 2)
        + ")";
  }

  private TextTable morris(ElementaryEffects found) {
    TextTable table =
        new TextTable()
            .name("what")
            .text("varied")
            .number("size")
            .number("+-")
            .number("direction")
            .number("scatter")
            .text("");
    for (int i : order()) {
      ElementaryEffects.Effect effect = found.effects().get(i);
      table.row(
          axes.get(i).words(),
          spread(axes.get(i).prior()),
          Numbers.rounded(effect.meanAbsolute(), FIGURES),
          Numbers.rounded(2 * effect.standardError(), 2),
          effect.mean() > 0 ? "up" : effect.mean() < 0 ? "down" : "-",
          Numbers.rounded(effect.deviation(), FIGURES),
          effect.deviation() > CURVED * effect.meanAbsolute() ? "bends" : "");
    }
    return table;
  }

  private static String spread(Prior prior) {
    String centre = Numbers.rounded(prior.centre(), FIGURES);
    String amount = Numbers.rounded(prior.spread(), FIGURES);
    return switch (prior.shape()) {
      case UNIFORM, BETA ->
          Numbers.rounded(prior.low(), FIGURES) + " to " + Numbers.rounded(prior.high(), FIGURES);
      case NORMAL -> centre + " +- " + amount;
      case LOGNORMAL -> centre + ", sigma " + amount;
    };
  }

  /** The table for programs. */
  void csv(Writer writer) {
    if (indices.isPresent()) {
      CsvOutput csv =
          CsvOutput.withHeader(
              writer,
              List.of(
                  "what",
                  "first",
                  "first_low_95",
                  "first_high_95",
                  "total",
                  "total_low_95",
                  "total_high_95"));
      for (int i : order()) {
        SobolIndices.Index first = indices.get().first().get(i);
        SobolIndices.Index total = indices.get().total().get(i);
        csv.row(
            axes.get(i).words(),
            first.value(),
            first.low(),
            first.high(),
            total.value(),
            total.low(),
            total.high());
      }
    } else {
      CsvOutput csv =
          CsvOutput.withHeader(
              writer, List.of("what", "mean", "mean_size", "standard_error", "deviation"));
      for (int i : order()) {
        ElementaryEffects.Effect e = effects.orElseThrow().effects().get(i);
        csv.row(axes.get(i).words(), e.mean(), e.meanAbsolute(), e.standardError(), e.deviation());
      }
    }
  }

  /**
   * The page as JSON.
   *
   * @param writer where to write; not closed
   */
  public void json(Writer writer) {
    JsonOutput.write(
        writer,
        "sensitivity",
        VERSION,
        json -> {
          json.text("scenario", scenario)
              .text("plan", plan)
              .text("outcome", outcome)
              .text("method", indices.isPresent() ? "sobol" : "morris")
              .number("runs", runs)
              .number("seed", seed);
          indices.ifPresent(
              found -> json.number("mean", found.mean()).number("variance", found.variance()));
          json.list("varied", order(), (j, i) -> axis(j, i));
        });
  }

  private void axis(JsonOutput json, int i) {
    json.text("what", axes.get(i).words()).text("spread", spread(axes.get(i).prior()));
    indices.ifPresent(
        found -> {
          json.object("first", j -> index(j, found.first().get(i)));
          json.object("total", j -> index(j, found.total().get(i)));
        });
    effects.ifPresent(
        found -> {
          ElementaryEffects.Effect effect = found.effects().get(i);
          json.number("mean", effect.mean())
              .number("meanSize", effect.meanAbsolute())
              .number("standardError", effect.standardError())
              .number("deviation", effect.deviation());
        });
  }

  private static void index(JsonOutput json, SobolIndices.Index index) {
    json.number("value", index.value()).number("low95", index.low()).number("high95", index.high());
  }
}
