package org.undercap.treatment;

import java.util.List;
import java.util.OptionalDouble;
import org.undercap.internal.Checks;

/**
 * A treatment by active substance and way of use.
 *
 * @param id short name in scenario files
 * @param name name in words
 * @param substance active substance
 * @param substanceClass class of substances to which mites resist together
 * @param profile how it works
 * @param humidFactor amount that acts in humid places against others (ratio)
 * @param carrierDays days until trays or strips are taken out (days); 0 if there is nothing to take
 *     out
 * @param usual how it is usually used
 * @param coolLimit daily mean outside temperature below which users hold it too weak (C)
 * @param hotLimit daily mean outside temperature above which users hold it harmful (C)
 * @param minutes keeper's time for one application of one colony (minutes)
 * @param organic whether organic schemes often allow it
 * @param cautions ids of the cautions to print with it
 * @param aimsAt published efficacy that the profile was calibrated to, in words
 * @param sourceKeys where that was published
 * @param note remark
 */
public record Method(
    String id,
    String name,
    String substance,
    String substanceClass,
    EfficacyProfile profile,
    double humidFactor,
    int carrierDays,
    UsualUse usual,
    OptionalDouble coolLimit,
    OptionalDouble hotLimit,
    double minutes,
    boolean organic,
    List<String> cautions,
    String aimsAt,
    List<String> sourceKeys,
    String note) {
  /**
   * Checks the numbers and copies the lists.
   *
   * @param id not blank
   * @param name not blank
   * @param substance active substance
   * @param substanceClass class of substances to which mites resist together
   * @param profile how it works
   * @param humidFactor at least 0
   * @param carrierDays at least 0 (days)
   * @param usual how it is usually used
   * @param coolLimit daily mean outside temperature (C)
   * @param hotLimit daily mean outside temperature (C)
   * @param minutes at least 0 (minutes)
   * @param organic whether organic schemes often allow it
   * @param cautions ids of the cautions to print with it
   * @param aimsAt published efficacy, in words
   * @param sourceKeys where that was published
   * @param note remark
   * @throws IllegalArgumentException if a number is out of range or a name is blank
   */
  public Method {
    if (id.isBlank() || name.isBlank()) {
      throw new IllegalArgumentException("a method needs an id and a name");
    }
    Checks.notNegative(humidFactor, "humid factor");
    Checks.notNegative(carrierDays, "days until taken out");
    Checks.notNegative(minutes, "minutes");
    cautions = List.copyOf(cautions);
    sourceKeys = List.copyOf(sourceKeys);
  }

  /**
   * This method with another way of working, as with a response to temperature of one's own.
   *
   * @param other how it works
   * @return a copy
   */
  public Method with(EfficacyProfile other) {
    return new Method(
        id,
        name,
        substance,
        substanceClass,
        other,
        humidFactor,
        carrierDays,
        usual,
        coolLimit,
        hotLimit,
        minutes,
        organic,
        cautions,
        aimsAt,
        sourceKeys,
        note);
  }
}
