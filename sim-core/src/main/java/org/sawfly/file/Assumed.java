package org.sawfly.file;

import org.sawfly.quantity.Band;
import org.sawfly.quantity.Unit;

/**
 * A number nobody gave and what stands in for it.
 *
 * @param path  key path under which it could be given
 * @param value what is assumed [unit of the key]
 * @param band  9 times in 10 it lies in here [unit of the key]; the value alone when nothing depends on it
 * @param unit  unit of the key
 * @param words what it is, and why this value
 */
public record Assumed(String path, double value, Band band, Unit unit, String words) {}
