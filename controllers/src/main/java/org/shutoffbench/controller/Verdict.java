package org.shutoffbench.controller;

/** What a strategy claims of the joint at the end. */
public enum Verdict {
    REACHED,
    NOT_REACHED,
    UNSURE
}
