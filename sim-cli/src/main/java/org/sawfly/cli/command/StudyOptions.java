package org.sawfly.cli.command;

import picocli.CommandLine.Mixin;

/** What the commands about several versions ask: who throws, what is changed, how the work is done, answered where to. */
final class StudyOptions {
    @Mixin
    private LaunchOption launch;

    @Mixin
    private ChangeOptions change;

    @Mixin
    private DrawOptions draw;

    @Mixin
    private RunOptions run;

    @Mixin
    private OutputOptions output;

    LaunchOption launch() {
        return launch;
    }

    ChangeOptions change() {
        return change;
    }

    DrawOptions draw() {
        return draw;
    }

    OutputOptions output() {
        return output;
    }

    /** How many threads work. */
    int threads() {
        return run.threads();
    }

    /** Refuses, before any work, what could not be done or written afterwards. */
    void check() {
        output.check();
        draw.check();
        run.threads();
    }
}
