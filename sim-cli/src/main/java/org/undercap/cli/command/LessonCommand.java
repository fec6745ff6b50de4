package org.undercap.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.undercap.cli.lesson.LessonFiles;
import org.undercap.cli.lesson.LessonPack;
import org.undercap.cli.lesson.LessonPage;
import org.undercap.cli.lesson.Speech;
import org.undercap.cli.option.JsonOption;
import org.undercap.cli.option.LessonOptions;
import org.undercap.cli.option.OutputOptions;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.UsageException;
import org.undercap.lesson.Lesson;
import org.undercap.lesson.LessonPlace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes the pictures and pages of a teaching evening. */
@Command(
    name = "lesson",
    description = "Makes the pictures and pages of an evening on why timing against brood matters.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap lesson list",
      "  undercap lesson four-dates --climate cool-oceanic",
      "  undercap lesson all --climate southern-temperate --paper slide --out evening",
      "  undercap lesson class --counts class.csv --climate central-european",
      "  undercap lesson words > my-language.txt"
    },
    subcommands = {LessonClassCommand.class, LessonWordsCommand.class})
final class LessonCommand implements Callable<Integer> {
  private static final String ALL = "all";
  private static final String LIST = "list";
  private static final Path FOLDER = Path.of("lessons");
  private static final int SCHEMA_VERSION = 1;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "LESSON",
      description = "Names of lessons, 'all' for the whole pack, 'list' to see them (default).")
  private List<String> wanted = List.of();

  @Mixin private LessonOptions options;
  @Mixin private OutputOptions output;
  @Mixin private JsonOption json;

  @Override
  public Integer call() {
    Speech speech = options.speech();
    if (wanted.isEmpty() || wanted.contains(LIST)) {
      list(speech);
      return ExitCodes.DONE;
    }
    List<Lesson> lessons = lessons();
    boolean whole = wanted.contains(ALL);
    LessonFiles files = new LessonFiles(lessons, output.svg(), whole);
    boolean writes = output.folder().isPresent() || (whole && !json.wanted());
    OutputFolder folder = output.folderOr(FOLDER);
    if (writes) {
      files.check(folder);
    }
    LessonPack pack =
        new LessonPack(LessonPlace.in(options.climate()), lessons, speech, options.style());
    print(pack, lessons, speech, whole);
    if (writes) {
      PrintWriter err = spec.commandLine().getErr();
      files.write(pack, folder, err);
      if (whole) {
        err.print("next: open " + folder.path().resolve(LessonFiles.BOOK) + " and print it\n");
      }
      err.flush();
    }
    return ExitCodes.DONE;
  }

  private void list(Speech speech) {
    PrintWriter out = spec.commandLine().getOut();
    if (json.wanted()) {
      JsonOutput.write(out, "lessons", SCHEMA_VERSION, to -> LessonPage.list(to, speech));
    } else {
      out.print(LessonPage.list(speech));
    }
    out.flush();
  }

  private void print(LessonPack pack, List<Lesson> lessons, Speech speech, boolean whole) {
    PrintWriter out = spec.commandLine().getOut();
    if (json.wanted()) {
      JsonOutput.write(
          out,
          "lesson",
          SCHEMA_VERSION,
          to ->
              to.list(
                  "lessons",
                  lessons,
                  (entry, lesson) ->
                      LessonPage.json(entry, pack.text(lesson), pack.result(lesson))));
    } else if (whole) {
      out.print(LessonPage.findings(pack, lessons));
    } else {
      lessons.forEach(lesson -> out.print(LessonPage.text(pack.text(lesson), speech)));
    }
    out.flush();
  }

  private List<Lesson> lessons() {
    if (wanted.contains(ALL)) {
      return List.of(Lesson.values());
    }
    List<Lesson> lessons = new ArrayList<>();
    for (String name : wanted) {
      try {
        Lesson lesson = Lesson.of(name);
        if (!lessons.contains(lesson)) {
          lessons.add(lesson);
        }
      } catch (IllegalArgumentException e) {
        throw new UsageException(e.getMessage());
      }
    }
    return lessons;
  }
}
