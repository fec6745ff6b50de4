package org.undercap.cli.report;

import static org.undercap.cli.report.Report.Column.numbers;
import static org.undercap.cli.report.Report.Column.words;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercap.calibration.FitResult;
import org.undercap.calibration.FittedParameter;
import org.undercap.calibration.FittedStart;
import org.undercap.calibration.GrowthFitResult;
import org.undercap.calibration.PredictiveCheck;
import org.undercap.calibration.Residual;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.SourceWords;
import org.undercap.cli.report.Report.Block;
import org.undercap.cli.report.Report.Grid;
import org.undercap.cli.report.Report.Items;
import org.undercap.cli.report.Report.Paragraph;
import org.undercap.cli.report.Report.Picture;
import org.undercap.cli.report.Report.Section;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.Prior;

/** What a fit found, as a report. */
public final class FitPage {
  private static final int FIGURES = 4;
  private static final double STRONG = 0.5;
  private static final double WORTH_SAYING = 1e-4;
  private static final double FAR_OUT = 3;
  private static final double ODD = 0.025;

  private final FitStudy study;
  private final FitResult fit;

  private FitPage(FitStudy study) {
    this.study = study;
    fit = study.fit();
  }

  /**
   * The report.
   *
   * @param study what was found
   * @param charts names of its charts without endings
   * @return the report
   */
  public static Report of(FitStudy study, List<String> charts) {
    return new FitPage(study).report(charts);
  }

  private Report report(List<String> charts) {
    List<Section> details = new ArrayList<>();
    study.counts().ifPresent(counts -> details.add(counts(counts, charts)));
    correlations().ifPresent(details::add);
    details.add(sources());
    details.add(limits());
    return new Report(
        "Fit: " + study.name(), "", Optional.empty(), List.of(values(), search()), details);
  }

  private Section values() {
    List<Block> blocks = new ArrayList<>();
    study.growth().ifPresent(growth -> blocks.add(new Paragraph(reached(growth))));
    List<List<String>> rows = new ArrayList<>();
    for (FittedParameter p : fit.parameters()) {
      rows.add(
          List.of(
              p.name(),
              shipped(p.name()),
              prior(p.name()),
              Numbers.rounded(p.value(), FIGURES),
              interval(p),
              Numbers.fixed(p.priorLeft(), 2)));
    }
    blocks.add(
        new Grid(
            "fitted values",
            List.of(
                words("parameter"),
                numbers("shipped"),
                words("believed before"),
                numbers("fitted"),
                words("95 % interval"),
                numbers("uncertainty left")),
            rows));
    blocks.add(
        new Paragraph(
            "Intervals are by profile: all other values are fitted anew at each end, priors"
                + " included. Uncertainty left: standard deviation after the data against that"
                + " before; 1 means that the data say nothing."
                + flat()));
    blocks.add(new Paragraph(unidentified()));
    return new Section("values", "Fitted values", blocks);
  }

  private static String reached(GrowthFitResult growth) {
    GrowthFitResult.Reached r = growth.reached().get(0);
    return "The mites now grow by "
        + rate(r.rate())
        + " per day (95 of 100 draws of the fitted values: "
        + rate(r.low())
        + " to "
        + rate(r.high())
        + ") in climate "
        + r.target().climate().id()
        + "; wanted was "
        + rate(r.target().rate())
        + " ("
        + rate(r.target().low())
        + " to "
        + rate(r.target().high())
        + "), before the fit it was "
        + (Double.isNaN(r.before()) ? "not to be told" : rate(r.before()))
        + "."
        + held(r);
  }

  private static String held(GrowthFitResult.Reached r) {
    String flat = " To let a value go where the target wants it, give it flat bounds: ID=LOW:HIGH.";
    if (!r.inside()) {
      return " THE TARGET IS NOT MET: priors and bounds hold the values back." + flat;
    }
    return Math.abs(r.rate() - r.target().rate()) > WORTH_SAYING
        ? " What is believed of the values pulls it away from the target." + flat
        : "";
  }

  private static String rate(double rate) {
    return Numbers.fixed(rate, 5);
  }

  private static Optional<Parameter> parameter(String name) {
    return ParameterCatalogue.shipped().find(name);
  }

