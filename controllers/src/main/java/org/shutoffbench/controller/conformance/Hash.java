package org.shutoffbench.controller.conformance;

/** Repeatable disorder for recordings; no statistical claim is made of it. */
final class Hash {

    private Hash() {}

    /** A whole number in [0, 2^31), scattered by two multiply-xorshift rounds. */
    static int of(int a, int b) {
        int h = a * 0x9E3779B1 + b * 0x85EBCA77;
        h = (h ^ (h >>> 15)) * 0x2C1B3C6D;
        h = (h ^ (h >>> 12)) * 0x297A2D39;
        return (h ^ (h >>> 15)) >>> 1;
    }
}
