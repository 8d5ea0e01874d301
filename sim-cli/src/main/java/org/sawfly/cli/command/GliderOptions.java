package org.sawfly.cli.command;

import java.nio.file.Path;
import org.sawfly.cli.answer.Answer;
import org.sawfly.file.Problem;
import org.sawfly.file.ScenarioFile;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The glider and the launch: every command takes both. */
final class GliderOptions {
    @Parameters(index = "0", paramLabel = "GLIDER", description = "file of the glider")
    private Path glider;

    @Mixin
    private LaunchOption launch;

    /** Reads both files. */
    ScenarioFile open() {
        return launch.open(glider);
    }

    /** Tells what was unusual in the files and who throws when nobody was named. */
    void tell(ScenarioFile file, Answer answer) {
        tell(file, launch.given(), answer);
    }

    /** The same for a command that knows whether a thrower was named. */
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
