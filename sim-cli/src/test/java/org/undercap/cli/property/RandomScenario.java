package org.undercap.cli.property;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;

/**
 * A valid scenario file that is drawn: any place, day, hive, count, treatment and measure. The same
 * facts can be written in two ways.
 */
final class RandomScenario {
  private final Random random;
  private final boolean otherWords;
  private final boolean countsKnown;
  private final LocalDate start;
  private final double mites;
  private final int days;
  private final String facts;
  private final List<String> plans = new ArrayList<>();

  /** Draws a scenario; the same seed gives the same one, in other words if asked. */
  RandomScenario(long seed, boolean otherWords) {
    random = new Random(seed);
    this.otherWords = otherWords;
    start = LocalDate.of(2026, 1, 1).plusDays(random.nextInt(365));
    days = 20 + random.nextInt(60);
    countsKnown = random.nextInt(3) == 0;
    mites = 5 + random.nextInt(1_500);
    facts = facts();
    int count = 1 + random.nextInt(3);
    for (int plan = 1; plan <= count; plan++) {
      plans.add(plan(plan));
    }
  }

  /** The text of the file. */
  String text() {
    return text(plans, mites);
  }

  /** The same with the plans in another order. */
  String reversed() {
    List<String> reversed = new ArrayList<>(plans);
    Collections.reverse(reversed);
    return text(reversed, mites);
  }

  /** The same with more mites, where their number is given and not counted. */
  String withMoreMites() {
    return text(plans, mites * 1.1);
  }

  boolean countsKnown() {
    return countsKnown;
  }

  private String text(List<String> inOrder, double inColony) {
    String known = countsKnown ? "" : "mites: {in-colony: " + inColony + "}\n";
    return facts + known + "plans:\n" + String.join("", inOrder);
  }

  private String facts() {
    int bees = 8_000 + 500 * random.nextInt(45);
    int brood = random.nextInt(3) == 0 ? 0 : 500 * random.nextInt(20);
    List<String> lines = new ArrayList<>();
    lines.add("undercap: 1");
    lines.add("name: Drawn yard");
    lines.add(site());
    lines.add(
        "colony: {date: "
            + start
            + (", bees: " + bees + (otherWords ? " bees" : ""))
            + (", brood: " + (brood == 0 && otherWords ? "none seen" : brood + " cells"))
            + maybe(", floor: open")
            + maybe(", queen-quality: 0.9")
            + "}");
    if (countsKnown) {
      lines.add(counts());
    }
    int arrivals = random.nextInt(4);
    lines.add("arrivals: " + (arrivals == 0 ? "none" : arrivals == 1 ? "low" : written(arrivals)));
    lines.add("horizon: " + (otherWords ? days + " days" : days));
    lines.add(maybe("organic: true"));
    lines.add(maybe("threshold: {mites-per-100-bees: 2}"));
    lines.add(maybe("resistance: {amitraz: " + share(20) + "}"));
    lines.add(maybe("parameters: {reproduction.worker: 0.9}"));
    lines.add(maybe("costs: {thymol-gel: 3.5, oxalic-dribble: 1}"));
    lines.add(maybe("feeding: [{from: " + start + ", until: " + start.plusDays(9) + "}]"));
    lines.removeIf(String::isEmpty);
    return String.join("\n", lines) + "\n";
  }

  private String written(int arrivals) {
    return otherWords ? arrivals + " mites a day" : arrivals + ".0 mites a day";
  }

  private String site() {
    String climate = one(ClimateCatalogue.shipped().all()).id();
    int warm = random.nextInt(4);
    List<String> months = new ArrayList<>();
    for (int month = 0; month < 12; month++) {
      int celsius = 20 - 5 * Math.abs(month - 6);
      months.add(otherWords ? celsius * 9 / 5 + 32 + " F" : celsius + " C");
    }
    String temperatures =
        warm == 0 && !climate.startsWith("south") ? ", monthly-temperatures: " + months : "";
    return "site: {climate: " + climate + temperatures + maybe(", humid: true") + "}";
  }

  private String counts() {
    int bees = 100 + random.nextInt(300);
    String wash = "wash: {date: " + start + ", bees: " + bees + ", mites: " + random.nextInt(20);
    String board = "board: {date: " + start + ", days: 3, mites: " + random.nextInt(60) + "}";
    String boards = random.nextBoolean() ? "    - " + board + "\n" : "";
    return "mites:\n  counts:\n" + boards + "    - " + wash + ", method: alcohol}";
  }

  private String plan(int number) {
    StringBuilder plan = new StringBuilder("  - name: Plan " + number + "\n    steps:\n");
    int steps = 1 + random.nextInt(3);
    int day = random.nextInt(5);
    for (int step = 0; step < steps; step++) {
      plan.append("      - {date: ").append(start.plusDays(day)).append(step()).append("}\n");
      day += 1 + random.nextInt(5);
    }
    return plan.toString();
  }

  private String step() {
    Method method = one(MethodCatalogue.shipped().all());
    return switch (random.nextInt(8)) {
      case 0 -> ", measure: queen-caging, days: 21";
      case 1 -> ", measure: requeening-gap, days: 20";
      case 2 -> ", measure: brood-removal, share: " + share(40);
      case 3 -> ", measure: drone-comb-removal, share: " + share(90);
      case 4 -> ", measure: late-feeding, days: " + (otherWords ? "2 weeks" : "14");
      default -> ", treatment: " + method.id();
    };
  }

  private String share(int percent) {
    return otherWords ? percent + " %" : String.format(Locale.ROOT, "%.2f", percent / 100.0);
  }

  private String maybe(String text) {
    return random.nextInt(4) == 0 ? text : "";
  }

  private <T> T one(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }
}
