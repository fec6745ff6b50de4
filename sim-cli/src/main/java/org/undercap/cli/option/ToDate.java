package org.undercap.cli.option;

import java.time.LocalDate;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.Quantities;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a date on the command line as in a scenario file. */
public final class ToDate implements ITypeConverter<LocalDate> {
  /** Creates the converter. */
  public ToDate() {}

  @Override
  public LocalDate convert(String word) {
    try {
      return Quantities.date(word);
    } catch (BadValueException e) {
      String hint = e.hint().isEmpty() ? "" : "; " + e.hint();
      throw new TypeConversionException(e.getMessage() + hint);
    }
  }
}
