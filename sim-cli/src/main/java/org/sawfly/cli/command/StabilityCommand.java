package org.sawfly.cli.command;

import org.sawfly.aero.ModelChoice;
import org.sawfly.aero.TailVolumeModel;
import org.sawfly.air.Standard;
import org.sawfly.cli.answer.Case;
import org.sawfly.cli.answer.StabilityAnswer;
import org.sawfly.flight.Craft;
import org.sawfly.flight.FlightLog;
import org.sawfly.flight.Scenario;
import org.sawfly.motion.AirSample;
import org.sawfly.motion.Linear;
import org.sawfly.stability.ClassicalModes;
import org.sawfly.stability.Derivatives;
import org.sawfly.stability.Modes;
import org.sawfly.stability.TailBuildUp;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Neutral point, margin, volumes, and what it does when left alone. */
@Command(
        name = "stability",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        header = {
            "Neutral point and margin, tail volumes, what it does left to itself.",
            "",
            "  sawfly stability plover.yaml",
            "  sawfly stability plover.yaml --change ready_to_fly.cg_mm=72 --derivatives",
            ""
        })
final class StabilityCommand implements Runnable {
    @Mixin
    private Asked asked;

    @Option(names = "--derivatives", description = "the slopes of forces and moments, each with its meaning")
    private boolean derivatives;

    private final Streams streams;

    StabilityCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public void run() {
        FlightLog log = new FlightLog();
        Case answered = asked.answer(log);
        Craft craft = answered.result().plan().craft();
        AirSample air = Craft.sample(answered.air());
        Linear linear = Linear.around(
                craft.mass().mass(),
                craft.mass().inertia(),
                craft.model(),
                air.density / Standard.DENSITY,
                air,
                craft.cruise());
        TailVolumeModel model = TailVolumeModel.of(
                craft.glider(),
                craft.mass(),
                answered.scenario().corrections(),
                asked.bench().models());
        StabilityAnswer.Looked looked = new StabilityAnswer.Looked(
                Modes.of(linear),
                ClassicalModes.of(linear, craft.cruise(), air.gravity),
                derivatives(ModelChoice.TAIL_VOLUME, answered, air),
                derivatives(ModelChoice.STRIP, answered, air),
                TailBuildUp.of(craft.glider(), model, craft.cruise(), air.density),
                log);
        asked.deliver(StabilityAnswer.of(answered, looked, derivatives), streams);
    }

    /** By a model, in its own trimmed glide of the cruise setting. */
    private Derivatives derivatives(ModelChoice model, Case answered, AirSample air) {
        Craft flown = answered.result().plan().craft();
        Scenario scenario = answered.scenario();
        Craft craft = scenario.flying().model() == model
                ? flown
                : asked.bench()
                        .craft(flown.glider(), scenario.flown(scenario.flying().by(model)), scenario.corrections());
        return Derivatives.around(craft.model(), air, craft.cruise());
    }
}
