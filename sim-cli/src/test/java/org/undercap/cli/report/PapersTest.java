package org.undercap.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a keeper takes along: the calendar and the sheet for records. */
class PapersTest {
  private static final String TITLE = AwkwardScenario.RIGHT_TO_LEFT.repeat(6);
  @TempDir private static Path folder;
  private static Path results;
  private static WebPage page;

  @BeforeAll
  static void answer() {
    results = AwkwardScenario.answered(folder, TITLE, false, "Gel");
    page = WebPage.of(results.resolve("answer.html"));
  }

  @Test
  void calendarHoldsTreatmentsRemovalsAndTheCount() throws IOException {
    Map<LocalDate, String> found = new TreeMap<>();
    for (VEvent event : calendar().getEvents()) {
      assertEquals(day(event.getDateStart().getValue()).plusDays(1), day(end(event)), "whole day");
      found.put(
          day(event.getDateStart().getValue()),
          event.getSummary().getValue().replace(TITLE + ": ", ""));
    }
    Map<LocalDate, String> expected = new TreeMap<>();
    expected.put(LocalDate.of(2026, 8, 10), "Thymol gel, 1 of 2");
    expected.put(LocalDate.of(2026, 8, 24), "Thymol gel, 2 of 2");
    expected.put(LocalDate.of(2026, 9, 7), "Take out the thymol gel of 10 Aug");
    expected.put(LocalDate.of(2026, 9, 21), "Take out the thymol gel of 24 Aug");
    expected.put(LocalDate.of(2026, 9, 27), "count mites again");
    expected.put(LocalDate.of(2026, 11, 1), "Treat again before this day");
    assertEquals(expected, found);
  }

  @Test
  void calendarSaysWhatThePageSays() throws IOException {
    List<String> told = WebPage.inside(page.id("dates"), "dd").stream().map(WebPage::text).toList();
    List<VEvent> events = calendar().getEvents();
    assertEquals(told.size(), events.size());
    for (int i = 0; i < told.size(); i++) {
      String description = events.get(i).getDescription().getValue();
      assertTrue(description.startsWith(told.get(i) + " This is a simulation"), description);
    }
    assertTrue(told.get(told.size() - 2).startsWith("Count again: wash 300 bees"), "the count");
  }

  @Test
  void calendarKeepsItsStandard() throws IOException {
    assertTrue(calendar().validate(calendar().getVersion()).isEmpty());
    String text = Files.readString(results.resolve("calendar.ics"));
    assertTrue(text.endsWith("END:VCALENDAR\r\n"), "line ends");
    assertEquals(text, text.replaceAll("(?<!\r)\n", "\r\n"), "every line ends in CR LF");
    List<String> lines = List.of(text.split("\r\n", -1));
    assertTrue(lines.stream().anyMatch(line -> line.startsWith(" ")), "long lines were folded");
    for (String line : lines) {
      assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
      assertTrue(StandardCharsets.UTF_8.newEncoder().canEncode(line), "no letter is cut in two");
    }
    assertEquals(
        calendar().getEvents().size(),
        calendar().getEvents().stream().map(e -> e.getUid().getValue()).distinct().count());
  }

  @Test
  void sheetHasTheFieldsThatLawsAskFor() {
    WebPage sheet = WebPage.of(results.resolve("record-sheet.html"));
    assertEquals(
        List.of(
            "planned day",
            "treatment planned",
            "name on the label",
            "batch",
            "supplier",
            "date bought",
            "date used",
            "quantity used",
            "hives",
            "withdrawal time ends",
            "taken out on",
            "disposal of the rest",
            "who"),
        WebPage.inside(sheet.elements("thead").get(0), "th").stream().map(WebPage::text).toList());
    assertEquals(
        List.of("Keeper", "Apiary and its number", "Veterinarian or adviser, if any"),
        sheet.texts("li"));
    var rows = WebPage.inside(sheet.elements("tbody").get(0), "tr");
    assertEquals("10 August 2026 thymol gel", WebPage.text(rows.get(0)));
    assertEquals("24 August 2026 thymol gel", WebPage.text(rows.get(1)));
    assertTrue(rows.size() >= 4, "room for what was not planned");
    assertEquals("", WebPage.text(rows.get(2)));
  }

  private static ICalendar calendar() throws IOException {
    List<ICalendar> calendars = Biweekly.parse(results.resolve("calendar.ics").toFile()).all();
    assertEquals(1, calendars.size());
    return calendars.get(0);
  }

  private static Date end(VEvent event) {
    return event.getDateEnd().getValue();
  }

  private static LocalDate day(Date date) {
    return date.toInstant().atZone(ZoneId.systemDefault()).toLocalDate();
  }
}
