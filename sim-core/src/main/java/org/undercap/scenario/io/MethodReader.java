package org.undercap.scenario.io;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.undercap.parameter.ParameterSet;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.InputLimits;
import org.undercap.scenario.Lookup;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Written;
import org.undercap.treatment.Caution;
import org.undercap.treatment.CautionCatalogue;
import org.undercap.treatment.EfficacyProfile;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.ProfileText;
import org.undercap.treatment.Release;
import org.undercap.treatment.Response;
import org.undercap.treatment.SideEffects;
import org.undercap.treatment.TemperatureResponse;
import org.undercap.treatment.UsualUse;

/** Reads methods that a user describes, and finds methods by their names. */
final class MethodReader {

  private static final Pattern ID = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)*");
  private static final int LONGEST_TEXT = 400;
  private static final String NO_CLASS = "none";

  private final MethodCatalogue shipped;
  private final ProfileText profiles;
  private final List<Written<Method>> own = new ArrayList<>();

  /**
   * Prepares to read methods.
   *
   * @param parameters values of parameters that profiles name
   */
  MethodReader(ParameterSet parameters) {
    shipped =
        parameters.changed().isEmpty()
            ? MethodCatalogue.shipped()
            : MethodCatalogue.with(parameters);
    profiles = new ProfileText(parameters);
  }

  /** The methods that were read, in the order of the file. */
  List<Written<Method>> own() {
    return own;
  }

  /** A method of the user or of the library. */
  Method find(String id) throws BadValueException {
    return Lookup.find("treatment", id, this::known, ids());
  }

  /** The classes of substances of all methods to which mites can be resistant. */
  Set<String> substanceClasses() {
    Set<String> classes = new LinkedHashSet<>();
    shipped.all().forEach(method -> classes.add(method.substanceClass()));
    own.forEach(written -> classes.add(written.value().substanceClass()));
    classes.remove(NO_CLASS);
    return classes;
  }

  private Optional<Method> known(String id) {
    return own.stream()
        .map(Written::value)
        .filter(method -> method.id().equals(id))
        .findFirst()
        .or(() -> shipped.find(id));
  }

  /** The ids of all methods, the user's own first. */
  List<String> ids() {
    List<String> ids = new ArrayList<>();
    own.forEach(written -> ids.add(written.value().id()));
    shipped.all().forEach(method -> ids.add(method.id()));
    return ids;
  }

  /** Reads one method; it can be found from then on. */
  void read(FieldReader method) {
    method.require("id", "substance", "release", "response");
    Optional<Written<String>> id = method.value("id", this::newId);
    Optional<Written<String>> substance = text(method, "substance");
    Optional<EfficacyProfile> profile = profile(method);
    String substanceClass =
        text(method, "substance-class").or(() -> substance).map(Written::value).orElse("");
    String name = text(method, "name").or(() -> id).map(Written::value).orElse("");
    Details details = details(method, substanceClass);
    method.done();
    if (id.isPresent() && substance.isPresent() && profile.isPresent()) {
      Method made =
          new Method(
              id.get().value(),
              name,
              substance.get().value(),
              substanceClass,
              profile.get(),
              details.humidFactor,
              details.carrierDays,
              UsualUse.ONCE,
              details.cool,
              details.hot,
              details.minutes,
              details.organic,
              details.cautions,
              details.aimsAt,
              details.sources,
              details.note);
      own.add(new Written<>(made, id.get().text(), id.get().place()));
    }
  }

  private Optional<EfficacyProfile> profile(FieldReader method) {
    Optional<Written<Release>> release = method.value("release", this::release);
    Optional<Written<TemperatureResponse>> temperature =
        method.value("temperature", text -> tried(profiles::temperature, text));
    Optional<Written<Response>> response =
        method.value("response", text -> tried(profiles::response, text));
    double inCells = or(0, method.number("in-cells"));
    SideEffects harm =
        new SideEffects(
            or(0, method.value("laying", Quantities::share)),
            or(0, method.number("adults")),
            or(0, method.number("open-brood")));
    if (release.isEmpty() || response.isEmpty()) {
      return Optional.empty();
    }
    TemperatureResponse warmth =
        temperature.map(Written::value).orElseGet(TemperatureResponse.None::new);
    return Optional.of(
        new EfficacyProfile(release.get().value(), warmth, response.get().value(), inCells, harm));
  }

  private Details details(FieldReader method, String substanceClass) {
    Set<String> cautions = new LinkedHashSet<>();
    shipped.all().stream()
        .filter(like -> like.substanceClass().equals(substanceClass))
        .forEach(like -> cautions.addAll(like.cautions()));
    method.values("cautions", MethodReader::caution).forEach(id -> cautions.add(id.value()));
    return new Details(
        or(1, method.number("humid-factor")),
        method.whole("carrier-days", Quantities::days).map(Written::value).orElse(0),
        optional(method.number("cool", Quantities::temperature)),
        optional(method.number("hot", Quantities::temperature)),
        or(0, method.number("minutes")),
        method.flag("organic").map(Written::value).orElse(false),
        List.copyOf(cautions),
        text(method, "aims-at").map(Written::value).orElse(""),
        method.values("sources", MethodReader::source).stream().map(Written::value).toList(),
        text(method, "note").map(Written::value).orElse(""));
  }

  private String newId(String text) throws BadValueException {
    if (!ID.matcher(text).matches()) {
      throw new BadValueException(
          Quantities.quote(text) + " is not a short name",
          "write lower-case letters and digits joined by hyphens, as in thymol-gel");
    }
    if (known(text).isPresent()) {
      throw new BadValueException(
          "there is already a method " + Quantities.quote(text), "choose another id");
    }
    return text;
  }

  private Release release(String text) throws BadValueException {
    Release release = tried(profiles::release, text);
    InputLimits.shipped().get("methods.release").check(release.days());
    return release;
  }

  private static <T> T tried(Function<String, T> parse, String text) throws BadValueException {
    try {
      return parse.apply(text);
    } catch (IllegalArgumentException e) {
      throw new BadValueException(e.getMessage(), "");
    }
  }

  private static String caution(String id) throws BadValueException {
    List<String> ids = CautionCatalogue.shipped().all().stream().map(Caution::id).toList();
    return Lookup.find("caution", id, name -> ids.stream().filter(name::equals).findFirst(), ids);
  }

  private static String source(String key) throws BadValueException {
    return Texts.source(key).key();
  }

  private static Optional<Written<String>> text(FieldReader method, String key) {
    return method.value(key, text -> Texts.text(text, LONGEST_TEXT));
  }

  private static double or(double otherwise, Optional<Written<Double>> given) {
    return given.map(Written::value).orElse(otherwise);
  }

  private static OptionalDouble optional(Optional<Written<Double>> given) {
    return given.isPresent() ? OptionalDouble.of(given.get().value()) : OptionalDouble.empty();
  }

  private record Details(
      double humidFactor,
      int carrierDays,
      OptionalDouble cool,
      OptionalDouble hot,
      double minutes,
      boolean organic,
      List<String> cautions,
      String aimsAt,
      List<String> sources,
      String note) {}
}
