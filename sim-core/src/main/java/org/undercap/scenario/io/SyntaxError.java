package org.undercap.scenario.io;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.util.List;
import java.util.Locale;
import org.undercap.scenario.Place;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** Puts what a parser says about a broken file into words for people who know no parsers. */
record SyntaxError(Place place, String message, String hint) {

  /** What the parser says, what it means, what to try, and whether the fault lies at the begin. */
  private record Saying(String said, String meaning, String hint, boolean atBegin) {}

  private static final List<Saying> YAML =
      List.of(
          new Saying(
              "(TAB)", "a tab at the begin of a line", "indent with spaces, not with tabs", false),
          new Saying(
              "mapping values are not allowed",
              "a second colon on this line, or wrong indentation",
              "indent the lines of a group equally; put text with a colon into quotes",
              false),
          new Saying(
              "while scanning a quoted scalar",
              "a quotation mark is not closed",
              "the quotation mark here is the first of the pair",
              true),
          new Saying(
              "while parsing a flow",
              "a bracket is not closed, or a comma is missing in it",
              "the bracket here is the first of the pair",
              true),
          new Saying(
              "could not find expected ':'",
              "a key without a colon, or a colon without a space behind it",
              "write key: value",
              true),
          new Saying(
              "while scanning an anchor",
              "text may not begin with this character",
              "put text that begins with & into quotes",
              true),
          new Saying(
              "while scanning an alias",
              "text may not begin with this character",
              "put text that begins with * into quotes",
              true),
          new Saying(
              "cannot start any token",
              "text may not begin with this character",
              "put text that begins with it into quotes",
              false),
          new Saying(
              "expected <block end>",
              "wrong indentation",
              "indent the lines of a group equally",
              false));

  private static final List<Saying> JSON =
      List.of(
          new Saying(
              "maybe a (non-standard) comment",
              "comments are not accepted",
              "name the file .yaml to write comments with #",
              false),
          new Saying(
              "was expecting double-quote to start field name",
              "expected a key in double quotes",
              "is there a comma too many before it?",
              false),
          new Saying(
              "xpected a field name", "a key must be a single word", "write key: value", false),
          new Saying(
              "expected a valid value", "expected a value", "text needs double quotes", false));

  /** A fault in YAML. */
  static SyntaxError ofYaml(MarkedYAMLException e, String file) {
    String said = e.getContext() + "; " + e.getProblem();
    for (Saying known : YAML) {
      if (said.contains(known.said)) {
        boolean begin = known.atBegin && e.getContextMark() != null;
        Mark mark = begin ? e.getContextMark() : e.getProblemMark();
        return new SyntaxError(placeOf(mark, file), "invalid YAML: " + known.meaning, known.hint);
      }
    }
    return new SyntaxError(
        placeOf(e.getProblemMark(), file), "invalid YAML: " + firstLine(e.getProblem()), "");
  }

  /** A fault in JSON, or a fault that the YAML parser tells without a mark. */
  static SyntaxError ofJson(JsonProcessingException e, Place place) {
    if (e instanceof JsonEOFException) {
      return new SyntaxError(
          place, "invalid JSON: the file ends before a bracket or quotation mark is closed", "");
    }
    String said = e.getOriginalMessage();
    for (Saying known : JSON) {
      if (said.contains(known.said)) {
        return new SyntaxError(place, "invalid JSON: " + known.meaning, known.hint);
      }
    }
    return new SyntaxError(place, "invalid file: " + firstLine(said), "");
  }

  private static Place placeOf(Mark mark, String file) {
    return new Place(file, mark.getLine() + 1, mark.getColumn() + 1);
  }

  private static String firstLine(String said) {
    String line = said.lines().findFirst().orElse("");
    return line.isEmpty() ? "" : line.substring(0, 1).toLowerCase(Locale.ROOT) + line.substring(1);
  }
}
