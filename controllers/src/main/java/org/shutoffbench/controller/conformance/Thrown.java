package org.shutoffbench.controller.conformance;

/** What a strategy threw, in words for the person who wrote it: the exception and the line that it came from. */
public final class Thrown {

    private Thrown() {}

    /** The exception, and file and line of the first place on its way that is not the Java library's. */
    public static String inWords(Throwable thrown) {
        for (StackTraceElement place : thrown.getStackTrace()) {
            if (!place.getClassName().startsWith("java.") && place.getFileName() != null) {
                return thrown + " (" + place.getFileName() + ":" + place.getLineNumber() + ")";
            }
        }
        return thrown.toString();
    }
}
