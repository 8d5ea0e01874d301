package org.sawfly.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.sawfly.air.Standard;
import org.sawfly.glider.Bifilar;
import org.sawfly.glider.Boom;
import org.sawfly.glider.BoomBuild;
import org.sawfly.glider.BoomHole;
import org.sawfly.glider.BoomStiffness;
import org.sawfly.glider.BoomWall;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Hand;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Part;
import org.sawfly.glider.Planform;
import org.sawfly.glider.Pod;
import org.sawfly.glider.Station;
import org.sawfly.glider.Tailplane;
import org.sawfly.glider.Wing;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;

/**
 * Writes a glider as a full file that reads back to the same numbers. What no change can move on its own - sections, glide
 * settings, doubts about the model - stands as in the file it came from.
 */
final class GliderWriter {
    private static final String[] KEPT = {"glide_settings", "correction", "bench", "seen_in_flight", "uncertain"};

    /** Significant digits: no bench shows as many, and no answer changes with the next one. */
    private static final int DIGITS = 7;

    private final StringBuilder text = new StringBuilder();
    private final Node.Keys from;
    private final Path target;

    private GliderWriter(Node.Keys from, Path target) {
        this.from = from;
        this.target = target;
    }

    /**
     * The whole file.
     *
     * @param glider to be written
     * @param name what it is called
     * @param from tree of the file it came from, with the values of its version
     * @param target where it is going to be; files it names are named from there
     */
    static String write(Glider glider, String name, Node.Keys from, Path target) {
        GliderWriter writer = new GliderWriter(from, target);
        writer.all(glider, name);
        return writer.text.toString();
    }

    private void all(Glider glider, String name) {
        MassProperties whole = MassProperties.of(glider);
        line("# Written by sawfly: a changed glider, balanced again. Places count from the wing's root leading edge.");
        line("glider: " + quoted(name));
        line("format: 1");
        line("ready_to_fly: {" + grams(whole.mass()) + ", "
                + number("cg_mm", -whole.cg().x()) + "}");
        wing(glider.wing(), glider.boom().z());
        tailplane(glider.tailplane(), glider.boom().z());
        fin(glider.fin());
        boom(glider.boom());
        pod(glider.pod());
        line("parts:");
        glider.parts().forEach((part, where) -> part(part, where, glider.boom().z()));
        Part lead = glider.noseLead();
        line("nose_lead: {" + grams(lead.mass()) + ", "
                + number("ahead_mm", lead.place().x()) + "}");
        swings(glider);
        for (String key : KEPT) {
            if (from.get(key) != null) {
                line(key + ": " + Settings.flow(from.get(key)));
            }
        }
    }

    private void wing(Wing wing, double boomZ) {
        line("wing:");
        line("  " + grams(wing.mass()));
        line("  peg_tip: " + (wing.peg() == Hand.RIGHT ? "left" : "right"));
        line("  " + number("dihedral_deg", wing.dihedral()));
        line("  " + number("above_boom_mm", boomZ));
        outline("stations", wing.planform());
        kept("wing", "section");
        kept("wing", "tip_section");
        line("  flaperon: {" + number("chord_pct", wing.flaperon().chordFraction()) + ", "
                + number("from_mm", wing.flaperon().from()) + ", "
                + number("to_mm", wing.flaperon().to()) + "}");
    }

    private void tailplane(Tailplane tailplane, double boomZ) {
        line("tailplane:");
        line("  " + grams(tailplane.mass()));
        line("  " + number("leading_edge_behind_mm", -tailplane.x()));
        line("  " + number("above_boom_mm", boomZ - tailplane.z()));
        line("  " + number("decalage_deg", tailplane.decalage()));
        outline("stations", tailplane.planform());
        kept("tailplane", "section");
        line("  " + number("elevator_chord_pct", tailplane.elevatorChord()));
    }

    private void fin(Fin fin) {
        line("fin:");
        line("  " + grams(fin.mass()));
        line("  " + number("leading_edge_behind_mm", -fin.x()));
        outline("above", fin.above());
        outline("below", fin.below());
        kept("fin", "section");
        line("  " + number("rudder_chord_pct", fin.rudderChord()));
    }

    private void boom(Boom boom) {
        line("boom:");
        line("  " + grams(boom.mass()));
        line("  " + number("front_behind_mm", -boom.frontX()));
        line("  " + number("end_behind_mm", -boom.endX()));
        line("  " + number("front_diameter_mm", boom.frontDiameter()));
        line("  " + number("end_diameter_mm", boom.endDiameter()));
        if (boom.stiffness() instanceof BoomStiffness.OfMaterial material) {
            line("  " + number("specific_modulus_MNm_per_kg", material.specificModulus()));
        } else if (boom.stiffness() instanceof BoomStiffness.OfBendTest test) {
            line("  bend_test: {" + number("held_behind_mm", -test.heldX()) + ", "
                    + number("weight_g", test.force() / Standard.GRAVITY) + ", "
                    + number("hung_behind_mm", -test.hungX()) + ", " + number("moves_mm", test.deflection()) + "}");
        }
        if (!boom.holes().isEmpty()) {
            line("  holes:");
        }
        for (Map.Entry<String, BoomHole> entry : boom.holes().entrySet()) {
            BoomHole hole = entry.getValue();
            line("    " + quoted(entry.getKey()) + ": {" + number("behind_mm", -hole.x()) + ", "
                    + number("diameter_mm", hole.diameter()) + ", side: " + word(hole.side()) + "}");
        }
        build(boom.build());
    }

