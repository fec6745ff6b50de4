package org.undercap.cli.lesson;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.internal.Nearest;
import org.undercap.scenario.Place;
import org.undercap.scenario.Problems;
import org.undercap.scenario.io.FileText;
import org.undercap.treatment.CautionCatalogue;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;

/**
 * All words of the teaching set by key, from {@code words.txt} and, for names of climates and
 * methods and for cautions, from the catalogues. A translation is a file of the same form:
 *
 * <pre>
 * # a remark
 * unit.mites = mites in the colony
 * lesson.one-mite.finding = One mite doubles about every {days} days.
 * </pre>
 */
public final class Words {
  private static final int LARGEST_FILE = 1_000_000;
  private static final Pattern SLOT = Pattern.compile("\\{[^{}]*\\}|\\[[^\\[\\]]*\\]");

  private static final Pattern AUDIENCE = Pattern.compile("\\.(new|practised|vet)$");

  private static final Words SHIPPED = readShipped();

  private final Map<String, String> texts;
  private final int translated;

  private Words(Map<String, String> texts, int translated) {
    this.texts = texts;
    this.translated = translated;
  }

  /**
   * The words of the program.
   *
   * @return in English
   */
  public static Words shipped() {
    return SHIPPED;
  }

  private static Words readShipped() {
    Map<String, String> texts = new LinkedHashMap<>();
    Problems problems = new Problems();
    try (InputStream in = Words.class.getResourceAsStream("words.txt")) {
      if (in == null) {
        throw new IllegalStateException("words.txt is missing from the jar");
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      texts.putAll(read("words.txt", text.lines().toList(), problems, Map.of()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    if (!problems.isEmpty()) {
      throw new IllegalStateException(InvalidFileException.text(problems.all()));
    }
    for (Climate climate : ClimateCatalogue.shipped().all()) {
      texts.put("climate." + climate.id(), climate.description());
    }
    for (Method method : MethodCatalogue.shipped().all()) {
      texts.put("method." + method.id(), method.name());
    }
    CautionCatalogue.shipped()
        .all()
        .forEach(
            caution ->
                texts.put("caution." + caution.id(), caution.title() + ": " + caution.text()));
    return new Words(texts, 0);
  }

  /**
   * The words with those of a translation in their place.
   *
   * @param file the translation
   * @return words of the file, and of the program where the file has none
   * @throws InvalidFileException if a key is unknown or repeated, or a text holds a figure or term
   *     that its original does not hold
   */
  public static Words translated(Path file) {
    String name = file.toString();
    Problems problems = new Problems();
    Map<String, String> own = new LinkedHashMap<>();
    new FileText(name, LARGEST_FILE, problems)
        .read(file)
        .ifPresent(text -> own.putAll(read(name, text.lines().toList(), problems, SHIPPED.texts)));
    if (!problems.isEmpty()) {
      throw new InvalidFileException(InvalidFileException.text(problems.all()));
    }
    Map<String, String> all = new LinkedHashMap<>(SHIPPED.texts);
    all.putAll(own);
    return new Words(all, own.size());
  }

  /** Reads lines; keys and figures must be known if there is an original. */
  private static Map<String, String> read(
      String name, List<String> lines, Problems problems, Map<String, String> original) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (int i = 0; i < lines.size() && !problems.isFull(); i++) {
      String line = lines.get(i).strip();
      if (line.isEmpty() || line.startsWith("#")) {
        continue;
      }
      Place place = new Place(name, i + 1, 1);
      int equals = line.indexOf('=');
      String key = equals < 0 ? "" : line.substring(0, equals).strip();
      String text = line.substring(equals + 1).strip();
      if (key.isEmpty() || text.isEmpty()) {
        problems.add(place, "", "is no line of the form key = text", "");
      } else if (texts.put(key, text) != null) {
        problems.add(place, key, "is there twice", "");
      } else if (!original.isEmpty()) {
        checkAgainst(original, key, text, place, problems);
      }
    }
    return texts;
  }

  private static void checkAgainst(
      Map<String, String> original, String key, String text, Place place, Problems problems) {
    String known = original.getOrDefault(key, original.get(AUDIENCE.matcher(key).replaceFirst("")));
    if (known == null) {
      String near =
          Nearest.to(key, original.keySet())
              .map(word -> "did you mean \"" + word + "\"?")
              .orElse("'undercap lesson words' lists all");
      problems.add(place, key, "is no key of the texts", near);
      return;
    }
    Set<String> slots = slots(text);
    slots.removeAll(slots(known));
    slots.removeIf(slot -> slot.startsWith("[") && original.containsKey(term(slot)));
    if (!slots.isEmpty()) {
      String hint = "the original has " + slots(known);
      problems.add(place, key, "holds " + slots + ", which the original does not hold", hint);
    }
  }

  private static String term(String slot) {
    return "term." + slot.substring(1, slot.length() - 1) + "." + Audience.PRACTISED;
  }

  private static Set<String> slots(String text) {
    Set<String> slots = new TreeSet<>();
    Matcher matcher = SLOT.matcher(text);
    while (matcher.find()) {
      slots.add(matcher.group());
    }
    return slots;
  }

  /**
   * A text.
   *
   * @param key its key
   * @return the text with its slots
   * @throws IllegalArgumentException if there is none
   */
  public String get(String key) {
    String text = texts.get(key);
    if (text == null) {
      throw new IllegalArgumentException("there is no text for '" + key + "'");
    }
    return text;
  }

  /**
   * Whether there is a text.
   *
   * @param key its key
   * @return true if so
   */
  public boolean has(String key) {
    return texts.containsKey(key);
  }

  /**
   * Keys of a group, each without the words after the next point.
   *
   * @param prefix begin of the keys, with a point
   * @return names in the order of the file
   */
  public List<String> names(String prefix) {
    List<String> names = new ArrayList<>();
    for (String key : texts.keySet()) {
      if (key.startsWith(prefix)) {
        String name = key.substring(prefix.length()).replaceFirst("\\..*", "");
        if (!names.contains(name)) {
          names.add(name);
        }
      }
    }
    return names;
  }

  /**
   * How many texts a translation replaces.
   *
   * @return 0 for the words of the program
   */
  public int translatedCount() {
    return translated;
  }

  /**
   * How many texts there are.
   *
   * @return number of keys
   */
  public int count() {
    return texts.size();
  }

  /**
   * All texts as a file, to be translated.
   *
   * @return lines {@code key = text}
   */
  public String asFile() {
    StringBuilder file = new StringBuilder();
    texts.forEach((key, text) -> file.append(key).append(" = ").append(text).append('\n'));
    return file.toString();
  }
}
