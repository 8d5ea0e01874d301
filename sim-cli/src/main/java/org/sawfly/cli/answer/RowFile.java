package org.sawfly.cli.answer;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.function.Consumer;

/**
 * Rows written one by one into NAME.part, which takes the place of NAME when the last is in. A run that was stopped leaves
 * whole rows there, with which another run can go on. What is no plain file (a pipe, a terminal) is written straight.
 */
public final class RowFile implements AutoCloseable {
    private final Path target;
    private final Path part;
    private final Writer out;

    private RowFile(Path target, Path part, Writer out) {
        this.target = target;
        this.part = part;
        this.out = out;
    }

    /** Starts anew with a header line. */
    public static RowFile begin(Path target, String header) {
        boolean straight = Files.exists(target) && !Files.isRegularFile(target);
        Path part = straight ? target : OutputFiles.partOf(target);
        try {
            RowFile file = new RowFile(target, part, writer(part, StandardOpenOption.TRUNCATE_EXISTING));
            file.add(header);
            return file;
        } catch (IOException e) {
            throw cannot(part, e);
        }
    }

    /** Whether a stopped run left something to go on with. */
    public static boolean canResume(Path target) {
        return Files.isRegularFile(OutputFiles.partOf(target));
    }

    /**
     * Goes on where a run was stopped.
     *
     * @param target the file to be
     * @param header that the rows must stand under
     * @param rows gets every whole row that is there, with its line feed
     */
    public static RowFile resume(Path target, String header, Consumer<String> rows) {
        Path part = OutputFiles.partOf(target);
        try {
            cutToWholeLines(part);
            try (BufferedReader in = Files.newBufferedReader(part, StandardCharsets.UTF_8)) {
                String first = in.readLine();
                if (first == null || !(first + "\n").equals(header)) {
                    throw new CannotWrite(part + " holds other columns; delete it or leave out --resume");
                }
                for (String line = in.readLine(); line != null; line = in.readLine()) {
                    rows.accept(line + "\n");
                }
            }
            return new RowFile(target, part, writer(part, StandardOpenOption.APPEND));
        } catch (IOException e) {
            throw cannot(part, e);
        }
    }

    /** Adds a line, which ends in its line feed. */
    public void add(String line) {
        try {
            out.write(line);
        } catch (IOException e) {
            throw cannot(part, e);
        }
    }

    /** Makes the rows so far safe. */
    public void flush() {
        try {
            out.flush();
        } catch (IOException e) {
            throw cannot(part, e);
        }
    }

    /** The last row is in: the file takes its name. */
    public void complete() {
        try {
            out.close();
            if (!part.equals(target)) {
                Path real = Files.exists(target) ? target.toRealPath() : target;
                Files.move(part, real, StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException e) {
            throw cannot(target, e);
        }
    }

    @Override
    public void close() {
        try {
            out.close();
        } catch (IOException e) {
            throw cannot(part, e);
        }
    }

    private static Writer writer(Path part, StandardOpenOption how) throws IOException {
        return new BufferedWriter(Files.newBufferedWriter(
                part, StandardCharsets.UTF_8, StandardOpenOption.CREATE, StandardOpenOption.WRITE, how));
    }

    private static void cutToWholeLines(Path part) throws IOException {
        try (RandomAccessFile file = new RandomAccessFile(part.toFile(), "rw")) {
            long end = file.length();
            while (end > 0) {
                file.seek(end - 1);
                if (file.read() == '\n') {
                    break;
                }
                end--;
            }
            file.setLength(end);
        }
    }

    private static CannotWrite cannot(Path file, IOException e) {
        String reason = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
        return new CannotWrite(file + " could not be written: " + reason, e);
    }
}
