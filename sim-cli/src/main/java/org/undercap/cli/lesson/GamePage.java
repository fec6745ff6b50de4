package org.undercap.cli.lesson;

import java.util.List;
import java.util.Map;
import org.undercap.lesson.WashGame;

/**
 * The wash game as a page.
 *
 * @param words headings
 * @param subtitle the colony
 * @param slips what stands on the slips
 * @param dice throws of three dice and what they mean
 * @param limit mites in the jar at which the class would treat
 */
public record GamePage(
    Headings words, String subtitle, List<Integer> slips, List<WashGame.Throw> dice, String limit) {
  /**
   * Copies the lists.
   *
   * @param words headings
   * @param subtitle the colony
   * @param slips what stands on the slips
   * @param dice throws of three dice and what they mean
   * @param limit mites in the jar
   */
  public GamePage {
    slips = List.copyOf(slips);
    dice = List.copyOf(dice);
  }

  static GamePage of(WashGame game, Speech speech) {
    String subtitle =
        speech.say("game.subtitle", Map.of("truth", game.truth(), "bees", game.bees()));
    String limit = Speech.number(Math.rint(game.bees() * game.truth() / 100));
    return new GamePage(new Headings(speech), subtitle, game.slips(), game.dice(), limit);
  }
}
