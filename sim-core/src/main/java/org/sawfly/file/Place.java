package org.sawfly.file;

/**
 * Where something stands in a file. Lines and columns count from 1, columns in characters as an editor shows them; 0
 * means the file as a whole.
 *
 * @param file   name as the user gave it
 * @param line   line, from 1
 * @param column column, from 1
 */
public record Place(String file, int line, int column) implements Comparable<Place> {
    static Place whole(String file) {
        return new Place(file, 0, 0);
    }

    @Override
    public int compareTo(Place other) {
        int byFile = file.compareTo(other.file);
        if (byFile != 0) {
            return byFile;
        }
        return line != other.line ? Integer.compare(line, other.line) : Integer.compare(column, other.column);
    }

    /** {@code file:line:column}, or the file alone when the place is the whole file. */
    @Override
    public String toString() {
        return line == 0 ? file : file + ":" + line + ":" + column;
    }
}
