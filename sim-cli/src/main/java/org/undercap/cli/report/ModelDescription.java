package org.undercap.cli.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.ParameterWords;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;

/**
 * The model described in the order of the ODD protocol. The text is the resource {@code
 * model-description.md}; the values in it come from the catalogues:
 *
 * <ul>
 *   <li>{@code {ID}}: the values of a parameter; {@code {ID.2}}: its second value
 *   <li>{@code {count:climates}}: number of shipped climates; {@code {kinds}}: what the kinds of
 *       parameters mean
 *   <li>a line {@code @parameters PART ...}: a table of the parameters of these names, or of names
 *       that begin with them
 *   <li>lines {@code @climates}, {@code @arrivals}, {@code @treatments}: a table of all of them
 *   <li>a line {@code @sources}: all sources that the page names
 * </ul>
 */
public final class ModelDescription {
  private static final String TEXT = "model-description.md";
  private static final Pattern PLACE = Pattern.compile("\\{([^{}]*)}");
  private static final Pattern INDEXED = Pattern.compile("(.+)\\.(\\d+)");
  private static final Pattern SOURCE = Pattern.compile("\\b[a-z]+(?:-[a-z]+)*-\\d{4}[a-z]?\\b");
  private static final String TABLE_OF_PARAMETERS = "@parameters ";

  private final Set<String> sources = new TreeSet<>();
  private final Set<Parameter> shown = new LinkedHashSet<>();

  private ModelDescription() {}

  /**
   * The page.
   *
   * @return Markdown
   * @throws IllegalStateException if the text names what does not exist, or if a parameter stands
   *     in no table or in two
   */
  public static String markdown() {
    return new ModelDescription().render(text());
  }

  private static String text() {
    try (InputStream in = ModelDescription.class.getResourceAsStream(TEXT)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Fills in a text; open to tests of defective ones. */
  static String of(String text) {
    return new ModelDescription().render(text);
  }

  private String render(String text) {
    StringBuilder page = new StringBuilder();
    text.lines().forEach(line -> page.append(line(line)).append('\n'));
    List<String> left =
        ParameterCatalogue.shipped().all().stream()
            .filter(parameter -> !shown.contains(parameter))
            .map(parameter -> parameter.id().id())
            .toList();
    if (!left.isEmpty()) {
      throw new IllegalStateException(TEXT + ": no table shows " + String.join(", ", left));
    }
    return page.toString();
  }

  private String line(String line) {
    SOURCE.matcher(line).results().map(MatchResult::group).forEach(sources::add);
    if (line.startsWith(TABLE_OF_PARAMETERS)) {
      return parameters(List.of(line.substring(TABLE_OF_PARAMETERS.length()).split(" ")));
    }
    if (line.startsWith("@")) {
      return table(line);
    }
    Matcher places = PLACE.matcher(line);
    return places.replaceAll(place -> Matcher.quoteReplacement(value(place.group(1))));
  }

  private String table(String line) {
    return switch (line) {
      case "@climates" -> ModelTables.climates();
      case "@arrivals" -> ModelTables.arrivals(sources);
      case "@treatments" -> ModelTables.treatments(sources);
      case "@sources" -> ModelTables.sources(sources);
      default -> throw new IllegalStateException(TEXT + ": unknown line '" + line + "'");
    };
  }

  private String parameters(List<String> parts) {
    List<Parameter> wanted =
        parts.stream().flatMap(part -> named(part).stream()).distinct().toList();
    for (Parameter parameter : wanted) {
      if (!shown.add(parameter)) {
        throw new IllegalStateException(TEXT + ": two tables show " + parameter.id().id());
      }
      sources.addAll(parameter.sourceKeys());
    }
    return ModelTables.parameters(wanted);
  }

  private static List<Parameter> named(String part) {
    List<Parameter> found =
        ParameterCatalogue.shipped().all().stream()
            .filter(p -> p.id().id().equals(part) || p.id().id().startsWith(part + "."))
            .toList();
    if (found.isEmpty()) {
      throw new IllegalStateException(TEXT + ": no parameter is named " + part);
    }
    return found;
  }

  private static String value(String name) {
    if (name.equals("count:climates")) {
      return Integer.toString(ClimateCatalogue.shipped().all().size());
    } else if (name.equals("kinds")) {
      return ParameterWords.kinds();
    }
    ParameterCatalogue catalogue = ParameterCatalogue.shipped();
    Matcher indexed = INDEXED.matcher(name);
    if (indexed.matches()) {
      int place = Integer.parseInt(indexed.group(2)) - 1;
      return Numbers.exact(parameter(catalogue, indexed.group(1)).values().get(place));
    }
    return Numbers.exact(parameter(catalogue, name).values());
  }

  private static Parameter parameter(ParameterCatalogue catalogue, String name) {
    return catalogue
        .find(name)
        .orElseThrow(() -> new IllegalStateException(TEXT + ": no parameter is named " + name));
  }
}
