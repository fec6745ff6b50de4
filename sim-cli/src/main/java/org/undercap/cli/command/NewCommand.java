package org.undercap.cli.command;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.undercap.cli.option.Question;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.IfExists;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.Terminal;
import org.undercap.cli.output.UsageException;
import org.undercap.cli.report.NewScenario;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ScenarioReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Asks ten questions and writes a scenario file. */
@Command(
    name = "new",
    description = {
      "Asks ten questions and writes a commented scenario file.",
      "What an option answers is not asked. Answers may be piped in, one a line; an empty line"
          + " takes the usual answer."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap new",
      "  undercap new north-yard.yaml --bees \"4 lb\" --count \"9 in half a cup\"",
      "  undercap new --defaults my-colony.yaml"
    })
final class NewCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "The file to write; it must not be there yet (default: ${DEFAULT-VALUE}).",
      defaultValue = "my-colony.yaml")
  private Path file;

  @Option(names = "--defaults", description = "Ask nothing: take the usual answers.")
  private boolean defaults;

  @Option(names = "--name", paramLabel = "TEXT", description = "Name of the colony.")
  private String name;

  @Option(names = "--climate", paramLabel = "ID", description = "Climate of the place.")
  private String climate;

  @Option(names = "--date", paramLabel = "DATE", description = "Day of the facts (usual: today).")
  private String date;

  @Option(names = "--frame", paramLabel = "ID", description = "Type of the frames.")
  private String frame;

  @Option(names = "--bees", paramLabel = "AMOUNT", description = "As in \"9 frames\" or \"4 lb\".")
  private String bees;

  @Option(
      names = "--brood",
      paramLabel = "AMOUNT",
      description = "As in \"3 frames\", \"140 sq in\" or \"none seen\".")
  private String brood;

  @Option(names = "--floor", paramLabel = "WORD", description = "open or closed.")
  private String floor;

  @Option(names = "--supers", paramLabel = "WHEN", description = "off, or their last day.")
  private String supers;

  @Option(
      names = "--count",
      paramLabel = "COUNT",
      description = "As in \"11 in 300 bees\" or \"56 in 7 days\" (board).")
  private String count;

  @Option(
      names = "--arrivals",
      paramLabel = "WORD",
      description = "Mites from neighbours: none, low, dense or collapsing.")
  private String arrivals;

  @Override
  public Integer call() throws IOException {
    String name = String.valueOf(file.getFileName());
    if (name.isBlank() || file.getFileName() == null) {
      throw new UsageException("the file to write needs a name, as in my-colony.yaml");
    }
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new UsageException(file + ": exists already; name another file");
    }
    OutputFolder folder = OutputFolder.of(file, IfExists.ERROR);
    folder.prepare(List.of(name)).close(); // Before ten questions are asked.
    String facts = NewScenario.facts(answers());
    String text = facts + NewScenario.plans(scenario(facts));
    scenario(text);
    PrintWriter err = spec.commandLine().getErr();
    try (OutputFiles files = folder.prepare(List.of(name))) {
      files.text(name, writer -> writer.write(text));
      files.publish(err);
    }
    err.println("next: change the plans in it, then: undercap compare " + file);
    return ExitCodes.DONE;
  }

  private Scenario scenario(String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Reading<Scenario> reading =
        ScenarioReader.read(file.toString(), new ByteArrayInputStream(bytes));
    if (!reading.problems().isEmpty()) {
      throw new InvalidFileException(InvalidFileException.text(reading.problems()));
    }
    return reading.orThrow();
  }

  private Map<Question, String> answers() throws IOException {
    Map<Question, String> given = new EnumMap<>(Question.class);
    for (Question question : Question.values()) {
      String option = option(question);
      if (option != null) {
        refuseUnlessGood(question, option);
        given.put(question, option);
      }
    }
    BufferedReader lines =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    int number = 0;
    for (Question question : Question.values()) {
      number++;
      if (!given.containsKey(question)) {
        given.put(question, defaults ? usual(question) : ask(number, question, lines));
      }
    }
    return given;
  }

  private String ask(int number, Question question, BufferedReader lines) throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    err.println();
    err.println(number + ". " + question.words());
    err.println("   " + question.why());
    while (true) {
      err.print("   [" + usual(question) + "] ");
      err.flush();
      String line = lines.readLine();
      if (line == null) {
        err.println();
        throw new InvalidFileException(
            "standard input: the answers end before question "
                + number
                + " ("
                + question.words()
                + "); an empty line takes the usual answer, --defaults takes all of them; nothing was written");
      }
      if (line.isBlank()) {
        return usual(question);
      }
      try {
        question.check(line.strip());
        return line.strip();
      } catch (BadValueException e) {
        if (!Terminal.onStandardInput()) {
          err.println();
          throw new InvalidFileException(unusable(number, question, e));
        }
        err.println("   " + e.getMessage() + (e.hint().isEmpty() ? "" : ": " + e.hint()));
      }
    }
  }

  /** One line, since it stands below all that was asked. */
  private static String unusable(int number, Question question, BadValueException e) {
    return "answer "
        + number
        + ", \""
        + question.words()
        + "\": "
        + e.getMessage()
        + "; "
        + (e.hint().isEmpty() ? question.why() : e.hint())
        + "; nothing was written";
  }

  private static void refuseUnlessGood(Question question, String answer) {
    try {
      question.check(answer);
    } catch (BadValueException e) {
      throw new UsageException(question.option() + ": " + e.getMessage() + "\n" + e.hint());
    }
  }

  private static String usual(Question question) {
    return question == Question.DATE
        ? LocalDate.now(ZoneId.systemDefault()).toString()
        : question.usual();
  }

  private String option(Question question) {
    return switch (question) {
      case NAME -> name;
      case CLIMATE -> climate;
      case DATE -> date;
      case FRAME -> frame;
      case BEES -> bees;
      case BROOD -> brood;
      case FLOOR -> floor;
      case SUPERS -> supers;
      case COUNT -> count;
      case ARRIVALS -> arrivals;
    };
  }
}
