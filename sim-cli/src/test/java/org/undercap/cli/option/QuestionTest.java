package org.undercap.cli.option;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.undercap.hive.FrameCatalogue;
import org.undercap.hive.FrameType;
import org.undercap.scenario.BadValueException;

class QuestionTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 8, 20);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "CLIMATE | Cool Oceanic | cool-oceanic",
        "CLIMATE | 52.1 N | latitude 52.1",
        "CLIMATE | 37° south | latitude -37",
        "CLIMATE | latitude -37 | latitude -37",
        "DATE | 18 August 2026 | 2026-08-18",
        "DATE | today | 2026-08-20",
        "BEES | 9 frames | 9 frames",
        "BROOD | 3 frames two thirds full | 3 frames two thirds full",
        "FULLNESS | two thirds | two thirds full",
        "FULLNESS | Nearly full | nearly full",
        "FULLNESS | full | full",
        "FULLNESS | 60 % | 60 % full",
        "FULLNESS | in patches | patches",
        "FULLNESS | unknown | unknown",
        "FRAME | Zander | zander",
        "FRAME | 14x12 | national-14x12",
        "FRAME | Langstroth Deep | langstroth-deep",
        "FRAME | Deutsch Normal | german-normal",
        "FRAME | Dadant Blatt | dadant",
        "FRAME | commercial | commercial-16x10",
        "COUNT | 11 in 300 bees | 11 in 300",
        "COUNT | 11 mites in half a cup of bees, Sugar roll | 11 in half a cup, sugar",
        "COUNT | 11/300 alcohol wash | 11 in 300, alcohol",
        "COUNT | no mites in 300 bees | 0 in 300",
        "COUNT | 56 in a week | 56 in 7 days",
        "METHOD | icing sugar | sugar",
        "METHOD | soapy water | soap",
        "SUPERS | No | off",
        "SUPERS | on until 30 August 2026 | 2026-08-30",
        "FEEDING | none | no",
        "FEEDING | until 20 Sep 2026 | 2026-09-20",
        "FEEDING | from 1 September 2026 to 20.9.2026 | 2026-09-01 to 2026-09-20",
        "DONE | nothing | none",
        "DONE | unknown | unknown",
        "DONE | Thymol gel on 1 March 2026 | thymol-gel on 2026-03-01",
        "DONE | oxalic-dribble 3 Jan 2026; formic-pads on July 18, 2026 | oxalic-dribble on 2026-01-03; formic-pads on 2026-07-18",
        "DONE | oxalic-sublimation on 1 July 2026, 3 times every 5 days | oxalic-sublimation on 2026-07-01, 3 times every 5 days",
        "BEES | about 9 frames | 9 frames",
        "BROOD | ~ 3 frames | 3 frames",
        "DATE | two weeks ago | 2026-08-06",
        "TREATMENTS | all | any",
        "TREATMENTS | thymol gel or formic | thymol-gel, formic-pads, formic-dispenser",
        "TREATMENTS | Organic | organic",
        "TREATMENTS | thymol gel and oxalic acid | thymol-gel, oxalic-dribble, oxalic-sublimation, oxalic-glycerine-strips",
        "TREATMENTS | thymol gel, formic acid pads, oxalic acid vapour | thymol-gel, formic-pads, oxalic-sublimation",
        "TREATMENTS | oxalic vapor and Oxalic Trickling | oxalic-sublimation, oxalic-dribble",
        "TREATMENTS | oxalic acid and glycerine strips or flumethrin | oxalic-glycerine-strips, pyrethroid-strips",
        "DONE | oxalic acid vapour on 1 July 2026 | oxalic-sublimation on 2026-07-01",
        "BROOD | 5 frames of brood two thirds full | 5 frames two thirds full",
        "FEEDING | 20 August to 5 September 2026 | 2026-08-20 to 2026-09-05",
        "FLOOR | mesh | open",
        "ARRIVALS | Dense | dense"
      })
  void answersAreReadAsKeepersGiveThem(Question question, String typed, String meant)
      throws BadValueException {
    String read = question.read(typed, TODAY);
    assertEquals(meant, read);
    assertEquals(read, question.read(read, TODAY), "what is read can be read again");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "CLIMATE | 52 | a latitude with its side",
        "CLIMATE | London | your latitude, as in 52 N or 37 S, or one of: temperate-oceanic",
        "CLIMATE | 2 N | no figure would hold",
        "CLIMATE | unknown | nothing can be said",
        "BEES | 9 | write the unit too",
        "BEES | don't know | a frame counts if bees cover both sides",
        "BROOD | 3 | 3 frames",
        "FULLNESS | empty | two thirds",
        "FRAME | Langstroth | langstroth-deep, langstroth-medium",
        "FRAME | National | national-deep, national-14x12",
        "FRAME | Warre | choose the one nearest in size",
        "FRAME | zandr | did you mean \"zander\"",
        "COUNT | 3 % | not the percent",
        "COUNT | 8 mites a day | as in 56 in 7 days",
        "COUNT | 8 per day | does not say how many days",
        "COUNT | 300 in 11 | swapped",
        "COUNT | unknown | lay a board",
        "METHOD | co2 | alcohol, soap or sugar",
        "SUPERS | yes | until when",
        "SUPERS | maybe | neither no nor a date; They rule treatments out. no, or",
        "FEEDING | a little | neither no nor a date",
        "SUPERS | 8/9/2026 | 8 September or 9 August",
        "FEEDING | from 20 Sep 2026 to 1 Sep 2026 | ends before it begins",
        "DONE | thymol | on which day",
        "DONE | thymol-jel on 1 March 2026 | did you mean \"thymol-gel\"",
        "DONE | oxalic acid on 1 March 2026 | write one of: oxalic-dribble, oxalic-sublimation",
        "TREATMENTS | thymol gel, honey | unknown treatment",
        "TREATMENTS | strips | may be more than one treatment",
        "TREATMENTS | acid | unknown treatment",
        "TREATMENTS | thymol gel, | unknown treatment",
        "FEEDING | still feeding | until when",
        "FEEDING | since 20 August 2026 | until when",
        "FRAME | don't know | take the one nearest in size: langstroth-deep",
        "BROOD | 5 of brood two thirds full | as in 5 frames two thirds full",
        "FLOOR | wood | open, closed or unknown",
        "ARRIVALS | many | collapsing"
      })
  void otherAnswersAreRefusedWithWhatToWrite(Question question, String typed, String part) {
    BadValueException e = assertThrows(BadValueException.class, () -> question.read(typed, TODAY));
    assertTrue((e.getMessage() + "; " + e.hint()).contains(part), e.getMessage() + "; " + e.hint());
  }

  @ParameterizedTest
  @EnumSource(Question.class)
  void everyQuestionIsShortAndTakesItsOwnExample(Question question) throws BadValueException {
    assertTrue(question.words().length() <= 50 && question.words().endsWith("?"));
    assertTrue(question.why().length() <= 77, question.why());
    question.choices().forEach(line -> assertTrue(line.length() <= 75, line));
    String example = question.read(question.example(), TODAY);
    assertFalse(example.isBlank());
    if (question.usual().isPresent()) {
      String usual = question.usual().get();
      assertEquals(usual, question.read(usual, TODAY));
    }
  }

  @Test
  void factsHaveNoUsualAnswer() {
    assertTrue(
        Question.facts()
            .containsAll(
                List.of(
                    Question.CLIMATE,
                    Question.DATE,
                    Question.BEES,
                    Question.BROOD,
                    Question.COUNT,
                    Question.SUPERS)));
  }

  @Test
  void everyFrameIsAmongTheChoices() {
    String choices = String.join(" ", Question.FRAME.choices());
    for (FrameType frame : FrameCatalogue.shipped().all()) {
      assertTrue(choices.contains(frame.id()), frame.id());
    }
  }

  @Test
  void whatAnswersLeaveOpenIsAskedAndNothingElse() {
    assertTrue(Question.FULLNESS.applies(Map.of(Question.BROOD, "3 frames")));
    assertFalse(Question.FULLNESS.applies(Map.of(Question.BROOD, "3 frames half full")));
    assertFalse(Question.FULLNESS.applies(Map.of(Question.BROOD, "12 hands")));
    assertTrue(Question.FRAME.applies(Map.of(Question.BEES, "4 lb", Question.BROOD, "12 hands")));
    assertFalse(Question.FRAME.applies(Map.of(Question.BEES, "4 lb", Question.BROOD, "none seen")));
    assertTrue(Question.METHOD.applies(Map.of(Question.COUNT, "9 in 300")));
    assertFalse(Question.METHOD.applies(Map.of(Question.COUNT, "9 in 300, soap")));
    assertFalse(Question.METHOD.applies(Map.of(Question.COUNT, "56 in 7 days")));
  }
}
