package org.shutoffbench.controller;

/** Makes instances of one strategy. A public class with a public no-argument constructor, so that it can be named in a file. */
public interface StrategyFactory {

    StrategyDescriptor descriptor();

    /**
     * Makes one instance; everything it will ever need is allocated here.
     *
     * @throws IllegalArgumentException where a required channel is missing
     */
    ShutoffStrategy create(Settings settings, Provision provision);
}
