package org.undercap.cli.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class JsonOutputTest {
  private final StringWriter writer = new StringWriter();

  @Test
  void documentBeginsWithItsFormAndKeepsAllFigures() {
    JsonOutput.write(
        writer,
        "trial",
        3,
        json ->
            json.number("mitesPerDay", 0.1 + 0.2)
                .number("days", 7)
                .number("coolLimitCelsius", OptionalDouble.empty())
                .text("note", "")
                .flag("lost", false)
                .texts("keys", List.of("a \"b\"", "c"))
                .numbers("values", List.of(1.0, Double.POSITIVE_INFINITY))
                .object("inner", inner -> inner.text("word", "gr\u00f6\u00dfer"))
                .list("rows", List.of(1, 2), (row, number) -> row.number("n", number)));
    assertEquals(
        """
        {
          "schema": "undercap-trial",
          "schemaVersion": 3,
          "programVersion": "VERSION",
          "mitesPerDay": 0.30000000000000004,
          "days": 7,
          "lost": false,
          "keys": [ "a \\"b\\"", "c" ],
          "values": [ 1.0, "infinity" ],
          "inner": {
            "word": "gr\u00f6\u00dfer"
          },
          "rows": [ {
            "n": 1
          }, {
            "n": 2
          } ]
        }
        """
            .replace("VERSION", ProgramVersion.text()),
        writer.toString());
  }

  @Test
  void whatIsNoNumberIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> JsonOutput.write(writer, "trial", 1, json -> json.number("x", Double.NaN)));
  }

  @Test
  void documentThatFailsIsNotMadeToLookWhole() {
    assertThrows(
        IllegalStateException.class,
        () ->
            JsonOutput.write(
                writer,
                "trial",
                1,
                json -> {
                  throw new IllegalStateException("bees below zero");
                }));
    assertEquals(-1, writer.toString().indexOf('}'), writer::toString);
  }

  @Test
  void failureToWriteIsPassedOn() {
    Writer full =
        new Writer() {
          @Override
          public void write(char[] text, int from, int length) throws IOException {
            throw new IOException("No space left on device");
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    assertThrows(
        UncheckedIOException.class,
        () -> JsonOutput.write(full, "trial", 1, json -> json.text("x", "y".repeat(100_000))));
  }
}
