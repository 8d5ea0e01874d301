/**
 * Figures and the painters that put them into PNG and SVG files. A figure knows no renderer; only the painters know the
 * drawing libraries.
 */
package org.sawfly.cli.chart;
