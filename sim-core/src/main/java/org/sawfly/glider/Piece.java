package org.sawfly.glider;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * One named piece of a glider with its mass, place and inertia.
 *
 * @param name as the file calls it: wing, tailplane, fin, boom, pod, a part's own name, nose lead
 * @param properties mass, CG in build axes, inertia about the piece's own CG
 */
public record Piece(String name, MassProperties properties) {
    /** Names of the pieces that every glider has. */
    public static final String WING = "wing";

    public static final String TAILPLANE = "tailplane";
    public static final String FIN = "fin";
    public static final String BOOM = "boom";
    public static final String POD = "pod";
    public static final String NOSE_LEAD = "nose lead";

    /** All pieces of a glider in the order a builder lists them; the correction of weighing is not among them. */
    public static List<Piece> all(Glider glider) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece(WING, Shapes.wing(glider.wing())));
        pieces.add(new Piece(TAILPLANE, Shapes.tailplane(glider.tailplane())));
        pieces.add(new Piece(FIN, Shapes.fin(glider.fin())));
        pieces.add(new Piece(BOOM, BoomTube.of(glider.boom()).whole()));
        pieces.add(new Piece(POD, Shapes.pod(glider.pod(), glider.boom().frontX())));
        for (Map.Entry<String, Part> entry : glider.parts().entrySet()) {
            pieces.add(new Piece(entry.getKey(), ofPart(entry.getValue(), glider.boom())));
        }
        pieces.add(new Piece(NOSE_LEAD, ofPart(glider.noseLead(), glider.boom())));
        return pieces;
    }

    private static MassProperties ofPart(Part part, Boom boom) {
        return part.mount() == Part.Mount.ALONG_BOOM
                ? Shapes.rod(part.mass(), part.place(), part.lengthAlong(boom))
                : Shapes.point(part.mass(), part.place());
    }
}
