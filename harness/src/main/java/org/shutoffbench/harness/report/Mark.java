package org.shutoffbench.harness.report;

import java.util.List;

/**
 * How a strategy is told from the others on every picture: hue, shape and dash together, so that none of them is needed
 * alone. A second settings table of the same strategy keeps hue and shape and is drawn hollow with a dash of its own.
 *
 * @param hue index of a custom property --hue-N of the page
 * @param path outline of the shape as SVG path data, centred on the origin, about 14 units wide
 * @param hollow whether the inside shows the ground
 * @param open whether the shape is a stroke without an inside
 * @param dash lengths of dash and gap; empty for a solid line
 */
record Mark(int hue, String path, boolean hollow, boolean open, List<Integer> dash) {

    static final int HUES = 8;

    private static final List<String> SHAPES = List.of(
            "M-6,0A6,6 0 1,1 6,0A6,6 0 1,1 -6,0Z",
            "M-5,-5L5,5M5,-5L-5,5",
            "M0,-7L7,5.5L-7,5.5Z",
            "M-5.5,-5.5H5.5V5.5H-5.5Z",
            "M0,7L7,-5.5L-7,-5.5Z",
            "M0,-7.5L6.5,0L0,7.5L-6.5,0Z",
            "M-6.5,0H6.5M0,-6.5V6.5",
            "M0,-7L6.2,-3.5V3.5L0,7L-6.2,3.5V-3.5Z");
    private static final List<List<Integer>> DASHES = List.of(
            List.of(),
            List.of(9, 3),
            List.of(8, 3, 2, 3),
            List.of(2, 3),
            List.of(5, 4),
            List.of(12, 3, 2, 3, 2, 3),
            List.of(14, 4),
            List.of(3, 2, 3, 6));
    private static final List<List<Integer>> SECOND_DASHES = List.of(
            List.of(4, 2),
            List.of(3, 3),
            List.of(5, 2, 1, 2),
            List.of(1, 3),
            List.of(2, 2),
            List.of(6, 2, 1, 2, 1, 2),
            List.of(7, 2),
            List.of(2, 1, 2, 4));

    Mark {
        dash = List.copyOf(dash);
    }

    /**
     * The mark of a strategy.
     *
     * @param strategy running number of the strategy's name, from 0
     * @param variant running number of the settings table: 0 is drawn solid, 1 hollow, 2 hollow with a shape of its own
     */
    static Mark of(int strategy, int variant) {
        int hue = strategy % HUES;
        int shape = (strategy + strategy / HUES + variant / 2 * 3) % SHAPES.size();
        String path = SHAPES.get(shape);
        boolean open = !path.endsWith("Z");
        List<Integer> dash = variant == 0 ? DASHES.get(hue) : SECOND_DASHES.get(hue);
        return new Mark(hue, open && variant > 0 ? ringed(path) : path, variant > 0, open, dash);
    }

    private static String ringed(String path) {
        return path + "M-7.5,-7.5H7.5V7.5H-7.5Z";
    }
}
