/**
 * Charts of simulated courses, drawn by JFreeChart and written as PNG or SVG.
 *
 * <p>Start with {@link org.undercap.cli.chart.MiteCurveChart} (one plan), {@link
 * org.undercap.cli.chart.PlansChart} (plans below each other on the same axes) and {@link
 * org.undercap.cli.chart.InfestationChart} (mites per 100 bees of all plans); {@link
 * org.undercap.cli.chart.ChartWriter} turns their pages into bytes. The charts take plain data
 * ({@link org.undercap.cli.chart.Course}, {@link org.undercap.cli.chart.Mark}, {@link
 * org.undercap.cli.chart.ChartText}) and never run the model.
 *
 * <p>Colours, dashes and markers have one fixed meaning, listed in {@link
 * org.undercap.cli.chart.Meaning}. Sizes, in printer's points, come from {@link
 * org.undercap.cli.chart.ChartStyle}; letters from the fonts in the jar, so a chart looks the same
 * on every machine.
 */
package org.undercap.cli.chart;
