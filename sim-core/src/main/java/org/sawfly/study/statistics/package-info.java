/**
 * Statistics of throws and draws: distributions, quantiles, how many throws show a difference, and whether they did. Start
 * at {@link org.sawfly.study.statistics.Verdict}. Plain numbers; heights in metres where they are heights.
 */
package org.sawfly.study.statistics;