    private void build(BoomBuild build) {
        BoomWall wall = build.wall();
        if (!wall.equals(BoomWall.USUAL)) {
            line("  wall:");
            if (!Double.isNaN(wall.thickness())) {
                line("    " + number("thickness_mm", wall.thickness()));
            }
            line("    " + number("density_kg_per_m3", wall.density()));
            line("    " + number("modulus_around_GPa", wall.around()));
            line("    " + number("shear_modulus_GPa", wall.shear()));
            line("    " + number("contraction", wall.poisson()));
            line("    " + number("tension_MPa", wall.strength().tension()));
            line("    " + number("compression_MPa", wall.strength().compression()));
            line("    " + number("shear_MPa", wall.strength().shear()));
            line("    strength_from: " + quoted(wall.strength().source()));
        }
        if (!build.slots().isEmpty()) {
            line("  slots:");
        }
        build.slots()
                .forEach((name, slot) -> line("    " + quoted(name) + ": {" + extent(slot.frontX(), slot.endX()) + ", "
                        + number("width_mm", slot.width()) + ", side: " + word(slot.side()) + "}"));
        if (!build.sleeves().isEmpty()) {
            line("  sleeves:");
        }
        build.sleeves().forEach((name, sleeve) -> {
            String parted = Double.isNaN(sleeve.cutX()) ? "" : number("parted_behind_mm", -sleeve.cutX()) + ", ";
            line("    " + quoted(name) + ": {fit: " + word(sleeve.fit()) + ", "
                    + extent(sleeve.frontX(), sleeve.endX()) + ", " + parted + number("wall_mm", sleeve.wall()) + ", "
                    + number("modulus_GPa", sleeve.modulus()) + ", " + number("strength_MPa", sleeve.strength()) + "}");
        });
    }

    private static String extent(double frontX, double endX) {
        return number("from_behind_mm", -frontX) + ", " + number("to_behind_mm", -endX);
    }

    private void pod(Pod pod) {
        line("pod: {" + grams(pod.mass()) + ", " + number("balances_ahead_mm", pod.cgX()) + ", "
                + number("nose_ahead_mm", pod.noseX()) + ", " + number("width_mm", pod.width()) + ", "
                + number("height_mm", pod.height()) + "}");
    }

    private void part(String name, Part part, double boomZ) {
        double x = part.place().x();
        List<String> keys = new ArrayList<>();
        keys.add(grams(part.mass()));
        keys.add(x > 0 ? number("ahead_mm", x) : number("behind_mm", -x));
        optional(keys, "above_boom_mm", boomZ - part.place().z());
        if (part.mount() != Part.Mount.FIXED) {
            keys.add("on: " + word(part.mount()));
        }
        optional(keys, "can_slide_forward_mm", part.slideForward());
        optional(keys, "can_slide_back_mm", part.slideBack());
        line("  " + quoted(name) + ": {" + String.join(", ", keys) + "}");
    }

    private static void optional(List<String> keys, String key, double si) {
        if (si != 0) {
            keys.add(number(key, si));
        }
    }

    private void outline(String key, Planform planform) {
        line("  " + key + ":");
        for (Station station : planform.stations()) {
            line("    - {" + number("out_mm", station.out()) + ", " + number("chord_mm", station.chord()) + ", "
                    + number("back_mm", station.back()) + "}");
        }
    }

    /** Swings on the same strings as before, which show the inertias it has now. */
    private void swings(Glider glider) {
        if (!(from.get("swings") instanceof Node.Keys)) {
            return;
        }
        Map<Bifilar.Axis, SwingReader.Read> before =
                In.read(Edit.only(from, Set.of("swings"), true), new Reading(), SwingReader::read);
        line("swings:");
        SwingReader.swingsOf(glider, before)
                .forEach((axis, swing) -> line("  " + word(axis) + ": {"
                        + number("strings_apart_mm", 2 * swing.halfDistance()) + ", "
                        + number("string_length_mm", swing.length()) + ", " + number("period_s", swing.period())
                        + "}"));
    }

    private void kept(String section, String key) {
        if (from.get(section) instanceof Node.Keys keys && keys.get(key) instanceof Node.Keys values) {
            line("  " + key + ": " + Settings.flow(fromTarget(values)));
        }
    }

    /** A section whose table of one's own, if it names one, is named from the new place. */
    private Node fromTarget(Node.Keys section) {
        if (!(section.get("table") instanceof Node.Scalar table) || !TableFiles.isFile(table.text())) {
            return section;
        }
        Path old = Path.of(table.place().file()).toAbsolutePath().getParent();
        Path file = old.resolve(table.text().strip()).normalize();
        Path folder = target.toAbsolutePath().normalize().getParent();
        boolean near = file.getRoot().equals(folder.getRoot());
        String named = (near ? folder.relativize(file) : file).toString().replace('\\', '/');
        Node moved = new Node.Scalar(table.place(), Node.Kind.QUOTED, named);
        return section.with("table", new Node.Entry(table.place(), moved));
    }

    private static String grams(double mass) {
        return number("mass_g", mass);
    }

    private static String number(String key, double si) {
        return key + ": " + Numbers.machine(Unit.of(key).fromSi(si), DIGITS);
    }

    private static String word(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT);
    }

    private static String quoted(String name) {
        return "\"" + name.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private void line(String line) {
        text.append(line).append('\n');
    }
}
