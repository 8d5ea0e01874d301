package org.sawfly.cli.command;

import java.util.List;
import org.sawfly.cli.answer.Answer;
import org.sawfly.cli.answer.Case;
import org.sawfly.file.ScenarioFile;
import org.sawfly.flight.FlightLog;
import org.sawfly.flight.Scenario;
import org.sawfly.study.Setting;
import org.sawfly.study.Workbench;
import picocli.CommandLine.Mixin;

/** What the commands about one glider ask: which glider, thrown by whom, changed how, answered where to. */
final class Asked {
    @Mixin
    private GliderOptions files;

    @Mixin
    private ChangeOptions changes;

    @Mixin
    private OutputOptions output;

    private final Workbench bench = new Workbench();
    private ScenarioFile file;

    OutputOptions output() {
        return output;
    }

    Workbench bench() {
        return bench;
    }

    /** The files, after {@link #answer}. */
    ScenarioFile file() {
        return file;
    }

    /** Everything that is changed and how it is gone about. */
    List<Setting> settings() {
        return changes.all();
    }

    /** Reads and flies it; with a log, writes the flight down. */
    Case answer(FlightLog log) {
        output.check();
        file = files.open();
        List<Setting> all = changes.all();
        Scenario scenario = file.with(all);
        return new Case(changes.changes(), scenario, bench.answer(scenario, log));
    }

    /** How it is gone about, without what is changed. */
    List<Setting> rules() {
        return changes.rules();
    }

    /** Tells what was assumed about thrower and files, and writes the answer. */
    void deliver(Answer answer, Streams streams) {
        files.tell(file, answer);
        output.deliver(answer, streams);
    }
}
