package org.shutoffbench.harness.statistics;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Variance by lot, piece within lot and repeat, by the nested analysis of variance for unequal group sizes (source:
 * Searle1992). Negative estimates are set to 0; a level without its own degrees of freedom is NaN.
 *
 * @param lot between lots
 * @param piece between pieces of one lot
 * @param repeat between repeats of one piece; between pieces where no piece is repeated
 */
public record VarianceComponents(double lot, double piece, double repeat) {

    /**
     * The components of a sample.
     *
     * @param values one a tightening
     * @param lots index of the lot, same length
     * @param pieces index of the piece, same length; a piece belongs to one lot
     */
    public static VarianceComponents of(double[] values, int[] lots, int[] pieces) {
        Map<Integer, Group> byLot = new LinkedHashMap<>();
        Map<Long, Group> byPiece = new LinkedHashMap<>();
        Group all = new Group();
        double centre = values.length == 0 ? 0 : values[0];
        for (int i = 0; i < values.length; i++) {
            double value = values[i] - centre;
            all.add(value);
            byLot.computeIfAbsent(lots[i], key -> new Group()).add(value);
            long piece = ((long) lots[i] << 32) | (pieces[i] & 0xffffffffL);
            byPiece.computeIfAbsent(piece, key -> new Group(key >> 32)).add(value);
        }
        return new Nested(all, byLot, byPiece).components();
    }

    private static final class Group {
        private final long parent;
        private long n;
        private double sum;
        private double squares;

        Group() {
            this(0);
        }

        Group(long parent) {
            this.parent = parent;
        }

        void add(double value) {
            n++;
            sum += value;
            squares += value * value;
        }

        double square() {
            return sum * sum / n;
        }
    }

    /** Sums of squares, degrees of freedom and the coefficients of their expectations. */
    private static final class Nested {
        private final Group all;
        private final Map<Integer, Group> lots;
        private final Map<Long, Group> pieces;

        Nested(Group all, Map<Integer, Group> lots, Map<Long, Group> pieces) {
            this.all = all;
            this.lots = lots;
            this.pieces = pieces;
        }

        VarianceComponents components() {
            double lotSquares =
                    lots.values().stream().mapToDouble(Group::square).sum();
            double pieceSquares =
                    pieces.values().stream().mapToDouble(Group::square).sum();
            long lotFreedom = lots.size() - 1L;
            long pieceFreedom = pieces.size() - (long) lots.size();
            long repeatFreedom = all.n - pieces.size();
            if (repeatFreedom == 0) {
                double repeat = meanSquare(all.squares - lotSquares, pieceFreedom);
                double lot = component(meanSquare(lotSquares - all.square(), lotFreedom), repeat, sizeOfLots());
                return new VarianceComponents(lot, Double.NaN, repeat);
            }
            double repeat = meanSquare(all.squares - pieceSquares, repeatFreedom);
            double pieceMean = meanSquare(pieceSquares - lotSquares, pieceFreedom);
            double withinLots = pieceSizesWithinLots();
            double piece = component(pieceMean, repeat, (all.n - withinLots) / pieceFreedom);
            double ofPieceInLots = (withinLots - pieceSizesOverall()) / lotFreedom;
            double known = Double.isNaN(piece) ? repeat : repeat + ofPieceInLots * piece;
            double lot = component(meanSquare(lotSquares - all.square(), lotFreedom), known, sizeOfLots());
            return new VarianceComponents(lot, piece, repeat);
        }

        private double sizeOfLots() {
            double squares = 0;
            for (Group lot : lots.values()) {
                squares += (double) lot.n * lot.n;
            }
            return (all.n - squares / all.n) / (lots.size() - 1.0);
        }

        /** Sum over lots of sum of squared piece sizes over the lot's size. */
        private double pieceSizesWithinLots() {
            double sum = 0;
            for (Group piece : pieces.values()) {
                Group lot = lots.get((int) piece.parent);
                sum += lot == null ? 0 : (double) piece.n * piece.n / lot.n;
            }
            return sum;
        }

        private double pieceSizesOverall() {
            double sum = 0;
            for (Group piece : pieces.values()) {
                sum += (double) piece.n * piece.n;
            }
            return sum / all.n;
        }

        private static double meanSquare(double squares, long freedom) {
            return freedom == 0 ? Double.NaN : Math.max(0, squares) / freedom;
        }

        private static double component(double meanSquare, double below, double size) {
            return Math.max(0, (meanSquare - below) / size);
        }
    }
}
