package org.undercap.cli.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.undercap.calibration.CountErrors;
import org.undercap.calibration.CountFitResult;
import org.undercap.calibration.FitResult;
import org.undercap.calibration.FitSettings;
import org.undercap.calibration.FittedStart;
import org.undercap.calibration.Foretold;
import org.undercap.calibration.GrowthFitResult;
import org.undercap.calibration.ObservedColony;
import org.undercap.calibration.PredictiveCheck;
import org.undercap.calibration.Residual;
import org.undercap.climate.Hemisphere;
import org.undercap.parameter.ParameterSet;
import org.undercap.parameter.ParameterSpace;

/**
 * What a fit found, with all that is worked out from it.
 *
 * @param name what was fitted, in a few words
 * @param space parameters that were moved, with their priors
 * @param settings how it was searched
 * @param fit values and intervals
 * @param parameters all parameters with the best values
 * @param growth the growth rates reached, if that was the target
 * @param counts what was found about counts, if they were the target
 */
public record FitStudy(
    String name,
    ParameterSpace space,
    FitSettings settings,
    FitResult fit,
    ParameterSet parameters,
    Optional<GrowthFitResult> growth,
    Optional<Counts> counts) {

  /**
   * A fit to a growth rate.
   *
   * @param name what was fitted
   * @param space parameters that were moved
   * @param settings how it was searched
   * @param result what was found
   * @return the study
   */
  public static FitStudy of(
      String name, ParameterSpace space, FitSettings settings, GrowthFitResult result) {
    return new FitStudy(
        name,
        space,
        settings,
        result.fit(),
        result.parameters(),
        Optional.of(result),
        Optional.empty());
  }

  /**
   * A fit to counts.
   *
   * @param name what was fitted
   * @param space parameters that were moved
   * @param settings how it was searched
   * @param result what was found
   * @param colonies all colonies with all counts
   * @param lastFitted last date whose counts were fitted; all if empty
   * @return the study
   */
  public static FitStudy of(
      String name,
      ParameterSpace space,
      FitSettings settings,
      CountFitResult result,
      List<ObservedColony> colonies,
      Optional<LocalDate> lastFitted) {
    long seed = settings.seed();
    Counts counts =
        new Counts(
            colonies.get(0).start().climate().hemisphere(),
            result.errors(),
            result.residuals(),
            result.check(seed),
            result.starts(seed),
            result.foretell(colonies, seed),
            lastFitted,
            lastFitted.map(
                last -> result.heldOut(colonies.stream().map(c -> c.after(last)).toList(), seed)));
    return new FitStudy(
        name,
        space,
        settings,
        result.fit(),
        result.parameters(),
        Optional.empty(),
        Optional.of(counts));
  }

  /**
   * Counts against the fit.
   *
   * @param hemisphere half of the earth
   * @param errors how counts scatter
   * @param residuals fitted counts against what the best values expect
   * @param check fitted counts against those that the fit would make
   * @param starts mites at the start of each colony
   * @param foretold all counts with what the fit foretells
   * @param lastFitted last date whose counts were fitted; all if empty
   * @param heldOut later counts against what the fit foretells
   */
  public record Counts(
      Hemisphere hemisphere,
      CountErrors errors,
      List<Residual> residuals,
      PredictiveCheck check,
      List<FittedStart> starts,
      List<Foretold> foretold,
      Optional<LocalDate> lastFitted,
      Optional<PredictiveCheck> heldOut) {
    /**
     * Copies the lists.
     *
     * @param hemisphere half of the earth
     * @param errors how counts scatter
     * @param residuals fitted counts against what the best values expect
     * @param check fitted counts against those that the fit would make
     * @param starts mites at the start of each colony
     * @param foretold all counts with what the fit foretells
     * @param lastFitted last date whose counts were fitted; all if empty
     * @param heldOut later counts against what the fit foretells
     */
    public Counts {
      residuals = List.copyOf(residuals);
      starts = List.copyOf(starts);
      foretold = List.copyOf(foretold);
    }
  }
}
