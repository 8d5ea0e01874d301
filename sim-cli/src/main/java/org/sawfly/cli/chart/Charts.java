package org.sawfly.cli.chart;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Writes figures as pictures; the ending of the file's name says which kind. */
public final class Charts {
    /** Kinds of picture. */
    public enum Kind {
        PNG,
        SVG
    }

    private static final String NO_FONTS =
            "this machine has no fonts for a .png; install one (a package such as fonts-dejavu-core) or ask for .svg";

    private Charts() {}

    /**
     * The kind a file's name asks for.
     *
     * @param name name of the file
     * @return its kind
     * @throws IllegalArgumentException when it ends in neither .png nor .svg
     */
    public static Kind kindOf(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.endsWith(".png")) {
            return Kind.PNG;
        }
        if (lower.endsWith(".svg")) {
            return Kind.SVG;
        }
        throw new IllegalArgumentException(name + ": a chart's name ends in .png or .svg");
    }

    /** Writes a picture to a stream, which stays open. */
    public static void write(Figure figure, Kind kind, OutputStream out) throws IOException {
        switch (kind) {
            case SVG -> out.write(SvgPainter.paint(figure).getBytes(StandardCharsets.UTF_8));
            case PNG -> png(figure, out);
        }
    }

    private static void png(Figure figure, OutputStream out) throws IOException {
        if (System.getProperty("java.awt.headless") == null) {
            System.setProperty("java.awt.headless", "true");
        }
        try {
            PngPainter.paint(figure, out);
        } catch (LinkageError | InternalError e) {
            throw new IOException(NO_FONTS, e);
        } catch (RuntimeException e) {
            if (mentionsFonts(e)) {
                throw new IOException(NO_FONTS, e);
            }
            throw e;
        }
    }

    /** A JDK without fonts fails inside its own font configuration. */
    private static boolean mentionsFonts(RuntimeException e) {
        for (Throwable t = e; t != null; t = t.getCause()) {
            for (StackTraceElement frame : t.getStackTrace()) {
                if (frame.getClassName().contains("FontConfiguration")) {
                    return true;
                }
            }
        }
        return false;
    }
}
