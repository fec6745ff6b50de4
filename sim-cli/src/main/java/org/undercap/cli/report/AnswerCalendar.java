package org.undercap.cli.report;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.property.DateEnd;
import biweekly.property.DateStart;
import biweekly.property.Transparency;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.List;

/**
 * The days of the chosen plan as a file for calendars (RFC 5545): whole days, and the same
 * identifiers whenever it is made from the same scenario, so that a new file replaces the old
 * entries.
 */
final class AnswerCalendar {
  private static final String PRODUCT = "-//Undercap//Answer//EN";
  private static final int ID_LENGTH = 32;

  /** Longest line without its end (bytes). */
  private static final int LINE_BYTES = 75;

  private AnswerCalendar() {}

  /**
   * The calendar, with the line ends that its standard wants.
   *
   * @param answer the answer
   * @param digest digest of the scenario
   */
  static String of(Answer answer, String digest) {
    ICalendar calendar = new ICalendar();
    calendar.setVersion(ICalVersion.V2_0);
    calendar.setProductId(PRODUCT);
    List<PlanDate> dates = answer.dates();
    String caution = Cautions.of(answer.scenario(), List.of()).get(0).text();
    for (int i = 0; i < dates.size(); i++) {
      calendar.addEvent(event(answer, dates.get(i), digest.substring(0, ID_LENGTH) + "-" + i));
      calendar.getEvents().get(i).setDescription(dates.get(i).words() + ". " + caution);
    }
    return folded(unfolded(calendar));
  }

  private static String unfolded(ICalendar calendar) {
    StringWriter text = new StringWriter();
    try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
      writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
      writer.write(calendar);
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory is always written", e);
    }
    return text.toString();
  }

  /** The standard counts bytes, the library letters; so lines are folded here. */
  private static String folded(String text) {
    StringBuilder folded = new StringBuilder();
    int bytes = 0;
    for (int letter : text.codePoints().toArray()) {
      String next = Character.toString(letter);
      int size = next.getBytes(StandardCharsets.UTF_8).length;
      boolean lineEnd = letter == '\r' || letter == '\n';
      if (!lineEnd && bytes + size > LINE_BYTES) {
        folded.append("\r\n ");
        bytes = 1;
      }
      folded.append(next);
      bytes = lineEnd ? 0 : bytes + size;
    }
    return folded.toString();
  }

  private static VEvent event(Answer answer, PlanDate date, String id) {
    VEvent event = new VEvent();
    event.setUid(id + "@undercap");
    event.setDateTimeStamp(
        Date.from(answer.scenario().start().atStartOfDay(ZoneOffset.UTC).toInstant()));
    event.setDateStart(new DateStart(midnight(date.date()), false));
    event.setDateEnd(new DateEnd(midnight(date.date().plusDays(1)), false));
    event.setSummary(
        answer.scenario().name()
            + ": "
            + brief(date)
            + (answer.scenario().study() ? " (" + Report.STUDY + ")" : ""));
    event.setTransparency(Transparency.transparent());
    return event;
  }

  private static String brief(PlanDate date) {
    return switch (date.kind()) {
      case COUNT -> "count mites again";
      case DECIDE -> date.words().split("[:.]", 2)[0];
      default -> date.words().split("\\. ", 2)[0];
    };
  }

  /** The library wants whole days as midnights of the machine's own zone. */
  private static Date midnight(LocalDate date) {
    return Date.from(date.atStartOfDay(ZoneId.systemDefault()).toInstant());
  }
}
