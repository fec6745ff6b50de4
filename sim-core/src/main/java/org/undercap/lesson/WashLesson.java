package org.undercap.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.undercap.internal.Randoms;
import org.undercap.lesson.LessonResult.Figures;
import org.undercap.monitoring.ExactIntervals;
import org.undercap.monitoring.Interval;
import org.undercap.monitoring.WashMethod;
import org.undercap.parameter.ParameterSet;

/** What a wash can and cannot tell: the same colony washed again and again. */
final class WashLesson {
  private static final long SEED = 1;
  private static final double LEVEL = 0.95;

  private WashLesson() {}

  static LessonResult teach(LessonPlace place) {
    int bees = SetUps.whole("wash.bees");
    double truth = SetUps.number("wash.share");
    double found = truth * ParameterSet.shipped().value(WashMethod.ALCOHOL.recovery());
    List<Integer> counts = washes(bees, found, SetUps.whole("wash.repeats"));
    Panel.Builder panel =
        Panel.numbers("wash-number", "mites-in-wash").level("average-wash", bees * found);
    List<Double> numbers =
        IntStream.rangeClosed(1, counts.size()).asDoubleStream().boxed().toList();
    panel.line(Series.of("washes", numbers, counts.stream().map(Integer::doubleValue).toList()));
    int covering = 0;
    for (int count : counts) {
      Interval range = ExactIntervals.clopperPearson(count, bees, LEVEL);
      covering += range.low() <= found && found <= range.high() ? 1 : 0;
    }
    int low = counts.stream().min(Integer::compare).orElseThrow();
    int high = counts.stream().max(Integer::compare).orElseThrow();
    Interval middle = ExactIntervals.clopperPearson((int) Math.round(bees * found), bees, LEVEL);
    return new Figures()
        .put("washes", counts.size())
        .put("bees", bees)
        .put("truth", 100 * truth)
        .put("expected", bees * found)
        .put("low", low)
        .put("high", high)
        .put("covering", covering)
        .put("middle", (double) Math.round(bees * found))
        .put("middleLow", 100 * middle.low())
        .put("middleHigh", 100 * middle.high())
        .result(place, high >= 2 * low && covering >= 0.85 * counts.size(), panel.build());
  }

  private static List<Integer> washes(int bees, double share, int repeats) {
    UniformRandomProvider random = Randoms.of(SEED, "lesson washes");
    List<Integer> counts = new ArrayList<>();
    for (int i = 0; i < repeats; i++) {
      counts.add((int) IntStream.range(0, bees).filter(b -> random.nextDouble() < share).count());
    }
    return counts;
  }
}
