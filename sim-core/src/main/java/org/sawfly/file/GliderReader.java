package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import java.util.LinkedHashMap;
import java.util.Map;
import org.sawfly.aero.Corrections;
import org.sawfly.flight.GlideSettings;
import org.sawfly.glider.Bifilar;
import org.sawfly.glider.Boom;
import org.sawfly.glider.Correction;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Part;
import org.sawfly.glider.Pod;
import org.sawfly.glider.Tailplane;
import org.sawfly.motion.NoTrimException;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Unit;

/** Reads a glider: the same keys whether ten numbers are given or everything. */
final class GliderReader {
    private static final String CRUISE = "cruise";

    private final Sections.Tables tables;
    private final CruiseDecalage cruise;
    private final Held held;

    /**
     * A reader of a glider as it is today.
     *
     * @param tables where section tables are found
     * @param cruise finds the decalage nobody measured
     */
    GliderReader(Sections.Tables tables, CruiseDecalage cruise) {
        this(tables, cruise, null);
    }

    /** A reader of a changed glider, with what weighing and balancing found before the change. */
    GliderReader(Sections.Tables tables, CruiseDecalage cruise, Held held) {
        this.tables = tables;
        this.cruise = cruise;
        this.held = held;
    }

    /** Finds the decalage that trims the cruise with the elevator level [rad]. */
    @FunctionalInterface
    interface CruiseDecalage {
        /** The decalage for a glider that stands there with none [rad]. */
        double of(Glider glider, Corrections corrections, double camberDown);
    }

    /**
     * What is found out once, today, and held for every changed version.
     *
     * @param lead       nose lead where it was not weighed [kg]
     * @param correction of mass and moment
     * @param decalage   found for the cruise [rad]; NaN when it stands in the file
     * @param allListed  whether the parts in the file are all there are
     */
    record Held(double lead, Correction correction, double decalage, boolean allListed) {}

    /**
     * A glider as read.
     *
     * @param glider      with everything resolved
     * @param held        for changed versions
     * @param balance     what scale and balance showed
     * @param corrections doubts about the model
     * @param settings    for the glide
     */
    record Read(Glider glider, Held held, BalanceReader balance, Corrections corrections, GlideSettings settings) {}

    Read read(In in) {
        String name = in.text("glider", "plover", "name of the glider");
        format(in);
        BalanceReader balance = BalanceReader.read(in);
        WingReader.Read wing = in.map("wing", "the wing", w -> WingReader.read(w, tables));
        double boomZ = wing.aboveBoom();
        double root = wing.wing().planform().stations().get(0).chord();
        Boom boom = in.map("boom", "the boom, a tapered tube", b -> HullReader.boom(b, root, boomZ));
        Pod pod = in.map("pod", "the pod with its hatch", p -> HullReader.pod(p, boomZ));
        Fin fin = in.map("fin", "the fin with its rudder", f -> TailReader.fin(f, -boom.endX(), boomZ, tables));
        boolean[] measured = new boolean[1];
        Tailplane tailplane = in.map("tailplane", "the tailplane with its elevator", t -> {
            measured[0] = t.has("decalage_deg");
            return TailReader.tailplane(t, fin, boomZ, tables);
        });
        PartsReader reader = new PartsReader(pod.noseX(), -boom.endX(), boomZ, -tailplane.x());
        boolean allListed = held == null ? leadWeighed(in) : held.allListed();
        Map<String, Part> parts = reader.read(in, allListed);
        PartsReader.NoseLead lead = reader.lead(in);
        Map<String, WeighingReader.Read> weighings = WeighingReader.read(in);
        Map<Bifilar.Axis, SwingReader.Read> swings = SwingReader.read(in);
        SeenReader.read(in);
        GlideSettings settings = settings(in);
        Corrections square = CorrectionReader.read(in);
        BenchReader bench = BenchReader.read(in);
        UncertaintyReader.model(in);

        Part now = lead.part(Double.isNaN(lead.mass()) ? 0 : lead.mass());
        Glider glider = new Glider(name, wing.wing(), tailplane, fin, boom, pod, parts, now, Correction.NONE);
        glider = WeighingReader.apply(glider, weighings, new LinkedHashMap<>());
        if (!lead.given()) {
            balance.need();
        }
        if (held == null) {
            glider = SwingReader.apply(balance.close(glider, lead.given(), wing.light()), swings);
        } else {
            glider = glider.withCorrection(held.correction());
            glider = lead.given() ? glider : glider.withNoseLead(held.lead());
        }
        Overlap.check(in, glider);
        double decalage = Double.NaN;
        if (!measured[0]) {
            decalage = held == null || Double.isNaN(held.decalage())
                    ? decalage(in, glider, square, settings)
                    : held.decalage();
            glider = withDecalage(glider, decalage);
        }
        Corrections corrections = square.withBench(bench.of(glider));
        Held resolved = new Held(glider.noseLead().mass(), glider.correction(), decalage, allListed);
        return new Read(glider, resolved, balance, corrections, settings);
    }

