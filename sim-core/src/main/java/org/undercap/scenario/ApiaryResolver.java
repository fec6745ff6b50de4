package org.undercap.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercap.hive.FrameType;

/** Makes colonies at the place of a scenario of the rows of an apiary table. */
public final class ApiaryResolver {
  private final Scenario site;
  private final Problems problems;

  /**
   * Prepares to work out rows.
   *
   * @param site place, day, hive and plans
   * @param problems what was found so far; new problems are added
   */
  public ApiaryResolver(Scenario site, Problems problems) {
    this.site = site;
    this.problems = problems;
  }

  /**
   * Works out what rows mean.
   *
   * @param rows the rows as far as they could be read
   * @return the colonies in the order of the table, or all problems, old and new
   */
  public Reading<List<ApiaryColony>> resolve(List<ApiaryRow> rows) {
    List<ApiaryColony> colonies = new ArrayList<>();
    for (ApiaryRow row : rows) {
      colony(row).ifPresent(colonies::add);
    }
    return problems.isEmpty() ? Reading.of(List.copyOf(colonies)) : Reading.failed(problems);
  }

  private Optional<ApiaryColony> colony(ApiaryRow row) {
    List<Problem> doubts = new ArrayList<>(row.doubts());
    Optional<HiveFacts> facts = facts(row);
    if (facts.isEmpty()) {
      return Optional.empty();
    }
    double fewest = InputLimits.shipped().get("colony.bees.tested").low();
    if (facts.get().bees() < fewest) {
      Place at = row.bees().map(Written::place).orElse(row.colony().place());
      String few = "fewer than " + Quantities.format(fewest) + " bees: the model was not tested";
      doubts.add(new Problem(at.file(), at.line(), at.column(), "bees", few, ""));
    }
    Optional<Scenario> scenario =
        row.counts().isEmpty()
            ? Optional.empty()
            : Optional.of(site.withColony(row.colony().value(), facts.get(), row.counts()));
    return Optional.of(new ApiaryColony(row.colony().value(), scenario, row.note(), doubts));
  }

  /**
   * Bees and brood of a row, all else of the site.
   *
   * @param row the row
   * @return what it means; empty if that cannot be told, which is then among the problems
   */
  public Optional<HiveFacts> facts(ApiaryRow row) {
    return new ColonyResolver(written(row), site.parameters(), problems, new Assumptions())
        .facts()
        .map(this::hive);
  }

  private HiveFacts hive(HiveFacts row) {
    HiveFacts hive = site.hive();
    return new HiveFacts(
        row.bees(),
        row.broodCells(),
        hive.frame(),
        hive.queenQuality(),
        hive.openFloor(),
        hive.supersOn());
  }

  private WrittenColony written(ApiaryRow row) {
    Place place = row.colony().place();
    Optional<Written<FrameType>> frame =
        site.hive().frame().map(type -> new Written<>(type, type.id(), place));
    HiveFacts usual = site.hive();
    return new WrittenColony(
        place,
        Optional.empty(),
        Optional.of(
            row.bees().orElse(new Written<>(new Amount<>(usual.bees(), BeeUnit.BEES), "", place))),
        Optional.of(
            row.brood()
                .orElse(
                    new Written<>(new Amount<>(usual.broodCells(), BroodUnit.CELLS), "", place))),
        frame,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
