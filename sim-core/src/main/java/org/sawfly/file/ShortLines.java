package org.sawfly.file;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * The lines of a stream, each byte a character, with any line ends and no longer than a row of numbers can be: a file of
 * another kind, without any line ends, fills no memory.
 */
final class ShortLines {
    /** Characters in the longest line. */
    static final int MOST = 4000;

    private final InputStream in;
    private final StringBuilder line = new StringBuilder();
    private int number;
    private int last;
    private boolean tooLong;

    ShortLines(InputStream in) {
        this.in = new BufferedInputStream(in, 1 << 16);
    }

    /** The next line without its end; null after the last one. */
    String next() throws IOException {
        line.setLength(0);
        int c = in.read();
        if (c == '\n' && last == '\r') {
            c = in.read();
        }
        if (c < 0) {
            return null;
        }
        number++;
        while (c >= 0 && c != '\n' && c != '\r') {
            if (line.length() == MOST) {
                tooLong = true;
                return "";
            }
            line.append((char) c);
            c = in.read();
        }
        last = c;
        return number == 1 ? withoutMark() : line.toString();
    }

    /** Number of the line that came last, from 1. */
    int number() {
        return number;
    }

    /** Whether that line is too long to be read. */
    boolean tooLong() {
        return tooLong;
    }

    /** The first line without the mark of UTF-8 that some programs put before it. */
    private String withoutMark() {
        String first = line.toString();
        return first.startsWith("\u00EF\u00BB\u00BF") ? first.substring(3) : first;
    }
}
