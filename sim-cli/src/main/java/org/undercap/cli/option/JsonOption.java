package org.undercap.cli.option;

import picocli.CommandLine.Option;

/** The option that asks for JSON. */
public final class JsonOption {
  @Option(
      names = "--json",
      description = "Print one JSON document with unrounded numbers, for programs.")
  private boolean json;

  /** Creates the option. */
  public JsonOption() {}

  /**
   * Whether JSON is wanted instead of text.
   *
   * @return true if so
   */
  public boolean wanted() {
    return json;
  }
}
