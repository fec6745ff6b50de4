package org.undercap.cli.command;

import java.util.Locale;
import java.util.concurrent.Callable;
import org.undercap.cli.manual.Completion;
import org.undercap.cli.output.ExitCodes;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints a script by which a shell completes the words of a command line. */
@Command(
    name = "completion",
    description = {
      "Prints a script by which a shell completes commands and options at the key Tab.",
      "The script holds for this version: make it anew after an update."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap completion bash > ~/.undercap.bash",
      "  undercap completion fish > ~/.config/fish/completions/undercap.fish",
      "Then 'source ~/.undercap.bash' in ~/.bashrc or, for zsh, in ~/.zshrc; fish finds its file by itself."
    })
final class CompletionCommand implements Callable<Integer> {
  /** Shells that are known. */
  enum Shell {
    BASH,
    ZSH,
    FISH;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "SHELL", description = "The shell: ${COMPLETION-CANDIDATES}.")
  private Shell shell;

  @Override
  public Integer call() {
    CommandLine all = spec.root().commandLine();
    spec.commandLine()
        .getOut()
        .print(shell == Shell.FISH ? Completion.fish(all) : Completion.bash(all));
    return ExitCodes.DONE;
  }
}
