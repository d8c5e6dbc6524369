package org.shutoffbench.harness.population;

import org.shutoffbench.draw.DrawKey;
import org.shutoffbench.draw.Stream;

/**
 * Draws of one joint by key and index.
 *
 * @param key of the family
 * @param lot index of the lot
 * @param piece index of the piece, over all lots
 * @param run index of the tightening
 * @param tool index of the tool
 */
record KeyedDraws(DrawKey key, long lot, long piece, long run, long tool) implements DrawSource {

    private static final int NOISE = 0;

    @Override
    public double uniform(ScatterSource source) {
        long index = switch (source.level()) {
            case LOT -> lot;
            case PIECE -> piece;
            case REPEAT -> run;
            case TOOL -> tool;
        };
        return key.uniform(source.stream(), index, source.draw());
    }

    @Override
    public long noiseKey() {
        return key.noiseKey(Stream.SENSOR, run, NOISE);
    }
}
