package org.shutoffbench.joint;

import java.util.ArrayList;
import java.util.List;

/** A source of torque that makes no clamp force: a locking element or a disturbance of a field joint. */
public sealed interface Resistance
        permits Resistance.LockingElement, Resistance.Fouling, Resistance.ThickCoating, Resistance.ThreadDamage {

    /** One turn in rad. */
    double TURN_RAD = 2 * Math.PI;

    /** Turns past snug up to which growing and repeated resistances are laid out (assumed: no joint goes that far). */
    int TURNS_PAST_SNUG = 5;

    /** The torque as pieces over nut angle, where snug lies at an angle from the start. */
    List<FreeTorque.Piece> pieces(double snugAngleRad);

    /** The highest torque that it adds up to snug or, once there, keeps; N m. */
    double peakNm(double snugAngleRad);

    /**
     * Where a resistance begins: from the start of the tool, or before snug.
     *
     * @param angleRad rad; not negative
     * @param beforeSnug whether the angle is counted back from snug
     */
    record Begin(double angleRad, boolean beforeSnug) {
        public static final Begin AT_START = fromStart(0);

        public Begin {
            if (!(Math.abs(angleRad) < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("the angle where a resistance begins must be finite");
            }
        }

        public static Begin fromStart(double angleRad) {
            return new Begin(angleRad, false);
        }

        /** A negative angle begins past snug. */
        public static Begin beforeSnug(double angleRad) {
            return new Begin(angleRad, true);
        }

        double resolvedRad(double snugAngleRad) {
            return beforeSnug ? snugAngleRad - angleRad : angleRad;
        }
    }

    /**
     * A prevailing-torque nut: nothing until the bolt end reaches the locking element, a ramp, then a constant.
     *
     * @param torqueNm T_pmax, N m; not negative
     * @param begin where the bolt end reaches the element
     * @param rampRad angle over which the torque rises, rad; not negative
     */
    record LockingElement(double torqueNm, Begin begin, double rampRad) implements Resistance {

        /** One turn of ramp (assumed). */
        public static final double ASSUMED_RAMP_RAD = TURN_RAD;

        public LockingElement {
            requireTorque(torqueNm);
            if (!(rampRad >= 0 && rampRad < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("the ramp of a locking element must be finite and not negative");
            }
        }

        @Override
        public List<FreeTorque.Piece> pieces(double snugAngleRad) {
            double from = begin.resolvedRad(snugAngleRad);
            if (rampRad == 0) {
                return List.of(FreeTorque.Piece.constantFrom(from, torqueNm));
            }
            double to = from + rampRad;
            return List.of(
                    new FreeTorque.Piece(from, to, 0, torqueNm / rampRad, 0),
                    FreeTorque.Piece.constantFrom(to, torqueNm));
        }

        @Override
        public double peakNm(double snugAngleRad) {
            return torqueNm;
        }
    }

    /**
     * Dirt, paint or rust in the thread: a constant torque.
     *
     * @param torqueNm N m; not negative
     * @param begin where it begins
     */
    record Fouling(double torqueNm, Begin begin) implements Resistance {
        public Fouling {
            requireTorque(torqueNm);
        }

        @Override
        public List<FreeTorque.Piece> pieces(double snugAngleRad) {
            return List.of(FreeTorque.Piece.constantFrom(begin.resolvedRad(snugAngleRad), torqueNm));
        }

        @Override
        public double peakNm(double snugAngleRad) {
            return torqueNm;
        }
    }

    /**
     * A coating too thick for the clearance: torque that grows linearly with every turn from the start.
     *
     * @param perTurnNm growth per turn, N m; not negative
     * @param limitNm torque at which it stops growing, N m; not negative, infinite for none
     */
    record ThickCoating(double perTurnNm, double limitNm) implements Resistance {
        public ThickCoating {
            requireTorque(perTurnNm);
            if (!(limitNm >= 0)) {
                throw new IllegalArgumentException("the limit of a coating's torque must not be negative");
            }
        }

        /** A coating that grows as far as any joint is tightened. */
        public static ThickCoating growing(double perTurnNm) {
            return new ThickCoating(perTurnNm, Double.POSITIVE_INFINITY);
        }

        @Override
        public List<FreeTorque.Piece> pieces(double snugAngleRad) {
            double last = snugAngleRad + TURNS_PAST_SNUG * TURN_RAD;
            double full = Math.min(last, limitNm / perTurnNm * TURN_RAD);
            if (perTurnNm == 0 || !(full > 0)) {
                return List.of();
            }
            double perRad = perTurnNm / TURN_RAD;
            return List.of(
                    new FreeTorque.Piece(0, full, 0, perRad, 0), FreeTorque.Piece.constantFrom(full, perRad * full));
        }

        @Override
        public double peakNm(double snugAngleRad) {
            return Math.min(limitNm, perTurnNm * Math.max(0, snugAngleRad) / TURN_RAD);
        }
    }

    /**
     * A dent in the thread: a parabola of torque, at one place or once in every turn from there on.
     *
     * @param peakNm height of the parabola, N m; not negative
     * @param widthRad its width, rad; positive, at most one turn
     * @param begin where the first one begins
     * @param everyTurn whether it comes back once per turn
     */
    record ThreadDamage(double peakNm, double widthRad, Begin begin, boolean everyTurn) implements Resistance {

        public ThreadDamage {
            requireTorque(peakNm);
            if (!(widthRad > 0 && widthRad <= TURN_RAD)) {
                throw new IllegalArgumentException("thread damage must be wider than nothing and at most one turn");
            }
        }

        @Override
        public List<FreeTorque.Piece> pieces(double snugAngleRad) {
            double from = begin.resolvedRad(snugAngleRad);
            double last = everyTurn ? snugAngleRad + TURNS_PAST_SNUG * TURN_RAD : from;
            List<FreeTorque.Piece> pieces = new ArrayList<>();
            int turn = 0;
            do {
                pieces.add(parabola(from + turn * TURN_RAD));
                turn++;
            } while (from + turn * TURN_RAD <= last);
            return pieces;
        }

        @Override
        public double peakNm(double snugAngleRad) {
            return peakNm;
        }

        private FreeTorque.Piece parabola(double from) {
            double rise = 4 * peakNm / widthRad;
            return new FreeTorque.Piece(from, from + widthRad, 0, rise, -rise / widthRad);
        }
    }

    private static void requireTorque(double torqueNm) {
        if (!(torqueNm >= 0 && torqueNm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a resisting torque must be finite and not negative");
        }
    }
}
