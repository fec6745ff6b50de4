package org.undercap.treatment;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/**
 * The short text form of the parts of a profile, as in {@code methods.csv} and in scenario files.
 *
 * <pre>
 * release:      pulse 0.7/0.2/0.1  |  decay HALF-LIFE-DAYS LAG-DAYS DAYS  |  plateau DAYS RAMP-DAYS
 * temperature:  none  |  thymol REFERENCE-C CARRIER-SHARE  |  formic REFERENCE-C CARRIER-SHARE
 * response:     kill SHARE-BROODLESS SHARE-FULL-BROOD  |  hazard PER-DAY  |  hill LARGEST FULL HALF EXPONENT
 * </pre>
 *
 * A number may be replaced by the id of a parameter.
 */
public final class ProfileText {
  private static final Map<String, ParameterId> SUBSTANCES =
      Map.of("thymol", ParameterId.THYMOL_VAPOUR, "formic", ParameterId.FORMIC_VAPOUR);
  private final ParameterSet parameters;

  /**
   * A reader.
   *
   * @param parameters values of parameters that a text names
   */
  public ProfileText(ParameterSet parameters) {
    this.parameters = parameters;
  }

  /**
   * Reads a release.
   *
   * @param text as above
   * @return the release
   * @throws IllegalArgumentException if the text is none
   */
  public Release release(String text) {
    List<String> words = words(text);
    return switch (words.get(0) + words.size()) {
      case "pulse2" ->
          new Release.Pulse(Arrays.stream(words.get(1).split("/", -1)).map(this::number).toList());
      case "decay4" ->
          new Release.Decay(number(words.get(1)), number(words.get(2)), days(words.get(3)));
      case "plateau3" -> new Release.Plateau(days(words.get(1)), number(words.get(2)));
      default ->
          throw new IllegalArgumentException(
              "release '"
                  + text
                  + "' must be 'pulse SHARE/SHARE/..', 'decay HALF-LIFE LAG DAYS' or 'plateau DAYS RAMP'");
    };
  }

  /**
   * Reads a response to temperature.
   *
   * @param text as above
   * @return the response
   * @throws IllegalArgumentException if the text is none
   */
  public TemperatureResponse temperature(String text) {
    List<String> words = words(text);
    if (text.strip().equals("none")) {
      return new TemperatureResponse.None();
    }
    ParameterId substance = SUBSTANCES.get(words.get(0));
    if (substance == null || words.size() != 3) {
      throw new IllegalArgumentException(
          "temperature '"
              + text
              + "' must be 'none', 'thymol REFERENCE-C CARRIER-SHARE' or 'formic REFERENCE-C CARRIER-SHARE'");
    }
    return new TemperatureResponse.Vapour(
        VapourPressure.of(parameters, substance),
        number(words.get(1)),
        number(words.get(2)),
        parameters.value(ParameterId.HIVE_TEMPERATURE));
  }

  /**
   * Reads a response to the amount.
   *
   * @param text as above
   * @return the response
   * @throws IllegalArgumentException if the text is none
   */
  public Response response(String text) {
    List<String> words = words(text);
    return switch (words.get(0) + words.size()) {
      case "kill3" -> new Response.Kill(number(words.get(1)), number(words.get(2)));
      case "hazard2" -> new Response.Constant(number(words.get(1)));
      case "hill5" ->
          new Response.Hill(
              number(words.get(1)),
              number(words.get(2)),
              number(words.get(3)),
              number(words.get(4)));
      default ->
          throw new IllegalArgumentException(
              "response '"
                  + text
                  + "' must be 'kill SHARE-BROODLESS SHARE-FULL-BROOD', 'hazard PER-DAY' or 'hill LARGEST FULL HALF EXPONENT'");
    };
  }

  private static List<String> words(String text) {
    return List.of(text.strip().split("\\s+"));
  }

  private static int days(String word) {
    try {
      return Integer.parseInt(word);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException("'" + word + "' must be a whole number of days", e);
    }
  }

  private double number(String word) {
    try {
      return Double.parseDouble(word);
    } catch (NumberFormatException e) {
      return ParameterCatalogue.shipped()
          .find(word)
          .map(parameter -> parameters.value(parameter.id()))
          .orElseThrow(
              () ->
                  new IllegalArgumentException(
                      "'" + word + "' must be a number or the id of a parameter", e));
    }
  }
}
