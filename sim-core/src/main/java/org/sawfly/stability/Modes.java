package org.sawfly.stability;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.complex.Complex;
import org.sawfly.motion.Linear;

/**
 * How a glider left to itself moves after a small push, controls held: the eigenvalues of the linear equations, named.
 *
 * <p>In the plane of symmetry four eigenvalues make two pairs, the slower speed and height, the faster nose up and down;
 * either may be two real ones. A fifth, the fastest real one, is the lag of the downwash and is left out. Sideways a pair is
 * the nose swinging left and right, of two real ones the faster is roll and the slower the circle; two pairs mean that roll
 * and circle swing together, four real ones that the nose does not swing.
 *
 * @param speedAndHeight phugoid
 * @param noseUpDown short period
 * @param noseLeftRight Dutch roll
 * @param roll
 * @param circle spiral; the same swing as {@code roll} when both go together
 */
public record Modes(Mode speedAndHeight, Mode noseUpDown, Mode noseLeftRight, Mode roll, Mode circle) {
    private static final Comparator<Complex> BY_SIZE = Comparator.comparingDouble(Complex::norm);

    /** Of the equations made linear around a glide. */
    public static Modes of(Linear linear) {
        return of(linear.longitudinal(), linear.lateral());
    }

    /**
     * Of two matrices.
     *
     * @param longitudinal of order 4, or 5 with the lag of the downwash
     * @param lateral of order 4
     */
    public static Modes of(double[][] longitudinal, double[][] lateral) {
        List<Complex[]> pairs = pairs(Eigenvalues.of(longitudinal));
        Mode slow = mode(Mode.Kind.SPEED_AND_HEIGHT, pairs.get(0));
        Mode fast = mode(Mode.Kind.NOSE_UP_DOWN, pairs.get(1));
        Complex[] side = Eigenvalues.of(lateral);
        List<Complex> swinging = swinging(side);
        List<Complex> real = real(side);
        if (swinging.size() == 1) {
            return new Modes(
                    slow,
                    fast,
                    swing(Mode.Kind.NOSE_LEFT_RIGHT, swinging.get(0)),
                    alone(Mode.Kind.ROLL, real.get(1)),
                    alone(Mode.Kind.CIRCLE, real.get(0)));
        }
        if (swinging.size() == 2) {
            return new Modes(
                    slow,
                    fast,
                    swing(Mode.Kind.NOSE_LEFT_RIGHT, swinging.get(1)),
                    swing(Mode.Kind.ROLL, swinging.get(0)),
                    swing(Mode.Kind.CIRCLE, swinging.get(0)));
        }
        return new Modes(
                slow,
                fast,
                mode(Mode.Kind.NOSE_LEFT_RIGHT, new Complex[] {real.get(1), real.get(2)}),
                alone(Mode.Kind.ROLL, real.get(3)),
                alone(Mode.Kind.CIRCLE, real.get(0)));
    }

    /** All five. */
    public List<Mode> all() {
        return List.of(noseUpDown, speedAndHeight, noseLeftRight, roll, circle);
    }

    /** Eigenvalues two by two, slowest pair first; of an odd number the fastest real one is left out. */
    private static List<Complex[]> pairs(Complex[] eigenvalues) {
        List<Complex[]> pairs = new ArrayList<>();
        for (Complex one : swinging(eigenvalues)) {
            pairs.add(new Complex[] {one, one.conjugate()});
        }
        List<Complex> real = real(eigenvalues);
        for (int i = 0; i + 1 < real.size(); i += 2) {
            pairs.add(new Complex[] {real.get(i), real.get(i + 1)});
        }
        pairs.sort(Comparator.comparingDouble(pair -> pair[0].norm() * pair[1].norm()));
        return pairs;
    }

    /** Those above the real axis, slowest first. */
    private static List<Complex> swinging(Complex[] eigenvalues) {
        List<Complex> list = new ArrayList<>();
        for (Complex one : eigenvalues) {
            if (one.getImaginary() > 0) {
                list.add(one);
            }
        }
        list.sort(BY_SIZE);
        return list;
    }

    private static List<Complex> real(Complex[] eigenvalues) {
        List<Complex> list = new ArrayList<>();
        for (Complex one : eigenvalues) {
            if (one.getImaginary() == 0) {
                list.add(one);
            }
        }
        list.sort(BY_SIZE);
        return list;
    }

    private static Mode mode(Mode.Kind kind, Complex[] pair) {
        return pair[0].getImaginary() == 0
                ? new Mode(kind, pair[0].getReal(), 0, pair[1].getReal())
                : swing(kind, pair[0]);
    }

    private static Mode swing(Mode.Kind kind, Complex one) {
        return new Mode(kind, one.getReal(), one.getImaginary(), Double.NaN);
    }

    private static Mode alone(Mode.Kind kind, Complex one) {
        return new Mode(kind, one.getReal(), 0, Double.NaN);
    }
}
