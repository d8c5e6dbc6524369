package org.shutoffbench.harness.scenario;

/**
 * Which joints share a lot, a piece or a tool. By default each joint is its own of each.
 *
 * @param jointsPerLot joint numbers in a row that come from one lot; a multiple of the repeats
 * @param repeatsPerPiece joint numbers in a row that are one piece, tightened again
 * @param jointsPerTool joint numbers in a row that one tool tightens
 */
public record Grouping(int jointsPerLot, int repeatsPerPiece, int jointsPerTool) {

    /** Each joint its own lot, piece and tool. */
    public static final Grouping NONE = new Grouping(1, 1, 1);

    public Grouping {
        if (jointsPerLot < 1 || repeatsPerPiece < 1 || jointsPerTool < 1 || jointsPerLot % repeatsPerPiece != 0) {
            throw new IllegalArgumentException("groups hold at least one joint, lots whole pieces");
        }
    }

    /** Lot of a joint number. */
    public int lot(int joint) {
        return joint / jointsPerLot;
    }

    /** Piece of a joint number, counted over all lots. */
    public int piece(int joint) {
        return joint / repeatsPerPiece;
    }

    /** How often the piece was tightened before. */
    public int repeat(int joint) {
        return joint % repeatsPerPiece;
    }

    /** Tool of a joint number. */
    public int tool(int joint) {
        return joint / jointsPerTool;
    }
}
