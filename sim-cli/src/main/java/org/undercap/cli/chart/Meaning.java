package org.undercap.cli.chart;

import java.awt.Color;

/** What a line, area or band stands for: the same look and the same words in every chart. */
@SuppressWarnings("ImmutableEnumChecker") // a look never changes
public enum Meaning {
  /** Phoretic mites. */
  MITES_ON_BEES("mites on bees", "on bees", Palette.VERMILION, Dash.SOLID, Marker.CIRCLE),
  /** Mites under cappings. */
  MITES_IN_CELLS("mites in sealed brood", "in brood", Palette.BLUE, Dash.DASHED, Marker.SQUARE),
  /** Both together. */
  ALL_MITES("all mites", "all", Palette.BLACK, Dash.DOTTED, Marker.NONE),
  /** Adult bees, an area. */
  BEES("adult bees", "bees", Palette.LIGHT_SKY, Dash.SOLID, Marker.NONE),
  /** Brood cells, an area. */
  BROOD("brood cells", "brood", Palette.LIGHT_YELLOW, Dash.DOTTED, Marker.NONE),
  /** Days of a treatment or measure, a band. */
  TREATMENT("treatment", "treatment", Palette.VEIL, Dash.SOLID, Marker.NONE),
  /** Limit at which to act. */
  THRESHOLD("limit", "limit", Palette.DARK_GREY, Dash.DASHED, Marker.NONE),
  /** Day on which the colony was lost. */
  COLONY_LOST("colony lost", "lost", Palette.BLACK, Dash.SOLID, Marker.CROSS);

  private final String label;
  private final String shortLabel;
  private final Look look;

  Meaning(String label, String shortLabel, Color color, Dash dash, Marker marker) {
    this.label = label;
    this.shortLabel = shortLabel;
    this.look = new Look(color, dash, marker);
  }

  /**
   * Words written on the line.
   *
   * @return in lower case
   */
  public String label() {
    return label;
  }

  /**
   * Words for narrow panels, which stand beside a key with the full words.
   *
   * @return in lower case
   */
  public String shortLabel() {
    return shortLabel;
  }

  /**
   * How it is drawn; for an area or band the colour is the filling and the dash that of its dark
   * edge.
   *
   * @return colour, dash and marker
   */
  public Look look() {
    return look;
  }
}
