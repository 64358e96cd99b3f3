package org.glintery.exchange.csv;

import java.io.IOException;

/** A row whose quotation marks do not add up, or one that is too large; nothing after it can be read. */
public final class BrokenRowException extends IOException {
    private static final long serialVersionUID = 1L;
    private final int line;

    BrokenRowException(int line, Throwable cause) {
        super("broken row at line " + line, cause);
        this.line = line;
    }

    /** The line of the file on which the row begins, from 1. */
    public int line() {
        return line;
    }
}
