package org.undercap.cli.report;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.property.DateEnd;
import biweekly.property.DateStart;
import biweekly.property.Transparency;
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
    return Biweekly.write(calendar).go();
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
    return date.kind() == PlanDate.Kind.COUNT ? "count mites again" : date.words();
  }

  /** The library wants whole days as midnights of the machine's own zone. */
  private static Date midnight(LocalDate date) {
    return Date.from(date.atStartOfDay(ZoneId.systemDefault()).toInstant());
  }
}
