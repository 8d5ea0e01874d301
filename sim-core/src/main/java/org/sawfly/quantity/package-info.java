/**
 * Units, quantities and the one place where a number becomes text. Start at {@link org.sawfly.quantity.Quantity}: it
 * states a number of a result once - key, words, unit, decimals - for every text, table, file and chart that shows it.
 * Inside the program everything is SI and radians; {@link org.sawfly.quantity.Unit} converts where people read and
 * write.
 */
package org.sawfly.quantity;
