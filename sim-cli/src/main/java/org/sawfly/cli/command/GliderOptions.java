package org.sawfly.cli.command;

import java.nio.file.Path;
import org.sawfly.cli.answer.Answer;
import org.sawfly.file.Problem;
import org.sawfly.file.ScenarioFile;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The glider and the launch: every command takes both. */
final class GliderOptions {
    @Parameters(index = "0", paramLabel = "GLIDER", description = "file of the glider")
    private Path glider;

    @Option(
            names = "--launch",
            paramLabel = "FILE",
            description = "file of the launch; the demo thrower (club, 41 m with this glider) when left out")
    private Path launch;

    /** Reads both files. */
    ScenarioFile open() {
        return open(glider, launch);
    }

    static ScenarioFile open(Path glider, Path launch) {
        return ScenarioFile.open(glider, launch);
    }

    Path glider() {
        return glider;
    }

    Path launch() {
        return launch;
    }

    /** Tells what was unusual in the files and who throws when nobody was named. */
    static void tell(ScenarioFile file, boolean throwerNamed, Answer answer) {
        if (!throwerNamed) {
            answer.warn("no --launch given: " + ScenarioFile.DEMO_THROWER
                    + " throws (41 m with this glider as it is today)");
        }
        tellDoubts(file, answer);
    }

    /** Tells what was unusual in the files. */
    static void tellDoubts(ScenarioFile file, Answer answer) {
        for (Problem doubt : file.doubts()) {
            answer.warn(doubt.toString());
        }
    }
}
