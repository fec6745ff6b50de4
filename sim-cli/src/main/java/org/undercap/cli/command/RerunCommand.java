package org.undercap.cli.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.undercap.cli.output.Digests;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.ProgramVersion;
import org.undercap.cli.report.ManifestFile;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes results again from their manifest and compares them. */
@Command(
    name = "rerun",
    description = {
      "Makes the files of a manifest again and says whether they are the same, byte for byte.",
      "The files that were read are looked for in the folders given, the working folder and beside"
          + " the manifest. Nothing of the results is changed."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap rerun reports/saltmere-garth/manifest.json --inputs scenarios",
      "  undercap rerun results/manifest.json"
    })
final class RerunCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "MANIFEST", description = "The file manifest.json of the results.")
  private Path file;

  @Option(
      names = "--inputs",
      paramLabel = "DIR",
      description = "A folder with the files that were read; may be given more than once.")
  private List<Path> folders = List.of();

  private final List<String> differences = new ArrayList<>();

  @Override
  public Integer call() {
    ManifestFile manifest = ManifestFile.read(file);
    if (!manifest.programVersion().equals(ProgramVersion.text())) {
      differences.add(
          "program: made with version "
              + manifest.programVersion()
              + ", this is "
              + ProgramVersion.text());
    }
    Optional<List<String>> words = words(manifest);
    words.ifPresent(command -> compare(manifest, command));
    PrintWriter out = spec.commandLine().getOut();
    if (differences.isEmpty()) {
      int count = manifest.outputs().size();
      out.print("the same, byte for byte: " + count + (count == 1 ? " file\n" : " files\n"));
      out.flush();
      return ExitCodes.DONE;
    }
    differences.forEach(line -> out.print(line + "\n"));
    out.flush();
    return ExitCodes.CHECK_SAYS_NO;
  }

  /** The command with the files where they are now; empty if one is not found. */
  private Optional<List<String>> words(ManifestFile manifest) {
    List<String> words = new ArrayList<>(manifest.command());
    boolean found = true;
    for (Map.Entry<String, String> input : manifest.inputs().entrySet()) {
      Optional<Path> place = find(input.getKey(), input.getValue());
      if (place.isEmpty()) {
        found = false;
        differences.add(
            input.getKey() + ": was read, but is not found; name its folder with --inputs");
      } else {
        if (!Digests.of(place.get()).equals(input.getValue())) {
          differences.add(place.get() + ": was read, and has changed since");
        }
        words.replaceAll(word -> replaced(word, input.getKey(), place.get()));
      }
    }
    return found ? Optional.of(words) : Optional.empty();
  }

  private static String replaced(String word, String name, Path place) {
    if (word.equals(name)) {
      return place.toString();
    }
    boolean option = word.startsWith("--") && word.endsWith("=" + name);
    return option ? word.substring(0, word.length() - name.length()) + place : word;
  }

  /** The file as it was read, or else a file of its name. */
  private Optional<Path> find(String name, String sha256) {
    List<Path> places = new ArrayList<>();
    for (Path folder : folders) {
      places.add(folder.resolve(name));
    }
    places.add(Path.of(name));
    places.add(file.resolveSibling(name));
    places.removeIf(place -> !Files.isRegularFile(place));
    return places.stream()
        .filter(place -> Digests.of(place).equals(sha256))
        .findFirst()
        .or(() -> places.stream().findFirst());
  }

  private void compare(ManifestFile manifest, List<String> words) {
    Path folder = null;
    try {
      folder = Files.createTempDirectory("undercap-rerun");
      if (run(words, folder)) {
        for (Map.Entry<String, String> output : manifest.outputs().entrySet()) {
          compare(output.getKey(), output.getValue(), folder.resolve(output.getKey()));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      remove(folder);
    }
  }

  /** Runs the command; false if it failed before it wrote anything. */
  private boolean run(List<String> words, Path folder) throws IOException {
    List<String> all = new ArrayList<>();
    boolean single = false;
    for (String word : words) {
      boolean named =
          word.startsWith(CommandWords.TRACE + "=") || word.startsWith(CommandWords.LEDGER + "=");
      single |= named;
      int value = word.indexOf('=') + 1;
      all.add(named ? word.substring(0, value) + inside(folder, word.substring(value)) : word);
    }
    if (!single) {
      all.add("--out=" + folder);
    }
    CommandLine here = spec.root().commandLine();
    String[] given = all.toArray(String[]::new);
    CommandLine line = new CommandLine(new RootCommand());
    RootCommand.addCommands(line, given);
    StringWriter messages = new StringWriter();
    int exitCode =
        line.setOut(new PrintWriter(new StringWriter()))
            .setErr(new PrintWriter(messages))
            .setParameterExceptionHandler(here.getParameterExceptionHandler())
            .setExecutionExceptionHandler(here.getExecutionExceptionHandler())
            .execute(given);
    try (Stream<Path> files = Files.list(folder)) {
      if (files.findAny().isPresent()) {
        return true;
      }
    }
    differences.add("the command ended with code " + exitCode + ": " + messages);
    return false;
  }

  /** A file of that name in a folder, whatever folder its name leads to. */
  private static Path inside(Path folder, String name) {
    return folder.resolve(String.valueOf(Path.of(name).getFileName()));
  }

  private void compare(String name, String sha256, Path again) throws IOException {
    if (!Files.exists(again)) {
      differences.add(name + ": is not written any more");
    } else if (!Digests.of(again).equals(sha256)) {
      differences.add(name + ": differs" + where(name, sha256, again));
    }
  }

  /** Where the results differ, if those of the manifest are still beside it. */
  private String where(String name, String sha256, Path again) throws IOException {
    Path before = file.resolveSibling(name);
    if (!Files.isRegularFile(before) || !Digests.of(before).equals(sha256)) {
      return "";
    }
    long place = Files.mismatch(before, again);
    long line = 1 + read(before, place).chars().filter(c -> c == '\n').count();
    return " from line " + line + ", byte " + (place + 1);
  }

  private static String read(Path path, long bytes) throws IOException {
    try (InputStream in = Files.newInputStream(path)) {
      return new String(
          in.readNBytes((int) Math.min(bytes, Integer.MAX_VALUE / 2)), StandardCharsets.ISO_8859_1);
    }
  }

  private static void remove(Path folder) {
    if (folder == null) {
      return;
    }
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path path : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
