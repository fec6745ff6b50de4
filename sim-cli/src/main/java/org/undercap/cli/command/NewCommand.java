package org.undercap.cli.command;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercap.cli.option.Question;
import org.undercap.cli.option.SaidDate;
import org.undercap.cli.option.ScenarioOptions;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.IfExists;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.UsageException;
import org.undercap.cli.report.NewScenario;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ScenarioReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Asks for the facts of a colony and writes a scenario file. */
@Command(
    name = "new",
    description = {
      "Asks what you saw in your colony, and writes a scenario file with plans to compare.",
      "About a dozen short questions, answered in frames, pounds or cups. What an option answers is"
          + " not asked. Answers may be piped in, one a line; an empty line takes the usual answer"
          + " where the question shows one in brackets. Facts have none: they must be given."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap new",
      "  undercap new north-yard.yaml --bees \"4 lb\" --count \"9 in half a cup, sugar\"",
      "  undercap new --defaults example.yaml"
    })
final class NewCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "The file to write; it must not be there yet (default: ${DEFAULT-VALUE}).",
      defaultValue = "my-colony.yaml")
  private Path file;

  @Option(
      names = "--defaults",
      description =
          "Ask nothing: write an example, marked as such, with the facts that options give.")
  private boolean defaults;

  @Option(
      names = "--name",
      paramLabel = "TEXT",
      description = "Name of the colony (usual: that of the file).")
  private String name;

  @Option(
      names = "--climate",
      paramLabel = "PLACE",
      description = "Climate of the place, or its latitude, as in \"52 N\".")
  private String climate;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "Day of the facts, as in 2026-08-18 or \"18 August 2026\".")
  private String date;

  @Option(names = "--bees", paramLabel = "AMOUNT", description = "As in \"9 frames\" or \"4 lb\".")
  private String bees;

  @Option(
      names = "--brood",
      paramLabel = "AMOUNT",
      description = "As in \"3 frames two thirds full\", \"140 sq in\" or \"none seen\".")
  private String brood;

  @Option(
      names = "--fullness",
      paramLabel = "SHARE",
      description = "How full of brood its frames are, as in \"two thirds\" or \"60 %%\".")
  private String fullness;

  @Option(names = "--frame", paramLabel = "NAME", description = "Type of the frames.")
  private String frame;

  @Option(
      names = "--count",
      paramLabel = "COUNT",
      description = "As in \"11 in 300 bees, alcohol\" or \"56 in 7 days\" (board).")
  private String count;

  @Option(
      names = "--method",
      paramLabel = "WORD",
      description = "How the bees were washed or rolled: alcohol, soap or sugar.")
  private String method;

  @Option(names = "--supers", paramLabel = "WHEN", description = "no, or their last day.")
  private String supers;

  @Option(
      names = "--feeding",
      paramLabel = "WHEN",
      description = "no, a last day, or \"from DATE to DATE\".")
  private String feeding;

  @Option(
      names = "--done",
      paramLabel = "WHAT",
      description = "Treatments of the last year, as in \"thymol-gel on 2026-03-01\".")
  private String done;

  @Option(
      names = "--treatments",
      paramLabel = "LIST",
      description = "What may be used: any, organic, or treatments with commas between.")
  private String treatments;

  @Option(names = "--floor", paramLabel = "WORD", description = "open or closed.")
  private String floor;

  @Option(
      names = "--arrivals",
      paramLabel = "WORD",
      description = "Mites from neighbours: none, low, dense or collapsing.")
  private String arrivals;

  @Option(
      names = "--treat-from",
      paramLabel = "DATE",
      description =
          "First day on which you can treat (usual: in two days, or two after the facts).")
  private String treatFrom;

  @Override
  public Integer call() throws IOException {
    String fileName = String.valueOf(file.getFileName());
    if (fileName.isBlank() || file.getFileName() == null) {
      throw new UsageException("the file to write needs a name, as in my-colony.yaml");
    }
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new UsageException(file + ": exists already; name another file");
    }
    OutputFolder folder = OutputFolder.of(file, IfExists.ERROR);
    folder.prepare(List.of(fileName)).close(); // Before anything is asked.
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    String colony = colonyName(fileName);
    FactQuestions questions =
        new FactQuestions(spec.commandLine().getErr(), today, options(), defaults);
    Scenario facts = questions.ask(answers -> read(facts(colony, answers, List.of())));
    Optional<LocalDate> treatFrom = treatFrom(today);
    if (treatFrom.isEmpty() && NewPlans.mayTreatThenOrNow(facts, today) && !defaults) {
      treatFrom = questions.firstDay(facts, NewPlans.first(facts, today, treatFrom));
    }
    LocalDate first = NewPlans.first(facts, today, treatFrom);
    String text =
        facts(colony, questions.answers(), questions.invented()) + NewScenario.plans(facts, first);
    Scenario scenario = read(text).orThrow();
    PrintWriter err = spec.commandLine().getErr();
    try (OutputFiles files = folder.prepare(List.of(fileName))) {
      files.text(fileName, writer -> writer.write(text));
      files.publish(err);
    }
    err.print(NewPlans.summary(scenario, file, today, first, questions.invented()));
    err.flush();
    return ExitCodes.DONE;
  }

  private Optional<LocalDate> treatFrom(LocalDate today) {
    try {
      return treatFrom == null ? Optional.empty() : Optional.of(SaidDate.parse(treatFrom, today));
    } catch (BadValueException e) {
      throw new UsageException("--treat-from: " + e.getMessage() + "\n" + e.hint());
    }
  }

  private static String facts(
      String colony, Map<Question, String> answers, List<Question> invented) {
    return new NewScenario(answers).facts(colony, invented);
  }

  private Reading<Scenario> read(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    try {
      return ScenarioReader.read(file.toString(), new ByteArrayInputStream(bytes));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The name that was given, or that of the file: my-colony.yaml is My colony. */
  private String colonyName(String fileName) {
    if (name == null) {
      String stem = ScenarioOptions.stem(Path.of(fileName)).replaceAll("[-_\\s]+", " ").strip();
      String plain = stem.replaceAll("[\"\\\\\\p{Cntrl}]", "");
      String begin = defaults ? "Example " : "";
      return plain.isEmpty()
          ? "My colony"
          : begin + plain.substring(0, 1).toUpperCase(Locale.ROOT) + plain.substring(1);
    }
    if (!name.matches("[^\"\\\\\\p{Cntrl}]{1,80}") || name.isBlank()) {
      throw new UsageException(
          "--name: "
              + Quantities.quote(name)
              + " is not accepted\n1 to 80 characters without \" and \\");
    }
    return name.strip();
  }

  private Map<Question, String> options() {
    Map<Question, String> given = new EnumMap<>(Question.class);
    for (Question question : Question.values()) {
      String option = option(question);
      if (option != null) {
        given.put(question, option);
      }
    }
    return given;
  }

  private String option(Question question) {
    return switch (question) {
      case CLIMATE -> climate;
      case DATE -> date;
      case BEES -> bees;
      case BROOD -> brood;
      case FULLNESS -> fullness;
      case FRAME -> frame;
      case COUNT -> count;
      case METHOD -> method;
      case SUPERS -> supers;
      case FEEDING -> feeding;
      case DONE -> done;
      case TREATMENTS -> treatments;
      case FLOOR -> floor;
      case ARRIVALS -> arrivals;
    };
  }
}
