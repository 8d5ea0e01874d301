/**
 * Figures and the painters that put them into PNG and SVG files. Start at {@link org.sawfly.cli.chart.Figure}, which is
 * plain data in the units of its axes; the makers ({@code ...Figure}) turn results into figures, {@link
 * org.sawfly.cli.chart.Charts} writes them. Only {@code PngPainter} knows XChart and AWT. House theme: black on white, no
 * legend boxes, every line labelled where it ends, colour never without a line style.
 */
package org.sawfly.cli.chart;
