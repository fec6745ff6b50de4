package org.undercap.cli.output;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.core.util.Separators.Spacing;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * One JSON document for programs to read. Numbers are not rounded, keys are in camel case and end
 * with the unit where there is one, as in {@code carrierDays}. What is not known is left out.
 *
 * <p>Every document begins with {@code schema} (what it holds), {@code schemaVersion} (raised when
 * a key changes its meaning or goes away, not when one is added) and {@code programVersion}.
 *
 * <p>JSON has no infinity: an infinite number is written as the text {@code "infinity"}.
 */
public final class JsonOutput {
  private static final String INDENT = "  ";

  private final JsonGenerator generator;

  private JsonOutput(JsonGenerator generator) {
    this.generator = generator;
  }

  /**
   * Writes a document. The writer is flushed but not closed.
   *
   * @param writer takes the document
   * @param schema what the document holds, as in {@code methods}
   * @param schemaVersion version of that form of document
   * @param content writes the keys after the first three
   * @throws UncheckedIOException if writing fails
   */
  public static void write(
      Writer writer, String schema, int schemaVersion, Consumer<JsonOutput> content) {
    try (JsonGenerator generator = generator(writer)) {
      generator.setPrettyPrinter(printer());
      JsonOutput json = new JsonOutput(generator);
      generator.writeStartObject();
      json.text("schema", "undercap-" + schema);
      json.number("schemaVersion", schemaVersion);
      json.text("programVersion", ProgramVersion.text());
      content.accept(json);
      generator.writeEndObject();
      generator.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Writes a text.
   *
   * @param key its key
   * @param value the text; left out if empty
   * @return this document
   */
  public JsonOutput text(String key, String value) {
    return value.isEmpty() ? this : run(() -> generator.writeStringField(key, value));
  }

  /**
   * Writes a whole number.
   *
   * @param key its key, with the unit
   * @param value the number
   * @return this document
   */
  public JsonOutput number(String key, long value) {
    return run(() -> generator.writeNumberField(key, value));
  }

  /**
   * Writes a number with all its figures.
   *
   * @param key its key, with the unit
   * @param value the number; may be infinite
   * @return this document
   * @throws IllegalArgumentException if the value is not a number
   */
  public JsonOutput number(String key, double value) {
    return run(
        () -> {
          generator.writeFieldName(key);
          element(value);
        });
  }

  /**
   * Writes a number if there is one.
   *
   * @param key its key, with the unit
   * @param value the number; left out if empty
   * @return this document
   */
  public JsonOutput number(String key, OptionalDouble value) {
    return value.isPresent() ? number(key, value.getAsDouble()) : this;
  }

  /**
   * Writes yes or no.
   *
   * @param key its key
   * @param value true for yes
   * @return this document
   */
  public JsonOutput flag(String key, boolean value) {
    return run(() -> generator.writeBooleanField(key, value));
  }

  /**
   * Writes a list of numbers with all their figures.
   *
   * @param key its key, with the unit
   * @param values the numbers; may be infinite
   * @return this document
   * @throws IllegalArgumentException if one is not a number
   */
  public JsonOutput numbers(String key, List<Double> values) {
    return run(
        () -> {
          generator.writeArrayFieldStart(key);
          for (double value : values) {
            element(value);
          }
          generator.writeEndArray();
        });
  }

  /**
   * Writes a list of texts.
   *
   * @param key its key
   * @param values the texts
   * @return this document
   */
  public JsonOutput texts(String key, List<String> values) {
    return run(
        () -> {
          generator.writeArrayFieldStart(key);
          for (String value : values) {
            generator.writeString(value);
          }
          generator.writeEndArray();
        });
  }

  /**
   * Writes an object.
   *
   * @param key its key
   * @param content writes the keys of the object
   * @return this document
   */
  public JsonOutput object(String key, Consumer<JsonOutput> content) {
    return run(
        () -> {
          generator.writeObjectFieldStart(key);
          content.accept(this);
          generator.writeEndObject();
        });
  }

  /**
   * Writes a list of objects.
   *
   * @param key its key
   * @param entries the entries
   * @param content writes the keys of the object of one entry
   * @param <T> what an entry is
   * @return this document
   */
  public <T> JsonOutput list(String key, List<T> entries, BiConsumer<JsonOutput, T> content) {
    return run(
        () -> {
          generator.writeArrayFieldStart(key);
          for (T entry : entries) {
            generator.writeStartObject();
            content.accept(this, entry);
            generator.writeEndObject();
          }
          generator.writeEndArray();
        });
  }

  private void element(double value) throws IOException {
    if (Double.isNaN(value)) {
      throw new IllegalArgumentException("value " + value + " must be a number");
    }
    if (Double.isInfinite(value)) {
      generator.writeString(Numbers.exact(value));
    } else {
      generator.writeNumber(value);
    }
  }

  private JsonOutput run(Step step) {
    try {
      step.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return this;
  }

  private static JsonGenerator generator(Writer writer) throws IOException {
    return new JsonFactory()
        .createGenerator(writer)
        .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
        .disable(JsonGenerator.Feature.AUTO_CLOSE_JSON_CONTENT);
  }

  private static DefaultPrettyPrinter printer() {
    Separators separators =
        Separators.createDefaultInstance().withObjectFieldValueSpacing(Spacing.AFTER);
    return new DefaultPrettyPrinter(separators)
        .withObjectIndenter(new DefaultIndenter(INDENT, "\n"));
  }

  @FunctionalInterface
  private interface Step {
    void run() throws IOException;
  }
}
