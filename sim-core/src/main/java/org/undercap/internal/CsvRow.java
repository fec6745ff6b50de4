package org.undercap.internal;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One row of a {@link CsvResource}: fields by column name, and messages that name file and line.
 *
 * @param file name of the table
 * @param line line on which the row begins (from 1)
 * @param header names of the columns
 * @param fields the fields in the order of the columns
 */
public record CsvRow(String file, int line, List<String> header, List<String> fields) {

  /**
   * The text of a field.
   *
   * @param column name of the column
   * @return the text, possibly empty
   * @throws IllegalStateException if the table has no such column
   */
  public String text(String column) {
    int index = header.indexOf(column);
    if (index < 0) {
      throw defect("no column " + column);
    }
    return fields.get(index);
  }

  /**
   * The text of a field that must not be empty.
   *
   * @param column name of the column
   * @return the text
   * @throws IllegalStateException if the field is empty or the column is missing
   */
  public String required(String column) {
    String text = text(column);
    if (text.isEmpty()) {
      throw defect(column + " is empty");
    }
    return text;
  }

  /**
   * The parts of a field, which are separated by semicolons.
   *
   * @param column name of the column
   * @return the parts without blanks around them; none if the field is empty
   * @throws IllegalStateException if a part is empty or the column is missing
   */
  public List<String> parts(String column) {
    String text = text(column);
    if (text.isEmpty()) {
      return List.of();
    }
    List<String> parts = Arrays.stream(text.split(";", -1)).map(String::trim).toList();
    if (parts.contains("")) {
      throw defect(column + " has an empty part: " + text);
    }
    return parts;
  }

  /**
   * A finite number.
   *
   * @param column name of the column
   * @return the number
   * @throws IllegalStateException if the field is no finite number or the column is missing
   */
  public double number(String column) {
    double number = toNumber(column, required(column));
    if (!Double.isFinite(number)) {
      throw defect(column + " is not finite");
    }
    return number;
  }

  /**
   * Numbers separated by semicolons; the word {@code infinity} stands for positive infinity.
   *
   * @param column name of the column
   * @return the numbers; none if the field is empty
   * @throws IllegalStateException if a part is no number or the column is missing
   */
  public List<Double> numbers(String column) {
    return parts(column).stream().map(part -> toNumber(column, part)).toList();
  }

  /**
   * The finite numbers of twelve columns, January to December.
   *
   * @param prefix what stands before the number of the month in the names of the columns
   * @return twelve numbers
   * @throws IllegalStateException if a field is no finite number or a column is missing
   */
  public List<Double> months(String prefix) {
    return IntStream.rangeClosed(1, 12).mapToObj(month -> number(prefix + month)).toList();
  }

  /**
   * A mistake in this row.
   *
   * @param what what is wrong
   * @return an exception to throw, which names file and line
   */
  public IllegalStateException defect(String what) {
    return new IllegalStateException(file + ":" + line + ": " + what);
  }

  /**
   * A mistake in this row that another exception tells of.
   *
   * @param cause tells what is wrong
   * @return an exception to throw, which names file and line
   */
  public IllegalStateException defect(RuntimeException cause) {
    return new IllegalStateException(file + ":" + line + ": " + cause.getMessage(), cause);
  }

  private double toNumber(String column, String text) {
    if (text.equals("infinity")) {
      return Double.POSITIVE_INFINITY;
    }
    double number;
    try {
      number = Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw new IllegalStateException(
          file + ":" + line + ": " + column + " is not a number: " + text, e);
    }
    if (!Double.isFinite(number)) {
      throw defect(column + " is not finite: " + text);
    }
    return number;
  }
}
