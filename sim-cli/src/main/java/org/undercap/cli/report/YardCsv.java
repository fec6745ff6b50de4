package org.undercap.cli.report;

import java.io.Writer;
import java.util.List;
import java.util.Optional;
import org.undercap.cli.output.CsvOutput;
import org.undercap.monitoring.MiteDistribution;
import org.undercap.planning.Yard;
import org.undercap.planning.YardColony;
import org.undercap.planning.YardPlan;

/** A yard as comma-separated values. */
public final class YardCsv {
  private YardCsv() {}

  /**
   * Writes the colonies, the most worrying first.
   *
   * @param writer where to write; not closed
   * @param yard the yard
   */
  public static void colonies(Writer writer, Yard yard) {
    CsvOutput csv =
        CsvOutput.withHeader(
            writer,
            List.of(
                "colony",
                "mites_per_100_bees_p10",
                "mites_per_100_bees_p50",
                "mites_per_100_bees_p90",
                "mites_p10",
                "mites_p50",
                "mites_p90",
                "doubts",
                "note"));
    for (YardColony colony : yard.colonies()) {
      Optional<MiteDistribution> per100 = colony.estimate().map(e -> e.mitesPer100Bees());
      Optional<MiteDistribution> mites = colony.estimate().map(e -> e.mites());
      csv.row(
          colony.colony().name(),
          per100.map(d -> d.interval(YardColony.RANGE).low()),
          per100.map(MiteDistribution::median),
          per100.map(d -> d.interval(YardColony.RANGE).high()),
          mites.map(d -> d.interval(YardColony.RANGE).low()),
          mites.map(MiteDistribution::median),
          mites.map(d -> d.interval(YardColony.RANGE).high()),
          String.join("; ", YardPage.doubts(colony)),
          colony.colony().note());
    }
  }

  /**
   * Writes the plans, the least harm first.
   *
   * @param writer where to write; not closed
   * @param yard the yard
   */
  public static void plans(Writer writer, Yard yard) {
    CsvOutput csv =
        CsvOutput.withHeader(
            writer,
            List.of(
                "plan",
                "winter_brood_parasitised_fraction_mean",
                "winter_brood_parasitised_fraction_p10",
                "winter_brood_parasitised_fraction_p90",
                "best_for_colonies",
                "mites_left_mean",
                "ruled_out"));
    for (YardPlan plan : yard.plans()) {
      csv.row(
          plan.plan().name(),
          plan.meanHarm(),
          plan.low(),
          plan.high(),
          plan.bestFor(),
          plan.meanMitesLeft(),
          String.join("; ", plan.ruledOut()));
    }
  }
}
