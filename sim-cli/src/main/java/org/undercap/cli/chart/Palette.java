package org.undercap.cli.chart;

import java.awt.Color;

/**
 * The colours: the set of Okabe and Ito, which people with colour-blindness tell apart, and greys.
 * Lines and words use the dark colours, areas the light ones with a dark edge.
 */
final class Palette {
  static final Color BLACK = new Color(0x000000);
  static final Color BLUE = new Color(0x0072B2);
  static final Color VERMILION = new Color(0xD55E00);
  static final Color GREEN = new Color(0x009E73);
  static final Color PURPLE = new Color(0xCC79A7);

  /** For filled areas with a dark edge only. */
  static final Color ORANGE = new Color(0xE69F00);

  /** Orange (E69F00) mixed with as much white, for cells between white and orange, also in grey. */
  static final Color LIGHT_ORANGE = new Color(0xF2CF7F);

  /** Sky (56B4E9) mixed with as much white, for cells that must differ from white in grey. */
  static final Color SKY = new Color(0xABDAF4);

  /** Sky (56B4E9) mixed with white, for areas. */
  static final Color LIGHT_SKY = new Color(0xD5ECFA);

  /** Yellow (F0E442) mixed with white, for areas. */
  static final Color LIGHT_YELLOW = new Color(0xFAF4B8);

  static final Color WHITE = new Color(0xFFFFFF);
  static final Color DARK_GREY = new Color(0x404040);
  static final Color MIDDLE_GREY = new Color(0x8C8C8C);
  static final Color LIGHT_GREY = new Color(0xD0D0D0);

  /** Black that lets through most of what lies below, for bands of days. */
  static final Color VEIL = new Color(0, 0, 0, 36);

  private Palette() {}
}
