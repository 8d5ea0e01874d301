package org.sawfly.study;

/**
 * Why a number is uncertain.
 *
 * @param of what is uncertain
 * @param share of the number's variance it explains by itself [1]
 */
public record Reason(Uncertain of, double share) {}
