package org.shutoffbench.harness.population;

/** Where the draws of one joint come from: the keyed generator, or whoever looks for particular joints. */
public interface DrawSource {

    /** The uniform number of a source, in the open interval (0, 1). */
    double uniform(ScatterSource source);

    /** The key of all noise of this joint's run. */
    long noiseKey();

    /**
     * The same draws but for some: a coordinate of 0 stands at the median, 1 at one standard deviation of a normal.
     *
     * @param normals standard-normal coordinates by source
     */
    default DrawSource with(java.util.Map<ScatterSource, Double> normals) {
        return new ReplacedDraws(this, java.util.Map.copyOf(normals));
    }
}
