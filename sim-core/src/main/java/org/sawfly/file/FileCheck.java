package org.sawfly.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * A file of any kind, looked at with all it names.
 *
 * @param kind    glider, launch or study
 * @param name    what it calls itself
 * @param assumed what nobody gave and what stands in for it; of a study that of its glider and launch
 * @param doubts  what is unusual and accepted
 * @param effects what each assumption may do to the launch height, by path [m]: infinite where it would not fly; empty for
 *                a launch, which needs a glider for it
 */
public record FileCheck(
        String kind, String name, List<Assumed> assumed, List<Problem> doubts, Map<String, Double> effects) {
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
                    case GLIDER -> glider(document, reading);
                    case LAUNCH -> {
                        String name = In.read(document.tree(), reading, LaunchReader::read)
                                .launch()
                                .name();
                        yield made(document, name, reading, Map.of());
                    }
                    case STUDY -> {
                        StudyFile study = StudyFile.of(document);
                        List<Assumed> assumed = study.scenarios().assumed();
                        yield new FileCheck(
                                document.kind().key(),
                                study.name(),
                                assumed,
                                study.scenarios().doubts(),
                                AssumedEffects.of(study.scenarios(), assumed));
                    }
                };
        reading.problems().throwIfAny();
        return check;
    }

    private static FileCheck glider(Documents.Document document, Reading reading) {
        GliderReader reader = new GliderReader(new TableFiles(), new TrimmedDecalage());
        String name = In.read(document.tree(), reading, reader::read).glider().name();
        reading.problems().throwIfAny();
        ScenarioFile thrown = ScenarioFile.open(new Documents(new Problems()), new Reading(), document, null);
        return made(document, name, reading, AssumedEffects.of(thrown, reading.assumed()));
    }

    private static FileCheck made(
            Documents.Document document, String name, Reading reading, Map<String, Double> effects) {
        return new FileCheck(
                document.kind().key(),
                name,
                reading.assumed(),
                reading.problems().doubts(),
                effects);
    }
}