    private static boolean leadWeighed(In in) {
        return in.keysOf("nose_lead").get("nose_lead") instanceof Node.Keys lead && lead.get("mass_g") != null;
    }

    private double decalage(In in, Glider glider, Corrections corrections, GlideSettings settings) {
        if (in.reading().problems().any()) {
            return 0;
        }
        double found;
        try {
            found = cruise.of(glider, corrections, settings.cruiseCamber());
        } catch (NoTrimException e) {
            in.problem(
                    "tailplane", "no decalage is found that trims the cruise: " + e.getMessage(), "decalage_deg: 1.2");
            return 0;
        }
        double degrees = Unit.DEGREE.fromSi(found);
        in.reading()
                .assume(new Assumed(
                        "tailplane.decalage_deg",
                        degrees,
                        Band.around(degrees, 0.8),
                        Unit.DEGREE,
                        "what trims the cruise with the elevator level"));
        return found;
    }

    private static Glider withDecalage(Glider glider, double decalage) {
        Tailplane t = glider.tailplane();
        Tailplane turned =
                new Tailplane(t.mass(), t.planform(), t.x(), t.z(), decalage, t.section(), t.elevatorChord());
        return glider.withTails(turned, glider.fin());
    }

    private static GlideSettings settings(In in) {
        Map<String, Double> read = in.named(
                "glide_settings",
                CRUISE,
                "camber for gliding; the one named cruise is flown after the launch",
                (name, setting) -> {
                    double up = SeenReader.signed(setting, "camber_up_mm", "camber_down_mm", "camber");
                    if (Double.isNaN(up)) {
                        setting.needed("camber_down_mm", "camber at the root trailing edge, or camber_up_mm", "1");
                    }
                    return Double.isNaN(up) ? 0 : -up;
                });
        if (!in.has("glide_settings")) {
            Map<String, Double> usual = new LinkedHashMap<>();
            assume(in, usual, "speed", -1);
            assume(in, usual, CRUISE, 1);
            assume(in, usual, "thermal", 4);
            return new GlideSettings(usual, CRUISE);
        }
        if (!read.containsKey(CRUISE)) {
            in.problem("glide_settings", "one of the settings must be named cruise", "cruise: {camber_down_mm: 1}");
            read = Map.of(CRUISE, 0.0);
        }
        return new GlideSettings(read, CRUISE);
    }

    private static void assume(In in, Map<String, Double> settings, String name, double downMm) {
        settings.put(name, Unit.MILLIMETRE.toSi(downMm));
        String key = downMm < 0 ? "camber_up_mm" : "camber_down_mm";
        in.reading()
                .assume(new Assumed(
                        "glide_settings." + name + "." + key,
                        Math.abs(downMm),
                        Band.around(Math.abs(downMm), 1),
                        Unit.MILLIMETRE,
                        "camber of the " + name + " setting"));
    }

    /** The number of the format; there is only one yet. */
    static void format(In in) {
        in.neutral("format", between(1, 1), 1, "version of the file's keys");
    }
}
