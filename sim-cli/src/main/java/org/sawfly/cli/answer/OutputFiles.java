package org.sawfly.cli.answer;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Files that are written whole or not at all: into NAME.part beside the target, which takes the target's place when it is
 * complete. What is no plain file (a pipe, a terminal) is written straight.
 */
public final class OutputFiles {
    private static final String PART = ".part";

    private final boolean force;

    /** With or without leave to overwrite. */
    public OutputFiles(boolean force) {
        this.force = force;
    }

    /** Writes bytes to a stream. */
    @FunctionalInterface
    public interface Content {
        /** Writes everything; the stream is closed afterwards. */
        void writeTo(OutputStream out) throws IOException;
    }

    /** The file a target is written to until it is complete. */
    public static Path partOf(Path target) {
        return target.resolveSibling(target.getFileName() + PART);
    }

    /** Writes text in UTF-8. */
    public void write(Path target, String text) {
        write(target, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Writes a file, or leaves everything as it was and says why. */
    public void write(Path target, Content content) {
        check(target);
        try {
            if (Files.exists(target) && !Files.isRegularFile(target)) {
                fill(target, content);
                return;
            }
            Path real = Files.exists(target) ? target.toRealPath() : target;
            Path part = partOf(real);
            try {
                fill(part, content);
                Files.move(part, real, StandardCopyOption.REPLACE_EXISTING);
            } catch (IOException | RuntimeException e) {
                Files.deleteIfExists(part);
                throw e;
            }
        } catch (IOException e) {
            throw new CannotWrite(target + " could not be written: " + reason(e), e);
        }
    }

    /** Asks before a long run whether a target may be written. */
    public void check(Path target) {
        if (target.getFileName() == null || Files.isDirectory(target)) {
            throw new CannotWrite(target + " is a folder; name a file in it");
        }
        if (!force && Files.isRegularFile(target)) {
            throw new CannotWrite(target + " exists; --force overwrites it");
        }
        Path folder = target.toAbsolutePath().getParent();
        if (!Files.isDirectory(folder)) {
            throw new CannotWrite(target + " could not be written: there is no folder " + folder);
        }
    }

    private static void fill(Path file, Content content) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            content.writeTo(out);
        }
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "not allowed";
        }
        if (e instanceof NoSuchFileException) {
            return "no such folder";
        }
        if (e instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }
}
