package org.undercap.cli.report;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.undercap.cli.output.SourceWords;
import org.undercap.cli.report.Report.Block;
import org.undercap.cli.report.Report.Items;
import org.undercap.cli.report.Report.Paragraph;
import org.undercap.climate.Hemisphere;
import org.undercap.comparison.WinterRisk;
import org.undercap.ensemble.Series;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.PlanStep;

/** The loss of colonies that surveys found, shown apart from the model and as a band. */
final class RiskWords {
  private static final double[] SHARES = {0.1, 0.5, 0.9};

  private RiskWords() {}

  static List<Block> blocks(Answer answer) {
    Scenario scenario = answer.scenario();
    boolean south = scenario.climate().hemisphere() == Hemisphere.SOUTH;
    String month = south ? "April (October in the north)" : "October";
    Optional<LocalDate> date =
        WinterRisk.dayOfSurvey(scenario.climate().hemisphere(), scenario.start(), scenario.end());
    List<Block> blocks = new ArrayList<>();
    if (date.isEmpty()) {
      blocks.add(
          new Paragraph(
              "Surveys tell the loss of colonies over winter by their mites in "
                  + month
                  + ". The simulation holds no such month, so nothing is said about it."));
      return blocks;
    }
    blocks.add(
        new Paragraph(
            "This is not from the model. Surveys of many colonies tell how many died in winter with"
                + " how many mites on 100 bees in "
                + month
                + ". Of colonies with the mites that each plan leaves on "
                + DateWords.brief(date.get())
                + ", so many would have been lost. A plan that still treats after that day does better"
                + " than these figures, so none are given for it."));
    List<String> items = new ArrayList<>();
    for (int place : answer.places()) {
      items.add(item(answer, place, date.get()));
    }
    blocks.add(new Items(items));
    blocks.add(
        new Paragraph(
            "A band, not a forecast for one colony: queens, food, other diseases, weather and the"
                + " way of wintering decide as well. "
                + String.join("; ", SourceWords.citations(sources()))));
    return blocks;
  }

  private static List<String> sources() {
    return ParameterCatalogue.shipped().get(ParameterId.WINTER_RISK_HALF).sourceKeys();
  }

  /** The last day on which the plan acts, if it lies after the day of the survey. */
  private static Optional<LocalDate> later(Plan plan, LocalDate date) {
    return plan.steps().stream()
        .map(PlanStep::until)
        .max(Comparator.naturalOrder())
        .filter(day -> day.isAfter(date));
  }

  private static String item(Answer answer, int place, LocalDate date) {
    Plan plan = answer.result(place).plan();
    Optional<LocalDate> later = later(plan, date);
    if (later.isPresent()) {
      return plan.name() + ": not told, since it acts until " + DateWords.day(later.get());
    }
    int day = (int) ChronoUnit.DAYS.between(answer.scenario().start(), date);
    double[] mites = new double[SHARES.length];
    for (int i = 0; i < mites.length; i++) {
      mites[i] = answer.result(place).bands().quantile(Series.MITES_PER_100_BEES, SHARES[i])[day];
    }
    String least = Figures.inHundred(WinterRisk.best().lost(mites[0]));
    String most = Figures.inHundred(WinterRisk.worst().lost(mites[2]));
    return plan.name()
        + ": "
        + (least.equals(most) ? "about " + least : least + " to " + most)
        + " of 100 colonies, with "
        + Figures.said(mites)
        + " mites on 100 bees";
  }
}
