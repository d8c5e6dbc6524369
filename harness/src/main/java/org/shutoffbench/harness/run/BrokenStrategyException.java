package org.shutoffbench.harness.run;

/** A strategy from outside that cannot be used as the contract says; names it, and says what it did. */
public final class BrokenStrategyException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /**
     * @param strategy its name
     * @param fault what it did, in words
     */
    public BrokenStrategyException(String strategy, String fault) {
        super("the strategy \"" + strategy + "\" breaks the contract: " + fault
                + "; correct it and check it with conform");
    }
}
