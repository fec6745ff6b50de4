package org.undercap.cli.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.undercap.cli.chart.ChartText;
import org.undercap.cli.chart.LinePlot;
import org.undercap.cli.chart.Plot;
import org.undercap.cli.chart.TeachingChart;
import org.undercap.lesson.Lesson;

/** Charts without words, questions, and the answers on a page of their own. */
final class Quiz {
  private static final int LETTERS = 26;

  private final LessonPack pack;
  private final Speech speech;

  Quiz(LessonPack pack) {
    this.pack = pack;
    speech = pack.speech();
  }

  QuizPage page() {
    List<QuizPage.Question> questions = new ArrayList<>();
    for (Lesson lesson : asked()) {
      LessonText text = pack.text(lesson);
      String number = speech.say("quiz.number", questions.size() + 1);
      String question = speech.say("quiz." + lesson.id());
      TeachingChart chart = pack.chart(lesson);
      TeachingChart bare =
          new TeachingChart(
              unnamed(chart.plots()),
              new ChartText(number, "", question, speech.say("quiz.hidden"), question),
              pack.style());
      questions.add(
          new QuizPage.Question(
              number,
              Pages.svg(bare, "quiz-" + lesson.id() + "-"),
              answers(chart.plots()),
              text.finding()));
    }
    return new QuizPage(new Headings(speech), questions);
  }

  private List<Lesson> asked() {
    return pack.lessons().stream()
        .filter(lesson -> speech.words().has("quiz." + lesson.id()))
        .toList();
  }

  private String letter(int index) {
    return speech.say("quiz.line", String.valueOf((char) ('A' + index % LETTERS)));
  }

  /** The plots with letters in place of names, the same name by the same letter. */
  private List<Plot> unnamed(List<Plot> plots) {
    List<String> names = names(plots);
    List<Plot> bare = new ArrayList<>();
    for (Plot plot : plots) {
      if (plot instanceof LinePlot lines) {
        bare.add(
            new LinePlot(
                "",
                lines.unit(),
                lines.across(),
                lines.ticks(),
                lines.from(),
                lines.to(),
                lines.bands(),
                lettered(lines.areas(), names),
                lettered(lines.lines(), names),
                lines.ranges(),
                lines.spans().stream()
                    .map(span -> new LinePlot.SpanMark("", span.from(), span.to()))
                    .toList(),
                lines.levels()));
      }
    }
    return bare;
  }

  private List<LinePlot.Line> lettered(List<LinePlot.Line> lines, List<String> names) {
    return lines.stream()
        .map(
            line ->
                new LinePlot.Line(
                    letter(names.indexOf(line.words())), line.look(), line.x(), line.y()))
        .toList();
  }

  private static List<String> names(List<Plot> plots) {
    List<String> names = new ArrayList<>();
    for (Plot plot : plots) {
      if (plot instanceof LinePlot lines) {
        lines.areas().forEach(line -> names.add(line.words()));
        lines.lines().forEach(line -> names.add(line.words()));
      }
    }
    return names.stream().distinct().toList();
  }

  private List<String> answers(List<Plot> plots) {
    List<String> names = names(plots);
    List<String> answers = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      answers.add(speech.say("quiz.key", Map.of("line", letter(i), "name", names.get(i))));
    }
    return answers;
  }
}
