package org.undercap.cli.option;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.hive.FrameCatalogue;
import org.undercap.hive.FrameType;
import org.undercap.scenario.Amount;
import org.undercap.scenario.Arrivals;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.BeeUnit;
import org.undercap.scenario.BroodFullness;
import org.undercap.scenario.BroodUnit;
import org.undercap.scenario.InputLimits;
import org.undercap.scenario.Lookup;
import org.undercap.scenario.Quantities;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;

/** Turns what keepers type into what scenario files hold. */
final class Said {
  /** Stands for an answer that is left to the program. */
  static final String UNKNOWN = "unknown";

  private static final int FRAMES_A_LINE = 3;
  private static final Set<String> NO = Set.of("no", "n", "none", "off", "nothing", "never");
  private static final Set<String> YES = Set.of("yes", "y", "on");
  private static final Pattern LATITUDE =
      Pattern.compile(
          "(?:latitude:? *)?(-?[0-9]{1,2}(?:\\.[0-9]{1,4})?) *\u00b0? *(n|s|north|south)?");
  private static final Pattern SPAN =
      Pattern.compile("(?:from )?(.*?\\d.*?)\\s+(?:until|till|to)\\s+(.*)");
  private static final Pattern YEAR = Pattern.compile("\\b[0-9]{4}\\b");
  private static final Pattern COURSE =
      Pattern.compile("(.*?)(?:,? *([0-9]{1,2}) times(?:,? every ([0-9]{1,3}) days?)?)?");
  private static final Pattern TREATED =
      Pattern.compile(
          "([a-z][a-z -]*?),?\\s+(?:on|at|from|in)?\\s*((?:[0-9]|[a-z]{3,9} [0-9]|today|yesterday).*)");

  private Said() {}

  static String place(String text) throws BadValueException {
    String said = lower(text);
    Matcher latitude = LATITUDE.matcher(said);
    if (latitude.matches()) {
      return latitude(text, latitude);
    }
    List<String> ids = ClimateCatalogue.shipped().all().stream().map(Climate::id).toList();
    try {
      return Lookup.find("climate", hyphened(said), ClimateCatalogue.shipped()::find, ids).id();
    } catch (BadValueException e) {
      throw new BadValueException(
          e.getMessage(),
          "write your latitude, as in 52 N or 37 S, or "
              + e.hint().replaceFirst("^accepted: ", "one of: "));
    }
  }

  private static String latitude(String text, Matcher latitude) throws BadValueException {
    double degrees = Quantities.number(latitude.group(1));
    String side = latitude.group(2) == null ? "" : latitude.group(2);
    boolean explicit = side.isEmpty() && (latitude.group().startsWith("latitude") || degrees < 0);
    if (side.isEmpty() != explicit || (degrees < 0 && !side.isEmpty())) {
      throw new BadValueException(
          Quantities.quote(text) + " is no climate and no latitude",
          "write a latitude with its side, as in 52 N or 37 S");
    }
    double north = side.startsWith("s") ? -degrees : degrees;
    InputLimits.shipped().get("site.latitude").check(north);
    ClimateCatalogue shipped = ClimateCatalogue.shipped();
    if (shipped.degreesAway(north) > InputLimits.shipped().get("site.latitude.distance").high()) {
      throw new BadValueException(
          "there is no climate for latitude " + Quantities.quote(text),
          "nothing was tested so far from all climates that are known here; no figure would hold");
    }
    return "latitude " + Quantities.format(north);
  }

  static String bees(String text) throws BadValueException {
    Amount<BeeUnit> amount = BeeUnit.parse(text);
    if (amount.unit() == BeeUnit.BEES && amount.number() < fewestBees()) {
      throw new BadValueException(
          Quantities.format(amount.number()) + " bees are too few",
          "write the unit too, as in 9 frames, 11 seams, 4 lb or 18000 bees");
    }
    return text;
  }

  /** What keepers put before a number that they guess. */
  static String exact(String text) {
    return text.replaceFirst("^(?i)(?:(?:about|around|roughly|some|ca\\.?) |~) *", "");
  }

  private static double fewestBees() {
    return InputLimits.shipped().get("colony.bees").low();
  }

  static String brood(String text) throws BadValueException {
    String said = text.replaceFirst("(?i) of brood\\b", "");
    try {
      BroodUnit.parse(said);
    } catch (BadValueException e) {
      throw new BadValueException(
          e.getMessage(), e.hint() + ", as in 5 frames two thirds full, 12 hands or 140 sq in");
    }
    return said;
  }

