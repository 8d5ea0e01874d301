package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import org.sawfly.aero.Corrections;

/** Reads the doubts about the model: neutral when left out. */
final class CorrectionReader {
    private static final Bounds FACTOR = between(1, 1000).usually(50, 200);

    private CorrectionReader() {}
}
