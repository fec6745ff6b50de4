package org.undercap.monitoring;

/**
 * One count beside what the estimate expects of it.
 *
 * @param count the count
 * @param exact 95 % interval of what was counted, from this count alone and without any model:
 *     mites found per 100 bees of a wash or roll, mites per day of a board, infested cells in 100
 *     opened ones
 * @param expected mean count that colonies like the estimated one would give (mites, or infested
 *     cells)
 * @param probability how often colonies like the estimated one would give a count at least as far
 *     out, on either side (fraction); small if the count does not fit the others
 */
public record CountCheck(Count count, Interval exact, double expected, double probability) {

  private static final double LEVEL = 0.95;
  private static final double PER_HUNDRED = 100;

  static CountCheck of(Count count, CountMixture mixture) {
    double probability = mixture.asFarOut(Likelihood.found(count));
    return new CountCheck(count, exact(count), mixture.mean(), probability);
  }

  private static Interval exact(Count count) {
    if (count instanceof Board board) {
      Interval all = ExactIntervals.garwood(Math.toIntExact(Math.round(board.mites())), LEVEL);
      return scaled(all, 1.0 / board.days());
    } else if (count instanceof Wash wash) {
      return perHundred(wash.mites(), wash.bees());
    } else if (count instanceof DroneCells cells) {
      return perHundred(cells.infested(), cells.opened());
    }
    WorkerCells cells = (WorkerCells) count;
    return perHundred(cells.infested(), cells.opened());
  }

  private static Interval perHundred(int found, int of) {
    return scaled(ExactIntervals.clopperPearson(Math.min(found, of), of, LEVEL), PER_HUNDRED);
  }

  private static Interval scaled(Interval interval, double factor) {
    return new Interval(interval.low() * factor, interval.high() * factor);
  }
}