  private static String shipped(String name) {
    return parameter(name).map(p -> Numbers.rounded(p.value(), FIGURES)).orElse("");
  }

  private String prior(String name) {
    int place = study.space().ids().stream().map(ParameterId::id).toList().indexOf(name);
    if (place < 0) {
      return "flat in the logarithm";
    }
    Prior prior = study.space().priors().get(place);
    String centre = Numbers.rounded(prior.centre(), FIGURES);
    String spread = Numbers.rounded(prior.spread(), FIGURES);
    return switch (prior.shape()) {
      case UNIFORM -> "any from " + range(prior.low(), prior.high()) + " (flat)";
      case NORMAL -> "normal, " + centre + " +- " + spread;
      case LOGNORMAL -> "lognormal, " + centre + ", sigma " + spread;
      case BETA -> "beta, " + centre + " in " + range(prior.low(), prior.high());
    };
  }

  private String flat() {
    boolean any =
        study.space().priors().stream().anyMatch(prior -> prior.shape() == Prior.Shape.UNIFORM);
    return any
        ? " Flat: before the data every value between the bounds was thought equally likely, and"
            + " none beyond; what the catalogue believes of it does not count."
        : "";
  }

  private static String range(double low, double high) {
    return Numbers.rounded(low, FIGURES) + " to " + Numbers.rounded(high, FIGURES);
  }

  private static String interval(FittedParameter p) {
    return (p.openBelow() ? "(bound) " : "")
        + range(p.low(), p.high())
        + (p.openAbove() ? " (bound)" : "");
  }

  private String unidentified() {
    List<String> open = fit.unidentified();
    return open.isEmpty()
        ? "The data tell something about every parameter."
        : "The data tell nothing about "
            + DateWords.joined(open)
            + ": what is shown is what was believed before. Leave "
            + (open.size() == 1 ? "it" : "them")
            + " out of --free, or bring other data."
            + leaningOn(open);
  }

  /** Values that the data fix only given those about which they tell nothing. */
  private String leaningOn(List<String> open) {
    List<String> leaning = new ArrayList<>();
    for (int i = 0; i < fit.parameters().size(); i++) {
      String name = fit.parameters().get(i).name();
      boolean leans = false;
      for (int j = 0; j < fit.parameters().size(); j++) {
        leans |= open.contains(fit.parameters().get(j).name()) && isStrong(i, j);
      }
      if (leans && !open.contains(name)) {
        leaning.add(name);
      }
    }
    return leaning.isEmpty()
        ? ""
        : " The value of "
            + DateWords.joined(leaning)
            + " leans on that belief: the correlation below does not say that the data know both,"
            + " but that another belief would give another value here.";
  }

  private boolean isStrong(int i, int j) {
    return i != j && Math.abs(fit.correlations().get(i).get(j)) >= STRONG;
  }

  private Section search() {
    String agreeing =
        fit.starts() == 1
            ? "One search was made; with --starts more would show whether they agree."
            : fit.startsAgreeing() + " of " + fit.starts() + " searches ended equally well.";
    String warning =
        fit.exhausted() ? " THE SEARCH WAS CUT OFF: the values may not be the best." : "";
    String few =
        fit.starts() > 1 && fit.startsAgreeing() == 1
            ? " ONLY ONE SEARCH FOUND THIS: try more --starts or --search global."
            : "";
    return new Section(
        "search",
        "How it was found",
        List.of(
            new Paragraph(
                agreeing
                    + few
                    + warning
                    + " The model was run at "
                    + fit.evaluations()
                    + " points; seed "
                    + study.settings().seed()
                    + ". Logarithm of the likelihood "
                    + Numbers.rounded(fit.logLikelihood(), 6)
                    + ".")));
  }

