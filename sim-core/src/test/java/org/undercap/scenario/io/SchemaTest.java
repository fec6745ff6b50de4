package org.undercap.scenario.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.hive.FrameCatalogue;
import org.undercap.hive.FrameType;
import org.undercap.scenario.InputLimit;
import org.undercap.scenario.InputLimits;
import org.undercap.scenario.Problems;

/** The shipped JSON Schema says the same as the reader. */
class SchemaTest {

  private static final JsonNode DOCUMENT = load();
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(DOCUMENT);

  private static JsonNode load() {
    try (InputStream stream = ScenarioReader.class.getResourceAsStream("scenario.schema.json")) {
      return new ObjectMapper().readTree(stream);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  static List<Path> goodFiles() {
    List<Path> files = new ArrayList<>(TestFiles.in(TestFiles.SHIPPED, ".yaml", ".json"));
    files.addAll(TestFiles.in(TestFiles.COMPLETE, ".yaml", ".json"));
    return files;
  }

  @ParameterizedTest
  @MethodSource("goodFiles")
  void goodFilesAreValid(Path file) {
    assertEquals(List.of(), SCHEMA.validate(tree(file)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "counts",
        "dates",
        "dose",
        "missing-everything",
        "missing-required",
        "mistyped-keys",
        "mites-missing",
        "mites-twice",
        "more-numbers",
        "nan",
        "negative",
        "no-values",
        "numbers",
        "own-method",
        "parameters",
        "place-twice",
        "shares",
        "steps",
        "temperatures",
        "threshold",
        "units-missing",
        "unknown-names",
        "version",
        "wrong-shape"
      })
  void brokenFilesAreNot(String name) {
    JsonNode tree = tree(TestFiles.BROKEN.resolve(name + ".yaml"));
    assertFalse(SCHEMA.validate(tree).isEmpty());
  }

  @Test
  void keysAreThoseOfTheReader() {
    SortedSet<String> read = new TreeSet<>();
    ScenarioReader.read(
        TestFiles.COMPLETE.resolve("everything.yaml"),
        (path, key) -> read.add(path.isEmpty() ? key : path + "." + key));
    read.removeIf(key -> key.startsWith("parameters.") || key.startsWith("resistance."));
    SortedSet<String> described = new TreeSet<>();
    schemas(DOCUMENT, "", described, (field, schema) -> {});
    assertEquals(String.join("\n", read), String.join("\n", described));
  }

  @Test
  void limitsAreThoseOfTheReader() {
    List<String> compared = new ArrayList<>();
    schemas(
        DOCUMENT,
        "",
        new TreeSet<>(),
        (field, schema) -> {
          JsonNode bounds = withMinimum(schema);
          if (!bounds.isMissingNode() && hasLimit(field)) {
            InputLimit limit = InputLimits.shipped().get(field);
            assertEquals(limit.low(), bounds.get("minimum").asDouble(), field);
            assertEquals(limit.high(), bounds.get("maximum").asDouble(), field);
            compared.add(field);
          }
        });
    assertTrue(compared.size() >= 25, compared.toString());
  }

  @Test
  void everyKeyIsDescribed() {
    schemas(
        DOCUMENT,
        "",
        new TreeSet<>(),
        (field, schema) -> assertTrue(resolved(schema).has("description"), field));
  }

  @Test
  void namesAreThoseOfTheCatalogues() {
    JsonNode climates = DOCUMENT.at("/$defs/site/properties/climate/enum");
    assertEquals(
        ClimateCatalogue.shipped().all().stream().map(Climate::id).toList(), texts(climates));
    JsonNode frames = DOCUMENT.at("/$defs/colony/properties/frame/enum");
    assertEquals(
        FrameCatalogue.shipped().all().stream().map(FrameType::id).toList(), texts(frames));
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(item -> texts.add(item.asText()));
    return texts;
  }

  private static boolean hasLimit(String field) {
    return InputLimits.shipped().all().stream().anyMatch(it -> it.field().equals(field));
  }

  private static JsonNode withMinimum(JsonNode schema) {
    JsonNode node = resolved(schema);
    for (JsonNode choice : node.path("anyOf")) {
      if (choice.has("minimum")) {
        return choice;
      }
    }
    JsonNode items = node.has("items") ? resolved(node.get("items")) : node;
    return items.has("minimum") ? items : node.path("minimum").path("none");
  }

  @FunctionalInterface
  private interface Visitor {
    void visit(String field, JsonNode schema);
  }

  /** Walks the properties of a schema with their full names, as in messages. */
  private static void schemas(
      JsonNode schema, String path, SortedSet<String> fields, Visitor visitor) {
    JsonNode node = resolved(schema);
    JsonNode group = node.has("items") ? resolved(node.get("items")) : node;
    for (Map.Entry<String, JsonNode> property : group.path("properties").properties()) {
      String field = path.isEmpty() ? property.getKey() : path + "." + property.getKey();
      fields.add(field);
      visitor.visit(field, property.getValue());
      schemas(property.getValue(), field, fields, visitor);
    }
  }

  /** A schema with what it refers to; its own keywords win. */
  private static JsonNode resolved(JsonNode schema) {
    if (!schema.has("$ref")) {
      return schema;
    }
    ObjectNode merged = DOCUMENT.at(schema.get("$ref").asText().substring(1)).deepCopy();
    merged.setAll((ObjectNode) schema.deepCopy());
    merged.remove("$ref");
    return merged;
  }

  /** The file as a validator in an editor sees it. */
  private static JsonNode tree(Path file) {
    try {
      Node node =
          new DocumentParser(file.toString(), new Problems())
              .parse(Files.readString(file))
              .orElseThrow();
      return toJson(node);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static JsonNode toJson(Node node) {
    JsonNodeFactory factory = JsonNodeFactory.instance;
    if (node instanceof Node.Mapping mapping) {
      ObjectNode object = factory.objectNode();
      mapping.entries().forEach((key, entry) -> object.set(key, toJson(entry.value())));
      return object;
    } else if (node instanceof Node.Sequence sequence) {
      ArrayNode array = factory.arrayNode();
      sequence.items().forEach(item -> array.add(toJson(item)));
      return array;
    }
    String text = ((Node.Scalar) node).text();
    if (text.matches("-?(0|[1-9][0-9]*)")) {
      return factory.numberNode(Long.parseLong(text));
    } else if (text.matches("-?(0|[1-9][0-9]*)\\.[0-9]+")) {
      return factory.numberNode(Double.parseDouble(text));
    } else if (text.equals("true") || text.equals("false")) {
      return factory.booleanNode(Boolean.parseBoolean(text));
    }
    return text.isEmpty() ? factory.nullNode() : factory.textNode(text);
  }
}
