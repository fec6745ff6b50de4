package org.undercap.cli.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.undercap.cli.lesson.Words;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.IfExists;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.UsageException;
import org.undercap.cli.report.Gallery;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a page that shows all reports in a folder. */
@Command(
    name = "gallery",
    description = {
      "Makes a page that shows the answers, lesson packs and fits in a folder, with their pictures:"
          + " "
          + Gallery.PAGE
          + " in that folder.",
      "Its links are relative, so the folder can be copied or put on a web site as it is."
    },
    footerHeading = "%nExamples:%n",
    footer = "  undercap gallery reports")
final class GalleryCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FOLDER", description = "A folder whose folders hold results.")
  private Path folder;

  @Override
  public Integer call() throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new UsageException(folder + ": not a folder");
    }
    Gallery gallery = Gallery.of(folder, GalleryCommand::caption);
    if (gallery.groups().isEmpty()) {
      throw new UsageException(
          folder
              + ": no folder in it holds an answer, a lesson pack or a fit; make them with --out");
    }
    OutputFolder target = new OutputFolder(folder, IfExists.OVERWRITE);
    try (OutputFiles files = target.prepare(List.of(Gallery.PAGE))) {
      files.text(Gallery.PAGE, writer -> writer.write(gallery.html()));
      files.publish(spec.commandLine().getErr());
    }
    spec.commandLine().getErr().flush();
    return ExitCodes.DONE;
  }

  /** Pictures of lessons have their title, others their name. */
  private static String caption(String picture) {
    String key = "lesson." + picture + ".title";
    return Words.shipped().has(key) ? Words.shipped().get(key) : picture.replace('-', ' ');
  }
}
