package org.undercap.cli.command;

import org.undercap.cli.output.UsageException;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;

/** Climates that a user names. */
final class Climates {
  private Climates() {}

  static Climate of(String id) {
    try {
      return ClimateCatalogue.shipped().get(id);
    } catch (IllegalArgumentException e) {
      throw new UsageException(e.getMessage());
    }
  }
}
