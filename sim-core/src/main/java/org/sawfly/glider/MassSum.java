package org.sawfly.glider;

import org.sawfly.math.Inertia;
import org.sawfly.math.Vec3;

/** Adds up mass, first and second moments of mass elements in build axes. */
final class MassSum {
    private double mass;
    private double mx;
    private double my;
    private double mz;
    private double xx;
    private double yy;
    private double zz;
    private double xy;
    private double xz;
    private double yz;

    /** An element dm [kg] at place p [m]. */
    void add(double dm, Vec3 p) {
        mass += dm;
        mx += dm * p.x();
        my += dm * p.y();
        mz += dm * p.z();
        spread(dm, p);
    }

    /** The element dm [kg] is spread about its centre with the mean square of d^2 along direction and length d [m]. */
    void spread(double dm, Vec3 d) {
        xx += dm * d.x() * d.x();
        yy += dm * d.y() * d.y();
        zz += dm * d.z() * d.z();
        xy += dm * d.x() * d.y();
        xz += dm * d.x() * d.z();
        yz += dm * d.y() * d.z();
    }

    /** Scaled to a total mass [kg], with inertia about its centre of gravity. */
    MassProperties scaledTo(double total) {
        double k = total / mass;
        Vec3 cg = new Vec3(mx / mass, my / mass, mz / mass);
        Inertia aboutOrigin = new Inertia(k * (yy + zz), k * (xx + zz), k * (xx + yy), k * xy, k * xz, k * yz);
        return new MassProperties(total, cg, aboutOrigin.minus(Inertia.ofPoint(total, cg)));
    }
}
