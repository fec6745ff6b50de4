package org.undercap.scenario;

import java.time.LocalDate;
import java.util.Optional;
import org.undercap.hive.FrameType;

/**
 * The colony of a scenario as it was written.
 *
 * @param place where it begins
 * @param date day of the facts, first day of the run
 * @param bees how many bees
 * @param brood how much brood
 * @param frame what one side of a frame holds
 * @param framesPerBox frames in a box (frames)
 * @param queenQuality laying against a good queen (ratio)
 * @param openFloor whether the floor is open
 * @param supersOn whether honey supers are on
 * @param supersUntil last day on which they are on
 * @param africanized whether the bees are Africanized
 */
public record WrittenColony(
    Place place,
    Optional<Written<LocalDate>> date,
    Optional<Written<Amount<BeeUnit>>> bees,
    Optional<Written<Amount<BroodUnit>>> brood,
    Optional<Written<FrameType>> frame,
    Optional<Written<Double>> framesPerBox,
    Optional<Written<Double>> queenQuality,
    Optional<Written<Boolean>> openFloor,
    Optional<Written<Boolean>> supersOn,
    Optional<Written<LocalDate>> supersUntil,
    Optional<Written<Boolean>> africanized) {}
