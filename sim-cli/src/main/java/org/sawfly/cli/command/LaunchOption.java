package org.sawfly.cli.command;

import java.nio.file.Path;
import org.sawfly.file.ScenarioFile;
import picocli.CommandLine.Option;

/** Who throws: every command that flies takes it. */
final class LaunchOption {
    @Option(
            names = "--launch",
            paramLabel = "FILE",
            description = "file of the launch; the demo thrower (club, 41 m with this glider) when left out")
    private Path launch;

    /** Whether a launch is named. */
    boolean given() {
        return launch != null;
    }

    /** Reads a glider and the launch. */
    ScenarioFile open(Path glider) {
        return ScenarioFile.open(glider, launch);
    }
}