  static String fullness(String text) throws BadValueException {
    BroodFullness.parse(text);
    String said = lower(text).replaceAll("\\s*full$", "");
    return said.startsWith("in patches") || said.startsWith("patch")
        ? "patches"
        : (said + " full").strip();
  }

  /** Whether brood is said in combs, so that it matters how full they are. */
  static boolean inCombs(String brood) {
    Amount<BroodUnit> amount = parsed(brood);
    return amount.number() > 0
        && (amount.unit() == BroodUnit.FRAMES || amount.unit() == BroodUnit.SIDES)
        && !BroodFullness.isSaid(brood);
  }

  static boolean needFrame(String bees, String brood) {
    try {
      BeeUnit unit = BeeUnit.parse(bees).unit();
      return !Set.of(BeeUnit.BEES, BeeUnit.POUNDS, BeeUnit.KILOGRAMS).contains(unit)
          || parsed(brood).unit() != BroodUnit.CELLS;
    } catch (BadValueException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Amount<BroodUnit> parsed(String brood) {
    try {
      return BroodUnit.parse(brood);
    } catch (BadValueException e) {
      throw new IllegalStateException(e);
    }
  }

  static String frames() {
    return FrameCatalogue.shipped().all().stream()
        .map(FrameType::id)
        .collect(Collectors.joining(", "));
  }

  /** The names of the frames, three a line. */
  static List<String> frameLines() {
    List<String> ids = FrameCatalogue.shipped().all().stream().map(FrameType::id).toList();
    List<String> lines = new ArrayList<>();
    for (int from = 0; from < ids.size(); from += FRAMES_A_LINE) {
      lines.add(
          ids.subList(from, Math.min(from + FRAMES_A_LINE, ids.size())).stream()
              .map(id -> String.format(Locale.ROOT, "%-19s", id))
              .collect(Collectors.joining())
              .stripTrailing());
    }
    return lines;
  }

  static String frame(String text) throws BadValueException {
    List<FrameType> meant = FrameCatalogue.shipped().meant(text);
    if (meant.size() == 1) {
      return meant.get(0).id();
    }
    List<String> ids = FrameCatalogue.shipped().all().stream().map(FrameType::id).toList();
    if (meant.isEmpty()) {
      throw new BadValueException(
          "unknown frame " + Quantities.quote(text) + Lookup.suggestion(hyphened(text), ids),
          "there are: "
              + frames()
              + "; for another frame choose the one nearest in size, or say bees in pounds and"
              + " brood in cells");
    }
    throw new BadValueException(
        Quantities.quote(text) + " may be more than one frame",
        "write one of: " + meant.stream().map(FrameType::id).collect(Collectors.joining(", ")));
  }

  static String supers(String text, LocalDate today) throws BadValueException {
    String said = lower(text);
    if (NO.contains(said)) {
      return "off";
    }
    if (YES.contains(said)) {
      throw new BadValueException(
          "until when?", "write the last day they stay on, as in 30 August 2026");
    }
    if (!said.matches(".*\\d.*|.*today.*|.*yesterday.*")) {
      throw new BadValueException(Quantities.quote(text) + " is neither no nor a date", "");
    }
    return SaidDate.parse(said.replaceFirst("^(?:(?:yes|on),? )?(?:until|till)? *", ""), today)
        .toString();
  }

  /** {@code no}, or the last day, or both days with {@code to} between them. */
  static String feeding(String text, LocalDate today) throws BadValueException {
    String said = lower(text).replaceFirst("^yes,? ", "");
    if (NO.contains(said)) {
      return "no";
    }
    if (YES.contains(said)) {
      throw new BadValueException(
          "until when?", "write the last day of feeding, as in 20 September 2026");
    }
    if (said.matches("(?:still|since|from)\\b.*") && !SPAN.matcher(said).matches()) {
      throw new BadValueException(
          "until when?",
          "write the day on which feeding ends or is planned to, as in from 20 August 2026 to 5"
              + " September 2026");
    }
    if (!said.matches(".*\\d.*|.*today.*|.*yesterday.*")) {
      throw new BadValueException(Quantities.quote(text) + " is neither no nor a date", "");
    }
    Matcher span = SPAN.matcher(said);
    if (span.matches()) {
      LocalDate from = SaidDate.parse(withYear(span.group(1), span.group(2)), today);
      LocalDate until = SaidDate.parse(span.group(2), today);
      if (until.isBefore(from)) {
        throw new BadValueException(
            Quantities.quote(text) + " ends before it begins", "write the first day first");
      }
      return from + " to " + until;
    }
    return SaidDate.parse(said.replaceFirst("^(?:until|till|to) ", ""), today).toString();
  }

  /** A first day without a year lies in that of the last. */
  private static String withYear(String first, String last) {
    Matcher year = YEAR.matcher(last);
    return first.matches("[0-9]{1,2} [a-z]+|[a-z]+ [0-9]{1,2}") && year.find()
        ? first + " " + year.group()
        : first;
  }

  /** {@code none}, or {@code method on date, n times every m days} with {@code ;} between. */
  static String done(String text, LocalDate today) throws BadValueException {
    if (NO.contains(lower(text))) {
      return "none";
    }
    List<String> steps = new ArrayList<>();
    for (String part : lower(text).replaceFirst(";\\s*$", "").split("\\s*;\\s*", -1)) {
      steps.add(step(part, today));
    }
    return String.join("; ", steps);
  }

  private static String step(String part, LocalDate today) throws BadValueException {
    Matcher course = COURSE.matcher(part);
    Matcher treated = TREATED.matcher(course.matches() ? course.group(1).strip() : part);
    if (!treated.matches()) {
      throw new BadValueException(
          Quantities.quote(part) + " does not say what was done and on which day",
          "as in oxalic-dribble on 3 January 2026; undercap methods lists the treatments");
    }
    String step = method(treated.group(1)).id() + " on " + SaidDate.parse(treated.group(2), today);
    return course.group(2) == null
        ? step
        : step
            + ", "
            + course.group(2)
            + " times every "
            + (course.group(3) == null ? "7" : course.group(3))
            + " days";
  }

  private static Method method(String text) throws BadValueException {
    List<Method> meant = MethodCatalogue.shipped().meant(text);
    if (meant.size() > 1) {
      throw new BadValueException(
          Quantities.quote(text) + " may be more than one treatment",
          "write one of: " + meant.stream().map(Method::id).collect(Collectors.joining(", ")));
    }
    return Lookup.find("treatment", hyphened(text), id -> meant.stream().findFirst(), ids());
  }

  /** {@code any}, {@code organic}, or treatments and substances in a keeper's words. */
  static String treatments(String text) throws BadValueException {
    String said = lower(text);
    if (Set.of("any", "all").contains(said)) {
      return "any";
    }
    if (said.equals("organic")) {
      return said;
    }
    Set<String> found = new LinkedHashSet<>();
    for (String part : said.split("\\s*(?:[,;&+]|\\bor\\b)\\s*", -1)) {
      boolean one = MethodCatalogue.shipped().meant(part).size() == 1;
      for (String treatment : one ? new String[] {part} : part.split("\\s*\\band\\b\\s*", -1)) {
        found.addAll(ofSubstance(treatment));
      }
    }
    return String.join(", ", found);
  }

  /** All treatments of a substance, or else the one that is meant. */
  private static List<String> ofSubstance(String said) throws BadValueException {
    List<String> ids = all().stream().filter(m -> isSubstance(m, said)).map(Method::id).toList();
    return ids.isEmpty() ? List.of(method(said).id()) : ids;
  }

  /** Keepers say oxalic for oxalic acid. */
  private static boolean isSubstance(Method method, String said) {
    return method.substance().equals(said)
        || method.substanceClass().equals(said)
        || method.substance().equals(said + " acid");
  }

  private static List<Method> all() {
    return MethodCatalogue.shipped().all();
  }

  private static List<String> ids() {
    return all().stream().map(Method::id).toList();
  }

  static String floor(String text) throws BadValueException {
    return switch (lower(text)) {
      case "open", "mesh", "open mesh" -> "open";
      case "closed", "solid", "closed mesh" -> "closed";
      default ->
          throw new BadValueException(
              Quantities.quote(text) + " is not accepted", "write open, closed or unknown");
    };
  }

  static String arrivals(String text) throws BadValueException {
    String said = lower(text);
    Arrivals.parse(said);
    return said;
  }

  private static String lower(String text) {
    return text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
  }

  private static String hyphened(String text) {
    return lower(text).replace(' ', '-');
  }
}
