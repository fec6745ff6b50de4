package org.undercap.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercap.internal.Nearest;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.Prior;
import org.undercap.parameter.Spread;
import org.undercap.study.StudyAxis.Kind;

/** What can be varied, by the names that users know, with what is believed of it. */
public final class StudyAxes {
  private static final double CENTRE = 1;

  private StudyAxes() {}

  /**
   * An axis as the catalogue believes it.
   *
   * @param word a parameter, {@code strength:METHOD}, {@code weather}, {@code mites}, {@code bees},
   *     {@code brood} or {@code arrivals}
   * @return the axis
   * @throws IllegalArgumentException if the word is not known, or needs bounds
   */
  public static StudyAxis believed(String word) {
    Kind kind = kind(word);
    String name = name(word, kind);
    if (kind == Kind.PARAMETER) {
      Parameter parameter = ParameterCatalogue.shipped().get(ParameterId.of(name));
      boolean fixed = parameter.spread().shape() == Spread.Shape.FIXED;
      return new StudyAxis(kind, name, fixed ? Prior.overRange(parameter) : Prior.of(parameter));
    }
    if (kind == Kind.MITES) {
      return new StudyAxis(kind, name, Prior.uniform(0, 1));
    }
    ParameterId id =
        kind.spreadOf()
            .orElseThrow(
                () -> new IllegalArgumentException(word + " needs bounds, as in dates=-14:14"));
    return new StudyAxis(kind, name, spread(id));
  }

  /** Factors are lognormal around 1, degrees normal around 0. */
  private static Prior spread(ParameterId id) {
    Parameter parameter = ParameterCatalogue.shipped().get(id);
    double amount = parameter.spread().amount();
    return parameter.spread().shape() == Spread.Shape.LOGNORMAL
        ? new Prior(Prior.Shape.LOGNORMAL, CENTRE, amount, 0, Double.POSITIVE_INFINITY)
        : new Prior(
            Prior.Shape.NORMAL, 0, amount, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  /**
   * A flat axis.
   *
   * @param word as in {@link #believed}, or {@code dates}
   * @param low lower bound
   * @param high upper bound
   * @return the axis
   * @throws IllegalArgumentException if the word is not known or the bounds do not fit
   */
  public static StudyAxis flat(String word, double low, double high) {
    Kind kind = kind(word);
    String name = name(word, kind);
    Prior prior =
        kind == Kind.PARAMETER
            ? Prior.between(ParameterCatalogue.shipped().get(ParameterId.of(name)), low, high)
            : Prior.uniform(low, high);
    return new StudyAxis(kind, name, prior);
  }

  private static Kind kind(String word) {
    String head = word.contains(":") ? word.substring(0, word.indexOf(':')) : word;
    for (Kind kind : Kind.values()) {
      if (kind != Kind.PARAMETER && kind.word().equals(head)) {
        boolean named = word.length() > head.length();
        if (named != (kind == Kind.STRENGTH)) {
          throw new IllegalArgumentException(
              named ? head + " takes no name behind a colon" : "write strength:METHOD");
        }
        return kind;
      }
    }
    if (ParameterCatalogue.shipped().find(word).isEmpty()) {
      List<String> known = new ArrayList<>();
      for (Kind kind : Kind.values()) {
        Optional.of(kind.word()).filter(w -> !w.isEmpty()).ifPresent(known::add);
      }
      ParameterCatalogue.shipped().all().forEach(p -> known.add(p.id().id()));
      throw Nearest.unknown("thing to vary", word, known);
    }
    return Kind.PARAMETER;
  }

  private static String name(String word, Kind kind) {
    return switch (kind) {
      case PARAMETER -> word;
      case STRENGTH -> word.substring(word.indexOf(':') + 1);
      default -> "";
    };
  }
}
