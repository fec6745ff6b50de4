package org.undercap.treatment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.undercap.internal.Catalogue;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;
import org.undercap.parameter.ParameterSet;

/** The methods that ship with the library, from {@code methods.csv}. */
public final class MethodCatalogue {
  private static final MethodCatalogue SHIPPED = with(ParameterSet.shipped());
  private static final Set<String> FILLERS = Set.of("", "acid", "and", "or");

  /** What keepers also call a way of treating; common practice, no source. */
  private static final Map<String, String> ALSO =
      Map.of(
          "vapor", "vapour",
          "vaporisation", "vapour",
          "vaporization", "vapour",
          "trickle", "dribble",
          "trickling", "dribble");

  private final Catalogue<Method> methods;

  private MethodCatalogue(Catalogue<Method> methods) {
    this.methods = methods;
  }

  /**
   * The methods with the shipped parameters.
   *
   * @return the catalogue
   */
  public static MethodCatalogue shipped() {
    return SHIPPED;
  }

  /**
   * The methods with other parameters, where their profiles name parameters.
   *
   * @param parameters vapour pressures, half effect of thymol, temperature of the brood nest
   * @return the catalogue
   */
  public static MethodCatalogue with(ParameterSet parameters) {
    return of(CsvResource.read(MethodCatalogue.class, "methods.csv"), parameters);
  }

  /** Makes a catalogue from rows; open to tests that add some. */
  static MethodCatalogue of(List<CsvRow> rows, ParameterSet parameters) {
    return new MethodCatalogue(
        Catalogue.of("treatment", rows, "id", row -> method(row, new ProfileText(parameters))));
  }

  private static Method method(CsvRow row, ProfileText text) {
    EfficacyProfile profile =
        new EfficacyProfile(
            text.release(row.required("release")),
            text.temperature(row.required("temperature")),
            text.response(row.required("response")),
            row.number("in_cells"),
            new SideEffects(row.number("laying"), row.number("adults"), row.number("open_brood")));
    return new Method(
        row.required("id"),
        row.required("name"),
        row.required("substance"),
        row.required("substance_class"),
        profile,
        row.number("humid_factor"),
        (int) row.number("carrier_days"),
        usual(row),
        optional(row, "cool_c"),
        optional(row, "hot_c"),
        row.number("minutes"),
        "yes".equals(row.required("organic")),
        row.parts("cautions").stream().map(id -> CautionCatalogue.shipped().get(id).id()).toList(),
        row.required("aims_at"),
        row.parts("sources"),
        row.text("note"));
  }

  private static UsualUse usual(CsvRow row) {
    return new UsualUse(
        new Course((int) row.number("usual_times"), (int) row.number("usual_every_days")),
        new Course((int) row.number("brood_times"), (int) row.number("brood_every_days")),
        (int) row.number("usual_courses"));
  }

  private static OptionalDouble optional(CsvRow row, String column) {
    return row.text(column).isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(row.number(column));
  }

  /**
   * A method by its id.
   *
   * @param id as in {@code thymol-gel}
   * @return the method
   * @throws IllegalArgumentException if there is none; the message lists the ids and the nearest
   */
  public Method get(String id) {
    return methods.get(id);
  }

  /**
   * A method by its id, if there is one.
   *
   * @param id as in {@code thymol-gel}
   * @return the method
   */
  public Optional<Method> find(String id) {
    return methods.find(id);
  }

  /**
   * The methods that a keeper may mean by words of the trade, as in {@code oxalic vapour} or {@code
   * thymol}.
   *
   * @param said as typed; case, order, hyphens and the word acid do not matter
   * @return the methods that have all these words in their id, name or substance, in the order of
   *     the table; none if nothing was said
   */
  public List<Method> meant(String said) {
    Set<String> words = words(said);
    return all().stream()
        .filter(method -> !words.isEmpty())
        .filter(
            method ->
                words(method.id() + ' ' + method.name() + ' ' + method.substance())
                    .containsAll(words))
        .toList();
  }

  private static Set<String> words(String text) {
    return Stream.of(text.toLowerCase(Locale.ROOT).split("[^a-z]+"))
        .filter(word -> !FILLERS.contains(word))
        .map(word -> ALSO.getOrDefault(word, word))
        .map(word -> word.replaceFirst("s$", ""))
        .collect(Collectors.toSet());
  }

  /**
   * All methods.
   *
   * @return in the order of the table
   */
  public List<Method> all() {
    return methods.all();
  }
}
