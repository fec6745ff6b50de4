package org.undercap.cli.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.UsageException;
import org.undercap.cli.report.HelpTopic;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows the help of a command, or a page on a topic. */
@Command(
    name = "help",
    description = {
      "Shows the help of a command, a page on a topic, or the card of a treatment.",
      "Without a word: all commands."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap help compare",
      "  undercap help topics",
      "  undercap help scenario | less",
      "  undercap help thymol-gel"
    })
final class HelpCommand implements Callable<Integer> {
  private static final String TOPICS = "topics";

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "WORD",
      completionCandidates = Words.class,
      description = "A command, a topic or a treatment; 'topics' lists the topics.")
  private List<String> words = List.of();

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    String name = String.join(" ", words);
    Optional<CommandLine> command = command();
    Optional<TextPage> page = page(name);
    if (command.isEmpty() && page.isEmpty()) {
      throw new UsageException(unknown(name));
    }
    command.ifPresent(found -> found.usage(out, found.getColorScheme()));
    if (command.isPresent() && page.isPresent()) {
      out.print("\n");
    }
    page.ifPresent(found -> out.print(found.render()));
    out.flush();
    return ExitCodes.DONE;
  }

  /** The command that the words lead to; the program itself without words. */
  private Optional<CommandLine> command() {
    CommandLine found = spec.parent().commandLine();
    for (String word : words) {
      found = found.getSubcommands().get(word);
      if (found == null) {
        return Optional.empty();
      }
    }
    return Optional.of(found);
  }

  private Optional<TextPage> page(String name) {
    if (name.equals(TOPICS)) {
      return Optional.of(list());
    }
    return topics().stream()
        .filter(topic -> topic.name().equals(name))
        .findFirst()
        .or(() -> HelpTopic.ofMethod(name))
        .map(topic -> topic.content().get());
  }

  private List<HelpTopic> topics() {
    return HelpTopic.all(spec.root().usageMessage().exitCodeList());
  }

  private TextPage list() {
    TextPage page = new TextPage().title("Topics");
    topics().forEach(topic -> page.fact(topic.name(), topic.about()));
    return page.paragraph("Cards of treatments: " + String.join(", ", HelpTopic.methodNames()))
        .paragraph("Show one: undercap help NAME");
  }

  private String unknown(String name) {
    List<String> known = new ArrayList<>(spec.parent().subcommands().keySet());
    known.add(TOPICS);
    topics().forEach(topic -> known.add(topic.name()));
    known.addAll(HelpTopic.methodNames());
    List<String> near = CatalogueCommand.suggestions(name, known);
    return "no help on '"
        + name
        + "'; "
        + (near.isEmpty()
            ? "'undercap help' lists the commands, 'undercap help topics' the topics"
            : "did you mean " + String.join(" or ", near) + "?");
  }

  private static final class Words implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Stream.concat(
              Stream.concat(
                  RootCommand.names().stream(),
                  HelpTopic.all(Map.of()).stream().map(HelpTopic::name)),
              HelpTopic.methodNames().stream())
          .distinct()
          .iterator();
    }
  }
}
