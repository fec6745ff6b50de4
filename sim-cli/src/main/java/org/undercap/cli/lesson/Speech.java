package org.undercap.cli.lesson;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercap.cli.output.Numbers;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.Hemisphere;

/** Fills figures and terms into the words, for an audience, in units. */
public final class Speech {
  private static final Pattern SLOT =
      Pattern.compile("\\{([A-Za-z0-9.-]+)(%|@|~C|~10)?\\}|\\[([a-z-]+)\\]");
  private static final int FIGURES = 2;
  private static final double PERCENT = 100;
  private static final double THOUSAND = 1000;

  /** A blank at which no line is broken. */
  private static final char FIRM_BLANK = '\u00a0';

  private final Words words;
  private final Audience audience;
  private final Units units;

  /**
   * A way to speak.
   *
   * @param words the texts
   * @param audience who listens
   * @param units units of temperatures
   */
  public Speech(Words words, Audience audience, Units units) {
    this.words = words;
    this.audience = audience;
    this.units = units;
  }

  /** The texts. */
  Words words() {
    return words;
  }

  /** A text without figures. */
  String say(String key) {
    return say(key, Map.of());
  }

  /** A text with one figure, named {@code value}. */
  String say(String key, Object value) {
    return say(key, Map.of("value", value));
  }

  /**
   * A text with its figures.
   *
   * @param key its key; a text for the audience alone comes first
   * @param figures numbers, dates and words by name
   * @return the sentence
   */
  String say(String key, Map<String, ?> figures) {
    String own = key + "." + audience;
    return fill(words.get(words.has(own) ? own : key), figures);
  }

  private String fill(String text, Map<String, ?> figures) {
    StringBuilder said = new StringBuilder();
    Matcher slot = SLOT.matcher(text);
    int at = 0;
    while (slot.find()) {
      said.append(text, at, slot.start());
      said.append(
          slot.group(3) == null
              ? figure(slot.group(1), slot.group(2), figures)
              : term(slot.group(3), said));
      at = slot.end();
    }
    return said.append(text.substring(at)).toString();
  }

  private String term(String name, CharSequence before) {
    String term = words.get("term." + name + "." + audience);
    boolean begins = before.length() == 0 || before.toString().matches("(?s).*[.?!]\\s+");
    return begins ? Character.toUpperCase(term.charAt(0)) + term.substring(1) : term;
  }

  private String figure(String name, String form, Map<String, ?> figures) {
    Object figure = figures.get(name);
    if (figure instanceof LocalDate date) {
      return date(date);
    } else if (figure instanceof String word) {
      return word;
    } else if (figure instanceof Integer number) {
      return Integer.toString(number);
    } else if (figure instanceof Double number) {
      return form == null ? number(number) : formed(number, form);
    }
    throw new IllegalArgumentException("there is no figure '" + name + "' in " + figures.keySet());
  }

  private String formed(double number, String form) {
    return switch (form) {
      case "%" -> percent(number);
      case "~C" -> temperature(number);
      case "~10" -> tens(number);
      default -> throw new IllegalArgumentException(number + " is no date");
    };
  }

  /** A number to two figures, its thousands set apart as on the axes. */
  static String number(double value) {
    String plain = Numbers.rounded(value, FIGURES);
    double shown = Double.parseDouble(plain);
    return Math.abs(shown) < THOUSAND ? plain : String.format(Locale.ROOT, "%,.0f", shown);
  }

  /** A number in whole tens, for figures that are to add up. */
  static String tens(double value) {
    return String.format(Locale.ROOT, "%,d", 10 * Math.round(value / 10));
  }

  /** A share in percent. */
  String percent(double share) {
    String number = number(share * PERCENT);
    boolean nearlyAll = number.equals("100") && share < 1;
    return firm(fill(words.get("percent"), Map.of("value", nearlyAll ? ">99" : number)));
  }

  /** A temperature in the units of the audience. */
  String temperature(double celsius) {
    String key = units == Units.METRIC ? "temperature.c" : "temperature.f";
    return firm(fill(words.get(key), Map.of("value", number(units.temperature(celsius)))));
  }

  /** A date as day and month, never broken over two lines. */
  String date(LocalDate date) {
    return firm(
        fill(
            words.get("date.day-month"),
            Map.of("day", date.getDayOfMonth(), "month", month(date))));
  }

  private String month(LocalDate date) {
    return words.get("month." + date.getMonthValue());
  }

  private static String firm(String text) {
    return text.replace(' ', FIRM_BLANK);
  }

  /** Name of a method; its id if a user described it. */
  String method(String id) {
    return words.has("method." + id) ? words.get("method." + id) : id;
  }

  /** The place in words, with its hemisphere. */
  String place(Climate climate) {
    boolean own =
        ClimateCatalogue.shipped()
            .find(climate.id())
            .map(shipped -> shipped.hemisphere() == climate.hemisphere())
            .orElse(true);
    String side =
        words.get(
            climate.hemisphere() == Hemisphere.NORTH ? "hemisphere.north" : "hemisphere.south");
    String name =
        words.has("climate." + climate.id())
            ? words.get("climate." + climate.id())
            : climate.description();
    return fill(
        words.get(own ? "place.own" : "place.mirrored"),
        Map.of("climate", name, "hemisphere", side));
  }

  /** Figures of a lesson under one roof. */
  static Map<String, Object> figures(Map<String, Double> numbers, Map<String, LocalDate> dates) {
    Map<String, Object> all = new LinkedHashMap<>(numbers);
    all.putAll(dates);
    return all;
  }
}
