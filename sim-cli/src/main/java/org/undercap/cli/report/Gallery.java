package org.undercap.cli.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A page that shows all reports, lesson packs and studies in a folder, with their pictures. It
 * holds nothing but links to the files that lie beside it.
 *
 * @param groups what is shown, by kind
 * @param documents single texts in the folder
 */
public record Gallery(List<Group> groups, List<Link> documents) {
  /** The name of the page in its folder. */
  public static final String PAGE = "index.html";

  /** The page that stands for a folder, and what such folders are called. */
  private static final Map<String, String> KINDS =
      Map.of("answer.html", "Answers", "book.html", "Teaching packs", "fit.html", "Fits");

  private static final List<String> ORDER = List.of("answer.html", "book.html", "fit.html");

  private static final Pattern TITLE = Pattern.compile("<title>(.*?)</title>");
  private static final Pattern SUBTITLE = Pattern.compile("<p class=\"subtitle\">(.*?)</p>");
  private static final Pattern ANSWER =
      Pattern.compile("<section id=\"(?:answer|refusal)\".*?<p>(.*?)</p>", Pattern.DOTALL);

  /**
   * Copies the lists.
   *
   * @param groups what is shown
   * @param documents single texts
   */
  public Gallery {
    groups = List.copyOf(groups);
    documents = List.copyOf(documents);
  }

  /**
   * Folders of one kind.
   *
   * @param heading what they are called
   * @param entries the folders
   */
  public record Group(String heading, List<Entry> entries) {}

  /**
   * A folder.
   *
   * @param title what its page is called
   * @param subtitle place or dates, possibly empty
   * @param text its answer, possibly empty
   * @param page its page
   * @param pictures its pictures
   * @param files its other files
   */
  public record Entry(
      String title,
      String subtitle,
      String text,
      String page,
      List<Link> pictures,
      List<Link> files) {}

  /**
   * A file.
   *
   * @param file its path from the folder of the gallery
   * @param words what it is
   */
  public record Link(String file, String words) {}

  /**
   * Looks through a folder.
   *
   * @param folder the folder
   * @param caption the words for the name of a picture without its ending
   * @return its gallery
   * @throws IOException if it cannot be read
   */
  public static Gallery of(Path folder, UnaryOperator<String> caption) throws IOException {
    List<Group> groups = new ArrayList<>();
    for (String page : ORDER) {
      List<Entry> entries = new ArrayList<>();
      for (Path each : list(folder)) {
        if (Files.isRegularFile(each.resolve(page))) {
          entries.add(entry(each, page, caption));
        }
      }
      if (!entries.isEmpty()) {
        groups.add(new Group(KINDS.get(page), entries));
      }
    }
    List<Link> documents = new ArrayList<>();
    for (Path file : list(folder)) {
      String name = name(file);
      if (name.endsWith(".md") && !name.equals("README.md")) {
        documents.add(new Link(name, heading(file).orElse(name)));
      }
    }
    return new Gallery(groups, documents);
  }

  /**
   * The page.
   *
   * @return a web page that needs only the files beside it
   */
  public String html() {
    return ReportHtml.render("gallery.jte", Map.of("gallery", this));
  }

  private static Entry entry(Path folder, String page, UnaryOperator<String> caption)
      throws IOException {
    String html = Files.readString(folder.resolve(page));
    List<Link> pictures = new ArrayList<>();
    List<Link> files = new ArrayList<>();
    for (Path file : list(folder)) {
      String name = name(file);
      String path = name(folder) + "/" + name;
      if (name.endsWith(".png")) {
        pictures.add(new Link(path, caption.apply(name.substring(0, name.lastIndexOf('.')))));
      } else if (!name.equals(page)) {
        files.add(new Link(path, name));
      }
    }
    return new Entry(
        found(TITLE, html),
        found(SUBTITLE, html),
        found(ANSWER, html),
        name(folder) + "/" + page,
        pictures,
        files);
  }

  private static String found(Pattern pattern, String html) {
    Matcher matcher = pattern.matcher(html);
    return matcher.find() ? plain(matcher.group(1)) : "";
  }

  /** Takes back what our pages escape. */
  private static String plain(String html) {
    return html.replaceAll("<[^>]*>", "")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&#34;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&");
  }

  private static Optional<String> heading(Path markdown) throws IOException {
    try (Stream<String> lines = Files.lines(markdown, StandardCharsets.UTF_8)) {
      return lines.filter(line -> line.startsWith("# ")).map(line -> line.substring(2)).findFirst();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName());
  }

  private static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }
}
