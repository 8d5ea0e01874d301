package org.sawfly.file;

/**
 * One thing wrong with an input.
 *
 * @param place where it stands
 * @param path  keys from the top of the file, joined by points; empty for the file as a whole
 * @param what  what is wrong, with value, bound and unit
 * @param maybe a guess at what was meant, without the word "Maybe"; empty when there is none
 */
public record Problem(Place place, String path, String what, String maybe) implements Comparable<Problem> {
    /** Keeps what any terminal can show. */
    public Problem {
        path = Ascii.printable(path);
        what = Ascii.printable(what);
        maybe = Ascii.printable(maybe);
    }

    @Override
    public int compareTo(Problem other) {
        return place.compareTo(other.place);
    }

    /** {@code file:line:column: path: what}, with the guess on a line of its own. */
    @Override
    public String toString() {
        String head = place + ": " + (path.isEmpty() ? "" : path + ": ") + what;
        return maybe.isEmpty() ? head : head + "\n  Maybe " + maybe;
    }
}
