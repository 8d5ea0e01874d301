package org.sawfly.cli.command;

import org.sawfly.cli.answer.CardAnswer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** What a glider file without a command asks for. */
@Command(
        name = Root.CARD,
        mixinStandardHelpOptions = true,
        hidden = true,
        header = {
            "The card of a glider: mass, balance, margins, launch height, sink.",
            "",
            "  sawfly plover.yaml",
            "  sawfly plover.yaml --launch strong.yaml",
            ""
        })
final class CardCommand implements Runnable {
    @Mixin
    private Asked asked;

    private final Streams streams;

    CardCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public void run() {
        asked.deliver(CardAnswer.of(asked.answer(null)), streams);
    }
}