  private Section counts(FitStudy.Counts counts, List<String> charts) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Paragraph("Fitted counts: " + check(counts.check())));
    counts
        .heldOut()
        .ifPresent(
            held ->
                blocks.add(
                    new Paragraph(
                        "Counts after "
                            + DateWords.day(counts.lastFitted().orElseThrow())
                            + ", which the fit has not seen: "
                            + check(held))));
    for (String chart : charts) {
      blocks.add(new Picture(chart, "counts of each colony with the band that the fit foretells"));
    }
    blocks.add(residuals(counts.residuals()));
    blocks.add(starts(counts.starts()));
    return new Section("counts", "Counts against the fit", blocks);
  }

  private static String check(PredictiveCheck check) {
    String odd =
        check.misfitShare() < ODD
            ? " The counts scatter MORE than the fit can tell."
            : check.misfitShare() > 1 - ODD ? " The counts scatter LESS than the fit tells." : "";
    return check.counts()
        + " counts, "
        + Numbers.percent(check.inside80())
        + " of them in the 80 % interval foretold and "
        + Numbers.percent(check.inside95())
        + " in that of 95 %; "
        + Numbers.percent(check.misfitShare())
        + " of simulated sets of counts fit worse than these (near 0 or 100 % is a warning). Mean"
        + " logarithm of the probability of a count: "
        + Numbers.rounded(check.logScore(), FIGURES)
        + "."
        + odd;
  }

  private static Block residuals(List<Residual> residuals) {
    List<List<String>> rows = new ArrayList<>();
    Set<String> kinds = new LinkedHashSet<>(residuals.stream().map(Residual::kind).toList());
    for (String kind : kinds) {
      double[] z =
          residuals.stream()
              .filter(r -> r.kind().equals(kind))
              .mapToDouble(Residual::standardised)
              .toArray();
      double sum = 0;
      double squares = 0;
      int far = 0;
      for (double x : z) {
        sum += x;
        squares += x * x;
        far += Math.abs(x) > FAR_OUT ? 1 : 0;
      }
      rows.add(
          List.of(
              kind,
              Integer.toString(z.length),
              Numbers.fixed(sum / z.length, 2),
              Numbers.fixed(StrictMath.sqrt(squares / z.length), 2),
              Integer.toString(far)));
    }
    return new Grid(
        "residuals in standard deviations of a count",
        List.of(
            words("kind of count"),
            numbers("counts"),
            numbers("mean residual (0)"),
            numbers("root mean square (1)"),
            numbers("beyond 3")),
        rows);
  }

  private static Block starts(List<FittedStart> starts) {
    return new Grid(
        "mites on the first day",
        List.of(words("colony"), numbers("mites"), words("95 % interval")),
        starts.stream()
            .map(
                s ->
                    List.of(
                        s.colony(),
                        Numbers.rounded(s.median(), 2),
                        Numbers.range(s.low(), s.high(), 2)))
            .toList());
  }

  private Optional<Section> correlations() {
    List<FittedParameter> all = fit.parameters();
    List<String> strong = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      for (int j = 0; j < i; j++) {
        double r = fit.correlations().get(i).get(j);
        if (isStrong(i, j)) {
          strong.add(
              all.get(j).name()
                  + " and "
                  + all.get(i).name()
                  + ": "
                  + Numbers.fixed(r, 2)
                  + (r > 0
                      ? ", the higher the one, the higher the other must be"
                      : ", the higher the one, the lower the other must be"));
        }
      }
    }
    if (all.size() < 2) {
      return Optional.empty();
    }
    Block block =
        strong.isEmpty()
            ? new Paragraph("No two estimates are correlated by 0.5 or more.")
            : new Items(strong);
    return Optional.of(new Section("correlations", "Correlations", List.of(block)));
  }

  private Section sources() {
    List<String> items = new ArrayList<>();
    for (ParameterId id : study.space().ids()) {
      Parameter p = ParameterCatalogue.shipped().get(id);
      items.add(
          id.id()
              + " ("
              + p.unit()
              + "), shipped value "
              + p.kind().word()
              + ". "
              + String.join(" ", SourceWords.citations(p.sourceKeys())));
    }
    return new Section(
        "sources", "Sources of the shipped values and priors", List.of(new Items(items)));
  }

  private static Section limits() {
    return new Section(
        "limits",
        "Limits",
        List.of(
            new Paragraph(
                "A fit makes the model agree with these data; it does not prove the model. Bees and"
                    + " brood of the first day and the usual weather are taken as known. Values"
                    + " fitted in one place may not hold in another.")));
  }
}
