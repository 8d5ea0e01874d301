package org.sawfly.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;

/**
 * A file of any kind, looked at with all it names.
 *
 * @param kind    glider, launch or study
 * @param name    what it calls itself
 * @param assumed what nobody gave and what stands in for it; of a study that of its glider and launch
 * @param doubts  what is unusual and accepted
 */
public record FileCheck(String kind, String name, List<Assumed> assumed, List<Problem> doubts) {
    /**
     * Reads a file.
     *
     * @throws InputException with everything that is wrong in it
     */
    public static FileCheck of(Path path) {
        Reading reading = new Reading();
        return of(new Documents(reading.problems()).any(path), path, reading);
    }

    /**
     * Reads a text from a stream, which names other files relative to the folder one is in.
     *
     * @param name what messages call it
     * @throws InputException with everything that is wrong in it
     * @throws IOException when the stream cannot be read
     */
    public static FileCheck of(String name, InputStream in) throws IOException {
        Reading reading = new Reading();
        return of(new Documents(reading.problems()).stream(name, in), Path.of(name), reading);
    }

    private static FileCheck of(Documents.Document document, Path path, Reading reading) {
        if (document == null || document.kind() == null) {
            reading.problems().throwIfAny();
            throw new IllegalStateException(path + " was not read, and nothing is wrong with it");
        }
        FileCheck check =
                switch (document.kind()) {
                    case GLIDER -> {
                        GliderReader reader = new GliderReader(new TableFiles(), new TrimmedDecalage());
                        String name = In.read(document.tree(), reading, reader::read)
                                .glider()
                                .name();
                        yield made(
                                document,
                                name,
                                reading.assumed(),
                                reading.problems().doubts());
                    }
                    case LAUNCH -> {
                        String name = In.read(document.tree(), reading, LaunchReader::read)
                                .launch()
                                .name();
                        yield made(
                                document,
                                name,
                                reading.assumed(),
                                reading.problems().doubts());
                    }
                    case STUDY -> {
                        StudyFile study = StudyFile.of(document);
                        yield made(
                                document,
                                study.name(),
                                study.scenarios().assumed(),
                                study.scenarios().doubts());
                    }
                };
        reading.problems().throwIfAny();
        return check;
    }

    private static FileCheck made(
            Documents.Document document, String name, List<Assumed> assumed, List<Problem> doubts) {
        return new FileCheck(document.kind().key(), name, assumed, doubts);
    }
}
