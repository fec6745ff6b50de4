package org.undercap.scenario.io;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.undercap.scenario.Place;
import org.undercap.scenario.Problems;
import org.undercap.scenario.Quantities;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * Turns the text of a YAML or JSON file into {@link Node}s. Both formats take the same way, token
 * by token; every value keeps the text that was typed, so nothing is read silently as something
 * else. References, type marks, merge keys, deep nesting and a second document are refused.
 */
final class DocumentParser {

  private static final int DEEPEST = 20;

  private final String name;
  private final Problems problems;
  private final boolean json;

  /**
   * Prepares to parse a file.
   *
   * @param name name of the file; the ending {@code .json} stands for JSON, all else for YAML
   * @param problems takes what is wrong
   */
  DocumentParser(String name, Problems problems) {
    this.name = name;
    this.problems = problems;
    this.json = name.toLowerCase(Locale.ROOT).endsWith(".json");
  }

  /** The content of the file, unless it cannot be parsed to its end. */
  Optional<Node> parse(String text) {
    JsonFactory factory =
        json
            ? JsonFactory.builder().enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS).build()
            : YAMLFactory.builder().build();
    try (JsonParser tokens = factory.createParser(text)) {
      if (tokens.nextToken() == null) {
        problems.add(Place.of(name), "", "the file is empty", "begin with: undercap: 1");
        return Optional.empty();
      }
      Node root = node(tokens, 1);
      if (tokens.nextToken() != null) {
        throw new RefusedException(
            placeOf(tokens),
            "a second document begins here, only one is accepted",
            "put each scenario into a file of its own");
      }
      return Optional.of(root);
    } catch (RefusedException e) {
      problems.add(e.place, "", e.getMessage(), e.hint);
    } catch (JsonProcessingException e) {
      addSyntaxError(e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Optional.empty();
  }

  private Node node(JsonParser tokens, int depth) throws IOException, RefusedException {
    refuseReferences(tokens);
    Place place = placeOf(tokens);
    if (depth > DEEPEST) {
      throw new RefusedException(
          place, "nested deeper than " + DEEPEST + " levels", "is a bracket not closed?");
    }
    return switch (tokens.currentToken()) {
      case START_OBJECT -> mapping(tokens, place, depth);
      case START_ARRAY -> sequence(tokens, place, depth);
      case VALUE_NULL -> new Node.Scalar("", place);
      default -> new Node.Scalar(tokens.getText(), place);
    };
  }

  private Node mapping(JsonParser tokens, Place place, int depth)
      throws IOException, RefusedException {
    Map<String, Node.Entry> entries = new LinkedHashMap<>();
    while (tokens.nextToken() != JsonToken.END_OBJECT) {
      String key = tokens.currentName();
      Place keyPlace = placeOf(tokens);
      if (key.equals("<<") && !json) {
        throw new RefusedException(keyPlace, "merge keys (<<) are not accepted", "write it out");
      }
      tokens.nextToken();
      Node value = node(tokens, depth + 1);
      Node.Entry first = entries.putIfAbsent(key, new Node.Entry(keyPlace, value));
      if (first != null) {
        problems.add(
            keyPlace,
            "",
            "duplicate key "
                + Quantities.quote(key)
                + ", first given on line "
                + first.keyPlace().line(),
            "keep one of them");
      }
    }
    return new Node.Mapping(entries, place);
  }

  private Node sequence(JsonParser tokens, Place place, int depth)
      throws IOException, RefusedException {
    List<Node> items = new ArrayList<>();
    while (tokens.nextToken() != JsonToken.END_ARRAY) {
      items.add(node(tokens, depth + 1));
    }
    return new Node.Sequence(items, place);
  }

  private void refuseReferences(JsonParser tokens) throws IOException, RefusedException {
    if (tokens instanceof YAMLParser yaml && yaml.isCurrentAlias()) {
      throw new RefusedException(
          placeOf(tokens), "references (*) are not accepted", "write the value out");
    }
    if (tokens.getObjectId() != null) {
      throw new RefusedException(
          placeOf(tokens),
          "anchors (&) are not accepted",
          "write each value out; put text that begins with & into quotes");
    }
    if (tokens.getTypeId() != null) {
      throw new RefusedException(
          placeOf(tokens),
          "type marks (!) are not accepted",
          "leave it out; put text that begins with ! into quotes");
    }
  }

  private void addSyntaxError(JsonProcessingException e) {
    Place place = e.getLocation() == null ? Place.of(name) : placeOf(e.getLocation());
    SyntaxError error =
        e.getCause() instanceof MarkedYAMLException marked
            ? SyntaxError.ofYaml(marked, name)
            : SyntaxError.ofJson(e, place);
    problems.add(error.place(), "", error.message(), error.hint());
  }

  private Place placeOf(JsonParser tokens) {
    return placeOf(tokens.currentTokenLocation());
  }

  private Place placeOf(JsonLocation location) {
    return new Place(name, location.getLineNr(), location.getColumnNr());
  }

  /** Ends the walk at something that is refused. */
  private static final class RefusedException extends Exception {
    private static final long serialVersionUID = 1;
    private final transient Place place;
    private final String hint;

    RefusedException(Place place, String message, String hint) {
      super(message);
      this.place = place;
      this.hint = hint;
    }
  }
}
