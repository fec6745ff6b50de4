package org.undercap;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Holds a property against many random cases. The seeds are fixed, so every run tests the same
 * cases; case n has a seed of its own, so it can be made again alone. A case that fails is made
 * simpler as long as it still fails, and the simplest one is reported with its seed.
 */
public final class ForAll {
  private static final long FIRST_SEED = 20_260_101;
  private static final int MOST_SIMPLIFICATIONS = 40;

  private ForAll() {}

  /**
   * Checks a property.
   *
   * @param <T> type of a case; its text form should show all of it
   * @param cases number of cases
   * @param generator makes a case
   * @param simpler simpler variants of a case, the simplest first
   * @param property throws if a case does not have it
   */
  public static <T> void cases(
      int cases,
      Function<UniformRandomProvider, T> generator,
      Function<T, Stream<T>> simpler,
      Consumer<T> property) {
    for (long seed = FIRST_SEED; seed < FIRST_SEED + cases; seed++) {
      T one = generator.apply(RandomSource.XO_RO_SHI_RO_128_PP.create(seed));
      Optional<Throwable> failure = failure(property, one);
      if (failure.isPresent()) {
        T simplest = simplify(one, simpler, property);
        Throwable cause = failure(property, simplest).orElse(failure.get());
        throw new AssertionError(
            "seed " + seed + ", simplest case that fails: " + simplest + "\n" + cause, cause);
      }
    }
  }

  private static <T> T simplify(T failing, Function<T, Stream<T>> simpler, Consumer<T> property) {
    T simplest = failing;
    for (int i = 0; i < MOST_SIMPLIFICATIONS; i++) {
      Optional<T> next =
          simpler.apply(simplest).filter(c -> failure(property, c).isPresent()).findFirst();
      if (next.isEmpty()) {
        break;
      }
      simplest = next.get();
    }
    return simplest;
  }

  private static <T> Optional<Throwable> failure(Consumer<T> property, T one) {
    try {
      property.accept(one);
      return Optional.empty();
    } catch (RuntimeException | AssertionError e) {
      return Optional.of(e);
    }
  }
}
