package org.undercap.scenario.io;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What every key of a scenario file means, in words: those of the shipped JSON Schema. */
public final class ScenarioKeys {

  /**
   * A key.
   *
   * @param path its full name, as in {@code colony.bees}
   * @param depth how many keys stand above it
   * @param description what it means, possibly empty
   * @param required whether it must be given where its group is given
   * @param words the words that are accepted, where only those are
   */
  public record Key(
      String path, int depth, String description, boolean required, List<String> words) {}

  private static final JsonNode DOCUMENT = load();

  private ScenarioKeys() {}

  /**
   * All keys in the order of the schema, each above those of its group.
   *
   * @return an unmodifiable list
   */
  public static List<Key> all() {
    List<Key> keys = new ArrayList<>();
    add(DOCUMENT, "", 0, keys);
    return List.copyOf(keys);
  }

  /** What a key means, if it is one. */
  static Optional<Key> find(String path) {
    return all().stream().filter(key -> key.path().equals(path)).findFirst();
  }

  private static void add(JsonNode schema, String path, int depth, List<Key> keys) {
    JsonNode group = resolved(schema);
    group = group.has("items") ? resolved(group.get("items")) : group;
    List<String> required = texts(group.path("required"));
    for (Map.Entry<String, JsonNode> property : group.path("properties").properties()) {
      String name = property.getKey();
      String full = path.isEmpty() ? name : path + "." + name;
      JsonNode own = property.getValue();
      JsonNode said = own.has("description") ? own : resolved(own);
      keys.add(
          new Key(
              full,
              depth,
              said.path("description").asText(),
              required.contains(name),
              texts(own.path("enum"))));
      add(own, full, depth + 1, keys);
    }
  }

  private static JsonNode resolved(JsonNode schema) {
    return schema.has("$ref") ? DOCUMENT.at(schema.get("$ref").asText().substring(1)) : schema;
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(item -> texts.add(item.asText()));
    return List.copyOf(texts);
  }

  private static JsonNode load() {
    try (InputStream stream = ScenarioReader.class.getResourceAsStream("scenario.schema.json")) {
      return new ObjectMapper().readTree(stream);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
