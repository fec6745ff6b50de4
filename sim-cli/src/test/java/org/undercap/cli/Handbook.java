package org.undercap.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.ext.heading.anchor.HeadingAnchorExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;

/**
 * Makes the handbook, a few web pages, of the Markdown in {@code src/handbook}. Lines that begin
 * with {@code @} are filled in by the program:
 *
 * <ul>
 *   <li>{@code @run WORDS}: what {@code undercap WORDS} prints
 *   <li>{@code @finding LESSON}: what the engine finds for a lesson
 *   <li>{@code @section FILE HEADING}: a section of a text at the top of the project
 *   <li>{@code @cards}: the cards of all treatments
 * </ul>
 */
final class Handbook {
  private static final List<Extension> EXTENSIONS =
      List.of(TablesExtension.create(), HeadingAnchorExtension.create());
  static final Parser PARSER = Parser.builder().extensions(EXTENSIONS).build();
  private static final HtmlRenderer RENDERER =
      HtmlRenderer.builder().extensions(EXTENSIONS).softbreak(" ").build();

  private static final String PAGE =
      """
      <!DOCTYPE html>
      <html lang="en">
      <head>
      <meta charset="utf-8"/>
      <meta name="viewport" content="width=device-width, initial-scale=1"/>
      <title>%s</title>
      <style>
      body { margin: 0; color: #000; background: #fff; font: 1.0625rem/1.5 system-ui, "Liberation Sans", "DejaVu Sans", sans-serif; overflow-wrap: break-word; }
      nav, main { max-width: 48rem; margin: 0 auto; padding: 0.75rem 1rem; }
      nav { border-bottom: 2px solid #000; }
      nav a { margin-right: 1rem; }
      pre { overflow-x: auto; background: #f4f4f4; padding: 0.75rem; font-size: 0.8125rem; line-height: 1.4; }
      blockquote { margin: 0 0 0.75rem; border-left: 0.5rem solid #0072b2; padding-left: 1rem; }
      table { display: block; overflow-x: auto; border-collapse: collapse; font-size: 0.875rem; }
      th, td { text-align: left; vertical-align: top; padding: 0.25rem 0.5rem; border-bottom: 1px solid #b0b0b0; }
      </style>
      </head>
      <body>
      <nav><a href="index.html">Handbook</a><a href="adviser.html">Adviser</a><a href="teacher.html">Teacher</a><a href="researcher.html">Researcher</a><a href="questions.html">Questions</a><a href="model-description.html">Model</a></nav>
      <main>
      %s</main>
      </body>
      </html>
      """;

  private Handbook() {}

  /**
   * Writes the pages.
   *
   * @param args the folder of the Markdown and the folder to write to
   */
  public static void main(String[] args) throws IOException {
    Path target = Files.createDirectories(Path.of(args[1]));
    for (Map.Entry<String, String> page : pages(Path.of(args[0])).entrySet()) {
      Files.writeString(target.resolve(page.getKey() + ".html"), page.getValue());
    }
  }

  /** All pages by their names. */
  static Map<String, String> pages(Path folder) throws IOException {
    Map<String, String> pages = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        String name = file.getFileName().toString().replace(".md", "");
        pages.put(name, html(filledIn(Files.readString(file))));
      }
    }
    pages.put("model-description", html(output("describe")));
    pages.put("published-checks", html(output("evidence", "--markdown")));
    return pages;
  }

  static String html(String markdown) {
    Node page = PARSER.parse(markdown);
    page.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Link link) {
            link.setDestination(link.getDestination().replaceFirst("\\.md(?=#|$)", ".html"));
          }
        });
    String title = markdown.lines().findFirst().orElseThrow().substring(2);
    return PAGE.formatted(title, RENDERER.render(page));
  }

  private static String filledIn(String markdown) throws IOException {
    StringBuilder text = new StringBuilder();
    for (String line : markdown.lines().toList()) {
      text.append(line.startsWith("@") ? directive(line.substring(1).split(" ", -1)) : line);
      text.append('\n');
    }
    return text.toString();
  }

  private static String directive(String[] words) throws IOException {
    String[] rest = Stream.of(words).skip(1).toArray(String[]::new);
    return switch (words[0]) {
      case "run" -> block(output(rest));
      case "finding" -> "> The program reckons: " + finding(rest[0]);
      case "section" -> section(rest[0], rest[1]);
      case "cards" ->
          MethodCatalogue.shipped().all().stream()
              .map(Handbook::card)
              .collect(Collectors.joining("\n"));
      default -> throw new IllegalArgumentException("no directive @" + words[0]);
    };
  }

  private static String card(Method method) {
    return "## " + method.id() + "\n\n" + block(output("methods", method.id()));
  }

  private static String block(String text) {
    return "```\n" + text + "```\n";
  }

  private static String finding(String lesson) throws IOException {
    String json = output("lesson", lesson, "--json");
    return new ObjectMapper().readTree(json).at("/lessons/0/finding").asText();
  }

  private static String section(String file, String heading) throws IOException {
    String text = Files.readString(Path.of("..", file));
    int from = text.indexOf("\n## " + heading + "\n");
    int to = text.indexOf("\n## ", from + 1);
    if (from < 0 || to < 0) {
      throw new IllegalArgumentException(file + ": no section " + heading);
    }
    return text.substring(text.indexOf('\n', from + 1), to);
  }

  private static String output(String... words) {
    CliRun run = CliRun.of(words);
    if (run.exitCode() != 0) {
      throw new IllegalStateException(String.join(" ", words) + ": " + run.err());
    }
    return run.out();
  }
}
