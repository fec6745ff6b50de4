package org.undercap.scenario.io;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.Hemisphere;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.Lookup;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Written;
import org.undercap.scenario.WrittenSite;

/** Reads the place of a scenario. */
final class SiteReader {

  private static final Pattern LETTERED =
      Pattern.compile("([0-9]+(?:\\.[0-9]+)?)\\s*\u00b0?\\s*([NSns]|north|south|North|South)");

  private SiteReader() {}

  static WrittenSite read(FieldReader site, ValueParser<SortedMap<LocalDate, Double>> daily) {
    Optional<Written<Climate>> climate = site.value("climate", SiteReader::climate);
    Optional<Written<Double>> latitude = site.number("latitude", SiteReader::latitude);
    if (!site.has("climate") && !site.has("latitude")) {
      site.refuse(
          "needs climate or latitude",
          "climate: one of " + String.join(", ", climates()) + "; or latitude: degrees north");
    } else if (site.has("climate") && site.has("latitude")) {
      site.refuse("latitude", "is given beside climate", "keep one of them");
    }
    WrittenSite written =
        new WrittenSite(
            site.place(),
            climate,
            latitude,
            site.value("hemisphere", SiteReader::hemisphere),
            site.months("monthly-temperatures", Quantities::temperature),
            site.value("daily-temperatures", daily),
            site.months("eggs-per-day", Quantities::number),
            site.months("drone-share", Quantities::share),
            site.flag("humid"));
    site.done();
    return written;
  }

  private static double latitude(String text) throws BadValueException {
    Matcher lettered = LETTERED.matcher(text);
    if (lettered.matches()) {
      boolean south = lettered.group(2).toLowerCase(Locale.ROOT).startsWith("s");
      throw new BadValueException(
          Quantities.quote(text) + " is not a plain number",
          "write "
              + (south ? "-" : "")
              + lettered.group(1)
              + "; northern latitudes are plain, southern ones negative");
    }
    return Quantities.number(text);
  }

  private static Climate climate(String text) throws BadValueException {
    return Lookup.find("climate", text, ClimateCatalogue.shipped()::find, climates());
  }

  private static List<String> climates() {
    return ClimateCatalogue.shipped().all().stream().map(Climate::id).toList();
  }

  private static Hemisphere hemisphere(String text) throws BadValueException {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "north", "northern" -> Hemisphere.NORTH;
      case "south", "southern" -> Hemisphere.SOUTH;
      default ->
          throw new BadValueException(
              Quantities.quote(text) + " is not accepted: write north or south", "");
    };
  }
}
