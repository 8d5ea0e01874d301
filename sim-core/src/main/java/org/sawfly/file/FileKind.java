package org.sawfly.file;

import java.nio.file.Path;

/** Tells what a file is by its first key, before it is read as such. */
public final class FileKind {
    private FileKind() {}

    /** Whether it is a study; false for everything else, also for what cannot be read. */
    public static boolean isStudy(Path path) {
        Documents.Document document = new Documents(new Problems()).any(path);
        return document != null && document.kind() == Documents.Kind.STUDY;
    }
}
