package org.undercap.cli.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.undercap.cli.option.Question;
import org.undercap.cli.option.SaidDate;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.cli.output.Terminal;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.UsageException;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.Problem;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;

/** Asks the questions of {@code undercap new}: of a person, of lines that are piped in, or none. */
final class FactQuestions {
  private static final int INDENT = 3;
  private static final String NOTHING_WRITTEN = "; nothing was written";

  private final PrintWriter err;
  private final LocalDate today;
  private final Map<Question, String> options;
  private final boolean examples;
  private final Map<Question, String> answers = new EnumMap<>(Question.class);
  private final List<Question> invented = new ArrayList<>();
  private final BufferedReader lines =
      new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
  private int number;

  /**
   * Prepares to ask.
   *
   * @param err takes the questions
   * @param today the day on which they are asked
   * @param options answers given on the command line
   * @param examples whether nothing is asked and examples are taken for facts
   */
  FactQuestions(PrintWriter err, LocalDate today, Map<Question, String> options, boolean examples) {
    this.err = err;
    this.today = today;
    this.options = options;
    this.examples = examples;
  }

  /** The answers. */
  Map<Question, String> answers() {
    return answers;
  }

  /** Facts that are examples and not the user's own. */
  List<Question> invented() {
    return invented;
  }

  /**
   * Asks until the answers fit together.
   *
   * @param reader reads the answers as a scenario
   * @return the scenario
   */
  Scenario ask(Function<Map<Question, String>, Reading<Scenario>> reader) throws IOException {
    for (Map.Entry<Question, String> option : options.entrySet()) {
      option.setValue(fromOption(option.getKey(), option.getValue()));
    }
    askAll();
    Reading<Scenario> reading = reader.apply(answers);
    while (!reading.problems().isEmpty()) {
      askAgain(reading.problems().get(0));
      reading = reader.apply(answers);
    }
    return reading.orThrow();
  }

  /**
   * Asks a person from which day on plans may treat, where the facts are old.
   *
   * @param facts the scenario; the day must lie in its run
   * @param usual the answer if none is given
   * @return the day; empty where nobody can be asked
   */
  Optional<LocalDate> firstDay(Scenario facts, LocalDate usual) throws IOException {
    if (!Terminal.onStandardInput()) {
      return Optional.empty();
    }
    err.println();
    err.println(++number + ". From which day on can you treat?");
    err.println("   The facts are old. To study what could have been done, a day soon after them.");
    while (true) {
      err.print("   [" + usual + "] ");
      err.flush();
      String line = lines.readLine();
      if (line == null || line.isBlank()) {
        return Optional.of(usual);
      }
      try {
        LocalDate day = SaidDate.parse(line.strip(), today);
        NewPlans.checkFirst(facts, day);
        return Optional.of(day);
      } catch (BadValueException e) {
        err.print(TextPage.indented(said(e.getMessage(), e.hint()), INDENT));
      }
    }
  }

  private void askAll() throws IOException {
    for (Question question : Question.values()) {
      boolean applies = question.applies(answers);
      String option = options.get(question);
      if (option != null && !applies && question != Question.FRAME) {
        throw new UsageException(
            question.option() + ": nothing to say with the other answers; leave it out");
      }
      if (option != null) {
        answers.put(question, option);
      } else if (applies && !answers.containsKey(question)) {
        answers.put(question, examples ? example(question) : ask(question));
      }
      if (question == Question.COUNT) {
        doubt(answers.get(question));
      }
    }
  }

  private String example(Question question) {
    if (question.usual().isPresent()) {
      return question.usual().get();
    }
    invented.add(question);
    return fromOption(question, question.example());
  }

  private String fromOption(Question question, String answer) {
    try {
      return question.read(answer, today);
    } catch (BadValueException e) {
      throw new UsageException(question.option() + ": " + e.getMessage() + "\n" + e.hint());
    }
  }

  private void doubt(String count) {
    Question.counted(count)
        .doubt()
        .ifPresent(words -> err.print(TextPage.indented("warning: " + words, INDENT)));
  }

  private String ask(Question question) throws IOException {
    number += question.isFollowUp() ? 0 : 1;
    err.println();
    err.println(number + (question.isFollowUp() ? "b. " : ". ") + question.words());
    err.println("   " + question.why());
    question.choices().forEach(choice -> err.println("     " + choice));
    while (true) {
      err.print("   " + question.usual().map(usual -> "[" + usual + "] ").orElse("> "));
      err.flush();
      String line = next(question);
      try {
        return read(question, line);
      } catch (BadValueException e) {
        if (!Terminal.onStandardInput()) {
          throw new InvalidFileException(unusable(question, e.getMessage(), e.hint()));
        }
        err.print(TextPage.indented(said(e.getMessage(), e.hint()), INDENT));
      }
    }
  }

  private String read(Question question, String line) throws BadValueException {
    if (!line.isBlank()) {
      return question.read(line, today);
    }
    Optional<String> usual = question.usual();
    if (usual.isEmpty()) {
      throw new BadValueException("this must be answered", accepted(question));
    }
    return usual.get();
  }

  private String next(Question question) throws IOException {
    String line = lines.readLine();
    if (line == null) {
      err.println();
      throw new InvalidFileException(
          "standard input: the answers end before \""
              + question.words()
              + "\"; "
              + accepted(question)
              + NOTHING_WRITTEN);
    }
    if (!Terminal.onStandardInput()) {
      err.println(line.strip());
    }
    return line;
  }

  /** Answers that do not fit together are asked for once more, of a person. */
  private void askAgain(Problem problem) throws IOException {
    Optional<Question> found = Question.of(problem.field());
    if (found.isEmpty()) {
      throw new InvalidFileException(said(problem.message(), problem.hint()) + NOTHING_WRITTEN);
    }
    Question question = found.get();
    if (options.containsKey(question)) {
      throw new UsageException(
          question.option() + ": " + problem.message() + "\n" + problem.hint());
    }
    if (examples || !Terminal.onStandardInput()) {
      throw new InvalidFileException(unusable(question, problem.message(), problem.hint()));
    }
    err.println();
    err.print(TextPage.indented(said(problem.message(), problem.hint()), INDENT));
    answers.remove(question);
    if (question == Question.BROOD) {
      answers.remove(Question.FULLNESS);
      answers.remove(Question.BEES); // Brood is held against bees: either may be the slip.
    } else if (question == Question.COUNT) {
      answers.remove(Question.METHOD);
    }
    askAll();
  }

  /** What is accepted, without the colon that leads to a list. */
  private static String accepted(Question question) {
    return question.why().replaceFirst(":$", "");
  }

  private static String said(String message, String hint) {
    return message + (hint.isEmpty() ? "" : "; " + hint);
  }

  /** One line, since it stands below all that was asked. */
  private static String unusable(Question question, String message, String hint) {
    return "answer to \""
        + question.words()
        + "\": "
        + said(message, hint.isEmpty() ? accepted(question) : hint)
        + NOTHING_WRITTEN;
  }
}
