package org.undercap.cli.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.scenario.io.ScenarioReader;

/** Says in words what the schema of scenario files accepts. */
final class SchemaWords {
  private static final String PROPERTIES = "properties";
  private static final JsonNode SCHEMA = read();

  private final TextPage page;

  /** Where each group of keys was described. */
  private final Map<JsonNode, String> described = new LinkedHashMap<>();

  private SchemaWords(TextPage page) {
    this.page = page;
  }

  /** Adds all keys of scenario files to a page. */
  static void addTo(TextPage page) {
    new SchemaWords(page).group("", SCHEMA);
  }

  /** Adds the keys of a part, as in {@code mites}, to a page. */
  static void addPart(TextPage page, String name) {
    new SchemaWords(page).group(name, shape(SCHEMA.path("$defs").path(name)));
  }

  /** What a key is for, as in {@code colony}, {@code bees}. */
  static String meaning(String part, String key) {
    return SCHEMA.at("/$defs/" + part + "/properties/" + key + "/description").asText();
  }

  /** What a kind of value is, as in {@code temperature}. */
  static String kind(String name) {
    return SCHEMA.at("/$defs/" + name + "/description").asText();
  }

  private void group(String path, JsonNode node) {
    described.put(node, path);
    String about = node.path("description").asText();
    if (!path.isEmpty()) {
      page.heading(path);
    }
    if (!about.isEmpty()) {
      page.paragraph(about);
    }
    TextTable table = new TextTable().name("key").text("meaning");
    Map<String, JsonNode> groups = new LinkedHashMap<>();
    node.path(PROPERTIES)
        .properties()
        .forEach(
            entry -> {
              String below = path.isEmpty() ? entry.getKey() : path + "." + entry.getKey();
              JsonNode inner = shape(entry.getValue());
              boolean known = described.containsKey(inner) || groups.containsValue(inner);
              table.row(entry.getKey(), row(node, entry.getKey(), inner));
              if (inner.has(PROPERTIES) && !known) {
                groups.put(below, inner);
              }
            });
    page.table(table);
    groups.forEach(this::unlessKnown);
  }

  private void unlessKnown(String path, JsonNode node) {
    if (!described.containsKey(node)) {
      group(path, node);
    }
  }

  private String row(JsonNode group, String key, JsonNode inner) {
    JsonNode property = group.path(PROPERTIES).path(key);
    JsonNode kind = resolve(property);
    List<String> parts = new ArrayList<>();
    parts.add((property.has("description") ? property : kind).path("description").asText());
    if (isRequired(group, key)) {
      parts.add("Needed.");
    }
    List<String> words = words(kind);
    if (!words.isEmpty()) {
      parts.add("One of: " + String.join(", ", words) + ".");
    }
    String range = range(property, kind);
    if (!range.isEmpty()) {
      parts.add(range);
    }
    if (described.containsKey(inner) && inner.has(PROPERTIES)) {
      parts.add("Keys as in " + described.get(inner) + ".");
    }
    return String.join(" ", parts).strip();
  }

  private static boolean isRequired(JsonNode group, String key) {
    for (JsonNode name : group.path("required")) {
      if (name.asText().equals(key)) {
        return true;
      }
    }
    return false;
  }

  /** The words that a value may be. */
  private static List<String> words(JsonNode kind) {
    List<String> words = new ArrayList<>();
    kind.path("enum").forEach(word -> words.add(word.asText()));
    kind.path("anyOf").forEach(choice -> words.addAll(words(resolve(choice))));
    return words;
  }

  private static String range(JsonNode property, JsonNode kind) {
    JsonNode from = property.has("minimum") ? property : kind;
    JsonNode to = property.has("maximum") ? property : kind;
    return from.has("minimum") && to.has("maximum")
        ? "Accepted: "
            + Numbers.exact(from.path("minimum").asDouble())
            + " to "
            + Numbers.exact(to.path("maximum").asDouble())
            + "."
        : "";
  }

  /** What a value, or an entry of a list, looks like. */
  private static JsonNode shape(JsonNode node) {
    JsonNode kind = resolve(node);
    return kind.has("items") ? shape(kind.path("items")) : kind;
  }

  private static JsonNode resolve(JsonNode node) {
    return node.has("$ref") ? SCHEMA.at(node.path("$ref").asText().substring(1)) : node;
  }

  private static JsonNode read() {
    try (InputStream in = ScenarioReader.class.getResourceAsStream("scenario.schema.json")) {
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
