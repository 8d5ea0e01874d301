package org.sawfly.cli.command;

import java.util.List;
import java.util.Locale;
import org.sawfly.cli.answer.Answer;
import org.sawfly.cli.answer.SwingAnswer;
import org.sawfly.file.ScenarioFile;
import org.sawfly.glider.Bifilar;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.study.SwungInertia;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** An inertia by swinging. */
@Command(
        name = "swing",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        header = {
            "The inertia from a swing on two strings, and how well it is known.",
            "",
            "  sawfly swing plover.yaml --axis yaw --apart 600 --length 1200 --period 2.57",
            "  sawfly swing plover.yaml --axis roll --apart 600+-2 --length 1200+-3 \\",
            "      --period 2.13+-0.01",
            ""
        })
final class SwingCommand implements Runnable {
    private static final String BETWEEN = "\\+-";

    @Mixin
    private GliderOptions files;

    @Mixin
    private OutputOptions output;

    @Option(names = "--axis", paramLabel = "AXIS", required = true, description = "roll, pitch or yaw: it hung upright")
    private String axis;

    @Option(
            names = "--mass",
            paramLabel = "G",
            description = "what was swung, g; the glider's own when left out; 231+-1")
    private String mass;

    @Option(names = "--apart", paramLabel = "MM", required = true, description = "between the strings, mm; 600+-2")
    private String apart;

    @Option(names = "--length", paramLabel = "MM", required = true, description = "of the strings, mm; 1200+-5")
    private String length;

    @Option(names = "--period", paramLabel = "S", required = true, description = "to and fro, s; 1.95+-0.01")
    private String period;

    private final Streams streams;

    SwingCommand(Streams streams) {
        this.streams = streams;
    }

    /** A measure and how well it is known [SI]. */
    private record Measured(double value, double doubt) {
        static Measured of(String written, String option, Unit unit, double usualDoubt) {
            String[] parts = written.strip().split(BETWEEN, -1);
            try {
                double value = Double.parseDouble(parts[0]);
                double doubt = parts.length > 1 ? Double.parseDouble(parts[1]) : usualDoubt;
                if (parts.length < 3 && value > 0 && doubt >= value && Double.isFinite(doubt)) {
                    throw new CommandException(
                            Exit.WRONG_USE,
                            option + " " + written + ": known to " + Numbers.shortest(doubt, 6)
                                    + " only, which is all of it");
                }
                if (parts.length < 3 && value > 0 && doubt >= 0 && Double.isFinite(value) && Double.isFinite(doubt)) {
                    return new Measured(unit.toSi(value), unit.toSi(doubt));
                }
            } catch (NumberFormatException e) {
                // said below
            }
            throw new CommandException(
                    Exit.WRONG_USE, option + " " + written + ": a number above 0 is needed, or 600+-2 to say how well");
        }
    }

    @Override
    public void run() {
        output.check();
        Bifilar.Axis about = List.of(Bifilar.Axis.values()).stream()
                .filter(one -> one.name().equals(axis.strip().toUpperCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() ->
                        new CommandException(Exit.WRONG_USE, "--axis " + axis + ": choose from roll, pitch, yaw"));
        Measured between = Measured.of(apart, "--apart", Unit.MILLIMETRE, 2);
        Measured strings = Measured.of(length, "--length", Unit.MILLIMETRE, 5);
        Measured time = Measured.of(period, "--period", Unit.SECOND, 0.01);
        ScenarioFile file = files.open();
        Glider glider = file.today();
        Measured weight = mass == null
                ? new Measured(MassProperties.of(glider).mass(), Unit.GRAM.toSi(1))
                : Measured.of(mass, "--mass", Unit.GRAM, 1);
        Bifilar swing = new Bifilar(about, weight.value(), between.value() / 2, strings.value(), time.value());
        SwungInertia.Doubts doubts =
                new SwungInertia.Doubts(weight.doubt(), between.doubt() / 2, strings.doubt(), time.doubt());
        Answer answer = SwingAnswer.of(glider.name(), swing, SwungInertia.of(glider, swing, doubts));
        GliderOptions.tellDoubts(file, answer);
        output.deliver(answer, streams);
    }
}
